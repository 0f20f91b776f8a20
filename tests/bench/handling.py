"""One report from the channel to the reply, in messages a second, beside the bare framework's echo.

`python -m tests.bench.handling [REPORTS]`. Both answer the same messages at the stand-in for the Bot API on loopback;
the echo does nothing but send the text back. Figures are of this machine and this hour.
"""

from __future__ import annotations

import asyncio
import sys
import tempfile
import time
from pathlib import Path

from bot import worker
from bot.channels.telegram import make_bot
from bot.clock import SystemClock
from storage import inbox
from storage.inbox import IncomingUpdate
from storage.store import Store
from tests.bot_api_server import BotApiServer
from tests.journeys.serving import MIRA, town, until

REPORT = "pull-ups 5x3 +7.5, last @8"


def handled_alone(folder: Path, reports: int) -> float:
    """Accept, read, plan and post, without any network; seconds."""

    async def prepare() -> str:
        async with town(folder) as here:
            here.everyone_is_here()
            return here.settings.database

    store, clock = Store.open(asyncio.run(prepare())), SystemClock()
    started = time.perf_counter()
    for number in range(reports):
        now = clock.now()
        with store.transaction() as tx:
            inbox.accept(tx, [IncomingUpdate("telegram", str(number), str(MIRA), "text", REPORT, now)], now)
        assert worker.handle_next(store, now)
    taken = time.perf_counter() - started
    store.close()
    return taken


async def through_the_service(folder: Path, reports: int) -> float:
    """From the update waiting at the service to the last report kept in the database; seconds."""
    async with town(folder) as here:
        here.everyone_is_here()
        here.api.keep_rates = False
        started = time.perf_counter()
        async with here.running() as service:
            for _ in range(reports):
                here.api.says(MIRA, REPORT)

            def done() -> bool:
                with service.store.reading() as tx:
                    return not here.api.waiting() and inbox.next_unhandled(tx, service.clock.now()) is None

            await until(done, 600)
            return time.perf_counter() - started


async def echo(messages: int) -> float:
    """The bare framework: receive, send back; seconds."""
    api = BotApiServer(keep_rates=False)
    bot = make_bot(api.token, await api.start())
    await bot.initialize()
    for _ in range(messages):
        api.says(MIRA, REPORT)
    started, sent, offset = time.perf_counter(), 0, None
    while sent < messages:
        for update in await bot.get_updates(offset=offset, timeout=5):
            assert update.message is not None
            await bot.send_message(update.message.chat.id, update.message.text or "")
            sent, offset = sent + 1, update.update_id + 1
    taken = time.perf_counter() - started
    await bot.shutdown()
    await api.stop()
    return taken


def main() -> None:
    reports = int(sys.argv[1]) if len(sys.argv) > 1 else 100
    with tempfile.TemporaryDirectory() as one, tempfile.TemporaryDirectory() as two:
        for name, taken in (
            ("accept, read, plan, post (no network)", handled_alone(Path(one), reports)),
            ("through the service, polling", asyncio.run(through_the_service(Path(two), reports))),
            ("the bare framework's echo", asyncio.run(echo(reports))),
        ):
            print(f"{name}: {reports / taken:.0f} messages/s, {1000 * taken / reports:.1f} ms each")


if __name__ == "__main__":
    main()
