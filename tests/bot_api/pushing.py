"""Webhook mode: updates pushed to the replicas behind one address, as the service and a plain proxy do it."""

from __future__ import annotations

import asyncio
from collections import defaultdict, deque
from collections.abc import Callable
from typing import Any

import httpx

SECRET_HEADER = "X-Telegram-Bot-Api-Secret-Token"
NO_ANSWER_S = 60.0
LONGEST_WAIT_S = 60.0
LONGEST_RETRY_AFTER_S = 3600.0

Lane = tuple[int, bool]  # a chat's messages and its presses are two queues (source: tdlib/telegram-bot-api)


class Pusher:
    """One update in flight a lane; 2xx confirms, else one retry at once, then after 2, 4, 8 … seconds.

    The proxy in front of the replicas hands requests to them in turn and knows nothing of their health.
    """

    def __init__(self, replicas: list[str], path: str, secret: str, confirmed: Callable[[int], None]) -> None:
        self.replicas, self.path, self.secret = replicas, path, secret
        self.statuses: list[int] = []  # of every answer; 0 where there was none
        self._confirmed = confirmed
        self._lanes: dict[Lane, deque[dict[str, Any]]] = defaultdict(deque)
        self._working: dict[Lane, asyncio.Task[None]] = {}
        self._turn = 0
        self._client = httpx.AsyncClient(timeout=NO_ANSWER_S)

    def push(self, update: dict[str, Any], lane: Lane) -> None:
        self._lanes[lane].append(update)
        if lane not in self._working:
            self._working[lane] = asyncio.create_task(self._work(lane))

    async def stop(self) -> None:
        tasks = list(self._working.values())
        for task in tasks:
            task.cancel()
        await asyncio.gather(*tasks, return_exceptions=True)
        await self._client.aclose()

    async def _work(self, lane: Lane) -> None:
        queue = self._lanes[lane]
        while queue:
            await self._until_taken(queue[0])
            self._confirmed(queue.popleft()["update_id"])
        del self._working[lane]

    async def _until_taken(self, update: dict[str, Any]) -> None:
        tries = 0
        while True:
            status, wanted = await self._post(update)
            self.statuses.append(status)
            if 200 <= status < 300:
                return
            tries += 1
            own = 0.0 if tries == 1 else min(LONGEST_WAIT_S, 2.0 ** (tries - 1))
            await asyncio.sleep(own if wanted is None else wanted)

    async def _post(self, update: dict[str, Any]) -> tuple[int, float | None]:
        """(status, the pause that was asked for)."""
        self._turn += 1
        target = self.replicas[self._turn % len(self.replicas)] + self.path
        try:
            answer = await self._client.post(target, json=update, headers={SECRET_HEADER: self.secret})
        except httpx.HTTPError:
            return 0, None
        after = answer.headers.get("retry-after")
        return answer.status_code, None if after is None else min(LONGEST_RETRY_AFTER_S, float(after))
