"""A database of every version that was ever released comes forward with all its rows, or stays as it was."""

import os
import shutil
import signal
import subprocess
import sys
from contextlib import closing
from pathlib import Path

import pytest
import sqlalchemy as sa
from alembic import command
from alembic.autogenerate import compare_metadata
from alembic.migration import MigrationContext

from storage import erasure, inbox, moving, tables, upgrade
from storage.database import run, writing_engine
from storage.errors import BackupFailed
from storage.migrations import HEAD
from storage.store import Store, sqlite_path
from tests.storage.conftest import sql, url_of
from tests.storage.filled import MOMENT, fill

ROOT = Path(__file__).parents[2]
REVISIONS = upgrade.revisions()[::-1]


@pytest.fixture(params=["sqlite", "postgresql"])
def bare(request, tmp_path):
    """A database without any table."""
    if request.param == "sqlite":
        yield f"sqlite:///{tmp_path}/slowrung.sqlite3"
        return
    request.getfixturevalue("postgres_template")  # skips, or fails, where there is no server
    name = f"slowrung_bare_{os.getpid()}"
    sql(f"DROP DATABASE IF EXISTS {name} WITH (FORCE)")
    sql(f"CREATE DATABASE {name}")
    yield url_of(name)
    sql(f"DROP DATABASE {name} WITH (FORCE)")


def as_of(url, revision):
    """The database as that version made it, with rows in every table it had; its rows come back."""
    engine = writing_engine(url, foreign_keys=False)
    with engine.begin() as connection:
        command.upgrade(upgrade.config(connection), revision)
        fill(connection, reflected(connection))
    engine.dispose()
    return rows_of(url)


def reflected(connection):
    metadata = sa.MetaData()
    metadata.reflect(connection)
    return metadata


def rows_of(url):
    """Every value by table, row and column, as the database's own tables describe it."""
    engine = sa.create_engine(url)
    with engine.connect() as connection:
        found = {
            table.name: [
                {name: moving.canonical(value) for name, value in row._mapping.items()}
                for row in connection.execute(sa.select(table).order_by(*table.primary_key.columns))
            ]
            for table in reflected(connection).sorted_tables
        }
    engine.dispose()
    return found


def revision_of(url):
    return rows_of(url)["alembic_version"][0]["version_num"].removeprefix("text ")


def needs_pg_dump(url):
    if sqlite_path(url) is None and shutil.which("pg_dump") is None:
        pytest.skip("no pg_dump here")


@pytest.mark.parametrize("revision", REVISIONS)
def test_a_database_of_each_version_comes_forward_with_every_row(bare, revision, tmp_path):
    needs_pg_dump(bare)
    before = as_of(bare, revision)
    assert all(len(rows) == 3 for name, rows in before.items() if name != "alembic_version")

    with closing(Store.open(bare, tmp_path / "copies")):
        pass

    after = rows_of(bare)
    assert revision_of(bare) == HEAD
    for name, rows in before.items():
        if name != "alembic_version":
            kept = [{column: row[column] for column in old} for row, old in zip(after[name], rows, strict=True)]
            assert kept == rows, name
    engine = sa.create_engine(bare)
    with engine.connect() as connection:
        assert compare_metadata(MigrationContext.configure(connection), tables.metadata) == []
        if sqlite_path(bare) is not None:
            # No comparison of theirs sees either: where numbers are given once, and what partial indexes cover.
            last = dict(connection.execute(sa.text("SELECT name, seq FROM sqlite_sequence")).all())
            assert {name: last[name] for name in ONCE} == dict.fromkeys(ONCE, 3)
            assert partial_indexes(connection) == partial_indexes_of_the_models()
    engine.dispose()


ONCE = ("athlete", "due", "incoming", "outgoing", "question")


def partial_indexes(connection):
    """What SQLite was told of the indexes that cover a part of their table."""
    found = connection.execute(sa.text("SELECT sql FROM sqlite_master WHERE type = 'index' AND sql LIKE '% WHERE %'"))
    return sorted(" ".join(row.sql.split()).replace('"', "") for row in found)


def partial_indexes_of_the_models():
    engine = writing_engine("sqlite://")
    with engine.begin() as connection:
        tables.metadata.create_all(connection)
        found = partial_indexes(connection)
    engine.dispose()
    assert len(found) == 10
    return found


@pytest.mark.parametrize("revision", [one for one in REVISIONS if one != HEAD])
def test_the_copy_made_before_is_the_old_version_whole(bare, revision, tmp_path):
    needs_pg_dump(bare)
    before = as_of(bare, revision)
    Store.open(bare, tmp_path / "copies").close()
    (copy,) = (tmp_path / "copies").iterdir()
    assert f"before-upgrade-{revision}" in copy.name
    assert copy.stat().st_mode & 0o077 == 0
    if sqlite_path(bare) is not None:
        assert rows_of(f"sqlite:///{copy}") == before
        return
    back = f"slowrung_back_{os.getpid()}"
    sql(f"CREATE DATABASE {back}")
    try:
        address = sa.make_url(url_of(back)).set(drivername="postgresql").render_as_string(hide_password=False)
        subprocess.run(["pg_restore", "--no-owner", f"--dbname={address}", copy], check=True, capture_output=True)
        assert rows_of(url_of(back)) == before
    finally:
        sql(f"DROP DATABASE {back} WITH (FORCE)")


