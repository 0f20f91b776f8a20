"""A number is given once, also by a database that takes another's place."""

from datetime import timedelta

import pytest
from alembic import command

from storage import backup, erasure, health, inbox, outbox, upgrade
from storage.database import writing_engine
from storage.errors import BackupFailed
from storage.loading import load_roster
from storage.store import Store, sqlite_path
from tests.storage.sample import NOW, message, small_roster, update


@pytest.mark.parametrize("older", [True, False])
def test_after_restoring_no_number_is_given_again(tmp_path, older):
    store = Store.open(f"sqlite:///{tmp_path}/slowrung.sqlite3")
    with store.transaction() as tx:
        load_roster(tx, small_roster("mira"), NOW)
    copy = backup.backup(store.url, tmp_path / "copies", NOW)
    with store.transaction() as tx:
        given = [outbox.post(tx, message(f"{n}")) for n in range(3)]
    if not older:
        copy = backup.backup(store.url, tmp_path / "copies", NOW)
        store.close()
        store.path.unlink()
    store.close()
    erasure.restore_copy(copy, store.path, NOW)
    again = Store.open(store.url)
    with again.transaction() as tx:
        assert outbox.newest_id(tx) == (0 if older else 3)
        assert outbox.post(tx, message("again")) == max(given) + 1
        assert inbox.accept(tx, [update(1)], NOW) == 1
    again.close()


def test_a_copy_of_an_older_version_that_is_put_back_stays_of_it(tmp_path):
    url, old = f"sqlite:///{tmp_path}/slowrung.sqlite3", f"sqlite:///{tmp_path}/slowrung-old.sqlite3"
    Store.open(url).close()
    engine = writing_engine(old, foreign_keys=False)
    with engine.begin() as connection:
        command.upgrade(upgrade.config(connection), "0004")  # numbers were not given once yet
    engine.dispose()
    erasure.restore_copy(sqlite_path(old), sqlite_path(url), NOW)
    engine = writing_engine(url)
    with engine.connect() as connection:
        assert upgrade.current_revision(connection) == "0004"
    engine.dispose()
    Store.open(url).close()


def test_no_copy_is_put_back_under_a_service_that_runs(tmp_path):
    store = Store.open(f"sqlite:///{tmp_path}/slowrung.sqlite3")
    copy = backup.backup(store.url, tmp_path / "copies", NOW)
    with store.transaction() as tx:
        health.beat(tx, "sweep", NOW)
    store.close()
    before = store.path.read_bytes()
    with pytest.raises(BackupFailed, match="at work"):
        erasure.restore_copy(copy, store.path, NOW + timedelta(seconds=30))
    assert store.path.read_bytes() == before
    erasure.restore_copy(copy, store.path, NOW + timedelta(seconds=61))
