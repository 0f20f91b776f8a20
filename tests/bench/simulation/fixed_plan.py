"""A planner that follows a calendar and listens to nobody: +2.5 kg a week, a new rung every six weeks."""

from __future__ import annotations

import argparse
import tomllib
from collections.abc import Iterator
from datetime import date, datetime
from pathlib import Path
from typing import Any

from tests.bench.simulation.protocol import planned_set, serve

RUNGS = [
    ("archer_elbow_lower", "archer_ring_elbow", "lower_half"),
    ("archer_elbow_full", "archer_ring_elbow", "full"),
    ("archer_shoulder", "archer_ring_shoulder", "full"),
    ("hand_on_biceps", "one_arm_hand_on_biceps", "full"),
    ("hand_on_shoulder", "one_arm_hand_on_shoulder", "full"),
    ("one_arm_pull_up", "one_arm_pull_up", "full"),
]
DAYS = "monday tuesday wednesday thursday friday saturday sunday".split()


class FixedPlan:
    def __init__(self, athlete: dict[str, Any]) -> None:
        self.athlete = athlete
        self.days = [DAYS.index(d) for d in athlete["training_days"]][:2]
        test = athlete["tests"][0]
        self.first_load = max(0.0, test["load_kg"] - 10)
        self.start: date | None = None
        self.last: date | None = None

    def answer(self, line: dict[str, Any]) -> Iterator[dict[str, Any]]:
        day = datetime.fromisoformat(line["at"]).date()
        self.start = self.start or day
        if day == self.last or day.weekday() not in self.days:
            return
        self.last = day
        week = (day - self.start).days // 7
        load = self.first_load + 2.5 * week
        rung, movement, rom = RUNGS[min(week // 6, len(RUNGS) - 1)]
        skill = [
            planned_set(movement, "skill", 2, rpe=8, side=side, rom=rom, rung=rung)
            for _ in range(2)
            for side in ("left", "right")
        ]
        main = [planned_set("pull_up", "main", 4, load, rpe=8, rung="weighted_pull_up") for _ in range(4)]
        plan = {"date": day.isoformat(), "week": week + 1, "block": 1, "kind": "training", "sets": skill + main}
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
    serve(FixedPlan(roster["athlete"][0]).answer)