@pytest.mark.parametrize("revision", [one for one in REVISIONS if one != HEAD])
def test_without_a_copy_nothing_is_migrated(bare, revision, tmp_path):
    needs_pg_dump(bare)
    before = as_of(bare, revision)
    (tmp_path / "in the way").touch()
    with pytest.raises(BackupFailed):
        Store.open(bare, tmp_path / "in the way")
    assert rows_of(bare) == before


@pytest.mark.parametrize("revision", [None, REVISIONS[0]])
def test_replicas_that_start_together_migrate_once_and_all_of_them_open(bare, revision, tmp_path):
    needs_pg_dump(bare)
    if revision is not None:
        as_of(bare, revision)
    script = f"from pathlib import Path; from storage.store import Store; Store.open({bare!r}, Path({str(tmp_path)!r}))"
    own = [sys.executable, "-c", script]
    environment = {**os.environ, "PYTHONPATH": str(ROOT)}
    running = [subprocess.Popen(own, cwd=ROOT, env=environment, stderr=subprocess.PIPE) for _ in range(4)]
    assert [one.communicate()[1].decode() for one in running] == [""] * 4
    assert len(list(tmp_path.glob("*before-upgrade*"))) == (revision is not None)
    assert rows_of(bare)["alembic_version"] == [{"version_num": f"text {HEAD}"}]
    if revision is not None:
        assert len(rows_of(bare)["athlete"]) == 3


KILLED = """
import os, signal
import sqlalchemy as sa
from alembic import op

revision = "next"
down_revision = "HEAD"


def upgrade() -> None:
    recreate = "always" if op.get_bind().dialect.name == "sqlite" else "auto"
    with op.batch_alter_table("athlete", recreate=recreate) as batch_op:
        batch_op.add_column(sa.Column("shoe_size", sa.Integer(), nullable=True))
    op.execute("DELETE FROM coach_note")
    os.kill(os.getpid(), signal.SIGKILL)
"""


def test_a_process_killed_in_the_middle_of_a_migration_leaves_the_old_version(bare, tmp_path):
    before = as_of(bare, HEAD)
    later = shutil.copytree(upgrade.MIGRATIONS, tmp_path / "later")
    (later / "versions" / "next_killed.py").write_text(KILLED.replace("HEAD", HEAD))
    script = f"""
from pathlib import Path
from storage import upgrade
from storage.store import sqlite_path
upgrade.bring_up_to_date({bare!r}, sqlite_path({bare!r}), Path({str(tmp_path / "copies")!r}), Path({str(later)!r}))
"""
    done = subprocess.run([sys.executable, "-c", script], cwd=ROOT, env={**os.environ, "PYTHONPATH": str(ROOT)})
    assert done.returncode == -signal.SIGKILL
    assert rows_of(bare) == before
    with closing(Store.open(bare)) as store, store.transaction() as tx:
        assert len(tx.connection().execute(sa.text("SELECT id FROM coach_note")).all()) == 3


def test_old_notes_without_an_owner_get_theirs_and_go_with_them(bare, tmp_path):
    needs_pg_dump(bare)
    as_of(bare, "0006")
    note = {"channel": "import", "athlete_id": None, "coach_id": None, "address": "quillback",
            "sender": "import:quillback", "text": "quillback 5x3"}  # fmt: skip
    engine = sa.create_engine(bare)
    with engine.begin() as connection:
        known = reflected(connection).tables
        rows, weights = known["incoming"], known["bodyweight_fact"]
        connection.execute(sa.update(rows).where(rows.c.id != 3).values(note))
        # The first is of an athlete who is there; the facts of the second were erased.
        connection.execute(sa.update(weights).where(weights.c.id == 1).values(cause=1))
        for name in ("tombstone", "heartbeat"):  # erasing makes rows of these, with numbers from 1
            connection.execute(sa.delete(known[name]))
    engine.dispose()

    with closing(Store.open(bare, tmp_path / "copies")) as store:
        with store.reading() as tx:
            rows = run(tx, sa.select(inbox.incoming).order_by(inbox.incoming.c.id)).all()
        assert [(row.id, row.athlete_id) for row in rows] == [(1, 1), (3, 3)]
        assert rows[0].sender == "athlete:1"
        erasure.erase_athlete(store, 1, MOMENT)
    assert "quillback" not in repr(rows_of(bare))


def test_every_revision_is_in_one_line():
    assert len(set(REVISIONS)) == len(REVISIONS) == len(list((upgrade.MIGRATIONS / "versions").glob("0*.py")))
