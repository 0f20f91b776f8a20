"""A few kills at random; `tests/bench/crash.py` does it by the hundred and prints the account."""

import os
import uuid

import pytest
import sqlalchemy as sa

from tests.journeys import crashing

POSTGRES = os.environ.get("SLOWRUNG_TEST_POSTGRES_URL")
REQUIRED = os.environ.get("SLOWRUNG_TEST_POSTGRES_REQUIRED")
KILLS = 5


@pytest.fixture
def postgres_url():
    if not POSTGRES:
        if REQUIRED:
            pytest.fail("SLOWRUNG_TEST_POSTGRES_URL is not set")
        pytest.skip("no PostgreSQL: SLOWRUNG_TEST_POSTGRES_URL is not set")
    name = f"slowrung_{uuid.uuid4().hex[:12]}"
    server = sa.create_engine(POSTGRES, isolation_level="AUTOCOMMIT")
    with server.connect() as connection:
        connection.execute(sa.text(f"CREATE DATABASE {name}"))
        yield sa.make_url(POSTGRES).set(database=name).render_as_string(hide_password=False)
        connection.execute(sa.text(f"DROP DATABASE {name} WITH (FORCE)"))
    server.dispose()


def nothing_is_amiss(account):
    assert account.kills == KILLS
    assert account.lost == 0, account.figures
    assert account.figures["facts doubled"] == 0, account.figures
    assert account.figures["repeated: after a crash"] <= account.kills, account.figures


async def test_a_process_that_is_killed_loses_no_report_and_no_due_message(tmp_path):
    trial = crashing.Trial(tmp_path, f"sqlite:///{tmp_path / 'bot.sqlite3'}", seed=11)
    nothing_is_amiss(await trial.run(KILLS))


async def test_replicas_that_are_killed_lose_nothing_either(tmp_path, postgres_url):
    trial = crashing.Trial(tmp_path, postgres_url, seed=12, replicas=2)
    nothing_is_amiss(await trial.run(KILLS, wait_for_leases=False))
