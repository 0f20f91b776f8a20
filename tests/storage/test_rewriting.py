"""The bytes of who was erased leave the files, whatever comes between."""

from datetime import timedelta

import pytest

from bot import schedule
from storage import database, erasure, notes, rewriting, vacuum
from storage.database import run
from storage.errors import StorageError
from storage.loading import load_roster
from storage.persons import athletes
from storage.store import Store
from tests.storage.sample import NOW, small_roster
from tests.storage.test_erasure import every_byte

MARK = "quillback"


@pytest.fixture
def full(url, monkeypatch):
    """A store with an athlete who bears the mark, and their number."""
    monkeypatch.setattr(database, "BUSY_TIMEOUT_S", 0.1)
    monkeypatch.setattr(vacuum, "READERS_S", 0.1)
    store = Store.open(url)
    with store.transaction() as tx:
        marked = load_roster(tx, small_roster(MARK, "jonas"), NOW).athlete_ids[MARK]
        notes.add_note(tx, marked, f"{MARK} rests", NOW)
    yield store, marked
    store.close()


def traces(store):
    return MARK.encode() in every_byte(store).lower()


def test_a_process_that_dies_after_the_erasure_leaves_the_rewriting_to_the_next_sweep(full):
    store, marked = full
    with store.transaction() as tx:
        erasure.erase(tx, marked, NOW)
        notes.add_note(tx, marked + 1, "fine", NOW)  # of somebody else's: pages that are written again
    store.close()
    again = Store.open(store.url)
    schedule.sweep(again, NOW + timedelta(hours=1))
    assert not traces(again)
    with again.reading() as tx:
        assert rewriting.owed_since(tx) is None
    again.close()


def test_who_reads_meanwhile_puts_it_off_for_some_minutes(full):
    store, marked = full
    with store.reading() as tx:
        run(tx, athletes.select()).all()
        with pytest.raises(StorageError):
            erasure.erase_athlete(store, marked, NOW)
    early, late = NOW + timedelta(minutes=9), NOW + rewriting.AGAIN_AFTER
    with store.reading() as tx:
        assert rewriting.owed_since(tx) == NOW
        assert not rewriting.is_time(tx, early)
    schedule.sweep(store, late)
    assert not traces(store)
    with store.reading() as tx:
        assert not rewriting.is_time(tx, late)


@pytest.mark.parametrize("later", [timedelta(), timedelta(hours=-1), timedelta(minutes=1)], ids=str)
def test_each_erasure_is_owed_one_wherever_the_clock_was_set(full, later):
    store, marked = full
    erasure.erase_athlete(store, marked, NOW)
    with store.transaction() as tx:
        erasure.erase(tx, marked + 1, NOW + later)
        assert rewriting.is_time(tx, NOW + later)
    schedule.sweep(store, NOW + later)
    with store.reading() as tx:
        assert not rewriting.is_time(tx, NOW + later)
