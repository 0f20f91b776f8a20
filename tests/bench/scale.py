"""The morning of many athletes: plans computed, rendered and in the outbox; then delivery at the permitted rate.

`python -m tests.bench.scale [--athletes N] [--reports N] [--database postgresql://…] [--deliver SECONDS]`

A roster like the demo's, made in code: a coach for each fifty athletes, everyone with a chat, a test and some told
sessions, and all of them due in the same minute. A named database must be empty. The sweep runs in a process of its
own, so that its peak of memory is its own.
"""

from __future__ import annotations

import argparse
import asyncio
import json
import resource
import subprocess
import sys
import tempfile
import time
from collections.abc import Iterator
from contextlib import closing
from datetime import UTC, date, datetime, timedelta
from datetime import time as clock_time
from pathlib import Path

import sqlalchemy as sa
from sqlmodel import Session as Tx
from sqlmodel import col

from bot import schedule
from bot.channels.telegram import CHANNEL, Telegram, make_bot
from bot.conversation.moments import PLAN
from bot.delivery import Delivery
from planner.facts import Session, Weekly, WorkSet
from storage import chats, due, facts
from storage.loading import load_roster
from storage.outbox import Outgoing
from storage.persons import Who
from storage.roster import Roster, RosterAthlete, RosterCoach, RosterTest
from storage.store import Store
from tests.bot_api_server import BotApiServer

MONDAY = datetime(2027, 3, 1, 7, 0, tzinfo=UTC)
A_COACH = 50
BODIES = ((62.0, 5, 20.0), (78.5, 3, 45.0), (55.0, 4, 0.0), (70.0, 5, 15.0))  # kg, repetitions and load of the test
PERMITTED = 30.0


def rosters(athletes: int) -> Iterator[Roster]:
    for start in range(0, athletes, A_COACH):
        those = tuple(_athlete(n) for n in range(start, min(athletes, start + A_COACH)))
        yield Roster(RosterCoach(f"Coach {start // A_COACH}", "Europe/Lisbon"), those)


def _athlete(n: int) -> RosterAthlete:
    body, reps, load = BODIES[n % len(BODIES)]
    return RosterAthlete(
        handle=f"a{n}",
        name=f"A{n}",
        timezone="Europe/Lisbon",
        bodyweight_kg=body,
        plan_at=clock_time(7),
        schedule=Weekly(frozenset({0, 3} if n % 2 else {0, 2, 4})),
        equipment=frozenset({"bar", "rings", "belt", "bands"}),
        screened=True,
        tests=(RosterTest(date(2027, 1, 2), "pull_up", reps, load, 9.0),),
    )


def fill(url: str, athletes: int, reports: int) -> None:
    """Everyone in, with a chat, sessions told and the plan due."""
    store = Store.open(url)
    began = MONDAY - timedelta(days=56)
    with closing(store):
        for roster in rosters(athletes):
            with store.transaction() as tx:
                loaded = load_roster(tx, roster, began)
                chats.bind_chat(tx, CHANNEL, str(900_000_000 + loaded.coach_id), Who("coach", loaded.coach_id), began)
                for athlete_id, entry in zip(loaded.athlete_ids.values(), roster.athletes, strict=True):
                    _settle_in(tx, athlete_id, entry, reports)


def _settle_in(tx: Tx, athlete_id: int, entry: RosterAthlete, reports: int) -> None:
    who = Who("athlete", athlete_id)
    chats.bind_chat(tx, CHANNEL, str(1_000_000 + athlete_id), who, MONDAY)
    _, reps, load = BODIES[athlete_id % len(BODIES)]
    for back in range(reports, 0, -1):
        on = MONDAY.date() - timedelta(days=(back + 1) // 2 * 7 - (3 if back % 2 else 0))
        sets = tuple(WorkSet("pull_up", reps=reps, load_kg=load, rpe=8.0 if at == 3 else None) for at in range(4))
        facts.add(tx, athlete_id, Session(on, sets), "athlete", MONDAY, None)
    due.schedule(tx, who, PLAN, MONDAY.date(), MONDAY)


def sweep(url: str) -> dict[str, float]:
    """The morning's sweep as the service does it: seconds, MiB at the peak, plans in the outbox."""
    store = Store.open(url)
    with closing(store):
        began, cpu = time.perf_counter(), time.process_time()
        while schedule.sweep(store, MONDAY):
            pass
        taken, used = time.perf_counter() - began, time.process_time() - cpu
        with store.reading() as tx:
            plans = (
                tx.connection().execute(sa.select(sa.func.count()).where(col(Outgoing.plan).is_not(None))).scalar_one()
            )
    peak = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024
    return {"seconds": taken, "cpu seconds": used, "peak MiB": peak, "plans in the outbox": plans}


async def deliver(url: str, seconds: float) -> dict[str, float]:
    """Delivery of the morning at the permitted rate, at a stand-in that keeps its own."""
    api = BotApiServer()
    root = await api.start()
    store, bot = Store.open(url), make_bot(api.token, root)
    await bot.initialize()
    with store.reading() as tx:
        api.known_chats.update(int(row[0]) for row in tx.connection().execute(sa.select(chats.chats.c.address)))

    async def in_thread(work):  # type: ignore[no-untyped-def]
        return await asyncio.to_thread(work)

    delivery = Delivery(store, Telegram(bot), _Morning(), PERMITTED, in_thread)
    began = time.perf_counter()
    while (taken := time.perf_counter() - began) < seconds:
        await delivery.deliver_once()
    refused = sum(status == 429 for _, status, _ in api.refused)
    accepted = len(api.accepted)
    await bot.shutdown()
    await api.stop()
    store.close()
    return {"messages a second": accepted / taken, "share of the rate": accepted / taken / PERMITTED, "429": refused}


class _Morning:
    """The clock of that morning, running."""

    def __init__(self) -> None:
        self._began = time.monotonic()

    def now(self) -> datetime:
        return MONDAY + timedelta(minutes=1, seconds=time.monotonic() - self._began)


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--athletes", type=int, default=10_000)
    parser.add_argument("--reports", type=int, default=8, help="sessions that each has told of")
    parser.add_argument("--database", default=None, help="an empty one; a SQLite file of its own where left out")
    parser.add_argument("--deliver", type=float, default=30.0, help="seconds of delivery afterwards")
    parser.add_argument("--only-sweep", metavar="URL", default=None, help=argparse.SUPPRESS)
    asked = parser.parse_args()
    if asked.only_sweep:
        print(json.dumps(sweep(asked.only_sweep)))
        return
    with tempfile.TemporaryDirectory() as folder:
        url = asked.database or f"sqlite:///{Path(folder) / 'scale.sqlite3'}"
        began = time.perf_counter()
        fill(url, asked.athletes, asked.reports)
        _tell("seconds to fill", time.perf_counter() - began)
        own = [sys.executable, "-m", "tests.bench.scale", "--only-sweep", url]
        for name, value in json.loads(subprocess.run(own, stdout=subprocess.PIPE, check=True).stdout).items():
            _tell(f"sweep: {name}", value)
        if asked.deliver:
            for name, value in asyncio.run(deliver(url, asked.deliver)).items():
                _tell(f"delivery: {name}", value)


def _tell(name: str, value: float) -> None:
    print(f"{name:32s}{value:10.2f}", flush=True)


if __name__ == "__main__":
    main()
