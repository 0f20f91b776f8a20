"""What delivery remembers of the service itself: what left in the last second, and whether it takes anything at all."""

from __future__ import annotations

import asyncio
import time
from collections import deque
from dataclasses import dataclass
from datetime import datetime, timedelta

WINDOW_MARGIN = 1.01
# What has no answer yet is taken to have arrived by then.
ARRIVED_BY_S = 0.5
# How fast an old measure of the quickest answer is forgotten, at each answer.
FORGETTING_S = 0.001
# So many chats in a row without a success: it is the service, not the chats.
OUTAGE_CHATS = 3
FIRST_REST, LONGEST_REST = timedelta(seconds=2), timedelta(seconds=60)


@dataclass
class Left:
    """A message that left, and when it arrived at the latest, as far as its answer tells."""

    at: float
    arrived: float | None = None


class Window:
    """No more within a second than is permitted, counted where the service counts: when messages arrive.

    That is not known, but it is after they left and before the answer. Of the way to and fro, what the quickest answer
    took is no doubt; whatever took longer may have been late in arriving, and draws the next ones after it.
    """

    def __init__(self, per_second: float) -> None:
        most = max(1, int(per_second))
        self._span = most / per_second * WINDOW_MARGIN
        self._left: deque[Left] = deque(maxlen=most)
        self._quickest: float | None = None

    async def wait(self) -> Left:
        """Wait for the turn of one more; tell `answered` of it when the service has spoken."""
        while len(self._left) == self._left.maxlen:
            now, first = time.monotonic(), self._left[0]
            arrived = min(now, first.at + ARRIVED_BY_S) if first.arrived is None else first.arrived
            if (wait := arrived + self._span - now) <= 0:
                break
            # Looked at again soon: the first may have been answered, and others have gone meanwhile.
            await asyncio.sleep(min(wait, self._span / 10) if first.arrived is None else wait)
        self._left.append(left := Left(time.monotonic()))
        return left

    def answered(self, left: Left) -> None:
        now = time.monotonic()
        took = now - left.at
        self._quickest = took if self._quickest is None else min(took, self._quickest + FORGETTING_S)
        left.arrived = max(left.at, now - self._quickest)


class Outage:
    """Whether the service is down. While it is, one message at a time finds out whether it is back."""

    def __init__(self) -> None:
        self._failing: set[str] = set()
        self._rest = FIRST_REST
        self._rested_at: datetime | None = None

    @property
    def on(self) -> bool:
        return len(self._failing) >= OUTAGE_CHATS

    def failed(self, address: str, now: datetime) -> None:
        """A send failed and the fault may be the service's."""
        if not self.on:
            self._failing.add(address)
        # Many may fail at once when it begins; only what was tried after a rest makes the next one longer.
        if self.on and (self._rested_at is None or not now < self._rested_at <= now + LONGEST_REST):
            self._rested_at, self._rest = now + self._rest, min(LONGEST_REST, 2 * self._rest)

    def succeeded(self) -> bool:
        """A send went well. True: that ends an outage."""
        ended = self.on
        self._failing.clear()
        self._rest, self._rested_at = FIRST_REST, None
        return ended

    def most(self, now: datetime) -> int | None:
        """How many messages may be tried now; None: as many as the pace permits."""
        if not self.on:
            return None
        rests = self._rested_at is not None and now < self._rested_at <= now + LONGEST_REST
        return 0 if rests else 1
