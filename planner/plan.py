"""What a review answers: position, strength, the day's plan, and why. Data only; words are made in bot/wording."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import date
from typing import Literal

from planner.facts import DayKind, PlannedSet, Side

Value = float | int | str | bool | date | None


@dataclass(frozen=True)
class Reason:
    """Why, in numbers. `code` names a sentence of the wording catalogue; `values` are its slots, units in the names."""

    code: str
    values: Mapping[str, Value] = field(default_factory=dict)


@dataclass(frozen=True)
class Decision:
    """A change of load, dose, rung, deload or stop, with its reasons. Kept for ever with the plan that carried it."""

    on: date
    kind: Literal["load", "dose", "rung", "deload", "stop", "start", "absence", "pain", "order", "grip"]
    about: str  # movement, ladder or site
    reasons: tuple[Reason, ...]


@dataclass(frozen=True)
class DayPlan:
    """The work of one day, in order. `holds` names the exceptions acting on it: a plan already sent is replaced
    when these change, not for a rounding of a load."""

    on: date
    block: int
    week: int
    kind: DayKind
    sets: tuple[PlannedSet, ...]
    holds: tuple[str, ...] = ()
    decisions: tuple[Decision, ...] = ()


@dataclass(frozen=True)
class Strength:
    """Trend of one movement (and side). All [kg] of system load; `cautious_kg` is what loads are prescribed from."""

    movement: str
    side: Side | None
    e1rm_kg: float
    cautious_kg: float
    sd_log: float
    bodyweight_kg: float

    @property
    def added_e1rm_kg(self) -> float:
        return self.e1rm_kg - self.bodyweight_kg

    @property
    def relative_added(self) -> float:
        return self.added_e1rm_kg / self.bodyweight_kg


@dataclass(frozen=True)
class Gate:
    """One condition of a rung: `have` against `want`; for a count or a ratio alike."""

    name: str
    have: float | None
    want: float
    met: bool


@dataclass(frozen=True)
class Proposal:
    """A step the coach is asked to approve: `kind` promotion or step_back; `rung` is where it leads."""

    kind: Literal["promotion", "step_back"]
    ladder: str
    rung: str
    since: date
    reasons: tuple[Reason, ...]


@dataclass(frozen=True)
class Forecast:
    """Weeks until a gate is likely met. `earliest` and `latest` None: not within 12 weeks at this pace, or nothing is
    known of a pace yet (`too_early`)."""

    gate: str
    earliest: date | None
    latest: date | None
    too_early: bool = False


@dataclass(frozen=True)
class LadderPosition:
    """Where an athlete stands on one ladder. `dose` as in "2x1 pause top"; `gates`: those of `next_rung`."""

    ladder: str
    rung: str
    since: date
    dose: str
    next_rung: str | None
    gates: tuple[Gate, ...]
    may_test: bool
    held_until: date | None = None
    proposal: Proposal | None = None
    forecasts: tuple[Forecast, ...] = ()


@dataclass(frozen=True)
class BlockPosition:
    block: int
    week: int  # from 1; the deload week is loading_weeks + 1
    loading_weeks: int
    starts_on: date
    ends_on: date
    deload: bool


@dataclass(frozen=True)
class Alert:
    """Something the coach should hear. `urgency` 3: now (a stop, pain over 5); 2: wants a decision; 1: a note."""

    code: str
    urgency: int
    since: date
    values: Mapping[str, Value] = field(default_factory=dict)


@dataclass(frozen=True)
class SitePain:
    """One painful place: the newest score, and what the rules make of it."""

    site: str
    side: Side | None
    score: float
    on: date
    level: Literal["fine", "hold", "step_down", "stop", "step_back"]


@dataclass(frozen=True)
class Review:
    """The whole plan and position of one athlete on one day."""

    on: date
    started: bool
    stopped: Reason | None  # warning sign, not screened, pause: no training at all
    block: BlockPosition | None
    bodyweight_kg: float
    main_lift: str | None
    ladders: tuple[LadderPosition, ...]
    strength: tuple[Strength, ...]
    pain: tuple[SitePain, ...]
    today: DayPlan
    decisions: tuple[Decision, ...]  # of the last eight weeks, oldest first
    alerts: tuple[Alert, ...]
    adherence: tuple[int, int]  # sessions done, sessions planned, last 28 days
    silent_sessions: int  # planned training days since the last word from the athlete
    next_training_on: date | None
