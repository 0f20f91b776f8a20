"""What a machine can do to the service, one fault at a time."""

import asyncio
import contextlib
import os
import random
import sqlite3
import string
from datetime import UTC, datetime, timedelta

import httpx
import pytest
import sqlalchemy as sa
from sqlalchemy.exc import OperationalError
from sqlmodel import col

from bot import conversation, schedule, serve, web, worker
from bot.clock import SystemClock
from bot.logs import set_up_logs
from bot.roster import parse_roster
from storage import chats, database, due, inbox, outbox, rules
from storage.fact_tables import Report
from storage.inbox import IncomingUpdate
from storage.loading import load_roster
from storage.migrations import HEAD
from storage.outbox import Outgoing
from storage.persons import Who
from storage.store import Store
from tests.bot_api_server import Trouble
from tests.journeys.serving import MIRA, ROSTER, town, until

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


@pytest.mark.parametrize("night", [datetime(2027, 3, 28, tzinfo=UTC), datetime(2027, 10, 31, tzinfo=UTC)])
def test_a_night_in_which_the_clocks_change_has_one_plan_like_any_other(path, night):
    # Europe/Zurich: 02:30 is left out on 28 March 2027 and comes twice on 31 October 2027 (IANA tz database)
    store, now = Store.open(f"sqlite:///{path}"), night - timedelta(days=2)
    with store.transaction() as tx:
        loaded = load_roster(tx, parse_roster(ROSTER.replace('plan_at = "00:00"', 'plan_at = "02:30"')), now)
        mira = loaded.athlete_ids["mira"]
        chats.bind_chat(tx, "phone", "mira", Who("athlete", mira), now)
        conversation.begin(tx, mira, now)
    plans = []
    while now < night + timedelta(days=3):
        schedule.sweep(store, now)
        with store.transaction() as tx:
            for one in outbox.claim(tx, now, 100):
                outbox.mark_sent(tx, one.id, now)
                plans += [one.plan["date"]] if one.plan else []
        now += timedelta(minutes=20)
    days = [(night + timedelta(days=ahead)).date().isoformat() for ahead in (-1, 0, 1, 2)]
    assert [day for day in plans if day in days] == days
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


def _room_on_disk(store, pages):
    """How far the file may grow; 0: not at all. The writer's connection is the only one, so it stays so."""
    with store.transaction() as tx:
        connection = tx.connection()
        most = connection.exec_driver_sql("PRAGMA page_count").scalar_one() + pages
        connection.exec_driver_sql(f"PRAGMA max_page_count = {most}")


async def test_a_full_disk_leaves_messages_at_the_service_and_is_said(tmp_path, monkeypatch, capfd):
    monkeypatch.setattr(serve, "TROUBLE_S", 0.1)
    logged: list[str] = []

    def full() -> bool:
        logged.append(capfd.readouterr().err)
        return "SQLITE_FULL" in "".join(logged)

    async with town(tmp_path) as here:
        set_up_logs(here.api.token)
        async with here.running() as service:
            here.everyone_is_here()
            await until(lambda: not here.owed())
            await service.in_thread(lambda: _room_on_disk(service.store, 0))
            for number in range(20):  # more than what is free within the file
                here.api.says(MIRA, f"{REPORT} {'and it felt good ' * 200}{number}")
            await until(full)
            assert len(here.api.waiting()) == 20  # not confirmed, so not lost
            await service.in_thread(lambda: _room_on_disk(service.store, 10_000))
            await until(lambda: not here.api.waiting())
            here.api.says(MIRA, REPORT)
            await until(lambda: here.reports_of("mira"), 60)


async def test_an_update_that_nobody_can_read_is_set_aside_and_the_others_are_answered(tmp_path):
    async with town(tmp_path) as here, here.running() as service:
        here.everyone_is_here()
        last = here.api.says(MIRA, "help")
        here.api.delivers_again(last + 1, {"message": {"chat": 5, "date": "never"}})
        here.api.delivers_again(last + 2, {"my_chat_member": []})
        await until(lambda: any("own words" in text for text in here.api.texts(MIRA)))
        await until(lambda: not here.api.waiting())
        with service.store.reading() as tx:
            aside = [(row.update_key, row.text) for row in inbox.set_aside(tx)]
        assert aside == [(str(last + 1), ""), (str(last + 2), "")]


async def test_stopping_lets_a_slow_send_end_and_leaves_nothing_claimed(tmp_path):
    async with town(tmp_path) as here:
        async with here.running() as service:
            here.everyone_is_here()
            await until(lambda: not here.owed())
            here.api.troubles.append(Trouble("accept_and_sleep", chat=MIRA, seconds=1.5))
            here.api.says(MIRA, "help")
            await until(lambda: any("own words" in text for text in here.api.texts(MIRA)))
        assert service.delivery._tasks == set()
        with here._looking() as tx:
            rows = tx.execute(sa.select(Outgoing.text, Outgoing.sent_at, Outgoing.claimed_until)).all()
        assert [row for row in rows if row.claimed_until is not None] == []
        assert [row for row in rows if "own words" in row.text and row.sent_at is None] == []


