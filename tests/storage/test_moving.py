"""Everything moves, or nothing; and what differs is noticed."""

from contextlib import closing, contextmanager
from datetime import UTC, datetime, time, timedelta, timezone

import pytest
import sqlalchemy as sa
from typer.testing import CliRunner

from bot.commands import app
from storage import health, moving, notes, outbox, persons, tables, upgrade
from storage.database import writing_engine
from storage.errors import NoSuchDatabase
from storage.loading import load_roster
from storage.store import Store, sqlite_path
from tests.storage.filled import fill
from tests.storage.sample import NOW, message, small_roster

LATER = NOW + timedelta(days=30)


@contextmanager
def begun(url):
    engine = writing_engine(url)
    with engine.begin() as connection:
        yield connection
    engine.dispose()


def filled(url):
    """A database with rows in every table."""
    Store.open(url).close()
    with begun(url) as connection:
        fill(connection, tables.metadata)
    return url


@pytest.fixture
def source(tmp_path):
    return filled(f"sqlite:///{tmp_path}/old.sqlite3")


@pytest.fixture(params=["sqlite", "postgresql"])
def target(request, tmp_path):
    """An empty database: a file that is not there yet, or tables without rows on the server."""
    if request.param == "postgresql":
        return request.getfixturevalue("postgres_url")
    return f"sqlite:///{tmp_path}/new.sqlite3"


def rows_in(url):
    with begun(url) as connection:
        return {
            table.name: [dict(row._mapping) for row in connection.execute(sa.select(table).order_by(table.c.id))]
            for table in tables.metadata.sorted_tables
        }


def spoil(url, table="coach_note"):
    """Let the database change what is put into it: its own doing, which no code of ours sees."""
    Store.open(url).close()
    with begun(url) as connection:
        if connection.dialect.name == "sqlite":
            connection.exec_driver_sql(
                f"CREATE TRIGGER spoil AFTER INSERT ON {table} WHEN NEW.id = 2 "
                f"BEGIN UPDATE {table} SET text = text || '.' WHERE id = NEW.id; END"
            )
        else:
            connection.exec_driver_sql(
                "CREATE FUNCTION spoil() RETURNS trigger LANGUAGE plpgsql AS "
                "$$ BEGIN IF NEW.id = 2 THEN NEW.text := NEW.text || '.'; END IF; RETURN NEW; END $$"
            )
            connection.exec_driver_sql(
                f"CREATE TRIGGER spoil BEFORE INSERT ON {table} FOR EACH ROW EXECUTE FUNCTION spoil()"
            )


def test_every_row_of_every_table_is_there_afterwards(source, target):
    compared = moving.move(source, target, LATER)
    assert {one.table for one in compared} == set(tables.metadata.tables)
    assert all(one.same and one.rows_to == 3 for one in compared)
    assert rows_in(target) == rows_in(source)


def test_the_way_back_from_postgresql_brings_the_same(source, postgres_url, tmp_path):
    moving.move(source, postgres_url, LATER)
    back = f"sqlite:///{tmp_path}/back.sqlite3"
    moving.move(postgres_url, back, LATER)
    assert rows_in(back) == rows_in(source)


def test_new_rows_get_ids_beyond_those_that_came(source, target):
    moving.move(source, target, LATER)
    with closing(Store.open(target)) as store, store.transaction() as tx:
        assert notes.add_note(tx, 1, "new", NOW) == 4
        assert persons.add_coach(tx, persons.Coach(name="Rui", timezone="Europe/Lisbon")) == 4


def test_numbers_of_rows_that_are_gone_are_not_given_again_after_a_move(source, target, tmp_path):
    with begun(source) as connection:
        for name in ("outgoing", "question", "incoming"):
            connection.execute(sa.delete(tables.metadata.tables[name]).where(sa.text("id > 1")))
    moving.move(source, target, LATER)
    with closing(Store.open(target)) as store, store.transaction() as tx:
        assert outbox.post(tx, message("new")) == 4
    if sqlite_path(target) is None:
        with begun(target) as connection:
            connection.execute(sa.delete(tables.metadata.tables["outgoing"]).where(sa.text("id > 1")))
        back = f"sqlite:///{tmp_path}/back.sqlite3"
        moving.move(target, back, LATER)
        with closing(Store.open(back)) as store, store.transaction() as tx:
            assert outbox.post(tx, message("newer")) == 5


def test_a_copy_that_differs_is_noticed_and_nothing_is_kept(source, target):
    spoil(target)
    with pytest.raises(moving.CopyDiffers, match="differs in: coach_note") as raised:
        moving.move(source, target, LATER)
    assert [one.table for one in raised.value.compared if not one.same] == ["coach_note"]
    assert not any(rows_in(target).values())


