"""Kill the service at random moments, again and again, and count what was lost and what came twice.

`python -m tests.bench.crash [--kills N] [--seed N] [--database URL]`

Athletes write without pause to a stand-in of the Bot API that fails on purpose; the service is killed (SIGKILL) and
started again. In the end every update that was sent must be in the inbox and handled, each report must be one fact,
and every message owed must have reached the stand-in; more copies of a message than crashes are a fault.
"""

from __future__ import annotations

import argparse
import asyncio
import os
import random
import re
import subprocess
import sys
import tempfile
from collections import Counter
from dataclasses import dataclass, field
from pathlib import Path

from sqlmodel import col, select

from storage.fact_tables import Report
from storage.inbox import Incoming
from storage.outbox import Outgoing
from storage.store import Store
from tests.bot_api_server import BotApiServer, Trouble

ATHLETES = 6
COACH_CHAT = 900
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
class Tally:
    kills: int = 0
    sent: list[int] = field(default_factory=list)  # update ids
    reports: int = 0


class Trial:
    """One database, one stand-in, many lives of the service."""

    def __init__(self, home: Path, url: str, seed: int, replicas: int) -> None:
        self.home, self.url, self.replicas = home, url, replicas
        self.rng = random.Random(seed)
        self.server = BotApiServer(keep_rates=False)
        self.tally = Tally()
        self.coach_code = ""

    @property
    def environment(self) -> dict[str, str]:
        return os.environ | {
            "SLOWRUNG_TELEGRAM_TOKEN": self.server.token,
            "SLOWRUNG_TELEGRAM_API_URL": self.server.url,
            "SLOWRUNG_DATABASE_URL": self.url,
            "SLOWRUNG_HOME": str(self.home),
            "SLOWRUNG_MESSAGES_PER_SECOND": "500",
        }

    def command(self, *words: str) -> str:
        run = subprocess.run(
            [sys.executable, "-m", "bot.main", *words], env=self.environment, capture_output=True, text=True, check=True
        )
        return run.stdout

    def start(self) -> subprocess.Popen[bytes]:
        log = (self.home / "service.log").open("ab")
        return subprocess.Popen([sys.executable, "-m", "bot.main", "serve"], env=self.environment, stderr=log)

    async def run(self, kills: int) -> None:
        await self.server.start()
        self._load()
        service = self.start()
        await self._join()
        for _ in range(kills):
            until = asyncio.get_running_loop().time() + self.rng.uniform(0.6, 3.0)
            while asyncio.get_running_loop().time() < until:
                self._say()
                self._trouble()
                await asyncio.sleep(self.rng.uniform(0.0, 0.12))
            service.kill()
            service.wait()
            self.tally.kills += 1
            service = self.start()
        self.server.troubles.clear()
        await self._settle()
        service.terminate()
        service.wait(timeout=30)
        await self.server.stop()

    def _load(self) -> None:
        path = self.home / "roster.toml"
        path.write_text(ROSTER.format(athletes="".join(ATHLETE.format(n=n) for n in range(ATHLETES))), encoding="utf-8")
        told = self.command("roster", "load", str(path))
        self.coach_code = re.findall(r"/start (\S+)", told)[0]

    async def _join(self) -> None:
        self.server.says(COACH_CHAT, f"/start {self.coach_code}")
        await self._until(lambda: bool(self.server.texts(COACH_CHAT)))
        for n in range(ATHLETES):
            self.server.says(COACH_CHAT, f"invite a{n}")
        await self._until(lambda: len(self._codes()) >= ATHLETES)
        for n, code in enumerate(self._codes()):
            self.server.says(n + 1, f"/start {code}")
        await self._until(lambda: all(self.server.texts(n + 1) for n in range(ATHLETES)))

    def _codes(self) -> list[str]:
        return re.findall(r"/start ([\w-]{20,})", "\n".join(self.server.texts(COACH_CHAT)))

    def _say(self) -> None:
        """A report that differs from every other, so that each must be one fact."""
        self.tally.reports += 1
        n = self.tally.reports
        sets, reps, load = 2 + n % 5, 1 + n // 5 % 9, 1 + n // 45 * 0.5
        self.tally.sent.append(
            self.server.says(1 + n % ATHLETES, f"dips {sets}x{reps} +{load}kg, bw {70 + n % 30 / 10}")
        )

    def _trouble(self) -> None:
        how = self.rng.choice(["refuse", "drop", "accept_and_drop", None, None, None])
        if how is not None and len(self.server.troubles) < 3:
            method = self.rng.choice(["sendMessage", "sendMessage", "getUpdates"])
            retry = 1 if self.rng.random() < 0.3 else None
            status = 429 if retry else 500
            self.server.troubles.append(Trouble(how, method, status=status, retry_after=retry))  # type: ignore[arg-type]
        self.server.troubles[:] = [one for one in self.server.troubles if one.times > 0]

    async def _settle(self) -> None:
        """Wait until nothing is owed and nothing waits, two minutes at most."""
        store = Store.open(self.url) if self.url.startswith("postgresql") else None
        for _ in range(240):
            await asyncio.sleep(0.5)
            if not self.server.waiting() and self._open(store) == 0:
                break
        if store is not None:
            store.close()

    def _open(self, store: Store | None) -> int:
        """Rows not yet handled or sent, read beside the running service."""
        import sqlite3

        query = (
            "SELECT (SELECT count(*) FROM incoming WHERE handled_at IS NULL) + "
            "(SELECT count(*) FROM outgoing WHERE sent_at IS NULL AND given_up_because IS NULL)"
        )
        if store is None:
            with sqlite3.connect(f"file:{self.url.removeprefix('sqlite:///')}?mode=ro", uri=True, timeout=10) as read:
                return int(read.execute(query).fetchone()[0])
        import sqlalchemy as sa

        with store.reading() as tx:
            return int(tx.connection().execute(sa.text(query)).scalar_one())

    async def _until(self, done, most_s: float = 60.0) -> None:  # type: ignore[no-untyped-def]
        for _ in range(int(most_s / 0.1)):
            if done():
                return
            await asyncio.sleep(0.1)
        raise TimeoutError(f"the service did not answer; its log is in {self.home}")

    def verdict(self) -> dict[str, int]:
        store = Store.open(self.url)
        with store.reading() as tx:
            kept = {row.update_key: row for row in tx.exec(select(Incoming).where(Incoming.channel == "telegram"))}
            reports = Counter(tx.exec(select(Report.cause).where(col(Report.cause).is_not(None))))
            owed = list(tx.exec(select(Outgoing).where(Outgoing.channel == "telegram")))
            tx.expunge_all()
        store.close()
        mine = [kept.get(str(update)) for update in self.tally.sent]
        arrived = Counter((message.chat, message.text) for message in self.server.accepted)
        wanted = Counter((int(row.address), row.text) for row in owed if row.sent_at is not None)
        return {
            "kills": self.tally.kills,
            "reports sent": len(self.tally.sent),
            "lost: not in the inbox": sum(row is None for row in mine),
            "lost: never handled": sum(
                row is not None and (row.handled_at is None or row.set_aside_because is not None) for row in mine
            ),
            "lost: handled without a fact": sum(row is not None and row.id not in reports for row in mine),
            "facts doubled": sum(count > 1 for count in reports.values()),
            "messages owed": len(owed),
            "lost: never sent": sum(row.sent_at is None and row.given_up_because != "stale" for row in owed),
            "lost: marked sent, never arrived": sum((wanted - arrived).values()),
            "repeated": sum((arrived - wanted).values()),
        }


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--kills", type=int, default=200)
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--database", default=None, help="a SQLite file of its own where left out")
    asked = parser.parse_args()
    with tempfile.TemporaryDirectory() as folder:
        home = Path(folder)
        trial = Trial(home, asked.database or f"sqlite:///{home / 'crash.sqlite3'}", asked.seed, 1)
        asyncio.run(trial.run(asked.kills))
        for name, value in trial.verdict().items():
            print(f"{name:36s}{value:8d}")


if __name__ == "__main__":
    main()
