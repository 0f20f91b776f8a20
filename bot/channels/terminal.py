"""`slowrung chat`: the bot in a terminal, as any of the athletes or as the coach, with the machine's clock."""

from __future__ import annotations

import asyncio
import shutil
import sys
import textwrap
from collections.abc import AsyncIterator
from datetime import timedelta
from pathlib import Path

from bot import conversation, schedule, worker
from bot.clock import Clock, SystemClock
from bot.demo import demo_roster
from bot.settings import Settings
from bot.wording import wording_for
from storage import chats, inbox, loading, outbox, persons
from storage.inbox import IncomingUpdate
from storage.outbox import Outgoing
from storage.persons import Who
from storage.roster import Roster
from storage.store import Store

CHANNEL = "terminal"
COACH = "coach"
DEMO_FILE = "demo.sqlite3"
SWEEP_S = 10


class AnotherRoster(ValueError):
    """The database has another coach's people; the sentence says what can be done."""


def clear_demo(settings: Settings) -> None:
    """Throw away what the demo wrote."""
    for path in settings.home.glob(f"{DEMO_FILE}*"):
        path.unlink()


def chat_here(settings: Settings, database: str | None, roster: Roster | None) -> None:
    """Talk until the end of input. Without `database` the demo's own file in the user's data folder is used, with the
    demo's roster where it is new and no other is given.

    Raises AnotherRoster; then nothing of `roster` was put in.
    """
    demo = settings.home / DEMO_FILE
    store = Store.open(f"sqlite:///{demo}" if database is None else database, settings.backups)
    try:
        terminal = Terminal(store, SystemClock())
        if roster is None and database is None and not terminal.coaches():
            roster = demo_roster(terminal.clock.now())
        terminal.begin(roster)
        asyncio.run(terminal.run(demo if database is None else None))
    finally:
        store.close()


