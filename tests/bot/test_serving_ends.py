"""How the service ends: when told to, without an error in the log; and where it cannot listen, with a sentence."""

import asyncio
import logging
import socket
import time
from contextlib import asynccontextmanager, closing

import pytest
from pydantic import SecretStr

from bot import schedule, serve
from bot.channels.telegram import make_bot
from bot.clock import SystemClock
from bot.settings import Settings, WrongSetting
from storage.store import Store
from tests.bot_api_server import BotApiServer
from tests.journeys.serving import until


@pytest.fixture
async def api():
    server = BotApiServer()
    await server.start()
    yield server
    await server.stop()


@asynccontextmanager
async def service_at(url, token, tmp_path, **more):
    settings = Settings(home=tmp_path, telegram_token=SecretStr(token), telegram_api_url=url, **more)
    with closing(Store.open(settings.database)) as store:
        yield serve.Service(settings, store, make_bot(token, url), SystemClock())


async def test_who_waits_for_a_service_that_is_away_can_be_stopped(tmp_path, caplog):
    async with service_at("http://127.0.0.1:1", "7:t", tmp_path) as service:
        running = asyncio.create_task(service.run())
        await asyncio.sleep(0.2)
        service.stop()
        await asyncio.wait_for(running, 10)
    assert [one for one in caplog.records if one.levelno >= logging.ERROR] == []


async def test_a_sweep_that_is_cut_off_is_no_error(api, tmp_path, caplog, monkeypatch):
    begun = []
    monkeypatch.setattr(serve, "SWEEP_S", 0.1)
    monkeypatch.setattr(schedule, "sweep_and_beat", lambda *_: begun.append(1) or time.sleep(0.3) or 0)
    async with service_at(api.url, api.token, tmp_path) as service:
        running = asyncio.create_task(service.run())
        await until(lambda: len(begun) > 1)
        service.stop()
        await asyncio.wait_for(running, 10)
    assert [one for one in caplog.records if one.levelno >= logging.ERROR] == []


async def test_a_port_that_is_taken_is_a_sentence_and_ends_it(api, tmp_path):
    with socket.socket() as taken:
        taken.bind(("127.0.0.1", 0))
        taken.listen()
        listen = f"127.0.0.1:{taken.getsockname()[1]}"
        async with service_at(api.url, api.token, tmp_path, listen=listen) as service:
            with pytest.raises(WrongSetting, match=f"SLOWRUNG_LISTEN.*{listen}"):
                await asyncio.wait_for(service.run(), 20)
