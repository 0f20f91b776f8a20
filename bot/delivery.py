"""Sends what is owed. Nothing else talks to a channel.

A claimed message is sent, then marked. A crash in between sends it a second time when the claim has run out; it never
loses one.
"""

from __future__ import annotations

import asyncio
from collections.abc import Awaitable, Callable
from datetime import datetime, timedelta
from typing import TypeVar

import structlog

from bot import conversation, metrics
from bot.channels.channel import Channel, Gone, Later, Moved, Refused
from bot.clock import Clock
from storage import chats, outbox
from storage.outbox import Outgoing
from storage.store import Store

log = structlog.get_logger(__name__)
T = TypeVar("T")

# One chat takes about a message a second; a short burst passes.
CHAT_BURST = 3.0
BATCH = 100
LONGEST_WAIT_S = 600.0
# Connecting and waiting for the answer, as `channels/telegram.py` sets them, and a little.
LONGEST_SEND = timedelta(seconds=28)
# A service that is down for a day is waited for; what is older than this helps nobody.
LONGEST_OWED = timedelta(hours=36)

InThread = Callable[[Callable[[], T]], Awaitable[T]]


# The service counts what arrives in a second; what leaves evenly arrives less so.
ARRIVAL_MARGIN = 1.03


class Pace:
    """So many a second, evenly, whoever asks."""

    def __init__(self, per_second: float) -> None:
        self._gap = ARRIVAL_MARGIN / per_second
        self._next = 0.0

    async def wait(self) -> None:
        loop = asyncio.get_running_loop()
        now = loop.time()
        at = max(now, self._next)
        self._next = at + self._gap
        if at > now:
            await asyncio.sleep(at - now)

    def pause(self, seconds: float) -> None:
        """The service wants to be left alone: nobody sends before then."""
        self._next = max(self._next, asyncio.get_running_loop().time() + seconds)


class ChatPace:
    """One a second for each chat, with a short burst. Chats that have been quiet are forgotten."""

    def __init__(self) -> None:
        self._left: dict[str, tuple[float, float]] = {}

    def wait_s(self, address: str, now: float) -> float:
        """Seconds until this chat takes another message; 0 counts one as sent."""
        left, since = self._left.get(address, (CHAT_BURST, now))
        left = min(CHAT_BURST, left + now - since)
        if left < 1:
            self._left[address] = (left, now)
            return 1 - left
        self._left[address] = (left - 1, now)
        if len(self._left) > 10_000:
            self._left = {key: value for key, value in self._left.items() if now - value[1] < CHAT_BURST}
        return 0.0


class Delivery:
    """Delivers one channel's messages at the service's pace."""

    def __init__(self, store: Store, channel: Channel, clock: Clock, per_second: float, in_thread: InThread) -> None:  # type: ignore[type-arg]
        self.store, self.channel, self.clock = store, channel, clock
        self._pace = Pace(per_second)
        self._chats = ChatPace()
        self._in_thread = in_thread
        # How many sends may be under way: enough to keep the pace while the service takes its time.
        self._slots = asyncio.Semaphore(max(4, int(per_second)))

    async def deliver_once(self) -> int:
        """Send what can be claimed now; how many were taken up."""
        claimed: list[Outgoing] = await self._in_thread(self._claim)
        await asyncio.gather(*(self._deliver(message) for message in claimed))
        return len(claimed)

    def _claim(self) -> list[Outgoing]:
        now = self.clock.now()
        with self.store.transaction() as tx:
            outbox.drop_stale(tx, now)
            return outbox.claim(tx, now, BATCH, self.channel.name)

    async def _deliver(self, message: Outgoing) -> None:
        assert message.id is not None
        wait = self._chats.wait_s(message.address, asyncio.get_running_loop().time())
        if wait:
            await self._in_thread(lambda: self._defer(message, wait))
            return
        async with self._slots:
            await self._pace.wait()
            if self._claim_is_short(message):
                return  # it waited too long for its turn: claimed again when this claim has run out
            await self._send(message)

    def _claim_is_short(self, message: Outgoing) -> bool:
        """Whether the claim could run out during the send, so that somebody else would send it as well."""
        return message.claimed_until is not None and message.claimed_until - self.clock.now() < LONGEST_SEND

    async def _send(self, message: Outgoing) -> None:
        try:
            service_id = await self.channel.send(message)
        except Later as error:
            wait = error.seconds if error.seconds is not None else _backoff(message.attempts)
            if error.seconds is not None:
                self._pace.pause(error.seconds)
            metrics.SENT.labels("later").inc()
            log.warning("send later", outgoing=message.id, seconds=wait, attempts=message.attempts)
            await self._in_thread(lambda: self._defer(message, wait))
        except Gone:
            metrics.SENT.labels("gone").inc()
            await self._in_thread(lambda: self._gone(message))
        except Moved as error:
            address = error.address
            await self._in_thread(lambda: self._moved(message, address))
        except Refused as error:
            why = str(error)
            metrics.SENT.labels("refused").inc()
            log.error("send refused", outgoing=message.id)
            await self._in_thread(lambda: self._give_up(message, f"refused: {why}"))
        else:
            metrics.SENT.labels("sent").inc()
            await self._in_thread(lambda: self._sent(message, service_id))

    def _sent(self, message: Outgoing, service_id: str | None) -> None:
        assert message.id is not None
        with self.store.transaction() as tx:
            outbox.mark_sent(tx, message.id, self.clock.now(), service_id)

    def _defer(self, message: Outgoing, seconds: float) -> None:
        assert message.id is not None
        if self.clock.now() - message.due_at > LONGEST_OWED:
            self._give_up(message, "too old")
            return
        with self.store.transaction() as tx:
            outbox.defer(tx, message.id, self.clock.now() + timedelta(seconds=seconds))

    def _give_up(self, message: Outgoing, why: str) -> None:
        assert message.id is not None
        with self.store.transaction() as tx:
            outbox.give_up(tx, message.id, why, self.clock.now())

    def _gone(self, message: Outgoing) -> None:
        assert message.id is not None
        now: datetime = self.clock.now()
        with self.store.transaction() as tx:
            outbox.give_up(tx, message.id, "unreachable", now)
            conversation.tell_unreachable(tx, message, now)
            chats.set_blocked(tx, message.channel, message.address, True)

    def _moved(self, message: Outgoing, address: str) -> None:
        assert message.id is not None
        now = self.clock.now()
        with self.store.transaction() as tx:
            chats.move_chat(tx, message.channel, message.address, address, now)
            outbox.readdress(tx, message.channel, message.address, address)
            outbox.defer(tx, message.id, now)


def _backoff(attempts: int) -> float:
    """2, 4, 8 … seconds, ten minutes at most: a service down for a day is drained when it comes back."""
    return float(min(LONGEST_WAIT_S, 2.0 ** (attempts + 1)))
