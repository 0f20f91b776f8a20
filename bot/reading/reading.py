"""A reading: what a message says, as data. The fields are a contract; other tools rely on them to the letter."""

from __future__ import annotations

from dataclasses import dataclass, field
from datetime import date, datetime
from typing import Any, Literal
from zoneinfo import ZoneInfo

from planner.facts import Moment, Pause, PlannedSet, Rom, Side

INTENTS = (
    "report pain bodyweight plan_today plan_week why progress move missed away ill equipment correction undo for_coach "
    "pause resume stop help smalltalk unknown"
).split()
RED_FLAGS = (
    "pop bruising swelling deformity numbness sudden_weakness night_pain chest_pain breathless dizziness locking fever"
).split()
SITES = (
    "elbow_inner elbow_outer elbow biceps forearm wrist hand shoulder neck upper_back lower_back chest hip knee ankle "
    "other"
).split()


@dataclass(frozen=True)
class Context:
    """What the reader may know beside the text. `today`: the sets prescribed for the day, if a plan was sent."""

    sent_at: datetime  # aware
    timezone: ZoneInfo
    unit: Literal["kg", "lb"] = "kg"
    language: str | None = None
    bodyweight_kg: float | None = None
    today: tuple[PlannedSet, ...] | None = None
    nicknames: tuple[tuple[str, str], ...] = ()  # a coach's own words: phrase, movement id


@dataclass(frozen=True)
class SetRead:
    """One set as said. Next to an `ask` about it, movement, reps, load_kg, assist_kg or rom may be None."""

    movement: str | None
    side: Side | None = None
    reps: int | None = None
    hold_s: float | None = None
    load_kg: float | None = 0.0
    assist_kg: float | None = 0.0
    rpe: float | None = None
    rom: Rom | None = "full"
    eccentric: bool = False
    pauses: tuple[Pause, ...] = ()
    failed: bool = False
    linked: bool = False
    on: date | None = None


@dataclass(frozen=True)
class PainRead:
    site: str | None
    side: Side | None
    score: float | None
    when: Moment | None


@dataclass(frozen=True)
class Span:
    """Days spoken of. For a move `start` is the day moved, `end` the new day. The contract calls them from and to."""

    start: date | None
    end: date | None


@dataclass(frozen=True)
class Correction:
    field: str
    was: float | str | None = None
    now: float | str | None = None
    movement: str | None = None
    side: Side | None = None
    which: str | int = "all"


@dataclass(frozen=True)
class Ask:
    about: str
    span: str


@dataclass(frozen=True)
class Reading:
    intents: tuple[str, ...]
    performed_on: date | None = None
    sets: tuple[SetRead, ...] = ()
    pain: tuple[PainRead, ...] = ()
    red_flags: tuple[str, ...] = ()
    bodyweight_kg: float | None = None
    session_rpe: float | None = None
    duration_min: float | None = None
    sleep_h: float | None = None
    dates: Span | None = None
    correction: Correction | None = None
    ask: tuple[Ask, ...] = ()
    unread: tuple[str, ...] = field(default=())
    language: str = "en"  # the language found; not part of the contract's output
    past_flags: tuple[str, ...] = ()  # signs told as history; for the coach, not part of the contract's output

    def to_json(self) -> dict[str, Any]:
        """The contract's object, every field there, dates as ISO strings."""
        data = _fields(self)
        del data["language"], data["past_flags"]
        if self.dates is not None:
            data["dates"] = {"from": _plain(self.dates.start), "to": _plain(self.dates.end)}
        return data


SIMPLE = frozenset({type(None), str, int, float, bool})


def _plain(value: Any) -> Any:
    if type(value) in SIMPLE:
        return value
    if isinstance(value, (list, tuple)):
        return [_plain(item) for item in value]
    if isinstance(value, date):
        return value.isoformat()
    return _fields(value)


def _fields(value: Any) -> dict[str, Any]:
    data = dict(vars(value))
    for name, one in data.items():
        if type(one) not in SIMPLE:  # of the fourteen fields of a set hardly one
            data[name] = _plain(one) if one != () else []
    return data
