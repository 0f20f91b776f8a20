"""The record: what happened, as facts. The planner reads nothing else.

Every fact carries the day it speaks of (a calendar day where the athlete was). Facts are never changed here; storage
mends them and the plan is computed again.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import date
from functools import cached_property
from operator import attrgetter
from types import MappingProxyType
from typing import Literal

Side = Literal["left", "right"]
Rom = Literal["full", "lower_half", "upper_half"]
Pause = Literal["top", "middle", "bottom"]
Moment = Literal["during", "after", "morning", "rest"]
Part = Literal["warm_up", "skill", "main", "accessory"]
SaidBy = Literal["athlete", "coach", "bot"]
DayKind = Literal["training", "deload", "test", "rest"]

NO_RULES: Mapping[str, float | str | bool] = MappingProxyType({})


@dataclass(frozen=True, slots=True)
class WorkSet:
    """One set as it was done.

    `load_kg` is added load [kg], `assist_kg` help from a counterweight or band [kg]; both 0 without. `rpe` 10 leaves
    nothing in reserve. `failed`: attempted and missed; `reps` is what was completed. `linked`: straight after the set
    before (cluster, rest-pause, drop set).
    """

    movement: str
    reps: int | None
    side: Side | None = None
    hold_s: float | None = None
    load_kg: float = 0.0
    assist_kg: float = 0.0
    rpe: float | None = None
    rom: Rom = "full"
    eccentric: bool = False
    pauses: tuple[Pause, ...] = ()
    failed: bool = False
    linked: bool = False


@dataclass(frozen=True)
class Session:
    """All that one report says was done on one day. `is_test`: a test brought by the roster, not a training day."""

    on: date
    sets: tuple[WorkSet, ...]
    session_rpe: float | None = None
    duration_min: float | None = None
    sleep_h: float | None = None
    is_test: bool = False
    fact: int | None = None  # storage's id, so that a reason can point at its report


@dataclass(frozen=True, slots=True)
class PainAnswer:
    """A pain score, 0-10; `score` None: named without a number. `site` None: a bare number or "no pain"."""

    on: date
    site: str | None
    side: Side | None
    score: float | None
    when: Moment | None
    fact: int | None = None


@dataclass(frozen=True, slots=True)
class WarningSign:
    """A red flag (ids in the reading contract). Training stops until a `restart` order, same day or later."""

    on: date
    sign: str
    fact: int | None = None


@dataclass(frozen=True, slots=True)
class Bodyweight:
    on: date
    kg: float
    fact: int | None = None


@dataclass(frozen=True, slots=True)
class Absence:
    """Days without training. `until` None: no end said. A `resume` fact ends whatever is open.

    missed: a day left out; away: travel or holiday; ill; pause: asked for by the athlete.
    """

    kind: Literal["missed", "away", "ill", "pause"]
    said_on: date
    since: date
    until: date | None
    fever: bool = False
    fact: int | None = None
    said_by: SaidBy = "athlete"


@dataclass(frozen=True, slots=True)
class Resume:
    on: date
    fact: int | None = None
    said_by: SaidBy = "athlete"


@dataclass(frozen=True, slots=True)
class Move:
    """The session of `moved_from` is to be on `moved_to`."""

    said_on: date
    moved_from: date
    moved_to: date
    fact: int | None = None
    said_by: SaidBy = "athlete"


@dataclass(frozen=True, slots=True)
class Equipment:
    """What there is to train with from `since` to `until` (None: from now on)."""

    since: date
    has: frozenset[str]
    until: date | None = None
    fact: int | None = None


@dataclass(frozen=True, slots=True)
class Clip:
    on: date
    movement: str | None
    side: Side | None
    seen_by_coach: bool
    fact: int | None = None


OrderKind = Literal[
    "start",  # the health questions are cleared, the first block may begin
    "approve",  # a proposed promotion: `ladder`, `rung`
    "decline",  # a proposed promotion stays a proposal no longer: `ladder`, `rung`
    "set_rung",  # `ladder`, `rung`, whatever the rules say
    "hold_rung",  # `ladder` (None: all), `until`
    "set_sets",  # `for_date`, `movement` (None: the main lift), `sets`, `reps`, `load_kg`
    "step_sets",  # `for_date` (and `until`); more or less `sets`, `reps` or `load_kg`, or `value` per cent
    "lock_load",  # `movement` (None: the main lift), `load_kg`, `until`
    "unlock",  # every lock and hold ends; with `value` those of this kind, with `movement` those of it
    "exclude",  # `movement`, `until`
    "deload",  # from the first pulling day on or after `for_date`
    "restart",  # after a warning sign or a pain stop
    "train_on",  # the step back for pain of the place `value` ends: "elbow:left"
    "set_rule",  # `rule`, `value`
    "swap",  # `movement` is to be done as `value` until `until`
]


@dataclass(frozen=True, slots=True)
class Order:
    """What the coach decided. It stands above the rules and shows wherever it acts."""

    kind: OrderKind
    on: date
    ladder: str | None = None
    rung: str | None = None
    movement: str | None = None
    until: date | None = None
    for_date: date | None = None
    sets: int | None = None
    reps: int | None = None
    load_kg: float | None = None
    rule: str | None = None
    value: float | str | bool | None = None
    fact: int | None = None


@dataclass(frozen=True, slots=True)
class Weekly:
    """Training days of the week, Monday 0."""

    days: frozenset[int]


@dataclass(frozen=True, slots=True)
class Cycle:
    """Days 1..`length` counted from `since`; training on the days in `train`."""

    length: int
    train: frozenset[int]
    since: date


@dataclass(frozen=True, slots=True)
class Athlete:
    """What the roster says of an athlete. `plate_step` is in `plate_unit`: loads are multiples of it there.

    `ladders`: ladder id and the rung the coach put them on, None to be placed from tests. `rules`: the coach's own
    values for this athlete (or roster) over the defaults in `rules.toml`.
    """

    handle: str
    started_on: date
    bodyweight_kg: float
    ladders: tuple[tuple[str, str | None], ...] = (("one_arm_pull_up", None),)
    schedule: Weekly | Cycle = Weekly(frozenset({0, 3}))
    equipment: frozenset[str] = frozenset({"bar"})
    plate_step: float = 1.25
    plate_unit: Literal["kg", "lb"] = "kg"
    screened: bool = False
    rules: Mapping[str, float | str | bool] = field(default_factory=lambda: NO_RULES)


@dataclass(frozen=True)
class Record:
    """Everything known of one athlete, each list in order of day, then of arrival."""

    athlete: Athlete
    sessions: tuple[Session, ...] = ()
    pain: tuple[PainAnswer, ...] = ()
    signs: tuple[WarningSign, ...] = ()
    bodyweights: tuple[Bodyweight, ...] = ()
    absences: tuple[Absence, ...] = ()
    resumes: tuple[Resume, ...] = ()
    moves: tuple[Move, ...] = ()
    equipment: tuple[Equipment, ...] = ()
    clips: tuple[Clip, ...] = ()
    orders: tuple[Order, ...] = ()
    sent: tuple[SentPlan, ...] = ()

    @cached_property
    def sent_by_day(self) -> Mapping[date, SentPlan]:
        """The newest plan sent for each day."""
        return {plan.on: plan for plan in self.sent}


@dataclass(frozen=True, slots=True)
class PlannedSet:
    """One set as asked for. `reps` None (and no `hold_s`): as many as the ceiling `rpe` allows. A warm-up has none."""

    movement: str
    part: Part
    reps: int | None
    side: Side | None = None
    hold_s: float | None = None
    load_kg: float = 0.0
    assist_kg: float = 0.0
    rpe: float | None = None
    rom: Rom = "full"
    eccentric: bool = False
    pauses: tuple[Pause, ...] = ()
    rung: str | None = None


@dataclass(frozen=True)
class SentPlan:
    """A day's plan as it went to the athlete: a fact like any other."""

    on: date
    block: int
    week: int
    kind: DayKind
    sets: tuple[PlannedSet, ...]
    holds: tuple[str, ...] = ()
    fact: int | None = None

    @cached_property
    def rungs(self) -> frozenset[str | None]:
        """The rungs that its sets are of."""
        return frozenset(map(_RUNG, self.sets))


_RUNG = attrgetter("rung")
