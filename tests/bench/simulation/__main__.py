"""Print how planners do with the same virtual athletes, side by side."""

from __future__ import annotations

import argparse
import sys
import time
from concurrent.futures import ProcessPoolExecutor
from itertools import repeat
from statistics import mean

from tests.bench.simulation.lateness import late
from tests.bench.simulation.season import START, Season, live

PLANNERS = {
    "slowrung": ([sys.executable, "-m", "bot.main", "rehearse"], False),
    "fixed": ([sys.executable, "-m", "tests.bench.simulation.fixed_plan"], False),
    "oracle": ([sys.executable, "-m", "tests.bench.simulation.oracle"], True),
}


def run_one(name: str, seed: int, weeks: int, keep_log: bool, honest: bool) -> Season:
    command, tell_hidden = PLANNERS[name]
    return live(command, seed, weeks, tell_hidden=tell_hidden, keep_log=keep_log, honest=honest)


def lateness(seasons: list[Season], *, practised: bool) -> str:
    found = [
        late(s.met_practised if practised else s.met, START, [(day, rung) for day, rung, _ in s.promotions])
        for s in seasons
    ]
    return f"{sum(a for a, _ in found)} of {sum(b for _, b in found)}"


def figures(seasons: list[Season]) -> dict[str, str]:
    tops = [pair for s in seasons for pair in s.top_sets]
    promotions = [p for s in seasons for p in s.promotions]
    gained = [s.strength_end / s.strength_start - 1 for s in seasons]
    return {
        "effort felt against aimed, mean distance": f"{mean(abs(f - a) for a, f, _ in tops):.2f}",
        "effort felt minus aimed, mean": f"{mean(f - a for a, f, _ in tops):+.2f}",
        "effort told minus aimed, mean": f"{mean(t - a for a, _, t in tops):+.2f}",
        "impossible sets": f"{100 * sum(s.impossible for s in seasons) / sum(s.sets_asked for s in seasons):.2f} %",
        "breaches": str(sum(len(s.breaches) for s in seasons)),
        "pain-days (3 or more)": f"{sum(s.pain_days for s in seasons)} of {sum(s.days for s in seasons)}",
        "strength gained": f"{100 * mean(gained):.1f} %",
        "promotions without margin": f"{sum(not ok for _, _, ok in promotions)} of {len(promotions)}",
        "promotions later than three blocks": lateness(seasons, practised=False),
        "the same, practice taken for granted": lateness(seasons, practised=True),
        "errors and oddities": str(sum(len(s.strange) for s in seasons)),
    }


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--athletes", type=int, default=40)
    parser.add_argument("--weeks", type=int, default=52)
    parser.add_argument("--jobs", type=int, default=2)
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--planners", default="slowrung,fixed,oracle")
    parser.add_argument("--told", choices=["biased", "honest"], default="biased", help="how efforts are told")
    parser.add_argument("--log", action="store_true", help="print one athlete's whole conversation and stop")
    asked = parser.parse_args()
    if asked.log:
        season = run_one(asked.planners.split(",")[0], asked.seed, asked.weeks, True, asked.told == "honest")
        print("\n".join([*season.log, *season.strange, *season.breaches]))
        return
    table, honest = {}, asked.told == "honest"
    for name in asked.planners.split(","):
        began = time.perf_counter()
        seeds = range(asked.seed, asked.seed + asked.athletes)
        with ProcessPoolExecutor(asked.jobs) as pool:
            seasons = list(pool.map(run_one, repeat(name), seeds, repeat(asked.weeks), repeat(False), repeat(honest)))
        table[name] = figures(seasons) | {"seconds": f"{time.perf_counter() - began:.0f}"}
        for s in seasons[:3]:
            for oddity in (s.strange + s.breaches)[:3]:
                print(f"  {name} {s.seed}: {oddity}")
    for row in next(iter(table.values())):
        print(f"{row:44s}" + "".join(f"{table[name][row]:>18s}" for name in table))
    names = "".join(f"{name:>18s}" for name in table)
    print(f"{'':44s}{names}   ({asked.athletes} athletes, {asked.weeks} weeks, efforts {asked.told})")


if __name__ == "__main__":
    main()
