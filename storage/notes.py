"""What the coach keeps about an athlete, and words that were passed on between the two."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime
from typing import Literal

import sqlalchemy as sa
from sqlmodel import Field, Session

from storage.database import BigId, Row, insert_row, loose_all, run, table_of

Direction = Literal["to_coach", "to_athlete"]


class CoachNote(Row, table=True):
    """A note of the coach about an athlete. The athlete never sees it, but gets it with an export of all their data."""

    __tablename__ = "coach_note"

    athlete_id: int = Field(foreign_key="athlete.id", sa_type=BigId, index=True)
    text: str
    written_at: datetime


class PassedOn(Row, table=True):
    """Words passed on between an athlete and their coach. `cause`: the inbox row they came with."""

    __tablename__ = "passed_on"

    athlete_id: int = Field(foreign_key="athlete.id", sa_type=BigId, index=True)
    direction: str
    text: str
    passed_at: datetime
    cause: int | None = Field(default=None, sa_type=BigId)
    answered_at: datetime | None = None


coach_notes = table_of(CoachNote)
passed = table_of(PassedOn)
_open = sa.and_(passed.c.direction == "to_coach", passed.c.answered_at.is_(None))
_UNANSWERED = (
    sa.select(passed).where(passed.c.athlete_id.in_(sa.bindparam("ids", expanding=True)), _open).order_by(passed.c.id)
)


def add_note(tx: Session, athlete_id: int, text: str, now: datetime) -> int:
    return insert_row(tx, CoachNote(athlete_id=athlete_id, text=text, written_at=now))


def notes_of(tx: Session, athlete_id: int) -> list[CoachNote]:
    """Oldest first."""
    query = sa.select(coach_notes).where(coach_notes.c.athlete_id == athlete_id).order_by(coach_notes.c.id)
    return loose_all(CoachNote, run(tx, query).all())


def pass_on(
    tx: Session, athlete_id: int, direction: Direction, text: str, now: datetime, cause: int | None = None
) -> int:
    """Keep words that go from one to the other. Words to the athlete answer what waits from them."""
    if direction == "to_athlete":
        run(tx, sa.update(passed).where(_waiting(athlete_id)), {"answered_at": now})
    return insert_row(tx, PassedOn(athlete_id=athlete_id, direction=direction, text=text, passed_at=now, cause=cause))


def unanswered(tx: Session, athlete_ids: Sequence[int]) -> dict[int, list[PassedOn]]:
    """The words of each athlete that the coach has not answered, oldest first; who waits for nothing is left out."""
    found: dict[int, list[PassedOn]] = {}
    for one in loose_all(PassedOn, run(tx, _UNANSWERED, {"ids": list(athlete_ids)}).all()):
        found.setdefault(one.athlete_id, []).append(one)
    return found


def settle(tx: Session, athlete_id: int, newest: int, now: datetime) -> int:
    """The athlete's words up to the one with the id `newest` need no answer; how many they were."""
    known = sa.and_(_waiting(athlete_id), passed.c.id <= newest)
    return int(run(tx, sa.update(passed).where(known), {"answered_at": now}).rowcount)


def _waiting(athlete_id: int) -> sa.ColumnElement[bool]:
    return sa.and_(passed.c.athlete_id == athlete_id, _open)
