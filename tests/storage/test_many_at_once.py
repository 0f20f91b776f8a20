"""Several threads and several processes' worth of stores on one database: nothing lost, doubled or locked out."""

from concurrent.futures import ThreadPoolExecutor

import pytest
import sqlalchemy as sa

from bot import schedule, worker
from bot.conversation import privacy
from planner import facts as f
from storage import due, facts, health, inbox, outbox, records
from storage.database import run
from storage.health import heartbeats
from storage.outbox import outgoing
from storage.persons import try_lock
from storage.store import Store
from tests.storage.sample import NOW, TODAY, message, update


@pytest.fixture
def stores(store, url):
    """Two stores of one database, as two processes have them."""
    second = Store.open(url)
    yield [store, second]
    second.close()


def at_once(stores, work, threads=6):
    with ThreadPoolExecutor(threads) as pool:
        done = [pool.submit(work, stores[number % len(stores)]) for number in range(threads)]
        return [one.result() for one in done]


def test_reading_then_writing_from_all_sides_loses_no_count(stores, mira):
    start = NOW.replace(microsecond=0)
    with stores[0].transaction() as tx:
        health.beat(tx, "count", start)

    def count(store):
        for _ in range(20):
            with store.transaction() as tx:
                row = run(tx, sa.select(heartbeats).with_for_update()).one()
                health.beat(tx, "count", row.at.replace(microsecond=row.at.microsecond + 1))

    at_once(stores, count)
    with stores[0].transaction() as tx:
        assert health.last_beat(tx, "count").microsecond == 120


def test_the_same_update_from_all_sides_is_kept_once(stores, mira):
    def deliver(store):
        kept = 0
        for key in range(30):
            with store.transaction() as tx:
                kept += inbox.accept(tx, [update(key)], NOW)
        return kept

    assert sum(at_once(stores, deliver)) == 30


def test_each_row_is_handled_once_and_each_persons_in_order(stores, mira):
    with stores[0].transaction() as tx:
        inbox.accept(tx, [update(key, ("mira", "jonas", "coach")[key % 3]) for key in range(45)], NOW)
    handled = []

    def work(store):
        misses = 0
        while misses < 20:
            with store.transaction() as tx:
                row = inbox.next_unhandled(tx, NOW)
                if row is None:
                    misses += 1
                    continue
                inbox.mark_handled(tx, row.id, NOW)
                handled.append((row.sender, int(row.update_key)))

    at_once(stores, work)
    assert sorted(key for _, key in handled) == list(range(45))
    for sender in {sender for sender, _ in handled}:
        keys = [key for who, key in handled if who == sender]
        assert keys == sorted(keys)


def test_a_due_row_is_taken_by_one(stores, mira):
    with stores[0].transaction() as tx:
        for number in range(12):
            due.schedule(tx, mira, f"kind {number}", TODAY, NOW)
        ids = [row.id for row in due.due_now(tx, NOW)]

    def work(store):
        taken = []
        for due_id in ids:
            with store.transaction() as tx:
                row = due.take(tx, due_id, NOW)
                if row is not None:
                    due.finish(tx, row.id, NOW)
                    taken.append(row.id)
        return taken

    taken = [due_id for those in at_once(stores, work) for due_id in those]
    assert len(taken) == len(set(taken)) > 0


def test_a_message_is_claimed_by_one(stores, mira):
    with stores[0].transaction() as tx:
        for number in range(40):
            outbox.post(tx, message(f"cause {number}", address=f"chat {number}"))

    def work(store):
        claimed = []
        for _ in range(10):
            with store.transaction() as tx:
                claimed += [row.id for row in outbox.claim(tx, NOW, 3)]
        return claimed

    claimed = [row for those in at_once(stores, work) for row in those]
    assert len(claimed) == len(set(claimed)) == 40


