"""Print the plans of different athletes as they would be sent, to be read as their coach would.

`python -m tests.bench.plans [--athletes N]`. Virtual athletes of the simulation, each met on another day of the year.
"""

from __future__ import annotations

import argparse
import sys

from tests.bench.simulation.season import live

COMMAND = [sys.executable, "-m", "bot.main", "rehearse"]
WEEKS = (1, 3, 4, 5, 9, 14, 19, 23, 30, 40)  # a week of each kind, of young and old records


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--athletes", type=int, default=10)
    for n in range(parser.parse_args().athletes):
        season = live(COMMAND, n + 1, WEEKS[n % len(WEEKS)], keep_log=True)
        told = [line for line in season.log if "-> ada: " in line and ("@" in line or "RPE" in line)]
        plans = [line for line in told if line[11:16] <= "08:00"]
        print(f"---- athlete {n + 1}, week {WEEKS[n % len(WEEKS)]}, {plans[-1][:10] if plans else ''}")
        print(plans[-1].split("-> ada: ", 1)[1] if plans else "(no plan)")


if __name__ == "__main__":
    main()
