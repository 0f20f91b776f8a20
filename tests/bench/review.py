"""Print how long one review of five years takes, and how it grows: `python -m tests.bench.review`.

1,000 sessions with 25 sets each, pain answers twice a session, a bodyweight a week, the plans that were sent. Equal
sets are one object, as storage hands them out.

cold: a record never seen before, as after a start of the service. warm: the same record with one more session, its
plan and its pain answers, which is what a running service reviews: storage keeps records, and with them what earlier
reviews left on their sessions. Times are of the processor, so that other work of the machine counts little: the
median, and the least in brackets. The last line is the morning's plan of an athlete with a month of facts, cold.
"""

from __future__ import annotations

import argparse
import random
import time
from dataclasses import replace
from datetime import date, timedelta
from functools import cache
from statistics import median

from planner import plan_for, review
from planner.calendar import next_training_day
from planner.facts import Athlete, Bodyweight, PainAnswer, PlannedSet, Record, SentPlan, Session, WorkSet

START = date(2027, 1, 4)
SIDES = ("left", "right")
work_set, planned_set = cache(WorkSet), cache(PlannedSet)


def session(on: date, number: int, chance: random.Random) -> Session:
    load = 15.0 + round(number * 0.02 / 1.25) * 1.25
    skill = [work_set("archer_ring_elbow", 2, side=side, rom="lower_half", rpe=7.0) for _ in range(2) for side in SIDES]
    main = [work_set("pull_up", 4, load_kg=load, rpe=None if n else 7.0 + chance.random()) for n in range(4, -1, -1)]
    rest = [work_set("ring_row", 10) for _ in range(4)] + [work_set("dip", 6, load_kg=10.0) for _ in range(6)]
    return Session(
        on, (*skill, *main, *rest, *(work_set("hollow_hold", None, hold_s=30.0) for _ in range(6))), fact=number
    )


def record(sessions: int) -> tuple[Record, date]:
    chance = random.Random(1)
    days = [START + timedelta(days=n * 7 // 4) for n in range(sessions)]
    done = tuple(session(day, number, chance) for number, day in enumerate(days))
    pain = tuple(
        PainAnswer(day + timedelta(days=later), "elbow", "right", float(chance.choice([0, 0, 1, 2])), when)
        for day in days
        for later, when in ((0, "after"), (1, "morning"))
    )
    sent = tuple(
        SentPlan(
            one.on, 1, 1, "training", tuple(planned_set(s.movement, "main", s.reps, side=s.side) for s in one.sets)
        )
        for one in done
    )
    weighed = tuple(Bodyweight(START + timedelta(weeks=n), 70.0 + chance.random()) for n in range(sessions // 4))
    athlete = Athlete("mira", START, 70.0, equipment=frozenset({"bar", "rings", "belt", "bands"}), screened=True)
    return Record(athlete, done, pain, bodyweights=weighed, sent=sent), days[-1] + timedelta(days=1)


def spent(facts: Record, on: date) -> float:
    """Milliseconds of one review."""
    began = time.process_time()
    review(facts, on)
    return 1000 * (time.process_time() - began)


def cold(sessions: int, times: int) -> list[float]:
    return [spent(*record(sessions)) for _ in range(times)]  # anew, so that nothing kept from the last review helps


def warm(sessions: int, times: int) -> list[float]:
    """Each review with one session more than the one before it, up to `sessions`."""
    whole, _ = record(sessions)
    found = []
    for count in range(sessions - times, sessions + 1):
        done = whole.sessions[:count]
        known = replace(whole, sessions=done, sent=whole.sent[:count], pain=whole.pain[: 2 * count])
        found.append(spent(known, done[-1].on + timedelta(days=1)))
    return found[1:]  # the first one was cold


def plan_cold(sessions: int, times: int) -> list[float]:
    """The plan of the next training day, by a record never seen before."""
    found = []
    for _ in range(times):
        facts, on = record(sessions)
        day = next_training_day(facts.athlete.schedule, on) or on
        began = time.process_time()
        plan_for(facts, day, day)
        found.append(1000 * (time.process_time() - began))
    return found


def told(found: list[float]) -> str:
    return f"{median(found):8.2f} ({min(found):.2f})".ljust(18)


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--times", type=int, default=9)
    times = parser.parse_args().times
    review(*record(20))
    print("sessions    sets   cold, ms          warm, ms")
    for sessions in (100, 200, 400, 600, 800, 1000):
        print(f"{sessions:8d}{sessions * 25:8d}{told(cold(sessions, times))}{told(warm(sessions, 3 * times))}")
    print(f"the morning's plan after 8 sessions, ms: {told(plan_cold(8, 20 * times))}")


if __name__ == "__main__":
    main()
