"""Lives of the service that end by SIGKILL, and the account of what was lost or came twice.

Athletes write without pause to a stand-in of the Bot API that fails on purpose, pain questions fall due all the while,
and the service is killed in the midst of it and started again: one process that polls, or replicas behind a webhook.
"""

from __future__ import annotations

import asyncio
import contextlib
import os
import random
import re
import socket
import subprocess
import sys
import time
from collections import Counter
from collections.abc import Callable, Iterator
from dataclasses import dataclass, field
from datetime import timedelta
from pathlib import Path

import sqlalchemy as sa
from sqlmodel import Session, col, select

from bot.channels.telegram import CHANNEL
from bot.clock import SystemClock
from bot.conversation.moments import PAIN_MORNING
from storage import due, outbox, persons
from storage.database import reading_engine, writing_engine
from storage.due import Due
from storage.fact_tables import Report
from storage.inbox import Incoming
from storage.outbox import Outgoing
from storage.persons import Who
from storage.store import Store, sqlite_path
from tests.bot_api_server import BotApiServer, Trouble

ATHLETES = 12
COACH_CHAT = 900
SECRET = "a-secret-only-for-tests"
LONGEST_SETTLING_S = 900  # a chat takes a message a second, and hundreds may be owed to one
ROSTER = """
[coach]
name = "Inês"
timezone = "Europe/Lisbon"
summary = {{ day = "sunday", at = "18:00" }}
{athletes}
"""
ATHLETE = """
[[athlete]]
handle = "a{n}"
name = "A{n}"
timezone = "Europe/Lisbon"
language = "en"
unit = "kg"
bodyweight_kg = 70.0
plate_step_kg = 1.25
equipment = ["bar", "rings", "belt"]
training_days = ["monday", "thursday"]
plan_at = "00:00"
ladder = "one_arm_pull_up"
screened = true
tests = [ {{ date = 2026-01-02, movement = "pull_up", reps = 5, load_kg = 15.0, rpe = 9.0 }} ]
"""


@dataclass
class Account:
    """What was asked of the service, and what became of it."""

    kills: int = 0
    reports: list[int] = field(default_factory=list)  # update ids
    planted: list[tuple[int, str]] = field(default_factory=list)  # athlete and day of a row due
    figures: dict[str, int] = field(default_factory=dict)

    @property
    def lost(self) -> int:
        return sum(value for name, value in self.figures.items() if name.startswith("lost"))


