"""A roster as data: one coach and their athletes. Reading and checking the file is the bot's work."""

from __future__ import annotations

from dataclasses import dataclass, field
from datetime import date, time
from typing import Literal

from planner.facts import Cycle, Rom, Side, Weekly

Unit = Literal["kg", "lb"]


@dataclass(frozen=True)
class RosterTest:
    """A test from before the athlete came. `load_kg` of a pulldown is the stack, of a ring row the added load."""

    on: date
    movement: str
    reps: int | None = None
    load_kg: float = 0.0
    rpe: float | None = None
    side: Side | None = None
    rom: Rom = "full"
    assist_kg: float = 0.0
    hold_s: float | None = None


@dataclass(frozen=True)
class RosterAthlete:
    """`rung` None: placed from the tests; so in `more_ladders`, which are climbed beside `ladder`. `plate_step` is in
    `plate_unit`. `plan_at` is local time."""

    handle: str
    name: str
    timezone: str
    bodyweight_kg: float
    plan_at: time
    schedule: Weekly | Cycle
    language: str = "en"
    unit: Unit = "kg"
    plate_step: float = 1.25
    plate_unit: Unit = "kg"
    equipment: frozenset[str] = frozenset({"bar"})
    ladder: str = "one_arm_pull_up"
    rung: str | None = None
    more_ladders: tuple[tuple[str, str | None], ...] = ()
    screened: bool = False
    tests: tuple[RosterTest, ...] = ()


@dataclass(frozen=True)
class RosterCoach:
    """`summary_day` Monday 0; with `summary_at` (local time) None there is no weekly summary."""

    name: str
    timezone: str
    language: str = "en"
    unit: Unit = "kg"
    summary_day: int | None = None
    summary_at: time | None = None


@dataclass(frozen=True)
class Roster:
    coach: RosterCoach
    athletes: tuple[RosterAthlete, ...] = field(default=())
