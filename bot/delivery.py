"""Sends what is owed. Nothing else talks to a channel.

A message is claimed together with a moment of its own (`storage/pace.py`), sent at that moment, then marked. A crash
in between sends it a second time when the claim has run out; it never loses one. Of a long message each claim sends a
part, so that a later one that fails repeats none before it. Nothing here waits for a slow send
but that send: claims go on about a second ahead, as many as may be under way.
"""

from __future__ import annotations

import asyncio
import contextlib
import time
from collections.abc import Awaitable, Callable
from dataclasses import dataclass
from datetime import datetime, timedelta
from typing import Any, TypeVar

import structlog
from sqlmodel import Session

from bot import conversation, metrics
from bot.channels.channel import Channel, Gone, Later, Moved, Refused
from bot.clock import Clock
from bot.logs import why_away
from bot.pacing import LONGEST_REST, Outage, Window
from storage import chats, outbox, pace
from storage.away import again, is_away
from storage.outbox import Outgoing
from storage.store import Store

log = structlog.get_logger(__name__)
T = TypeVar("T")

# How far ahead moments are taken; a reply waits that long behind what was claimed before it. Where claims themselves
# must wait (a sweep has the database), further ahead, so that no moment goes by unused.
AHEAD, FURTHEST_AHEAD = timedelta(seconds=1), timedelta(seconds=3)
IDLE_S = 1.0
SHORTEST_STEP_S = 0.02
# The service counts what arrives in a second; what leaves evenly arrives less so.
ARRIVAL_MARGIN = 1.03
MOST_CLAIMED = 120
# Fewer than the connections of `channels/telegram.py`: a send that is begun need not wait for one.
MOST_UNDER_WAY = 60
LONGEST_WAIT_S = 600.0
# Connecting and waiting for the answer, as `channels/telegram.py` sets them, and a little.
LONGEST_SEND = timedelta(seconds=28)
# Beside other replicas, who is later than this gives the moment up: the next ones are somebody else's.
LATE_S = 0.025
# A send that was cut off on stopping may have arrived: another try can wait.
AFTER_CUT_S = 60.0
DROP_EVERY = timedelta(seconds=10)
TROUBLE_S = 2.0

# What fails in a way that nobody has foreseen, or cannot be noted, is tried again later, and so often in all: each time
# the person may get it once more.
MOST_UNFORESEEN = 5

InThread = Callable[[Callable[[], T]], Awaitable[T]]
Note = Callable[[Session, datetime], object]


@dataclass(frozen=True, eq=False)
class Outcome:
    """What became of a message, and how it is noted."""

    message: Outgoing
    note: Note


@dataclass(frozen=True)
class Turn:
    """A claimed message and the moment, on the machine's monotonic clock, at which it may be sent."""

    message: Outgoing
    at: float

    @property
    def id(self) -> int:
        assert self.message.id is not None
        return self.message.id