class Trial:
    """One database, one stand-in, many lives."""

    def __init__(self, home: Path, url: str, seed: int, replicas: int = 1, alive_s: tuple[float, float] = (0.8, 4.0)):
        self.home, self.url, self.replicas, self.alive_s = home, url, replicas, alive_s
        self.rng = random.Random(seed)
        self.server = BotApiServer(keep_rates=False)
        self.account = Account()
        self.ports = free_ports(replicas) if replicas > 1 else []
        self.lives: list[subprocess.Popen[bytes]] = []
        self._coach_code = ""

    async def run(self, kills: int, wait_for_leases: bool = True) -> Account:
        """Without `wait_for_leases`, claims of the dead are ended by hand (a lease is most of a minute)."""
        self.server.replicas = [f"http://127.0.0.1:{port}" for port in self.ports]
        await self.server.start()
        try:
            self._load()
            self.lives = [self._start(at) for at in range(self.replicas)]
            await self._join()
            self._plant(kills)
            for _ in range(kills):
                await self._live_and_die()
            self.server.troubles.clear()
            if not wait_for_leases:
                await self._start_anew()
            await self._settle()
        finally:
            for life in self.lives:
                life.terminate()
            for life in self.lives:
                with contextlib.suppress(subprocess.TimeoutExpired):
                    life.wait(timeout=20)
                life.kill()
            await self.server.stop()
        self.account.figures = self._verdict()
        return self.account

    # ---- the service ----------------------------------------------------------------------------------------------

    def _environment(self, replica: int) -> dict[str, str]:
        made = os.environ | {
            "SLOWRUNG_TELEGRAM_TOKEN": self.server.token,
            "SLOWRUNG_TELEGRAM_API_URL": self.server.url,
            "SLOWRUNG_DATABASE_URL": self.url,
            "SLOWRUNG_HOME": str(self.home),
            "SLOWRUNG_MESSAGES_PER_SECOND": "500",
        }
        if self.ports:
            made |= {
                "SLOWRUNG_LISTEN": f"127.0.0.1:{self.ports[replica]}",
                "SLOWRUNG_WEBHOOK_URL": "http://127.0.0.1:1",  # the stand-in knows where that leads
                "SLOWRUNG_WEBHOOK_SECRET": SECRET,
                "SLOWRUNG_REPLICAS": str(self.replicas),
            }
        return made

    def _start(self, replica: int) -> subprocess.Popen[bytes]:
        with (self.home / f"service-{replica}.log").open("ab") as log:
            return subprocess.Popen(
                [sys.executable, "-m", "bot.main", "serve"], env=self._environment(replica), stderr=log
            )

    def _load(self) -> None:
        path = self.home / "roster.toml"
        path.write_text(ROSTER.format(athletes="".join(ATHLETE.format(n=n) for n in range(ATHLETES))), encoding="utf-8")
        run = subprocess.run(
            [sys.executable, "-m", "bot.main", "roster", "load", str(path)],
            env=self._environment(0),
            capture_output=True,
            text=True,
            check=True,
        )
        self._coach_code = re.findall(r"/start (\S+)", run.stdout)[0]

    async def _live_and_die(self) -> None:
        until = time.monotonic() + self.rng.uniform(*self.alive_s)
        while time.monotonic() < until:
            self._say()
            self._trouble()
            await asyncio.sleep(self.rng.uniform(0.0, 0.12))
        victim = self.rng.randrange(self.replicas)
        self.lives[victim].kill()
        self.lives[victim].wait()
        self.account.kills += 1
        self.lives[victim] = self._start(victim)

    async def _start_anew(self) -> None:
        """Stop everybody as an operator does, end what claims are left, and start."""
        for life in self.lives:
            life.terminate()
        for life in self.lives:
            await asyncio.to_thread(life.wait, 30)
        await asyncio.to_thread(end_claims, self.url)
        self.lives = [self._start(at) for at in range(self.replicas)]

    # ---- what people do and what falls due ------------------------------------------------------------------------

    async def _join(self) -> None:
        self.server.says(COACH_CHAT, f"/start {self._coach_code}")
        await self._until(lambda: bool(self.server.texts(COACH_CHAT)))
        for n in range(ATHLETES):
            self.server.says(COACH_CHAT, f"invite a{n}")
        await self._until(lambda: len(self._codes()) >= ATHLETES)
        for n, code in enumerate(self._codes()):
            self.server.says(n + 1, f"/start {code}")
        await self._until(lambda: all(self.server.texts(n + 1) for n in range(ATHLETES)))

    def _codes(self) -> list[str]:
        return re.findall(r"/start ([\w-]{20,})", "\n".join(self.server.texts(COACH_CHAT)))

    def _plant(self, kills: int) -> None:
        """Pain questions, a few each second of the run. Their days lie ahead, so that each is one of its own."""
        store, now = Store.open(self.url), SystemClock().now()
        length_s = kills * sum(self.alive_s) / 2
        with contextlib.closing(store), store.transaction() as tx:
            coach = persons.all_coaches(tx)[0]
            for athlete in persons.athletes_of(tx, coach.id or 0):
                who = Who("athlete", athlete.id or 0)
                for day in range(1, 1 + max(3, int(length_s / 3))):
                    at = now + timedelta(seconds=self.rng.uniform(0, length_s))
                    due.schedule(tx, who, PAIN_MORNING, now.date() + timedelta(days=1 + day), at)
                    self.account.planted.append((who.id, (now.date() + timedelta(days=1 + day)).isoformat()))

    def _say(self) -> None:
        """A report that differs from every other, so that each must be one fact.

        Ten thousand of them stay below loads that are asked about and not written down.
        """
        n = len(self.account.reports) + 1
        sets, reps, load = 2 + n % 5, 1 + n // 5 % 9, 1 + n // 45 * 0.25
        said = self.server.says(1 + n % ATHLETES, f"dips {sets}x{reps} +{load}kg, bw {70 + n % 30 / 10}")
        self.account.reports.append(said)

    def _trouble(self) -> None:
        how = self.rng.choice(["refuse", "drop", "accept_and_drop", None, None, None])
        if how is not None and len(self.server.troubles) < 3:
            polled = ["sendMessage", "sendMessage", "getUpdates"]
            method = self.rng.choice(["sendMessage"] if self.ports else polled)
            retry = 1 if self.rng.random() < 0.3 else None
            status = 429 if retry else 500
            self.server.troubles.append(Trouble(how, method, status=status, retry_after=retry))  # type: ignore[arg-type]
        self.server.troubles[:] = [one for one in self.server.troubles if one.times > 0]

    # ---- the account ----------------------------------------------------------------------------------------------

    async def _settle(self) -> None:
        """Wait until nothing waits at the service, nothing is unhandled, due or unsent."""
        with contextlib.suppress(TimeoutError):
            await self._until(lambda: not self.server.waiting() and self._open() == 0, LONGEST_SETTLING_S, 0.5)

    def _open(self) -> int:
        with looking(self.url) as tx:
            counts = [
                sa.select(sa.func.count()).where(col(Incoming.handled_at).is_(None)),
                sa.select(sa.func.count()).where(
                    col(Outgoing.sent_at).is_(None), col(Outgoing.given_up_because).is_(None)
                ),
                sa.select(sa.func.count()).where(col(Due.done_at).is_(None), col(Due.due_at) <= SystemClock().now()),
            ]
            return sum(int(tx.connection().execute(count).scalar_one()) for count in counts)

    async def _until(self, done: Callable[[], bool], most_s: float = 60.0, every_s: float = 0.1) -> None:
        for _ in range(int(most_s / every_s)):
            if done():
                return
            await asyncio.sleep(every_s)
        raise TimeoutError(f"the service did not answer; its log is in {self.home}")

    def _verdict(self) -> dict[str, int]:
        with looking(self.url) as tx:
            kept = {row.update_key: row for row in tx.exec(select(Incoming).where(Incoming.channel == CHANNEL))}
            reports = Counter(tx.exec(select(Report.cause).where(col(Report.cause).is_not(None))))
            owed = list(tx.exec(select(Outgoing).where(Outgoing.channel == CHANNEL)))
            dues = {(row.athlete_id, row.for_date.isoformat()): row for row in tx.exec(select(Due))
                    if row.kind == PAIN_MORNING}  # fmt: skip
            tx.expunge_all()
        mine = [kept.get(str(update)) for update in self.account.reports]
        sent = [row for row in owed if row.sent_at is not None]
        arrived = {message.message_id for message in self.server.accepted}
        asked = Counter(row.cause for row in owed)
        fell_due = [dues.get(one) for one in self.account.planted]
        return {
            "kills": self.account.kills,
            "reports sent": len(mine),
            "lost: not in the inbox": sum(row is None for row in mine),
            "lost: never handled": sum(
                row is not None and (row.handled_at is None or row.set_aside_because is not None) for row in mine
            ),
            "lost: handled without a fact": sum(row is not None and row.id not in reports for row in mine),
            "facts doubled": sum(count > 1 for count in reports.values()),
            "fell due": len(fell_due),
            "lost: due and not done": sum(row is None or row.done_at is None for row in fell_due),
            "lost: due and not asked": sum(row is not None and asked[f"due:{row.id}"] != 1 for row in fell_due),
            "messages owed": len(owed),
            "lost: never sent": sum(row.sent_at is None and row.given_up_because != "stale" for row in owed),
            "lost: marked sent, never arrived": sum(int(row.service_id or 0) not in arrived for row in sent),
            "repeated: taken, and the line broke": len(self.server.unanswered),
            "repeated: after a crash": len(arrived) - len(sent) - len(self.server.unanswered),
        }


@contextlib.contextmanager
def looking(url: str) -> Iterator[Session]:
    """A look into the database beside the service, without opening it as the service does."""
    engine = reading_engine(url) if sqlite_path(url) is not None else writing_engine(url)
    with Session(engine) as tx:
        yield tx
    engine.dispose()


def free_ports(count: int) -> list[int]:
    """Ports of loopback that nobody listens on just now."""
    held = [socket.create_server(("127.0.0.1", 0)) for _ in range(count)]
    ports = [one.getsockname()[1] for one in held]
    for one in held:
        one.close()
    return ports


def end_claims(url: str) -> None:
    """As if the lease of those who died had run out: spares a test the wait, once nobody sends any more."""
    store = Store.open(url)
    with contextlib.closing(store), store.transaction() as tx:
        outbox.release(tx, CHANNEL)