def test_a_record_read_beside_a_writer_never_has_a_report_without_its_sets(stores, mira):
    session = f.Session(TODAY, (f.WorkSet("pull_up", 5),) * 8)

    def work(store):
        if store is stores[0]:
            for cause in range(10):
                with store.transaction() as tx:
                    facts.add(tx, mira.id, session, "athlete", NOW, cause)
            return []
        seen = []
        for _ in range(15):
            with store.transaction() as tx:
                seen += [len(one.sets) for one in records.record(tx, mira.id).sessions if not one.is_test]
        return seen

    assert {count for seen in at_once(stores, work, threads=4) for count in seen} <= {8}
    with stores[1].transaction() as tx:
        assert len(facts.sessions(tx, mira.id)) == 1 + 2 * 10


def test_a_sweep_counts_what_it_took_and_not_what_another_has_in_hand(stores, mira):
    if stores[0].path is not None:
        pytest.skip("SQLite has one writer: nothing is in work beside it")
    with stores[0].transaction() as tx:
        for kind in ("plan", privacy.ERASE):
            due.schedule(tx, mira, kind, TODAY, NOW)
        (row, _) = due.due_now(tx, NOW)
    with stores[0].transaction() as first:
        assert due.take(first, row.id, NOW) is not None
        assert schedule.sweep(stores[1], NOW) == 0
    with stores[1].transaction() as tx:
        assert len(due.due_now(tx, NOW)) == 2


def test_a_due_row_waits_while_a_message_of_the_same_person_is_in_work(stores, mira):
    if stores[0].path is not None:
        pytest.skip("SQLite has one writer: nothing is in work beside it")
    with stores[0].transaction() as tx:
        inbox.accept(tx, [update(1)], NOW)
        due.schedule(tx, mira, "plan", TODAY, NOW)
        (row,) = due.due_now(tx, NOW)
    with stores[0].transaction() as first:
        assert inbox.next_unhandled(first, NOW) is not None
        with stores[1].transaction() as second:
            assert due.take(second, row.id, NOW) is None
            assert inbox.next_unhandled(second, NOW) is None
    with stores[1].transaction() as second:
        assert due.take(second, row.id, NOW) is not None


def test_an_order_of_the_coach_waits_for_the_athletes_own_message_and_knows_what_it_told(stores, mira):
    if stores[0].path is not None:
        pytest.skip("SQLite has one writer: nothing is in work beside it")
    with stores[0].transaction() as tx:
        inbox.accept(tx, [update(1, "coach", "mira")], NOW)
    with ThreadPoolExecutor(1) as pool:
        with stores[0].transaction() as first:
            assert try_lock(first, mira)
            facts.add(first, mira.id, f.Session(TODAY, (f.WorkSet("pull_up", 5, load_kg=21.25),)), "athlete", NOW, None)
            handled = pool.submit(worker.handle_next, stores[1], NOW)
            with pytest.raises(TimeoutError):
                handled.result(timeout=1)
        assert handled.result(timeout=10)
    with stores[0].transaction() as tx:
        assert "21.25" in run(tx, sa.select(outgoing.c.text).order_by(outgoing.c.id.desc())).scalar()


def test_nobody_is_erased_while_a_message_of_their_coach_is_in_work(stores, mira):
    if stores[0].path is not None:
        pytest.skip("SQLite has one writer: nothing is in work beside it")
    with stores[0].transaction() as tx:
        inbox.accept(tx, [update(1, "coach", "mira 4x5 at 20")], NOW)
        due.schedule(tx, mira, privacy.ERASE, TODAY, NOW)
    with stores[0].transaction() as first:
        assert inbox.next_unhandled(first, NOW) is not None
        schedule.sweep(stores[1], NOW)
        assert records.record(first, mira.id)
    schedule.sweep(stores[1], NOW + privacy.TRY_AGAIN_AFTER)
    with stores[0].transaction() as tx:
        assert records.records(tx, [mira.id]) == {}
