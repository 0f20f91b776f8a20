"""What no plan may do, whatever the athlete is: checked from outside, with the plan and what was done and said."""

from __future__ import annotations

import math
from collections import defaultdict
from collections.abc import Iterator
from dataclasses import dataclass, field
from datetime import date, timedelta
from typing import Any

from tests.bench.simulation.hidden import MOVEMENT_LOAD

Set = dict[str, Any]
EXPOSING = {movement for movement, _ in MOVEMENT_LOAD}
PULLS = EXPOSING | {"pull_up", "chin_up", "neutral_grip_pull_up", "ring_pull_up", "lat_pulldown", "band_pull_up"}
SLACK = 1e-6
WEEK = timedelta(days=7)


@dataclass
class Watch:
    """Follows one athlete. Call `plan` with each day's plan before it is done, `done` with what was done."""

    bodyweight_kg: float
    step_kg: float
    weaker: str
    lifts: list[tuple[date, str, float, int]] = field(default_factory=list)  # day, movement, added load, reps
    week_one: dict[tuple[int, str], float] = field(default_factory=dict)  # block, movement: the heaviest of week 1
    exposures: dict[tuple[date, str], int] = field(default_factory=lambda: defaultdict(int))  # week, side
    deload_weeks: set[date] = field(default_factory=set)
    overshoot: dict[tuple[str, int], tuple[date, float, float]] = field(default_factory=dict)
    last_main: date | None = None
    stopped: bool = False
    free_rep: bool = False

    def system(self, one: Set) -> float:
        return float(self.bodyweight_kg + one["load_kg"] - one["assist_kg"])

    def plan(self, day: date, plan: dict[str, Any]) -> Iterator[str]:
        """Every breach in the plan, in words."""
        sets = plan["sets"]
        main = [one for one in sets if one["part"] == "main"]
        pulls = [one for one in main if one["movement"] in PULLS]
        yield from self._order_and_sides(plan["kind"], sets)
        yield from self._plates(sets)
        if self.stopped and any(one["movement"] in PULLS for one in sets):
            yield "pulling while that pattern is stopped"
        if pulls:
            if self.last_main and (day - self.last_main).days < 2:
                yield f"main lift again after {(day - self.last_main).days} day"
            yield from self._loads(day, plan, pulls)
        yield from self._exposures(day, plan["kind"], sets)

    def _order_and_sides(self, kind: str, sets: list[Set]) -> Iterator[str]:
        parts = [one["part"] for one in sets]
        if kind != "test" and "main" in parts and "skill" in parts[parts.index("main") :]:
            yield "skill after main"
        reps: dict[str, int] = defaultdict(int)
        for one in sets:
            if one["movement"] in EXPOSING:
                if one["side"] is None:
                    yield f"{one['movement']} without a side"
                elif one["part"] == "skill":
                    reps[one["side"]] += one["reps"] or 0
                if one["eccentric"] and not self.free_rep:
                    yield "one-arm eccentric before a free rep"
        other = "right" if self.weaker == "left" else "left"
        if kind != "test" and reps[other] > reps[self.weaker] + 1:
            yield f"the stronger side does more ({reps[other]} against {reps[self.weaker]})"

    def _plates(self, sets: list[Set]) -> Iterator[str]:
        for one in sets:
            steps = one["load_kg"] / self.step_kg
            if one["load_kg"] < 0 or (one["part"] in ("main", "skill") and abs(steps - round(steps)) > 1e-3):
                yield f"a load of {one['load_kg']} kg on plates of {self.step_kg:.3g} kg"
                return

    def _loads(self, day: date, plan: dict[str, Any], pulls: list[Set]) -> Iterator[str]:
        heaviest = max(pulls, key=self.system)
        load, movement, reps = self.system(heaviest), heaviest["movement"], heaviest["reps"]
        # Of a test whose reps are left open, any set of the movement is comparable.
        late = [
            self.bodyweight_kg + kg
            for on, name, kg, of in self.lifts
            if name == movement and (reps is None or reps <= of) and day - on <= 4 * WEEK
        ]
        if late and load > max(late) * 1.05 + SLACK:
            yield f"{load:.1f} kg is over 5 % above the best of four weeks, {max(late):.1f} kg"
        key = (plan["block"], movement)
        if plan["kind"] == "training" and plan["week"] == 1:
            self.week_one[key] = max(self.week_one.get(key, -math.inf), load - self.bodyweight_kg)
        if plan["kind"] == "deload":
            first = self.bodyweight_kg + self.week_one.get(key, math.inf)
            if load > max(first * 0.95, self.bodyweight_kg) + SLACK:
                yield f"deload at {load:.1f} kg, week 1 was {first:.1f} kg"
            added = [kg for on, name, kg, _ in self.lifts if name == movement and day - on <= 2 * WEEK]
            before = [self.bodyweight_kg + kg for kg in added]
            if before and load > max(min(before), self.bodyweight_kg) + SLACK:
                yield f"deload at {load:.1f} kg above a load of the 14 days before, {min(before):.1f} kg"
        told = self.overshoot.get((movement, reps or 0))
        # The next of the same kind; weeks later it is another block, and the trend has the word.
        if told and plan["kind"] == "training" and day - told[0] <= 2 * WEEK:
            done, over = self.bodyweight_kg + told[1], told[2]
            if over >= 2 and load > max(done * 0.95, self.bodyweight_kg) + SLACK:
                yield f"{over:g} points over the ceiling at {done:.1f} kg, then {load:.1f} kg"
            elif 1 <= over < 2 and load > done + SLACK:
                yield f"{over:g} points over the ceiling at {done:.1f} kg, then more: {load:.1f} kg"

    def _exposures(self, day: date, kind: str, sets: list[Set]) -> Iterator[str]:
        if kind == "test":
            return
        monday = day - timedelta(days=day.weekday())
        for side in ("left", "right"):
            today = sum(one["reps"] or 0 for one in sets if one["movement"] in EXPOSING and one["side"] == side)
            usual = sum(self._of_week(monday - n * WEEK, side) for n in (1, 2, 3)) / 3
            week = self.exposures[monday, side] + today
            if today and week > usual + max(0.3 * usual, 4) + SLACK:
                yield f"{week} exposures on the {side} in a week, {usual:.1f} were usual"

    def _of_week(self, monday: date, side: str) -> int:
        # A deload week counts as the week before it; so does the one after, where the test slid into it.
        while monday in self.deload_weeks:
            monday -= WEEK
        return self.exposures[monday, side]

    def done(self, day: date, plan: dict[str, Any], sets: list[Set]) -> None:
        """Take down what was done and told."""
        monday = day - timedelta(days=day.weekday())
        if plan["kind"] in ("deload", "test"):
            self.deload_weeks.add(monday)
        for asked, one in zip(plan["sets"], sets, strict=True):
            reps = one["reps"] or 0
            if one["movement"] in EXPOSING and one["side"]:
                self.exposures[monday, one["side"]] += reps
                self.free_rep = self.free_rep or (one["movement"].startswith("one_arm_pull") and reps > 0)
            if one["part"] == "main" and one["movement"] in PULLS and reps:
                self.last_main = day
                self.lifts.append((day, one["movement"], one["load_kg"] - one["assist_kg"], reps))
                if one["rpe"] is not None and asked["rpe"] is not None and asked["reps"]:
                    # What is told by habit may be told apart from what is felt: a breach is where both were over.
                    over = min(one["rpe"], one["felt"]) - asked["rpe"]
                    self.overshoot[one["movement"], asked["reps"]] = (day, one["load_kg"] - one["assist_kg"], over)
