"""A planner that sees the hidden strength: the trade's block with loads that fit, promotions when earned."""

from __future__ import annotations

import argparse
import tomllib
from collections.abc import Iterator
from datetime import date, datetime
from pathlib import Path
from typing import Any

from tests.bench.simulation.fixed_plan import DAYS, RUNGS
from tests.bench.simulation.hidden import ratio_at
from tests.bench.simulation.protocol import planned_set, serve

KG_PER_LB = 0.45359237
# sets, reps, effort: heavy day, volume day; the trade's block of 4 + 1 weeks
BLOCK = [
    ((4, 4, 7), (4, 6, 7)),
    ((5, 3, 7.5), (4, 6, 7.5)),
    ((5, 3, 8), (4, 5, 8)),
    ((4, 2, 8.5), (3, 5, 8)),
    ((2, 3, 6), (1, 3, 9)),
]


class Oracle:
    def __init__(self, athlete: dict[str, Any]) -> None:
        self.athlete = athlete
        self.days = [DAYS.index(d) for d in athlete["training_days"]]
        self.days = [self.days[0], self.days[-1]] if len(self.days) < 3 else [self.days[0], self.days[1]]
        self.step = athlete.get("plate_step_kg") or athlete["plate_step_lb"] * KG_PER_LB
        self.start: date | None = None
        self.last: date | None = None
        self.rung = -1

    def answer(self, line: dict[str, Any]) -> Iterator[dict[str, Any]]:
        day = datetime.fromisoformat(line["at"]).date()
        self.start = self.start or day
        hidden = line["hidden"]
        if day == self.last or day.weekday() not in self.days:
            return
        self.last = day
        week = (day - self.start).days // 7
        of_block, second = week % len(BLOCK), day.weekday() != self.days[0]
        if of_block == 0 and not second and self.rung + 1 < len(RUNGS) and week:
            proof = 2 if RUNGS[self.rung + 1][0] == "one_arm_pull_up" else 3
            if hidden["rungs"][RUNGS[self.rung + 1][0]] >= proof:
                self.rung += 1
        sets, reps, effort = BLOCK[of_block][second]
        system = hidden["pull"] * 0.985 / ratio_at(reps + 10 - effort, hidden["law"])
        if hidden["damage"] >= 3:
            system *= 0.9
        load = max(0.0, (system - hidden["bodyweight_kg"]) // self.step * self.step)
        skill = []
        if self.rung >= 0 and of_block < 4 and hidden["damage"] < 3:
            rung, movement, rom = RUNGS[self.rung]
            wanted = max(1, min(3, int(hidden["rungs"][rung]) - 2))
            skill = [
                planned_set(movement, "skill", wanted, rpe=8, side=s, rom=rom, rung=rung)
                for _ in range(2)
                for s in ("left", "right")
            ]
        main = [planned_set("pull_up", "main", reps, load, rpe=effort, rung="weighted_pull_up") for _ in range(sets)]
        kind = "test" if of_block == 4 and second else "deload" if of_block == 4 else "training"
        plan = {
            "date": day.isoformat(),
            "week": of_block + 1,
            "block": week // 5 + 1,
            "kind": kind,
            "sets": skill + main,
        }
        yield {
            "at": line["at"],
            "to": self.athlete["handle"],
            "about": None,
            "text": "",
            "buttons": [],
            "picture": None,
            "plan": plan,
        }


if __name__ == "__main__":
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--roster", type=Path, required=True)
    roster = tomllib.loads(parser.parse_args().roster.read_text(encoding="utf-8"))
    serve(Oracle(roster["athlete"][0]).answer)
