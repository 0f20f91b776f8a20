"""Kill the service at random moments, again and again, and count what was lost and what came twice.

`python -m tests.bench.crash [--kills N] [--seed N] [--database postgresql://…] [--replicas N]`

One process polls on a SQLite file of its own, unless a database is named; with more replicas they stand behind a
webhook, and each kill meets one of them. A named database must be empty. What is told is how many reports, due
messages and answers were lost (must be none) and how many came twice (at most one for each crash).
"""

from __future__ import annotations

import argparse
import asyncio
import tempfile
import time
from pathlib import Path

from tests.journeys.crashing import Trial


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--kills", type=int, default=200)
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--replicas", type=int, default=1)
    parser.add_argument("--database", default=None, help="an empty one; a SQLite file of its own where left out")
    asked = parser.parse_args()
    with tempfile.TemporaryDirectory() as folder:
        home = Path(folder)
        url = asked.database or f"sqlite:///{home / 'crash.sqlite3'}"
        began = time.perf_counter()
        account = asyncio.run(Trial(home, url, asked.seed, asked.replicas).run(asked.kills))
        for name, value in account.figures.items():
            print(f"{name:38s}{value:8d}")
        print(f"{'seconds':38s}{time.perf_counter() - began:8.0f}")


if __name__ == "__main__":
    main()
