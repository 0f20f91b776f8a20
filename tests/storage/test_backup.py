"""Copies: whole, kept in number, and put back."""

import os
import shutil
import sqlite3
import subprocess
from contextlib import closing
from datetime import timedelta

import pytest

from storage import backup, notes
from storage.errors import BackupFailed
from storage.store import Store, sqlite_path
from tests.storage.sample import NOW


def notes_in(url, athlete_id):
    store = Store.open(url)
    with store.transaction() as tx:
        found = [row.text for row in notes.notes_of(tx, athlete_id)]
    store.close()
    return found


@pytest.fixture
def file_store(tmp_path):
    store = Store.open(f"sqlite:///{tmp_path}/slowrung.sqlite3")
    yield store
    store.close()


def add_athlete(store):
    from storage.loading import load_roster
    from tests.storage.sample import small_roster

    with store.transaction() as tx:
        return load_roster(tx, small_roster("mira"), NOW).athlete_ids["mira"]


def test_a_copy_made_while_the_bot_runs_brings_everything_back(file_store, tmp_path):
    mira = add_athlete(file_store)
    with file_store.transaction() as tx:
        notes.add_note(tx, mira, "before", NOW)
    copy = backup.backup(file_store.url, tmp_path / "copies", NOW)
    with file_store.transaction() as tx:
        notes.add_note(tx, mira, "after", NOW)
    file_store.close()
    former = backup.restore(copy, file_store.path)
    assert notes_in(file_store.url, mira) == ["before"]
    assert notes_in(f"sqlite:///{former}", mira) == ["before", "after"]


def test_a_copy_has_only_its_owner_as_a_reader(file_store, tmp_path):
    copy = backup.backup(file_store.url, tmp_path / "copies", NOW)
    assert copy.name == "slowrung-20270104T063000Z.sqlite3"
    assert copy.stat().st_mode & 0o077 == 0


def test_the_oldest_copies_go_and_those_of_upgrades_stay(file_store, tmp_path):
    copies = tmp_path / "copies"
    copies.mkdir()
    (copies / "slowrung-before-upgrade-0001.sqlite3").touch()
    for day in range(5):
        backup.backup(file_store.url, copies, NOW + timedelta(days=day), keep=3)
    assert [path.name for path in backup.copies(copies)] == [
        "slowrung-20270106T063000Z.sqlite3",
        "slowrung-20270107T063000Z.sqlite3",
        "slowrung-20270108T063000Z.sqlite3",
        "slowrung-before-upgrade-0001.sqlite3",
    ]


def test_two_copies_of_one_second_have_two_names(file_store, tmp_path):
    made = {backup.backup(file_store.url, tmp_path / "copies", NOW) for _ in range(2)}
    assert len(made) == 2


def test_a_damaged_copy_is_not_put_back(file_store, tmp_path):
    mira = add_athlete(file_store)
    copy = backup.backup(file_store.url, tmp_path / "copies", NOW)
    file_store.close()
    content = bytearray(copy.read_bytes())
    content[3 * 4096 : 4 * 4096] = b"\x99" * 4096
    copy.write_bytes(content)
    with pytest.raises(BackupFailed):
        backup.restore(copy, file_store.path)
    assert notes_in(file_store.url, mira) == []
    assert not list(tmp_path.glob("*.restoring*"))


def test_a_database_in_memory_has_no_backup(tmp_path):
    with pytest.raises(BackupFailed, match="Name a file"):
        backup.backup("sqlite://", tmp_path, NOW)


def test_postgresql_is_dumped_and_the_dump_can_be_listed(postgres_url, tmp_path):
    if shutil.which("pg_dump") is None:
        pytest.skip("no pg_dump here")
    Store.open(postgres_url).close()
    dump = backup.backup(postgres_url, tmp_path, NOW)
    listed = subprocess.run(["pg_restore", "--list", dump], capture_output=True, text=True, check=True, env=os.environ)
    assert "TABLE public athlete" in listed.stdout
    assert sqlite_path(postgres_url) is None


def test_other_peoples_files_in_the_folder_are_no_copies(file_store, tmp_path):
    folder = tmp_path / "copies"
    copy = backup.backup(file_store.url, folder, NOW)
    before = backup.copy_file(file_store.path, folder / "slowrung-before-upgrade-0001.sqlite3")
    for name in ("wiki.dump", "photos.sqlite3", "slowrung.sqlite3"):
        (folder / name).touch()
    assert set(backup.copies(folder)) == {copy, before}


def test_where_there_is_no_database_nothing_is_copied_and_none_is_made(tmp_path):
    with pytest.raises(BackupFailed, match="There is no database"):
        backup.backup(f"sqlite:///{tmp_path}/none.sqlite3", tmp_path / "copies", NOW)
    assert list(tmp_path.iterdir()) == []


@pytest.mark.parametrize("table", ["", "CREATE TABLE theirs (id INTEGER)"])
def test_a_file_that_is_no_database_of_ours_is_not_put_back(file_store, tmp_path, table):
    mira = add_athlete(file_store)
    with file_store.transaction() as tx:
        notes.add_note(tx, mira, "kept", NOW)
    file_store.close()
    other = tmp_path / "other.sqlite3"
    with closing(sqlite3.connect(other)) as connection:
        connection.execute(table)
        connection.commit()
    other.touch()
    with pytest.raises(BackupFailed, match="no database of this program"):
        backup.restore(other, file_store.path)
    assert notes_in(file_store.url, mira) == ["kept"]
