"""The morning of many athletes: plans computed, rendered and in the outbox.

`python -m tests.bench.scale [--athletes N] [--reports N] [--database postgresql://…] [--replicas N]`

A coach for each fifty athletes, everyone with a chat, a test, some weeks of plans and told sessions (`crowd.py`), and
all of them due in the same minute. A named database must be empty. The sweep runs in processes of its own, as many as
replicas are asked for, so that its peak of memory is its own.
"""

from __future__ import annotations

import argparse
import json
import resource
import subprocess
import sys
import tempfile
import time
from contextlib import closing
from pathlib import Path

import sqlalchemy as sa

from bot import garbage, schedule
from bot.serve import SLICE
from storage.database import run
from storage.due import dues, next_due_at
from storage.outbox import outgoing
from storage.store import Store
from tests.bench.crowd import MONDAY, fill

IN_OTHER_HANDS_S = 0.05


def sweep(url: str, most: int, replicas: int) -> dict[str, float]:
    """The morning's sweep as one of so many replicas does it, of about `most` athletes: seconds, MiB at the peak."""
    store = Store.open(url)
    with closing(store):
        garbage.look_seldom()
        began, cpu = time.perf_counter(), time.process_time()
        done = 0
        while done < most and _is_due(store):
            taken = schedule.sweep_and_beat(store, MONDAY, SLICE * replicas)
            done += taken
            if not taken:  # another has them all in its hands, and is done with them soon
                time.sleep(IN_OTHER_HANDS_S)
        taken, used = time.perf_counter() - began, time.process_time() - cpu
    peak = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024
    return {"seconds": taken, "cpu seconds": used, "peak MiB": peak}


def _is_due(store: Store) -> bool:
    with store.reading() as tx:
        at = next_due_at(tx)
    return at is not None and at <= MONDAY


def sweep_side_by_side(url: str, replicas: int, most: int) -> dict[str, float]:
    """The morning's sweep by so many processes: the slowest one's seconds, the largest one's MiB."""
    own = [sys.executable, "-m", "tests.bench.scale", "--only-sweep", url, "--most", str(most),
           "--replicas", str(replicas)]  # fmt: skip
    running = [subprocess.Popen(own, stdout=subprocess.PIPE) for _ in range(replicas)]
    told = [json.loads(one.communicate()[0].splitlines()[-1]) for one in running]
    with closing(Store.open(url)) as store, store.reading() as tx:
        plans = run(tx, sa.select(sa.func.count()).where(outgoing.c.plan.is_not(None))).scalar_one()
        messages = run(tx, sa.select(sa.func.count()).select_from(outgoing)).scalar_one()
        left = run(tx, sa.select(sa.func.count()).where(dues.c.done_at.is_(None), dues.c.due_at <= MONDAY)).scalar_one()
    seconds = max(one["seconds"] for one in told)
    return {
        "seconds": seconds,
        "ms an athlete": seconds / plans * 1000,
        "cpu seconds": sum(one["cpu seconds"] for one in told),
        "peak MiB": max(one["peak MiB"] for one in told),
        "plans in the outbox": plans,
        "all messages in the outbox": messages,
        "left undone": left,
    }


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--athletes", type=int, default=10_000)
    parser.add_argument("--reports", type=int, default=8, help="sessions told by those who train least")
    parser.add_argument("--database", default=None, help="an empty one; a SQLite file of its own where left out")
    parser.add_argument("--replicas", type=int, default=1, help="processes that sweep side by side (PostgreSQL)")
    parser.add_argument("--most", type=int, default=1_000_000, help="stop sweeping after so many a replica")
    parser.add_argument("--only-sweep", metavar="URL", default=None, help=argparse.SUPPRESS)
    asked = parser.parse_args()
    if asked.only_sweep:
        print(json.dumps(sweep(asked.only_sweep, asked.most, asked.replicas)))
        return
    with tempfile.TemporaryDirectory() as folder:
        url = asked.database or f"sqlite:///{Path(folder) / 'scale.sqlite3'}"
        began = time.perf_counter()
        for name, value in fill(url, asked.athletes, asked.reports).items():
            _tell(name, value)
        _tell("seconds to fill", time.perf_counter() - began)
        _tell("replicas that sweep", asked.replicas)
        for name, value in sweep_side_by_side(url, asked.replicas, asked.most).items():
            _tell(f"sweep: {name}", value)


def _tell(name: str, value: float) -> None:
    print(f"{name:36s}{value:12.2f}", flush=True)


if __name__ == "__main__":
    main()
