"""Records: whole, in a fixed number of queries, and never out of date."""

import pytest
import sqlalchemy as sa

from planner import facts as f
from storage import facts, records
from storage.persons import update_athlete
from storage.record_cache import RecordCache
from storage.rules import set_coach_rule
from tests.storage.sample import EVERY_FACT, NOW, TODAY


def queries(store, ids, fresh=True):
    """The statements that reading these records takes, from an empty cache if `fresh`."""
    if fresh:
        store.forget_records()
    seen = []
    engine = store._engine
    listen = lambda *given: seen.append(given[2])  # noqa: E731
    sa.event.listen(engine, "before_cursor_execute", listen)
    with store.transaction() as tx:
        records.records(tx, ids)
    sa.event.remove(engine, "before_cursor_execute", listen)
    return [statement for statement in seen if statement.startswith("SELECT")]


def add_all(store, athlete_id):
    with store.transaction() as tx:
        for fact in EVERY_FACT:
            facts.add(tx, athlete_id, fact, "athlete", NOW, 1)


def test_two_athletes_take_as_many_queries_as_one(store, mira):
    add_all(store, mira.id)
    one = queries(store, [mira.id])
    assert len(queries(store, [mira.id, mira.id + 1])) == len(one)
    # 13 kinds of rows and the coach's rules; on PostgreSQL a last look whether somebody wrote meanwhile.
    assert len(one) == (15 if store.path is None else 14)


def test_an_unchanged_athlete_is_not_read_again(store, mira):
    with store.transaction() as tx:
        first = records.record(tx, mira.id)
    with store.transaction() as tx:
        assert records.record(tx, mira.id) is first


def test_every_kind_of_fact_renews_the_record(store, mira):
    for fact in EVERY_FACT:
        with store.transaction() as tx:
            before = records.record(tx, mira.id)
        with store.transaction() as tx:
            facts.add(tx, mira.id, fact, "athlete", NOW, 1)
        with store.transaction() as tx:
            assert records.record(tx, mira.id) != before, fact


def test_a_record_read_in_a_transaction_that_was_rolled_back_is_not_kept(store, mira):
    try:
        with store.transaction() as tx:
            facts.add(tx, mira.id, f.Bodyweight(TODAY, 99.0), "athlete", NOW, 1)
            assert records.record(tx, mira.id).bodyweights
            raise RuntimeError
    except RuntimeError:
        pass
    with store.transaction() as tx:
        assert records.record(tx, mira.id).bodyweights == ()
        facts.add(tx, mira.id, f.Bodyweight(TODAY, 62.0), "athlete", NOW, 1)
        assert records.record(tx, mira.id).bodyweights[0].kg == 62.0


def test_the_nearest_rule_wins(store, mira):
    with store.transaction() as tx:
        for rule in ("a", "b", "c"):
            set_coach_rule(tx, mira.coach_id, rule, 1.0)
        update_athlete(tx, mira.id, {"rules": {"b": 2.0, "c": 2.0}})
        facts.add(tx, mira.id, f.Order("set_rule", TODAY, rule="c", value=3.0), "coach", NOW, 1)
        assert dict(records.record(tx, mira.id).athlete.rules) == {"a": 1.0, "b": 2.0, "c": 3.0}
        set_coach_rule(tx, mira.coach_id, "a", None)
        assert dict(records.record(tx, mira.id).athlete.rules) == {"b": 2.0, "c": 3.0}


def test_the_cache_lets_go_of_the_longest_unused(memory_mira):
    memory, mira = memory_mira
    add_all(memory, mira)
    with memory.transaction() as tx:
        record = records.record(tx, mira)
    cache = RecordCache(limit_sets=20)  # this record has 7 sets
    for athlete_id in (1, 2):
        cache.put(athlete_id, (0, 0), record)
    cache.get(1, (0, 0))
    cache.put(3, (0, 0), record)
    assert [cache.get(athlete_id, (0, 0)) is not None for athlete_id in (1, 2, 3)] == [True, False, True]
    assert cache.get(1, (0, 1)) is None


def test_what_is_read_on_top_of_an_older_record_is_what_is_read_anew(store, mira):
    """Reports and plans that were added, corrected, undone and brought back since the record was kept."""
    session = EVERY_FACT[0]
    with store.transaction() as tx:
        kept = [facts.add(tx, mira.id, session, "athlete", NOW, 1) for _ in range(3)]
    with store.transaction() as tx:
        records.record(tx, mira.id)
    steps = (
        lambda tx: facts.withdraw(tx, "session", kept[0], NOW),
        lambda tx: facts.replace_session(tx, kept[1], session, NOW, 7),
        lambda tx: facts.withdraw_caused_by(tx, mira.id, 7, NOW),
        lambda tx: facts.add(tx, mira.id, EVERY_FACT[-1], "bot", NOW, None),
        lambda tx: facts.add(tx, mira.id, session, "athlete", NOW, 8),
    )
    for step in steps:
        with store.transaction() as tx:
            step(tx)
            inside = records.record(tx, mira.id)
        with store.transaction() as tx:
            on_top = records.record(tx, mira.id)
        store.forget_records()
        with store.transaction() as tx:
            assert records.record(tx, mira.id) == on_top == inside


