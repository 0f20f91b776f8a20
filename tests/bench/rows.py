"""How long storage takes: `python tests/bench/rows.py [URL]`. Prints; judges nothing.

Without a URL a SQLite file in a temporary directory is used. A URL must name an empty database.
"""

import statistics
import sys
import tempfile
import time
from datetime import UTC, date, datetime, timedelta

import sqlalchemy as sa

from planner import facts as f
from storage import chats, due, facts, inbox, loading, outbox, records, retention
from storage.database import run
from storage.persons import Who
from storage.roster import Roster, RosterAthlete, RosterCoach
from storage.store import Store

NOW = datetime(2032, 1, 5, 6, tzinfo=UTC)
YEARS, ATHLETES, SENT = 5, 80, 300_000


def timed(name: str, times: int, work) -> None:
    """Print median and 95th percentile of `times` runs."""
    took = []
    for number in range(times):
        start = time.perf_counter()
        work(number)
        took.append((time.perf_counter() - start) * 1000)
    high = sorted(took)[int(len(took) * 0.95)]
    print(f"{name:<58} median {statistics.median(took):8.2f} ms   p95 {high:8.2f} ms")


def five_years(store: Store, athlete_id: int) -> None:
    """Three sessions a week, 14 sets each, with their plans, pain answers and a weekly bodyweight."""
    sets = tuple(f.WorkSet("pull_up", 4, load_kg=20.0, rpe=7.5) for _ in range(14))
    asked = tuple(f.PlannedSet("pull_up", "main", 4, load_kg=20.0, rpe=8.0) for _ in range(14))
    for week in range(52 * YEARS):
        with store.transaction() as tx:
            for day in (0, 2, 4):
                on = date(2027, 1, 4) + timedelta(days=week * 7 + day)
                facts.add(tx, athlete_id, f.SentPlan(on, 1, 1, "training", asked), "bot", NOW, None)
                facts.add(tx, athlete_id, f.Session(on, sets), "athlete", NOW, None)
                facts.add(tx, athlete_id, f.PainAnswer(on, "elbow_inner", "left", 1.0, "after"), "athlete", NOW, None)
            facts.add(tx, athlete_id, f.Bodyweight(on, 62.0), "athlete", NOW, None)


def main(url: str) -> None:
    start = time.perf_counter()
    store = Store.open(url)
    print(f"open a new database {(time.perf_counter() - start) * 1000:.0f} ms")
    entries = tuple(
        RosterAthlete(f"a{n}", f"A{n}", "Europe/Zurich", 62.0, datetime(2027, 1, 1, 7).time(), f.Weekly(frozenset({0})))  # noqa: DTZ001
        for n in range(ATHLETES)
    )
    with store.transaction() as tx:
        ids = list(loading.load_roster(tx, Roster(RosterCoach("C", "UTC"), entries), NOW).athlete_ids.values())
        for n in range(50):  # of strangers hardly anything is kept
            chats.bind_chat(tx, "x", f"c{n}", Who("athlete", ids[10 + n]), NOW)
    for athlete_id in ids[:4]:
        five_years(store, athlete_id)

    def load(fresh: bool, those):
        def work(_: int) -> None:
            if fresh:
                store.forget_records()
            with store.reading() as tx:
                records.records(tx, those)

        return work

    timed("record of five years, read", 20, load(True, ids[:1]))
    timed("the same, unchanged", 200, load(False, ids[:1]))

    def one_more(_: int) -> None:
        with store.transaction() as tx:
            records.record(tx, ids[0])
            fact = f.Session(date(2032, 1, 4), (f.WorkSet("pull_up", 4),) * 5)
            facts.add(tx, ids[0], fact, "athlete", NOW, None)
            records.record(tx, ids[0])

    timed("the same: read, one report more, read again", 40, one_more)
    timed("80 records, four of five years, read", 5, load(True, ids))
    timed("80 records, unchanged", 50, load(False, ids))

    session = f.Session(date(2032, 1, 5), (f.WorkSet("pull_up", 4),) * 5)

    def message(number: int) -> None:
        update = inbox.IncomingUpdate("x", f"k{number}", f"c{number % 50}", "text", "pull-ups 5x4", NOW)
        with store.transaction() as tx:
            inbox.accept(tx, [update], NOW)
        with store.transaction() as tx:
            row = inbox.next_unhandled(tx, NOW)
            facts.add(tx, ids[10 + number % 50], session, "athlete", NOW, row.id)
            outbox.post(tx, owed(number))
            due.schedule(tx, Who("athlete", ids[10]), "check", date(2032, 1, 5) + timedelta(days=number), NOW)
            inbox.mark_handled(tx, row.id, NOW)

    def owed(number: int) -> outbox.Outgoing:
        return outbox.Outgoing(
            channel="x", address=f"c{number % 50}", to="a", text="Noted.", cause=f"m{number}", due_at=NOW
        )

    timed("a message: accepted, 5 sets, reply, due row, handled", 300, message)

    with store.transaction() as tx:
        one = owed(0).model_dump(exclude={"id"}) | {"sent_at": NOW}
        for batch in range(SENT // 5000):
            run(tx, sa.insert(outbox.outgoing), [{**one, "cause": f"s{batch}-{n}"} for n in range(5000)])
        seen = inbox._values(inbox.IncomingUpdate("x", "", "c1", "text", "hi", NOW), None, NOW) | {"handled_at": NOW}
        for batch in range(SENT // 5000):
            run(tx, sa.insert(inbox.incoming), [{**seen, "update_key": f"s{batch}-{n}"} for n in range(5000)])
    if store.path is None:
        store.vacuum()
        with store.transaction() as tx:
            run(tx, sa.text("ANALYZE"))
    print(f"with {SENT:,} old rows each in inbox and outbox:")

    def send(_: int) -> None:
        with store.transaction() as tx:
            claimed = outbox.claim(tx, NOW, 1)
        with store.transaction() as tx:
            outbox.mark_sent(tx, claimed[0].id, NOW)

    timed("claim one of 300 open messages and mark it sent", 200, send)
    timed("a message, as above", 100, lambda number: message(10_000 + number))
    with store.transaction() as tx:
        inbox.accept(tx, [inbox.IncomingUpdate("x", f"w{n}", f"c{n}", "text", "hi", NOW) for n in range(2000)], NOW)

    def take(_: int) -> None:
        with store.transaction() as tx:
            inbox.mark_handled(tx, inbox.next_unhandled(tx, NOW).id, NOW)

    timed("take one of 2,000 waiting rows", 200, take)

    def tidy(before: datetime):
        def work(_: int) -> None:
            with store.transaction() as tx:
                retention.let_go_of_words(tx, before)

        return work

    timed("look for old words where there are none", 20, tidy(NOW - timedelta(days=1)))
    timed(f"let go of {retention.AT_ONCE:,} messages' words each way", 20, tidy(NOW + timedelta(days=1)))
    store.close()


if __name__ == "__main__":
    if len(sys.argv) > 1:
        main(sys.argv[1])
    else:
        with tempfile.TemporaryDirectory() as directory:
            main(f"sqlite:///{directory}/bench.sqlite3")