async def test_readiness_tells_the_truth(tmp_path):
    async with town(tmp_path) as here, here.running() as service:
        client = httpx.AsyncClient(transport=httpx.ASGITransport(web.application(service)), base_url="http://here")
        await until(lambda: service.store is not None)

        async def ready():
            answer = await client.get("/readyz")
            return answer.status_code, answer.text.strip()

        def change(statement):
            with service.store.transaction() as tx:
                tx.connection().exec_driver_sql(statement)

        for _ in range(100):
            if (await ready())[0] == 200:
                break
            await asyncio.sleep(0.05)
        assert await ready() == (200, "ready")
        await service.in_thread(lambda: change("UPDATE alembic_version SET version_num = '0001'"))
        assert await ready() == (503, "the database has other tables")
        await service.in_thread(lambda: change(f"UPDATE alembic_version SET version_num = '{HEAD}'"))
        await service.in_thread(lambda: change("UPDATE heartbeat SET at = '2020-01-01 00:00:00.000000'"))
        assert await ready() == (503, "no sweep of late")
        await service.in_thread(lambda: change("ALTER TABLE heartbeat RENAME TO gone"))
        assert await ready() == (503, "the database is away")
        assert (await client.get("/healthz")).status_code == 200
        await service.in_thread(lambda: change("ALTER TABLE gone RENAME TO heartbeat"))
        await client.aclose()


async def test_a_service_whose_postgresql_is_gone_for_a_while_waits_and_goes_on(tmp_path, monkeypatch):
    server = os.environ.get("SLOWRUNG_TEST_POSTGRES_URL")
    if not server:
        pytest.skip("no PostgreSQL: SLOWRUNG_TEST_POSTGRES_URL is not set")
    monkeypatch.setattr(serve, "TROUBLE_S", 0.1)
    name = f"slowrung_gone_{os.getpid()}"
    engine = sa.create_engine(server, isolation_level="AUTOCOMMIT")

    def at_server(statement):
        with engine.connect() as connection:
            connection.execute(sa.text(statement))

    await asyncio.to_thread(at_server, f"CREATE DATABASE {name}")
    url = sa.make_url(server).set(database=name).render_as_string(hide_password=False)
    try:
        async with town(tmp_path) as here:
            here.settings = here.settings.model_copy(update={"database_url": url})
            await asyncio.to_thread(here.load_roster)
            async with here.running() as service:
                client = httpx.AsyncClient(
                    transport=httpx.ASGITransport(web.application(service)), base_url="http://here"
                )
                await asyncio.to_thread(here.everyone_is_here)
                here.api.says(MIRA, "help")
                await until(lambda: any("own words" in text for text in here.api.texts(MIRA)), 60)
                await asyncio.to_thread(at_server, f"ALTER DATABASE {name} ALLOW_CONNECTIONS false")
                ended = f"SELECT pg_terminate_backend(pid) FROM pg_stat_activity WHERE datname = '{name}'"
                await asyncio.to_thread(at_server, ended)
                here.api.says(MIRA, REPORT)
                await asyncio.sleep(2)
                assert here.api.waiting()
                assert (await client.get("/readyz")).status_code == 503
                before = len(here.api.texts(MIRA))
                await asyncio.to_thread(at_server, f"ALTER DATABASE {name} ALLOW_CONNECTIONS true")
                await until(lambda: any("7.5" in text for text in here.api.texts(MIRA)[before:]), 60)
                await client.aclose()
    finally:
        await asyncio.to_thread(at_server, f"DROP DATABASE {name} WITH (FORCE)")
        engine.dispose()


async def test_what_postgresql_will_not_take_is_set_aside_and_the_next_is_heard(monkeypatch):
    server = os.environ.get("SLOWRUNG_TEST_POSTGRES_URL")
    if not server:
        pytest.skip("no PostgreSQL: SLOWRUNG_TEST_POSTGRES_URL is not set")
    name = f"slowrung_limit_{os.getpid()}"
    engine = sa.create_engine(server, isolation_level="AUTOCOMMIT")
    with engine.connect() as connection:
        connection.execute(sa.text(f"CREATE DATABASE {name}"))
    try:
        store = opened(sa.make_url(server).set(database=name).render_as_string(hide_password=False))
        real, chance = conversation.handle, random.Random(7)
        # More than a third of a page, and chance cannot be packed: more than an index takes.
        phrase = "".join(chance.choices(string.ascii_letters, k=9000))

        def handle(tx, row, person, now):
            if row.text == "poison":
                rules.set_nickname(tx, 1, phrase, "pull_up")
            real(tx, row, person, now)

        monkeypatch.setattr(conversation, "handle", handle)
        hear(store, "poison", "1")
        hear(store, REPORT, "2")
        for minute in range(inbox.MAX_ATTEMPTS + 1):
            worker.handle_all(store, NOW + timedelta(minutes=minute))
        with store.reading() as tx:
            assert [(row.text, row.set_aside_because) for row in inbox.set_aside(tx)] == [
                ("poison", "OperationalError")
            ]
        assert count(store, col(Report.id), col(Report.cause).is_not(None)) == 1
        store.close()
    finally:
        with engine.connect() as connection:
            connection.execute(sa.text(f"DROP DATABASE {name} WITH (FORCE)"))
        engine.dispose()


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
