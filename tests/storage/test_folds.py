"""A fold left by one message is the next one's, where nothing was told since."""

from datetime import timedelta

from storage import facts, records
from storage.record_cache import folded, leave
from tests.storage.sample import EVERY_FACT, NOW, TODAY


def left(store, athlete_id, day=TODAY):
    with store.transaction() as tx:
        fold = folded(tx, athlete_id, records.record(tx, athlete_id), day)
        leave(tx, athlete_id, fold)
    return fold


def test_the_same_record_on_the_same_day_is_folded_once(store, mira):
    assert left(store, mira.id) is left(store, mira.id)


def test_another_day_or_another_fact_is_folded_anew(store, mira):
    first = left(store, mira.id)
    assert left(store, mira.id, TODAY + timedelta(days=1)) is not first
    first = left(store, mira.id)
    with store.transaction() as tx:
        facts.add(tx, mira.id, EVERY_FACT[0], "athlete", NOW, 1)
    assert left(store, mira.id) is not first


def test_what_was_rolled_back_is_in_no_fold(store, mira):
    before = left(store, mira.id)
    try:
        with store.transaction() as tx:
            facts.add(tx, mira.id, EVERY_FACT[0], "athlete", NOW, 1)
            leave(tx, mira.id, folded(tx, mira.id, records.record(tx, mira.id), TODAY))
            raise ZeroDivisionError
    except ZeroDivisionError:
        pass
    assert left(store, mira.id).record == before.record


def test_a_fold_is_lent_to_one_at_a_time(store, mira):
    left(store, mira.id)
    with store.reading() as tx:
        record = records.record(tx, mira.id)
        assert folded(tx, mira.id, record, TODAY) is not folded(tx, mira.id, record, TODAY)


def test_no_fold_outlives_the_records(store, mira):
    first = left(store, mira.id)
    store.forget_records()
    assert left(store, mira.id) is not first
