"""Opening: new, older, newer and damaged databases; what a transaction keeps."""

import os
import shutil
import signal
import sqlite3
import subprocess
import sys
from pathlib import Path

import pytest
import sqlalchemy as sa
from alembic.autogenerate import compare_metadata
from alembic.migration import MigrationContext

from storage import health, inbox, notes, tables, upgrade
from storage.errors import DamagedDatabase, NewerDatabase, NoSuchDatabase
from storage.migrations import HEAD
from storage.store import Store, sqlite_path
from tests.storage.sample import NOW, message, update

AFTER_THIS = """
import sqlalchemy as sa
from alembic import op

revision = "next"
down_revision = "HEAD"


def upgrade() -> None:
    # As SQLite must for most changes: build the table anew, with others pointing at it.
    recreate = "always" if op.get_bind().dialect.name == "sqlite" else "auto"
    with op.batch_alter_table("athlete", recreate=recreate) as batch_op:
        batch_op.add_column(sa.Column("shoe_size", sa.Integer(), nullable=True))
""".replace("HEAD", HEAD)


def rows(url: str, query: str):
    engine = sa.create_engine(url)
    with engine.connect() as connection:
        found = connection.execute(sa.text(query)).all()
    engine.dispose()
    return found


@pytest.fixture
def later(tmp_path: Path) -> Path:
    """The migrations of a later version, which has one more."""
    copy = shutil.copytree(upgrade.MIGRATIONS, tmp_path / "later")
    (copy / "versions" / "next_shoes.py").write_text(AFTER_THIS)
    return copy


def test_the_migrations_make_what_the_models_say(store, url):
    engine = sa.create_engine(url)
    with engine.connect() as connection:
        difference = compare_metadata(MigrationContext.configure(connection), tables.metadata)
    engine.dispose()
    assert difference == []


def test_the_newest_revision_is_the_one_named():
    assert upgrade.revisions()[0] == HEAD


def test_an_older_database_is_copied_and_then_migrated(store, url, mira, later, tmp_path):
    store.close()
    copies = tmp_path / "copies"
    if sqlite_path(url) is None and shutil.which("pg_dump") is None:
        pytest.skip("no pg_dump here")
    assert upgrade.bring_up_to_date(url, sqlite_path(url), copies, later) == HEAD
    assert rows(url, "SELECT version_num FROM alembic_version") == [("next",)]
    assert rows(url, "SELECT handle, shoe_size FROM athlete ORDER BY handle") == [("jonas", None), ("mira", None)]
    assert rows(url, "SELECT count(*) FROM report") == [(2,)]
    (copy,) = copies.iterdir()
    if copy.suffix == ".sqlite3":
        assert rows(f"sqlite:///{copy}", "SELECT version_num FROM alembic_version") == [(HEAD,)]
        assert rows(f"sqlite:///{copy}", "SELECT count(*) FROM athlete") == [(2,)]


def test_a_migration_that_fails_leaves_everything_as_it_was(store, url, mira, later, tmp_path):
    store.close()
    script = later / "versions" / "next_shoes.py"
    script.write_text(AFTER_THIS + "    raise RuntimeError\n")
    with pytest.raises(RuntimeError):
        upgrade.bring_up_to_date(url, sqlite_path(url), None, later)
    assert rows(url, "SELECT version_num FROM alembic_version") == [(HEAD,)]
    again = Store.open(url)
    with again.transaction() as tx:
        assert health.rows(tx)["athlete"] == 2
    again.close()


def test_a_newer_database_is_refused_with_the_mend(store, url, later):
    store.close()
    upgrade.bring_up_to_date(url, sqlite_path(url), None, later)
    with pytest.raises(NewerDatabase, match="Install the newer version again"):
        Store.open(url)


def test_an_up_to_date_database_is_opened_without_a_copy(tmp_path):
    for _ in range(2):
        Store.open(f"sqlite:///{tmp_path}/a.sqlite3").close()
    assert [path.name for path in tmp_path.glob("*upgrade*")] == []


def test_a_damaged_page_is_said_at_start(tmp_path):
    path = tmp_path / "a.sqlite3"
    Store.open(f"sqlite:///{path}").close()
    content = bytearray(path.read_bytes())
    content[3 * 4096 : 4 * 4096] = b"\x99" * 4096
    path.write_bytes(content)
    with pytest.raises(DamagedDatabase, match="restore the newest backup"):
        Store.open(f"sqlite:///{path}")


