"""Every test that takes `store` runs on SQLite in a file, and on PostgreSQL where SLOWRUNG_TEST_POSTGRES_URL is set."""

import os
import uuid
from collections.abc import Iterator
from pathlib import Path

import pytest
import sqlalchemy as sa

from storage.chats import bind_chat
from storage.loading import load_roster
from storage.persons import Person, Who, athlete, person_of
from storage.store import Store
from tests.storage.sample import NOW, small_roster

POSTGRES = os.environ.get("SLOWRUNG_TEST_POSTGRES_URL")
REQUIRED = os.environ.get("SLOWRUNG_TEST_POSTGRES_REQUIRED")


def sql(statement: str) -> None:
    """Run one statement on the server, outside any transaction."""
    server = sa.create_engine(str(POSTGRES), isolation_level="AUTOCOMMIT")
    with server.connect() as connection:
        connection.execute(sa.text(statement))
    server.dispose()


def url_of(name: str) -> str:
    return sa.make_url(str(POSTGRES)).set(database=name).render_as_string(hide_password=False)


@pytest.fixture(scope="session")
def postgres_template() -> Iterator[str]:
    """A migrated database to make others from: that is quicker than to migrate each."""
    if not POSTGRES:
        if REQUIRED:
            pytest.fail("SLOWRUNG_TEST_POSTGRES_URL is not set")
        pytest.skip("no PostgreSQL: SLOWRUNG_TEST_POSTGRES_URL is not set")
    name = f"slowrung_{uuid.uuid4().hex[:12]}"
    sql(f"CREATE DATABASE {name}")
    Store.open(url_of(name)).close()
    yield name
    sql(f"DROP DATABASE {name} WITH (FORCE)")


@pytest.fixture
def postgres_url(postgres_template: str) -> Iterator[str]:
    """A database of its own on the server, with empty tables, dropped afterwards."""
    name = f"slowrung_{uuid.uuid4().hex[:12]}"
    sql(f"CREATE DATABASE {name} TEMPLATE {postgres_template}")
    yield url_of(name)
    sql(f"DROP DATABASE {name} WITH (FORCE)")


@pytest.fixture(params=["sqlite", "postgresql"])
def url(request: pytest.FixtureRequest, tmp_path: Path) -> str:
    if request.param == "postgresql":
        found: str = request.getfixturevalue("postgres_url")
        return found
    return f"sqlite:///{tmp_path}/slowrung.sqlite3"


@pytest.fixture
def store(url: str) -> Iterator[Store]:
    opened = Store.open(url)
    yield opened
    opened.close()


@pytest.fixture
def memory() -> Iterator[Store]:
    opened = Store.open("sqlite://")
    yield opened
    opened.close()


@pytest.fixture
def mira(store: Store) -> Person:
    """An athlete with a chat in the terminal; `jonas` is another of the same coach."""
    with store.transaction() as tx:
        loaded = load_roster(tx, small_roster("mira", "jonas"), NOW)
        found = athlete(tx, loaded.athlete_ids["mira"])
        bind_chat(tx, "terminal", "mira", person_of(found), NOW)
        bind_chat(tx, "terminal", "jonas", Who("athlete", loaded.athlete_ids["jonas"]), NOW)
        bind_chat(tx, "terminal", "coach", Who("coach", loaded.coach_id), NOW)
    return person_of(found)


@pytest.fixture
def memory_mira(memory: Store) -> tuple[Store, int]:
    """A store in memory with one athlete, by id: for what no database can make different."""
    with memory.transaction() as tx:
        loaded = load_roster(tx, small_roster("mira"), NOW)
    return memory, loaded.athlete_ids["mira"]