class Delivery:
    """Delivers one channel's messages at the service's pace, which replicas share."""

    def __init__(
        self,
        store: Store,
        channel: Channel,
        clock: Clock,
        per_second: float,
        in_thread: InThread[Any],
        alone: bool = True,
    ) -> None:
        """`per_second`: what the service permits to all replicas together. `alone`: there is only this one."""
        self.store, self.channel, self.clock = store, channel, clock
        self.owed = asyncio.Event()  # set by whoever owes something new: it is looked at now, not in a second
        self._gap = timedelta(seconds=ARRIVAL_MARGIN / per_second)
        self._ahead = AHEAD
        self._window, self._outage = Window(per_second), Outage()
        self._in_thread, self._alone = in_thread, alone
        self._under_way = asyncio.Semaphore(MOST_UNDER_WAY)
        self._tasks: set[asyncio.Task[None]] = set()
        self._stopping = asyncio.Event()
        self._outcomes: list[Outcome] = []
        self._claiming, self._marking = asyncio.Lock(), asyncio.Lock()
        self._paused_until = 0.0
        self._dropped_at: datetime | None = None

    # ---- claiming --------------------------------------------------------------------------------------------------

    async def step(self) -> None:
        """Claim what there is room for, set it going, and wait until it is worth claiming again."""
        asked = time.monotonic()
        turns, full_s = await self._begin()
        if turns or full_s > 0:
            await self._stopped_within(max(SHORTEST_STEP_S, full_s))
            return
        with contextlib.suppress(TimeoutError):
            await asyncio.wait_for(self.owed.wait(), IDLE_S)
        # While many messages are handled, what they owe is claimed some at a time: each claim keeps the next one from
        # being handled. After a quiet moment nothing waits here.
        await self._stopped_within(asked + SHORTEST_STEP_S - time.monotonic())
        self.owed.clear()

    async def deliver_once(self) -> int:
        """Send what can be claimed now and mark it; how many were taken up."""
        turns, _ = await self._begin()
        if self._tasks:
            await asyncio.wait(self._tasks)
        return len(turns)

    async def finish(self, grace_s: float) -> None:
        """Claim no more. What is being sent is sent and marked; what has no answer in `grace_s` is let go."""
        self._stopping.set()
        async with self._claiming:  # what is being claimed just now is begun first, and then let go
            pass
        if self._tasks:
            _, late = await asyncio.wait(self._tasks, timeout=grace_s)
            for task in late:
                task.cancel()
            await asyncio.gather(*late, return_exceptions=True)
        if self._outcomes:
            await self._in_thread(lambda: self._mark(self._outcomes))

    async def _begin(self) -> tuple[list[Turn], float]:
        async with self._claiming:
            asked = time.monotonic()
            turns, full_s = ([], 0.0) if self._stopping.is_set() else await self._in_thread(self._claim)
            took = timedelta(seconds=time.monotonic() - asked)
            self._ahead = min(FURTHEST_AHEAD, AHEAD + 2 * took)
            for turn in turns:
                task = asyncio.create_task(self._deliver(turn))
                self._tasks.add(task)
                task.add_done_callback(self._tasks.discard)
        return turns, full_s

    def _claim(self) -> tuple[list[Turn], float]:
        """Messages with their moments, and the seconds until half of the moments ahead are free again."""
        now, began, name = self.clock.now(), time.monotonic(), self.channel.name
        with self.store.transaction() as tx:
            self._drop(tx, now)
            room = pace.room(tx, name, now, self._gap, self._ahead)
            moment = room.first
            wanted = min(room.slots, (MOST_CLAIMED if self._alone else MOST_UNDER_WAY) - len(self._tasks))
            if (most := self._outage.most(now)) is not None:
                wanted = min(wanted, most - len(self._tasks))
            turns = []
            for message in outbox.claim(tx, now, wanted, name, paced=True) if wanted > 0 else []:
                turns.append(Turn(message, began + (moment - now).total_seconds()))
                moment += self._gap
            if turns:
                pace.take(tx, name, now, moment)
        full = moment - now - self._ahead / 2
        return turns, min(full.total_seconds(), IDLE_S)

    def _drop(self, tx: Session, now: datetime) -> None:
        """Give up what helps nobody any more, and say so once to each."""
        if self._dropped_at is not None and timedelta() <= now - self._dropped_at < DROP_EVERY:
            return
        self._dropped_at = now
        for channel, address in outbox.drop_stale(tx, now):
            conversation.tell_dropped(tx, channel, address, now)

    # ---- sending ---------------------------------------------------------------------------------------------------

    async def _deliver(self, turn: Turn) -> None:
        stopped = await self._stopped_within(turn.at - time.monotonic())
        late = not self._alone and time.monotonic() - turn.at > LATE_S
        if stopped or late or time.monotonic() < self._paused_until:
            await self._settle(Outcome(turn.message, lambda tx, _now: outbox.let_go(tx, [turn.id])))
            return
        async with self._under_way:
            if self._claim_is_short(turn.message):
                return  # it waited too long for its turn: claimed again when this claim has run out
            left = await self._window.wait()
            try:
                note = await self._send(turn)
            except asyncio.CancelledError:
                self._outcomes.append(Outcome(turn.message, _deferring(turn.id, AFTER_CUT_S)))
                raise
            finally:
                self._window.answered(left)
        await self._settle(Outcome(turn.message, note))

    def _claim_is_short(self, message: Outgoing) -> bool:
        """Whether the claim could run out during the send, so that somebody else would send it as well."""
        return message.claimed_until is not None and message.claimed_until - self.clock.now() < LONGEST_SEND

    async def _send(self, turn: Turn) -> Note:
        """Try it; what is to be noted of it."""
        message = turn.message
        try:
            service_id = await self.channel.send(message)
        except Later as error:
            metrics.SENT.labels("later").inc()
            return self._later(turn, error)
        except Gone:
            metrics.SENT.labels("gone").inc()
            log.warning("chat gone", outgoing=turn.id)
            return lambda tx, now: _gone(tx, message, now)
        except Moved as error:
            address = error.address
            return lambda tx, now: _moved(tx, message, address, now)
        except Refused as error:
            why = f"refused: {error}"
            metrics.SENT.labels("refused").inc()
            log.error("send refused", outgoing=turn.id, clip=error.clip)
            if error.clip:  # its words and buttons are worth as much without it
                return lambda tx, _now: outbox.leave_out_clip(tx, turn.id)
            return lambda tx, now: outbox.give_up(tx, turn.id, why, now)
        except Exception as error:
            # Nobody has foreseen it: tried again, each time later, and in the end given up. Its text could quote the
            # message, so only its kind is told.
            metrics.SENT.labels("failed").inc()
            log.error("send failed", outgoing=turn.id, error=type(error).__name__)
            return _again_or_never(message, f"failed: {type(error).__name__}")
        metrics.SENT.labels("sent").inc()
        back = self._outage.succeeded()
        if back:
            log.warning("service back")
        parts = message.parts_sent + 1
        whole = parts >= self.channel.calls(message)

        def taken(tx: Session, now: datetime) -> None:
            if whole:
                outbox.mark_sent(tx, turn.id, now, service_id)
            else:
                outbox.mark_part(tx, turn.id, parts, now)
            if back:
                outbox.hurry(tx, message.channel)

        return taken

    def _later(self, turn: Turn, error: Later) -> Note:
        message = turn.message
        wait = max(error.seconds or 0.0, 0.0 if error.everyone else _backoff(message.attempts))
        if not error.everyone:
            self._outage.failed(message.address, self.clock.now())
            if self._outage.on and error.seconds is None:
                # The fault is not the message's: the most important is what finds out whether the service is back.
                wait = min(wait, LONGEST_REST.total_seconds())
        log.warning("send later", outgoing=turn.id, seconds=wait, attempts=message.attempts, all=error.everyone)
        if not error.everyone:
            return _deferring(turn.id, wait)
        self._paused_until = max(self._paused_until, time.monotonic() + wait)

        def all_wait(tx: Session, now: datetime) -> None:
            until = now + timedelta(seconds=wait)
            pace.pause(tx, message.channel, now, until)
            outbox.defer(tx, turn.id, until)

        return all_wait

    async def _stopped_within(self, seconds: float) -> bool:
        """Wait so long; True at once when the service stops."""
        if seconds > 0:
            with contextlib.suppress(TimeoutError):
                await asyncio.wait_for(self._stopping.wait(), seconds)
        return self._stopping.is_set()

    # ---- marking ---------------------------------------------------------------------------------------------------

    async def _settle(self, outcome: Outcome) -> None:
        """Note what became of a message. While some are noted others gather, and go into one transaction."""
        self._outcomes.append(outcome)
        async with self._marking:
            while outcome in self._outcomes:  # else it was noted with another's
                batch = list(self._outcomes)
                try:
                    await self._in_thread(lambda: self._mark(batch))  # noqa: B023  awaited before it changes
                except Exception as error:
                    if not is_away(error):
                        raise
                    log.error("database away", why=why_away(error))
                    # What was sent must not be forgotten: it would be sent again.
                    if await self._stopped_within(TROUBLE_S):
                        return  # `finish` tries a last time
                else:
                    del self._outcomes[: len(batch)]
        self.owed.set()  # each chat whose message is marked is free for its next

    def _mark(self, batch: list[Outcome]) -> None:
        def note() -> None:
            with self.store.transaction() as tx:
                for outcome in batch:
                    outcome.note(tx, self.clock.now())

        try:
            again(note)
        except Exception as error:
            if is_away(error):
                raise
            # All of them were rolled back; one by one it shows whose fault it was.
            for outcome in batch:
                self._mark_alone(outcome)

    def _mark_alone(self, outcome: Outcome) -> None:
        for note in (outcome.note, _again_or_never(outcome.message, "outcome not noted")):
            try:
                again(lambda: self._note_alone(note))  # noqa: B023  called before it changes
                return
            except Exception as error:
                if is_away(error):
                    raise
                log.error("outcome not noted", outgoing=outcome.message.id, error=type(error).__name__)

    def _note_alone(self, note: Note) -> None:
        with self.store.transaction() as tx:
            note(tx, self.clock.now())