def test_of_a_record_known_before_only_what_is_new_is_read(store, mira):
    """Its athlete, which facts stand, those that are new, and the coach's rules; on PostgreSQL a last look."""
    add_all(store, mira.id)
    with store.transaction() as tx:
        records.record(tx, mira.id)
    with store.transaction() as tx:
        facts.add_sent(tx, mira.id, EVERY_FACT[-1], NOW, None, ())
        facts.withdraw(tx, "pain", 1, NOW)
    asked = queries(store, [mira.id], fresh=False)
    of_clip = 1  # which can be another by now
    assert len(asked) == 4 + of_clip + (store.path is None)
    with store.transaction() as tx:
        on_top = records.record(tx, mira.id)
    assert read_anew(store, mira.id) == on_top
    assert (len(on_top.sent), on_top.pain) == (2, ())


def test_a_clip_that_was_looked_at_since_is_seen_to_be(store, mira):
    with store.transaction() as tx:
        clip = facts.add(tx, mira.id, f.Clip(TODAY, "pull_up", None, seen_by_coach=False), "athlete", NOW, 1)
        assert not records.record(tx, mira.id).clips[0].seen_by_coach
    with store.transaction() as tx:
        facts.mark_clip_seen(tx, clip)
    with store.transaction() as tx:
        assert records.record(tx, mira.id).clips[0].seen_by_coach


def test_an_id_that_a_rollback_freed_brings_the_new_report(store, mira):
    def lost() -> None:
        with store.transaction() as tx:
            facts.add(tx, mira.id, f.Session(TODAY, (f.WorkSet("pull_up", 1),)), "athlete", NOW, 1)
            assert records.record(tx, mira.id).sessions[-1].sets[0].reps == 1
            raise ZeroDivisionError

    with store.transaction() as tx:
        records.record(tx, mira.id)
    with pytest.raises(ZeroDivisionError):
        lost()
    with store.transaction() as tx:
        facts.add(tx, mira.id, f.Session(TODAY, (f.WorkSet("pull_up", 9),)), "athlete", NOW, 1)
        assert records.record(tx, mira.id).sessions[-1].sets[0].reps == 9


def test_two_changed_athletes_take_as_many_queries_as_one(store, mira):
    def changed(*ids):
        with store.transaction() as tx:
            records.records(tx, [mira.id, mira.id + 1])
        for athlete_id in ids:
            with store.transaction() as tx:
                for fact in EVERY_FACT:
                    facts.add(tx, athlete_id, fact, "athlete", NOW, 1)
        return len(queries(store, [mira.id, mira.id + 1], fresh=False))

    assert changed(mira.id) == changed(mira.id, mira.id + 1)


def read_anew(store, athlete_id):
    store.forget_records()
    with store.reading() as tx:
        return records.record(tx, athlete_id)


@pytest.mark.parametrize("fact", EVERY_FACT, ids=lambda fact: type(fact).__name__)
def test_a_record_mended_within_a_transaction_is_as_if_read_anew(store, mira, fact):
    add_all(store, mira.id)
    with store.transaction() as tx:
        records.record(tx, mira.id)
        added = facts.add(tx, mira.id, fact, "coach", NOW, 2)
        with_it = records.record(tx, mira.id)
        facts.withdraw(tx, facts.BY_FACT[type(fact)].kind, added, NOW)
        without_it = records.record(tx, mira.id)
        facts.add(tx, mira.id, fact, "coach", NOW, 3)
        last = records.record(tx, mira.id)
    assert with_it != without_it
    assert read_anew(store, mira.id) == last


def test_what_was_read_in_a_transaction_serves_the_next(store, mira):
    with store.transaction() as tx:
        records.record(tx, mira.id)
        facts.add(tx, mira.id, EVERY_FACT[0], "athlete", NOW, 1)
        read = records.record(tx, mira.id)
    with store.reading() as tx:
        assert records.record(tx, mira.id) is read


def test_what_was_rolled_back_in_part_is_not_handed_on(store, mira):
    with store.transaction() as tx:
        before = records.record(tx, mira.id)
        part = tx.begin_nested()
        facts.add(tx, mira.id, EVERY_FACT[0], "athlete", NOW, 1)
        assert records.record(tx, mira.id) != before
        part.rollback()
        assert records.record(tx, mira.id) == before
    assert read_anew(store, mira.id) == before


def test_a_setting_changed_beside_a_fact_is_seen(store, mira):
    with store.transaction() as tx:
        records.record(tx, mira.id)
        facts.add(tx, mira.id, EVERY_FACT[0], "athlete", NOW, 1)
        update_athlete(tx, mira.id, {"plate_step": 0.5})
        assert records.record(tx, mira.id).athlete.plate_step == 0.5