class Terminal:
    """A screen on which one person at a time is looked at; what others are sent waits behind their name."""

    def __init__(self, store: Store, clock: Clock) -> None:
        self.store, self.clock = store, clock
        self.say = wording_for("en")
        self.who = COACH
        self.handles: list[str] = []
        self.unseen: dict[str, list[Outgoing]] = {}
        self.buttons: dict[str, list[tuple[str, str]]] = {}
        self._count = 0
        self._shown_a_plan = False

    def coaches(self) -> list[str]:
        """The names of the coaches whose people are here."""
        with self.store.reading() as tx:
            return [coach.name for coach in persons.all_coaches(tx)]

    def begin(self, roster: Roster | None) -> None:
        """Put the roster in, as it is loaded for the service, and give everyone a place on this terminal.

        Raises AnotherRoster.
        """
        now = self.clock.now()
        there = self.coaches()
        if roster is not None and there and roster.coach.name not in there:
            raise AnotherRoster(
                f"The people of {', '.join(there)} are in this database, and the roster is {roster.coach.name}'s. "
                "Leave --roster out to go on with them, or give it another --database (the demo's: --fresh)."
            )
        with self.store.transaction() as tx:
            fresh: list[int] = []
            if roster is not None:
                loaded = loading.load_roster(tx, roster, now)
                fresh = [loaded.athlete_ids[handle] for handle in loaded.added]
                conversation.begin_coach(tx, loaded.coach_id, now)
                conversation.at_new_hours(tx, loaded.moved, now)
            for coach in persons.all_coaches(tx):
                assert coach.id is not None
                chats.bind_chat(tx, CHANNEL, COACH, Who("coach", coach.id), now)
                # In the roster's order: the first is who one begins as.
                for athlete in sorted(persons.athletes_of(tx, coach.id), key=lambda one: one.id or 0):
                    assert athlete.id is not None
                    chats.bind_chat(tx, CHANNEL, athlete.handle, Who("athlete", athlete.id), now)
                    self.handles.append(athlete.handle)
            for athlete_id in fresh:
                conversation.begin(tx, athlete_id, now)
        self.who = self.handles[0] if self.handles else COACH

    async def run(self, demo: Path | None) -> None:
        self.show(self.say.say("chat-hello", names=", ".join(self.handles)))
        if demo is not None:
            self.show(self.say.say("chat-demo", file=str(demo)))
        self.catch_up()
        self.look_at(self.who)
        if not self._shown_a_plan and self.who != COACH:
            self.hear(self.say.say("chat-first-question"))
        sweeping = asyncio.create_task(self._sweep_now_and_then())
        try:
            async for line in _lines(lambda: f"{self.who}> "):
                if not self.typed(line.strip()):
                    break
        finally:
            sweeping.cancel()

    def typed(self, line: str) -> bool:
        """One line of the person at the keyboard. False: they leave."""
        word = line.casefold().lstrip("/")
        if word in ("quit", "exit", "bye"):
            return False
        if not line:
            return True
        if (name := self._other_person(word, line.startswith("/"))) is not None:
            self.look_at(name)
        elif word == COACH or (word in self.handles and self.who != COACH):
            self.look_at(word)
        elif line.startswith("/") and word.isdigit():
            self.press(int(word))
        else:
            self.hear(line)
        return True

    def _other_person(self, word: str, surely: bool) -> str | None:
        """Whom "as mira" or "me" asks to be; "as planned" and "me duele el codo" are said to the bot."""
        command, _, name = word.partition(" ")
        if word == "me":
            return self.handles[0] if self.handles else COACH
        known = name.strip() in (COACH, *self.handles)
        return name.strip() if command in ("me", "as") and name and (known or surely) else None

    def look_at(self, who: str) -> None:
        if who != COACH and who not in self.handles:
            self.show(self.say.say("chat-nobody", name=who, names=", ".join([COACH, *self.handles])))
            return
        self.who = who
        self.show(self.say.say("chat-as", name=who))
        for message in self.unseen.pop(who, []):
            self._print(message)

    def hear(self, text: str) -> None:
        label = next(
            (data for name, data in self.buttons.get(self.who, []) if name.casefold() == text.casefold()), None
        )
        if label is not None:
            self._accept("press", text, {"data": label})
        else:
            self._accept("text", text, {})

    def press(self, number: int) -> None:
        buttons = self.buttons.get(self.who, [])
        if not 1 <= number <= len(buttons):
            self.show(self.say.say("chat-no-button", number=number))
            return
        label, data = buttons[number - 1]
        self._accept("press", label, {"data": data})

    def _accept(self, kind: inbox.IncomingKind, text: str, data: dict[str, str]) -> None:
        now = self.clock.now()
        self._count += 1
        key = f"{now.timestamp():.6f}-{self._count}"
        with self.store.transaction() as tx:
            inbox.accept(tx, [IncomingUpdate(CHANNEL, key, self.who, kind, text, now, data)], now)
        worker.handle_all(self.store, now)
        self.catch_up()

    def catch_up(self) -> None:
        """Do what is due and show what is owed."""
        now = self.clock.now()
        schedule.sweep(self.store, now)
        while True:
            with self.store.transaction() as tx:
                outbox.drop_stale(tx, now)
                claimed = outbox.claim(tx, now, 50, CHANNEL, timedelta(seconds=30))
                for message in claimed:
                    assert message.id is not None
                    outbox.mark_sent(tx, message.id, now)
            if not claimed:
                return
            for message in claimed:
                if message.address == self.who:
                    self._print(message)
                else:
                    self.unseen.setdefault(message.address, []).append(message)
                    self.show(self.say.say("chat-elsewhere", name=message.address))

    def _print(self, message: Outgoing) -> None:
        self.show(f"\n{message.text}")
        self._shown_a_plan = self._shown_a_plan or message.plan is not None
        if message.buttons:
            self.buttons[message.address] = [(label, data) for label, data in message.buttons]
            self.show("   ".join(f"/{at} {label}" for at, (label, _) in enumerate(message.buttons, 1)))

    def show(self, text: str) -> None:
        if sys.stdout.isatty():
            text = "\n".join(_wrapped(line, shutil.get_terminal_size().columns) for line in text.split("\n"))
        print(text, flush=True)

    async def _sweep_now_and_then(self) -> None:
        while True:
            await asyncio.sleep(SWEEP_S)
            self.catch_up()


def _wrapped(line: str, width: int) -> str:
    """A line broken between words, what follows set in under it."""
    indent = " " * (len(line) - len(line.lstrip()) + 2)
    return textwrap.fill(line, max(20, width - 1), subsequent_indent=indent, replace_whitespace=False) or line


async def _lines(prompt: object) -> AsyncIterator[str]:
    """Lines as they are typed; plain reading where there is no terminal."""
    assert callable(prompt)
    if not (sys.stdin.isatty() and sys.stdout.isatty()):
        loop = asyncio.get_running_loop()
        while True:
            line = await loop.run_in_executor(None, sys.stdin.readline)
            if not line:
                return
            yield line
    from prompt_toolkit import PromptSession
    from prompt_toolkit.patch_stdout import patch_stdout

    session: PromptSession[str] = PromptSession()
    with patch_stdout():
        while True:
            try:
                yield await session.prompt_async(lambda: str(prompt()))
            except (EOFError, KeyboardInterrupt):
                return
