"""Hostile updates through the handler by the hundred thousand: what broke, and what leaked from coach to coach.

`python -m tests.bench.fuzz [--updates N] [--seed N]`. Malformed JSON, huge texts, forged presses, names and ids of
another coach's people. Each thousand begins a database of its own, so that no history grows without end.
"""

from __future__ import annotations

import argparse
import time
from collections import Counter

from tests.journeys.hostile import marked

A_DATABASE = 1000


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--updates", type=int, default=100_000)
    parser.add_argument("--seed", type=int, default=1)
    asked = parser.parse_args()
    outcomes: Counter[str] = Counter()
    failures: Counter[str] = Counter()
    leaks = own = 0
    began = time.perf_counter()
    for start in range(0, asked.updates, A_DATABASE):
        with marked(asked.seed * 1_000_003 + start) as here:
            for _ in range(min(A_DATABASE, asked.updates - start)):
                here.take(here.update())
            failures.update(here.failures())
            leaks += len(here.leaks())
            own += here.told_of_their_own()
            outcomes += here.outcomes
    for name, count in sorted(outcomes.items()):
        print(f"{name:40s}{count:8d}")
    print(f"{'messages that failed':40s}{sum(failures.values()):8d}  {dict(failures) or ''}")
    print(f"{'messages with names of their own':40s}{own:8d}")
    print(f"{'messages with names of the other coach':40s}{leaks:8d}")
    print(f"{'seconds':40s}{time.perf_counter() - began:8.0f}")


if __name__ == "__main__":
    main()
