"""What can be counted, for Prometheus. Counts are of this process; what waits is read from the database when asked."""

from __future__ import annotations

from prometheus_client import CollectorRegistry, Counter, Gauge, generate_latest

from storage.health import Health

REGISTRY = CollectorRegistry()

UPDATES = Counter("slowrung_updates_total", "Updates taken in, by kind.", ["kind"], registry=REGISTRY)
HANDLED = Counter("slowrung_messages_total", "Messages handled, by outcome.", ["outcome"], registry=REGISTRY)
READINGS = Counter(
    "slowrung_readings_total", "Messages read: sure, asked back, nothing found.", ["outcome"], registry=REGISTRY
)
DUE = Counter("slowrung_due_total", "Due rows handled, by kind.", ["kind"], registry=REGISTRY)
DECISIONS = Counter(
    "slowrung_decisions_total", "Decisions in the plans that were sent, by code.", ["code"], registry=REGISTRY
)
SENT = Counter("slowrung_sends_total", "Sends tried, by outcome.", ["outcome"], registry=REGISTRY)
REFUSED = Counter(
    "slowrung_webhook_refused_total", "Calls refused at the door, by reason.", ["reason"], registry=REGISTRY
)

WAITING = Gauge("slowrung_waiting", "Rows that wait, by queue.", ["queue"], registry=REGISTRY)
OLDEST = Gauge("slowrung_oldest_seconds", "Age of the oldest row that waits, by queue.", ["queue"], registry=REGISTRY)
SWEEP_AGE = Gauge("slowrung_sweep_age_seconds", "Time since the last sweep ended.", registry=REGISTRY)
SET_ASIDE = Gauge("slowrung_set_aside", "Messages that could not be handled.", registry=REGISTRY)


def exposition(seen: Health) -> bytes:
    """The text that Prometheus reads."""
    queues = {
        "inbox": (seen.unhandled, seen.oldest_unhandled),
        "outbox": (seen.unsent, seen.oldest_unsent),
        "due": (seen.overdue, seen.oldest_overdue),
    }
    for name, (count, age) in queues.items():
        WAITING.labels(name).set(count)
        OLDEST.labels(name).set(age.total_seconds() if age is not None else 0)
    SET_ASIDE.set(seen.set_aside)
    if "sweep" in seen.beats:
        SWEEP_AGE.set(seen.beats["sweep"].total_seconds())
    return generate_latest(REGISTRY)


def count_reading(asked: bool, understood: bool) -> None:
    """One message read: asked back, sure, or nothing found in it."""
    READINGS.labels("asked" if asked else "sure" if understood else "nothing").inc()