def _again_or_never(message: Outgoing, why: str) -> Note:
    """Tried again later or given up: without any mark it would go out with every new claim."""
    assert message.id is not None
    outgoing_id = message.id
    if message.attempts + 1 >= MOST_UNFORESEEN:
        return lambda tx, now: outbox.give_up(tx, outgoing_id, why, now)
    return _deferring(outgoing_id, _backoff(message.attempts))


def _deferring(outgoing_id: int, seconds: float) -> Note:
    return lambda tx, now: outbox.defer(tx, outgoing_id, now + timedelta(seconds=seconds))


def _gone(tx: Session, message: Outgoing, now: datetime) -> None:
    assert message.id is not None
    chats.set_blocked(tx, message.channel, message.address, True)
    who = chats.who_at(tx, message.channel, message.address)
    if who is not None and who.role == "coach":
        outbox.let_go(tx, [message.id])  # kept until they can be reached: an alert must not be lost
        outbox.hand_over(tx, who, now)
    else:
        outbox.give_up(tx, message.id, outbox.UNREACHABLE, now)
    conversation.tell_unreachable(tx, message, now)


def _moved(tx: Session, message: Outgoing, address: str, now: datetime) -> None:
    assert message.id is not None
    chats.move_chat(tx, message.channel, message.address, address, now)
    outbox.readdress(tx, message.channel, message.address, address)
    outbox.defer(tx, message.id, now)


def _backoff(attempts: int) -> float:
    """2, 4, 8 … seconds, ten minutes at most: a service down for a day is drained when it comes back."""
    return float(min(LONGEST_WAIT_S, 2.0 ** min(attempts + 1, 10)))
