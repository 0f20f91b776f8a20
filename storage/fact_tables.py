"""The tables of facts: one a kind. A row is what somebody said once; it is withdrawn, never changed or deleted."""

from __future__ import annotations

from datetime import date, datetime
from typing import Any

from sqlmodel import Field, UniqueConstraint

from storage.database import BigId, Json, Row


class Said(Row):
    """What all facts have: whose, said by whom ("athlete", "coach", "bot") and when, and the message it came with.

    `cause` is the inbox row's id, without a foreign key: a message can be cleared away, its facts stay. `withdrawn_by`:
    the message that put something else in its place; that one taken back, the fact stands again.
    """

    athlete_id: int = Field(foreign_key="athlete.id", sa_type=BigId, index=True)
    said_by: str
    said_at: datetime
    cause: int | None = Field(default=None, sa_type=BigId)
    withdrawn_at: datetime | None = None
    withdrawn_by: int | None = Field(default=None, sa_type=BigId)


class Report(Said, table=True):
    """A session as reported, or a test the roster brought. Its sets are rows of `performed_set`.

    `replaces`: the report that this one corrects. That one is withdrawn, and stands again if this one is withdrawn.
    """

    on: date
    session_rpe: float | None = None
    duration_min: float | None = None
    sleep_h: float | None = None
    is_test: bool = False
    replaces: int | None = Field(default=None, sa_type=BigId)


class PerformedSet(Row, table=True):
    """One set of a report; `position` counts from 0 in the order of the work."""

    __tablename__ = "performed_set"
    __table_args__ = (UniqueConstraint("report_id", "position"),)

    athlete_id: int = Field(foreign_key="athlete.id", sa_type=BigId, index=True)
    report_id: int = Field(foreign_key="report.id", sa_type=BigId)
    position: int
    movement: str
    reps: int | None = None
    side: str | None = None
    hold_s: float | None = None
    load_kg: float = 0.0
    assist_kg: float = 0.0
    rpe: float | None = None
    rom: str = "full"
    eccentric: bool = False
    pauses: str = ""  # words with commas between
    failed: bool = False
    linked: bool = False


class PainFact(Said, table=True):
    """A pain score of one place, or an answer to "how is it"."""

    __tablename__ = "pain_fact"

    on: date
    site: str | None = None
    side: str | None = None
    score: float | None = None
    when: str | None = None


class SignFact(Said, table=True):
    """A warning sign. Training stops until the coach says otherwise."""

    __tablename__ = "sign_fact"

    on: date
    sign: str


class BodyweightFact(Said, table=True):
    __tablename__ = "bodyweight_fact"

    on: date
    kg: float


class AbsenceFact(Said, table=True):
    """Days without training, as said on `said_on`."""

    __tablename__ = "absence_fact"

    kind: str
    said_on: date
    since: date
    until: date | None = None
    fever: bool = False


class ResumeFact(Said, table=True):
    """Training goes on from this day."""

    __tablename__ = "resume_fact"

    on: date


class MoveFact(Said, table=True):
    """A session goes to another day."""

    __tablename__ = "move_fact"

    said_on: date
    moved_from: date
    moved_to: date


class EquipmentFact(Said, table=True):
    """What there is to train with for a while, or from now on."""

    __tablename__ = "equipment_fact"

    since: date
    has: list[str] = Field(default_factory=list, sa_type=Json)
    until: date | None = None


class ClipFact(Said, table=True):
    """A video. `media` is the service's own id of it: it can be passed on, and is not fetched."""

    __tablename__ = "clip_fact"

    on: date
    movement: str | None = None
    side: str | None = None
    seen_by_coach: bool = False
    media: str | None = None


class OrderFact(Said, table=True):
    """A decision of the coach."""

    __tablename__ = "order_fact"

    kind: str
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
    value: Any = Field(default=None, sa_type=Json, nullable=True)


class PlanSent(Said, table=True):
    """A day's plan as it went out, with the decisions that it carried: what "why" is answered from, years later.

    `sets` and `decisions` hold only the fields that differ from the default.
    """

    __tablename__ = "plan_sent"

    on: date
    block: int
    week: int
    kind: str
    sets: list[dict[str, Any]] = Field(default_factory=list, sa_type=Json)
    holds: list[str] = Field(default_factory=list, sa_type=Json)
    decisions: list[dict[str, Any]] = Field(default_factory=list, sa_type=Json, sa_column_kwargs={"default": list})
