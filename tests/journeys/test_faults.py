"""What a machine can do to the service, one fault at a time."""

import contextlib
import os
import sqlite3
from datetime import UTC, datetime, timedelta

import pytest
import sqlalchemy as sa
from sqlalchemy.exc import OperationalError
from sqlmodel import col

from bot import conversation, schedule, worker
from bot.clock import SystemClock
from bot.roster import parse_roster
from storage import chats, database, due, inbox, outbox
from storage.fact_tables import Report
from storage.inbox import IncomingUpdate
from storage.loading import load_roster
from storage.outbox import Outgoing
from storage.persons import Who
from storage.store import Store
from tests.journeys.serving import ROSTER

NOW = datetime(2027, 1, 4, 9, tzinfo=UTC)
REPORT = "pull-ups 5x3 +7.5, last @8"


@pytest.fixture
def path(tmp_path):
    return tmp_path / "bot.sqlite3"


def opened(url):
    """A store with the roster in it and everyone at an address of their own."""
    store = Store.open(url)
    with store.transaction() as tx:
        loaded = load_roster(tx, parse_roster(ROSTER), NOW)
        chats.bind_chat(tx, "phone", "coach", Who("coach", loaded.coach_id), NOW)
        for handle, athlete_id in loaded.athlete_ids.items():
            chats.bind_chat(tx, "phone", handle, Who("athlete", athlete_id), NOW)
    return store


def hear(store, text, key, now=NOW):
    with store.transaction() as tx:
        return inbox.accept(tx, [IncomingUpdate("phone", key, "mira", "text", text, now)], now)


def count(store, column, *where):
    with store.reading() as tx:
        query = sa.select(sa.func.count()).select_from(column.class_.__table__).where(*where)
        return tx.connection().execute(query).scalar_one()


def test_a_locked_database_is_an_error_for_now_and_loses_nothing(path, monkeypatch):
    monkeypatch.setattr(database, "BUSY_TIMEOUT_S", 0.1)
    store = opened(f"sqlite:///{path}")
    hear(store, REPORT, "1")
    with contextlib.closing(sqlite3.connect(path, isolation_level=None)) as other:
        other.execute("BEGIN IMMEDIATE")
        with pytest.raises(OperationalError, match="locked"):
            worker.handle_next(store, NOW)
        with pytest.raises(OperationalError, match="locked"):
            hear(store, "help", "2")
        other.execute("ROLLBACK")
    assert hear(store, "help", "2") == 1
    assert worker.handle_all(store, NOW) == 2
    assert count(store, col(Report.id), col(Report.cause).is_not(None)) == 1
    store.close()


@pytest.mark.parametrize("step", [timedelta(hours=1), timedelta(hours=-1)])
def test_a_clock_that_steps_an_hour_sends_each_plan_once(path, step):
    store = opened(f"sqlite:///{path}")
    with store.transaction() as tx:
        conversation.begin(tx, 1, NOW)
    now, plans = NOW - timedelta(minutes=1), []
    for minute in range(3 * 24 * 60 // 20):
        now += timedelta(minutes=20)
        if minute == 100:
            now += step
        schedule.sweep(store, now)
        with store.transaction() as tx:
            for one in outbox.claim(tx, now, 100):
                outbox.mark_sent(tx, one.id, now)
                plans += [one.plan["date"]] if one.plan else []
    assert len(plans) == len(set(plans)) >= 3
    store.close()


def test_a_restart_in_mid_sweep_does_the_rest_and_nothing_twice(path, monkeypatch):
    store, real, calls = opened(f"sqlite:///{path}"), conversation.handle_due, []
    with store.transaction() as tx:
        for athlete_id in (1, 2):
            conversation.begin(tx, athlete_id, NOW)

    class Killed(BaseException):
        pass

    def killed_at_the_second(tx, row, now):
        calls.append(row.id)
        if len(calls) == 2:
            raise Killed
        real(tx, row, now)

    monkeypatch.setattr(conversation, "handle_due", killed_at_the_second)
    with pytest.raises(Killed):
        schedule.sweep(store, NOW)
    store.close()
    monkeypatch.undo()
    store = Store.open(f"sqlite:///{path}")
    while schedule.sweep(store, NOW):
        pass
    assert count(store, col(Outgoing.id), col(Outgoing.plan).is_not(None)) == 2
    with store.reading() as tx:
        assert due.due_now(tx, NOW) == []
    store.close()


async def test_postgresql_that_hangs_up_on_everybody_is_waited_for(tmp_path, monkeypatch):
    server = os.environ.get("SLOWRUNG_TEST_POSTGRES_URL")
    if not server:
        pytest.skip("no PostgreSQL: SLOWRUNG_TEST_POSTGRES_URL is not set")
    name = f"slowrung_fault_{os.getpid()}"
    engine = sa.create_engine(server, isolation_level="AUTOCOMMIT")
    with engine.connect() as connection:
        connection.execute(sa.text(f"CREATE DATABASE {name}"))
        try:
            store = opened(sa.make_url(server).set(database=name).render_as_string(hide_password=False))
            hear(store, REPORT, "1")
            ended = "SELECT count(pg_terminate_backend(pid)) FROM pg_stat_activity WHERE datname = :name"

            def handle(tx, row, person, now):
                connection.execute(sa.text(ended), {"name": name})
                return real(tx, row, person, now)

            real = conversation.handle
            monkeypatch.setattr(conversation, "handle", handle)
            with pytest.raises(OperationalError):
                worker.handle_next(store, SystemClock().now())
            monkeypatch.undo()
            assert worker.handle_next(store, SystemClock().now())
            assert count(store, col(Report.id), col(Report.cause).is_not(None)) == 1
            store.close()
        finally:
            connection.execute(sa.text(f"DROP DATABASE {name} WITH (FORCE)"))
    engine.dispose()
