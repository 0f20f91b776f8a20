"""Delivery at the permitted rate, against a stand-in that keeps its own.

`python -m tests.bench.delivery [--seconds S] [--chats N] [--replicas N] [--latency SECONDS] [--database URL]`

Every chat is owed a plan. Printed: messages a second, their share of what is permitted, refusals for going too fast
(429), the most that arrived within one second, and how long a reply took that was owed in the midst of it. A named
database must be empty. Several replicas are several deliveries with a store each, in one process.
"""

from __future__ import annotations

import argparse
import asyncio
import tempfile
import time
from collections.abc import Callable
from concurrent.futures import ThreadPoolExecutor
from contextlib import ExitStack
from datetime import timedelta
from pathlib import Path
from typing import Any

from bot.channels.telegram import CHANNEL, Telegram, make_bot
from bot.clock import SystemClock
from bot.delivery import Delivery
from storage import outbox
from storage.outbox import Outgoing
from storage.store import Store
from tests.bot_api_server import BotApiServer

PERMITTED = 30.0
FIRST_CHAT = 5_000_000_000
REPLY_CHAT = 4_000_000_000


class Stamped(BotApiServer):
    """Notes when each message arrived, and takes its time to answer."""

    latency = 0.0

    def _take(self, *given: Any) -> Any:
        taken = super()._take(*given)
        if isinstance(taken, dict):
            self.arrived.append((time.monotonic(), given[1]))
        return taken

    async def _do_sendMessage(self, request: Any) -> Any:  # noqa: N802
        taken = await super()._do_sendMessage(request)
        await asyncio.sleep(self.latency)
        return taken

    def __post_init__(self) -> None:
        super().__post_init__()
        self.arrived: list[tuple[float, int]] = []


def owe(store: Store, chats: int) -> None:
    now = SystemClock().now()
    for start in range(0, chats, 500):
        with store.transaction() as tx:
            for n in range(start, min(chats, start + 500)):
                outbox.post(tx, _message(FIRST_CHAT + n, f"plan:{n}", outbox.PLAN))
    print(f"{chats} plans owed in {(SystemClock().now() - now).total_seconds():.1f} s")


def _message(chat: int, cause: str, importance: int) -> Outgoing:
    return Outgoing(
        channel=CHANNEL,
        address=str(chat),
        to="",
        text="Pull-ups 5×3 +20 kg, rest three minutes. " * 10,
        importance=importance,
        cause=cause,
        due_at=SystemClock().now() - timedelta(seconds=1),
    )


async def run(url: str, seconds: float, chats: int, replicas: int, latency: float) -> None:
    api = Stamped()
    api.latency = latency
    root = await api.start()
    api.known_chats.update(FIRST_CHAT + n for n in range(chats))
    api.known_chats.add(REPLY_CHAT)
    with ExitStack() as held:
        first = Store.open(url)
        owe(first, chats)
        stores = [first, *(Store.open(url) for _ in range(replicas - 1))]
        deliveries = []
        for store in stores:
            held.callback(store.close)
            threads = ThreadPoolExecutor(1 if url.startswith("sqlite") else 8)
            held.callback(threads.shutdown)
            bot = make_bot(api.token, root)
            await bot.initialize()
            deliveries.append(Delivery(store, Telegram(bot), SystemClock(), PERMITTED, _in(threads), replicas == 1))
        cpu = time.process_time()
        until = time.monotonic() + seconds
        loops = [asyncio.create_task(_send(one, until)) for one in deliveries]
        waits = await _replies(first, deliveries, api, until)
        await asyncio.gather(*loops)
        cpu = time.process_time() - cpu
        for one in deliveries:
            await one.finish(10)
        _tell(api, seconds, waits, cpu)
    await api.stop()


async def _send(delivery: Delivery, until: float) -> None:
    while time.monotonic() < until:
        await delivery.step()


async def _replies(store: Store, deliveries: list[Delivery], api: Stamped, until: float) -> list[float]:
    """A reply every five seconds in the midst of it; how long each took."""
    waits = []
    while time.monotonic() + 5 < until:
        await asyncio.sleep(3)
        began, before = time.monotonic(), len([1 for _, chat in api.arrived if chat == REPLY_CHAT])
        await asyncio.to_thread(_reply, store, f"reply:{before}:{began}")
        deliveries[0].owed.set()
        while len([1 for _, chat in api.arrived if chat == REPLY_CHAT]) == before and time.monotonic() < until:
            await asyncio.sleep(0.02)
        waits.append(time.monotonic() - began)
    return waits


def _reply(store: Store, cause: str) -> None:
    with store.transaction() as tx:
        outbox.post(tx, _message(REPLY_CHAT, cause, outbox.REPLY))


def _in(threads: ThreadPoolExecutor) -> Callable[[Callable[[], Any]], Any]:
    async def in_thread(work: Callable[[], Any]) -> Any:
        return await asyncio.get_running_loop().run_in_executor(threads, work)

    return in_thread


def _tell(api: Stamped, seconds: float, waits: list[float], cpu: float) -> None:
    moments = [at for at, _ in api.arrived]
    taken = moments[-1] - moments[0]
    most = max(sum(at <= other < at + 1 for other in moments[n : n + 60]) for n, at in enumerate(moments))
    print(f"{len(moments)} messages in {taken:.1f} s")
    print(f"messages a second   {(len(moments) - 1) / taken:8.2f}")
    print(f"share of permitted  {(len(moments) - 1) / taken / PERMITTED:8.1%}")
    print(f"429                 {sum(status == 429 for _, status, _ in api.refused):8d}")
    print(f"most in a second    {most:8d}")
    print(f"a reply meanwhile   {sum(waits) / max(1, len(waits)):8.2f} s, {max(waits, default=0):.2f} at most")
    print(f"CPU                 {cpu / seconds:8.0%} of a core, the stand-in's included")


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--seconds", type=float, default=65.0)
    parser.add_argument("--chats", type=int, default=10_000)
    parser.add_argument("--replicas", type=int, default=1)
    parser.add_argument("--latency", type=float, default=0.08, help="what the stand-in takes to answer, in seconds")
    parser.add_argument("--database", default=None, help="an empty one; a SQLite file of its own where left out")
    asked = parser.parse_args()
    with tempfile.TemporaryDirectory() as folder:
        url = asked.database or f"sqlite:///{Path(folder) / 'delivery.sqlite3'}"
        asyncio.run(run(url, asked.seconds, asked.chats, asked.replicas, asked.latency))


if __name__ == "__main__":
    main()
