"""The whole service in one process, at the stand-in for the Bot API: for journeys through Telegram."""

from __future__ import annotations

import asyncio
import contextlib
import re
from collections.abc import AsyncIterator, Callable, Iterator
from dataclasses import dataclass
from pathlib import Path

from pydantic import SecretStr
from sqlmodel import Session

from bot import joining, serve
from bot.channels.telegram import CHANNEL, make_bot
from bot.clock import SystemClock
from bot.roster import parse_roster
from bot.settings import Settings
from planner.facts import Record
from storage import chats, outbox, persons
from storage.database import reading_engine
from storage.persons import Who
from storage.records import record
from storage.store import Store
from tests.bot_api_server import BotApiServer

COACH, MIRA, TOMAS, STRANGER = 5_000_000_001, 5_000_000_002, 5_000_000_003, 5_000_000_009

ROSTER = """
[coach]
name = "Inês"
timezone = "Europe/Lisbon"

[[athlete]]
handle = "mira"
name = "Mira <b>&_*"
timezone = "Europe/Zurich"
bodyweight_kg = 62.0
equipment = ["bar", "rings", "belt"]
training_days = ["monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday"]
plan_at = "00:00"
screened = true
tests = [ { date = 2026-01-02, movement = "pull_up", reps = 5, load_kg = 15.0, rpe = 9.0 } ]

[[athlete]]
handle = "tomas"
name = "Tomás"
timezone = "Europe/Lisbon"
bodyweight_kg = 78.0
equipment = ["bar", "rings", "belt"]
training_days = ["monday", "thursday"]
plan_at = "00:00"
screened = true
tests = [ { date = 2026-01-02, movement = "pull_up", reps = 5, load_kg = 15.0, rpe = 9.0 } ]
"""


async def until(true: Callable[[], object], seconds: float = 20.0) -> None:
    """Wait for something to become true; a journey that never gets there fails here."""
    for _ in range(int(seconds / 0.02)):
        if true():
            return
        await asyncio.sleep(0.02)
    raise AssertionError("waited in vain")


@dataclass
class Town:
    """The service, its database, and the people writing to it."""

    api: BotApiServer
    settings: Settings
    coach_code: str = ""

    def load_roster(self) -> None:
        store = Store.open(self.settings.database)
        with contextlib.closing(store), store.transaction() as tx:
            told = joining.load(tx, parse_roster(ROSTER), SystemClock().now())
        self.coach_code = codes_in([told])[0]

    def record_of(self, handle: str) -> Record:
        with self._looking() as tx:
            coach = persons.all_coaches(tx)[0]
            athlete = persons.athlete_by_handle(tx, coach.id or 0, handle)
            assert athlete is not None
            return record(tx, athlete.id or 0)

    def reports_of(self, handle: str) -> int:
        return sum(not session.is_test for session in self.record_of(handle).sessions)

    def owed(self) -> bool:
        with self._looking() as tx:
            return outbox.next_open_at(tx) is not None

    @contextlib.contextmanager
    def _looking(self) -> Iterator[Session]:
        """A look into the database beside the service, without opening it as the service does."""
        engine = reading_engine(self.settings.database)
        with Session(engine) as tx:
            yield tx
        engine.dispose()

    @contextlib.asynccontextmanager
    async def running(self) -> AsyncIterator[serve.Service]:
        """The service runs while this is open, and stops as on SIGTERM."""
        store = Store.open(self.settings.database, self.settings.backups)
        bot = make_bot(self.settings.token(), self.settings.telegram_api_url)
        service = serve.Service(self.settings, store, bot, SystemClock())
        task = asyncio.create_task(service.run())
        try:
            yield service
        finally:
            service.stop()
            await asyncio.wait_for(task, 20)
            store.close()

    def everyone_is_here(self) -> None:
        """As `everyone_joins`, but without a word said: for journeys that begin later."""
        store, now = Store.open(self.settings.database), SystemClock().now()
        with contextlib.closing(store), store.transaction() as tx:
            coach = persons.all_coaches(tx)[0]
            bound = {COACH: Who("coach", coach.id or 0)}
            for chat, handle in ((MIRA, "mira"), (TOMAS, "tomas")):
                athlete = persons.athlete_by_handle(tx, coach.id or 0, handle)
                assert athlete is not None
                bound[chat] = Who("athlete", athlete.id or 0)
            for chat, who in bound.items():
                chats.bind_chat(tx, CHANNEL, str(chat), who, now)
        self.api.known_chats.update(bound)

    async def everyone_joins(self) -> None:
        """The coach by the code of the roster, the athletes by the codes that the coach is given."""
        await self.joins(COACH, self.coach_code)
        for chat, handle in ((MIRA, "mira"), (TOMAS, "tomas")):
            before = len(self.api.texts(COACH))
            self.api.says(COACH, f"invite {handle}")
            await until(lambda before=before: codes_in(self.api.texts(COACH)[before:]))
            await self.joins(chat, codes_in(self.api.texts(COACH)[before:])[0])

    async def joins(self, chat: int, code: str) -> None:
        before = len(self.api.texts(chat))
        self.api.says(chat, f"/start {code}")
        await until(lambda: len(self.api.texts(chat)) > before)


def codes_in(texts: list[str]) -> list[str]:
    return re.findall(r"/start (\S{32})", "\n".join(texts))


@contextlib.asynccontextmanager
async def town(folder: Path) -> AsyncIterator[Town]:
    """A fresh database with the roster in it, and the stand-in running; the service is not started yet."""
    api = BotApiServer()
    await api.start()
    settings = Settings(
        telegram_token=SecretStr(api.token),
        telegram_api_url=api.url,
        database_url=f"sqlite:///{folder / 'bot.sqlite3'}",
        home=folder,
    )
    try:
        made = Town(api, settings)
        made.load_roster()
        yield made
    finally:
        await api.stop()