def test_a_file_of_something_else_is_refused(tmp_path):
    path = tmp_path / "letter.txt"
    path.write_text("Dear athlete, " * 100)
    with pytest.raises(NoSuchDatabase):
        Store.open(f"sqlite:///{path}")
    other = tmp_path / "other.sqlite3"
    with sqlite3.connect(other) as connection:
        connection.execute("CREATE TABLE recipe (name)")
    connection.close()
    with pytest.raises(NoSuchDatabase):
        Store.open(f"sqlite:///{other}")


def test_a_transaction_that_fails_keeps_nothing(store, mira):
    def fail() -> None:
        with store.transaction() as tx:
            notes.add_note(tx, mira.id, "gone", NOW)
            raise ZeroDivisionError

    with pytest.raises(ZeroDivisionError):
        fail()
    with store.transaction() as tx:
        assert notes.notes_of(tx, mira.id) == []


def test_a_transaction_in_a_transaction_is_an_error_and_no_deadlock(memory):
    with memory.transaction(), pytest.raises(RuntimeError), memory.transaction():
        pass


def test_reading_waits_for_no_writer_and_sees_no_half_of_it(store, mira):
    with store.transaction() as tx:
        notes.add_note(tx, mira.id, "half", NOW)
        with store.reading() as view:
            assert notes.notes_of(view, mira.id) == []
    with store.reading() as view:
        assert len(notes.notes_of(view, mira.id)) == 1


def test_reading_cannot_write_on_sqlite(tmp_path):
    store = Store.open(f"sqlite:///{tmp_path}/a.sqlite3")
    with store.reading() as view, pytest.raises(sa.exc.OperationalError):
        health.beat(view, "sweep", NOW)
    store.close()


def test_the_file_is_kept_durably_and_with_its_promises(tmp_path):
    store = Store.open(f"sqlite:///{tmp_path}/a.sqlite3")
    with store.transaction() as tx:
        values = [
            tx.connection().exec_driver_sql(f"PRAGMA {name}").scalar()
            for name in ("journal_mode", "synchronous", "foreign_keys", "secure_delete")
        ]
    store.close()
    assert values == ["wal", 2, 1, 1]  # synchronous 2 is FULL


def test_a_time_without_a_zone_is_refused(memory):
    with memory.transaction() as tx, pytest.raises(sa.exc.StatementError, match="timezone"):
        health.beat(tx, "sweep", NOW.replace(tzinfo=None))


def test_what_was_committed_outlives_a_killed_process_and_nothing_else_does(tmp_path):
    url = f"sqlite:///{tmp_path}/a.sqlite3"
    script = f"""
import os, signal
from storage import inbox
from storage.store import Store
from tests.storage.sample import NOW, update

store = Store.open({url!r})
with store.transaction() as tx:
    inbox.accept(tx, [update(1)], NOW)
with store.transaction() as tx:
    inbox.accept(tx, [update(2)], NOW)
    os.kill(os.getpid(), signal.SIGKILL)
"""
    root = Path(__file__).parents[2]
    done = subprocess.run([sys.executable, "-c", script], cwd=root, env={**os.environ, "PYTHONPATH": str(root)})
    assert done.returncode == -signal.SIGKILL
    store = Store.open(url)
    with store.transaction() as tx:
        assert inbox.next_unhandled(tx, NOW).update_key == "1"
        assert health.rows(tx)["incoming"] == 1
    store.close()


def test_the_check_tells_what_waits(store, mira):
    from storage import outbox

    with store.transaction() as tx:
        inbox.accept(tx, [update(1)], NOW)
        outbox.post(tx, message("a"))
        health.beat(tx, "sweep", NOW)
        health.beat(tx, "sweep", NOW)
        later = health.look(tx, NOW.replace(hour=7))
        assert health.last_beat(tx, "sweep") == NOW
        assert health.rows(tx)["athlete"] == 2
    assert (later.unhandled, later.unsent, later.overdue, later.set_aside) == (1, 1, 0, 0)
    assert later.oldest_unhandled == later.oldest_unsent == later.beats["sweep"] == NOW.replace(hour=7) - NOW
    assert later.oldest_overdue is None
    assert later.revision == HEAD


@pytest.mark.parametrize(
    "url",
    ["", "x", "sqlite:", "sqlite:/x", "mysql://me:secret@x", "ftp://secret", "postgresql://a:secret@x:port/y"],
)
def test_a_url_that_is_none_of_ours_is_a_sentence_without_the_url(url):
    with pytest.raises(NoSuchDatabase, match="sqlite:///PATH or postgresql://") as caught:
        Store.open(url)
    assert "secret" not in str(caught.value)


def test_a_folder_in_place_of_a_file_is_named_and_not_called_damaged(tmp_path):
    with pytest.raises(NoSuchDatabase, match=f"{tmp_path} cannot be opened"):
        Store.open(f"sqlite:///{tmp_path}")