def test_a_row_that_does_not_arrive_is_noticed(source, target, monkeypatch):
    real = moving._copy

    def lossy(there, here, table):
        real(there, here, table)
        if table.name == "coach_note":
            here.execute(sa.delete(table).where(table.c.id == 3))

    monkeypatch.setattr(moving, "_copy", lossy)
    with pytest.raises(moving.CopyDiffers) as raised:
        moving.move(source, target, LATER)
    assert [(one.rows_from, one.rows_to) for one in raised.value.compared if not one.same] == [(3, 2)]
    assert not any(rows_in(target).values())


def test_a_row_that_the_target_refuses_leaves_it_empty(source, postgres_url):
    with begun(source) as connection:
        connection.exec_driver_sql("UPDATE coach_note SET text = 'null' || char(0) WHERE id = 3")
    with pytest.raises(moving.NotMoved, match="Nothing was moved"):
        moving.move(source, postgres_url, LATER)
    assert not any(rows_in(postgres_url).values())


def test_the_source_is_as_it_was(source, target):
    before = rows_in(source)
    content = sqlite_path(source).read_bytes()
    moving.move(source, target, LATER)
    assert sqlite_path(source).read_bytes() == content
    assert rows_in(source) == before


def test_a_target_with_rows_is_refused(source, target):
    with closing(Store.open(target)) as store, store.transaction() as tx:
        load_roster(tx, small_roster("mira"), NOW)
    with pytest.raises(moving.NotMoved, match=r"not empty.*coach"):
        moving.move(source, target, LATER)
    assert [row["name"] for row in rows_in(target)["coach"]] == ["Inês"]


def test_a_service_that_still_runs_is_stopped_first(source, tmp_path):
    with begun(source) as connection:
        connection.execute(
            sa.update(health.heartbeats).where(health.heartbeats.c.id == 1), {"name": "sweep", "at": NOW}
        )
    target = f"sqlite:///{tmp_path}/new.sqlite3"
    with pytest.raises(moving.NotMoved, match="Stop it"):
        moving.move(source, target, NOW + timedelta(seconds=20))
    moving.move(source, target, NOW + timedelta(minutes=2))


def test_a_source_of_another_version_is_refused(source, tmp_path):
    with begun(source) as connection:
        connection.exec_driver_sql("UPDATE alembic_version SET version_num = '0001'")
    with pytest.raises(moving.NotMoved, match="at 0001"):
        moving.move(source, f"sqlite:///{tmp_path}/new.sqlite3", LATER)


def test_what_is_not_there_cannot_move(tmp_path):
    with pytest.raises(NoSuchDatabase):
        moving.move(f"sqlite:///{tmp_path}/none.sqlite3", f"sqlite:///{tmp_path}/new.sqlite3", LATER)
    assert list(tmp_path.iterdir()) == []


@pytest.mark.parametrize("url", ["sqlite://", "sqlite:///{}/old.sqlite3"])
def test_nothing_moves_into_memory_or_into_itself(source, tmp_path, url):
    with pytest.raises(moving.NotMoved):
        moving.move(source, url.format(tmp_path), LATER)


@pytest.mark.parametrize(
    ("one", "other"),
    [
        (datetime(2027, 1, 4, 6, 30, tzinfo=UTC), datetime(2027, 1, 4, 7, 30, tzinfo=timezone(timedelta(hours=1)))),
        ({"a": 1, "b": [0.5]}, {"b": [0.5], "a": 1}),
        (0.0, -0.0),
    ],
)
def test_one_value_has_one_text(one, other):
    assert moving.canonical(one) == moving.canonical(other)


def test_different_values_have_different_texts():
    values = [None, "", "None", 0, "0", 0.0, False, b"", [], {}, "[]", time(0), NOW, NOW.date(), 0.1 + 0.2, 0.3]
    assert len({moving.canonical(value) for value in values}) == len(values)


def test_the_command_shows_every_table_and_says_what_is_next(source, tmp_path):
    done = CliRunner().invoke(app, ["move", "--from", source, "--to", f"sqlite:///{tmp_path}/new.sqlite3"])
    assert done.exit_code == 0
    assert all(name in done.output for name in tables.metadata.tables)
    assert "all the same" in done.output
    assert "SLOWRUNG_DATABASE_URL" in done.output


def test_the_command_ends_with_1_where_the_copy_differs(source, tmp_path):
    target = f"sqlite:///{tmp_path}/new.sqlite3"
    spoil(target)
    done = CliRunner().invoke(app, ["move", "--from", source, "--to", target])
    assert done.exit_code == 1
    assert "coach_note" in done.stderr
    assert "DIFFERENT" in done.stdout


def test_the_migrations_of_the_target_are_this_versions(source, tmp_path):
    target = f"sqlite:///{tmp_path}/new.sqlite3"
    moving.move(source, target, LATER)
    with begun(target) as connection:
        assert upgrade.current_revision(connection) == upgrade.revisions()[0]
