"""What is to happen when: the next plan, check, nudge or summary of each person, as rows with their UTC time."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date, datetime, timedelta
from functools import cache
from typing import Any

import sqlalchemy as sa
from sqlmodel import Field, Index, Session, UniqueConstraint

from storage.database import (
    NUMBERS_ONCE,
    BigId,
    Row,
    conflict_insert_on,
    loose,
    loose_all,
    on_postgres,
    run,
    run_later,
    table_of,
)
from storage.persons import Role, Someone, Who, owned_by, owner_columns, owner_of, try_lock, try_lock_all

MAX_ATTEMPTS = 5
_OPEN = "done_at IS NULL"


class Due(Row, table=True):
    """One thing due to one person for one local day. Done at `done_at`; given up, with the reason, counts as done."""

    __table_args__ = (
        # A day's plan falls due once, however often the schedule is worked out. (Nulls are never equal, so each
        # constraint speaks of its own kind of person.)
        UniqueConstraint("athlete_id", "kind", "for_date"),
        UniqueConstraint("coach_id", "kind", "for_date"),
        Index("ix_due_open", "due_at", sqlite_where=sa.text(_OPEN), postgresql_where=sa.text(_OPEN)),
        NUMBERS_ONCE,
    )

    athlete_id: int | None = Field(default=None, foreign_key="athlete.id", sa_type=BigId)
    coach_id: int | None = Field(default=None, foreign_key="coach.id", sa_type=BigId)
    kind: str
    for_date: date
    due_at: datetime
    done_at: datetime | None = None
    attempts: int = 0
    given_up_because: str | None = None

    @property
    def who(self) -> Who:
        who = owner_of(self.athlete_id, self.coach_id)
        assert who is not None
        return who


dues = table_of(Due)
_IDS: sa.BindParameter[Any] = sa.bindparam("ids", expanding=True)
_open = dues.c.done_at.is_(None)
# Asked over and over; building a query takes longer than running it.
_NEXT = sa.select(dues.c.due_at).where(_open).order_by(dues.c.due_at).limit(1)
_DUE_NOW = (
    sa.select(dues)
    .where(_open, dues.c.due_at <= sa.bindparam("now", type_=dues.c.due_at.type))
    .order_by(dues.c.due_at, dues.c.id)
    .limit(sa.bindparam("most", type_=sa.Integer))
)


def schedule(tx: Session, who: Someone, kind: str, for_date: date, due_at: datetime) -> None:
    """Set the moment; a row not yet done is moved, one that is done stays done."""
    values = {**owner_columns(who), "kind": kind, "for_date": for_date, "due_at": due_at, "attempts": 0}
    run_later(tx, _planting(on_postgres(tx), who.role), values)


@cache
def _planting(postgres: bool, role: Role) -> sa.Executable:
    statement = conflict_insert_on(postgres, dues)
    target = ["athlete_id" if role == "athlete" else "coach_id", "kind", "for_date"]
    moved = {"due_at": statement.excluded.due_at}
    planting: sa.Executable = statement.on_conflict_do_update(index_elements=target, set_=moved, where=_open)
    return planting


def due_now(tx: Session, now: datetime, limit: int = 100) -> list[Due]:
    """What is due, the longest first. A list to work through with `take`, row by row."""
    return loose_all(Due, run(tx, _DUE_NOW, {"now": now, "most": limit}).all())


def take(tx: Session, due_id: int, now: datetime) -> Due | None:
    """One row to handle in this transaction, its person locked. None: done, moved, or in other hands meanwhile."""
    query = sa.select(dues).where(dues.c.id == due_id, _open, dues.c.due_at <= now)
    found = loose(Due, run(tx, query).first())
    if found is None or not on_postgres(tx):
        return found
    if not try_lock(tx, found.who):
        return None
    return loose(Due, run(tx, query.with_for_update(skip_locked=True)).first())


def take_all(tx: Session, due_ids: Sequence[int], now: datetime) -> list[Due]:
    """As `take`, several at once, in order of due time; those done, moved or in other hands are left out."""
    query = sa.select(dues).where(dues.c.id.in_(_IDS), _open, dues.c.due_at <= now).order_by(dues.c.due_at, dues.c.id)
    found = loose_all(Due, run(tx, query, {"ids": list(due_ids)}).all())
    if not on_postgres(tx):
        return found
    mine = try_lock_all(tx, [row.who for row in found])
    ours = [row.id for row in found if row.who in mine]
    return loose_all(Due, run(tx, query.with_for_update(skip_locked=True), {"ids": ours}).all())


def next_due_at(tx: Session) -> datetime | None:
    """The moment of the next open row; None: there is none."""
    found: datetime | None = run(tx, _NEXT).scalar()
    return found


def open_for(tx: Session, who: Someone, kind: str | None = None) -> list[Due]:
    """What is yet to come for a person, the nearest first."""
    query = sa.select(dues).where(owned_by(dues, who), _open)
    if kind is not None:
        query = query.where(dues.c.kind == kind)
    return loose_all(Due, run(tx, query.order_by(dues.c.due_at, dues.c.id)).all())


def newest_day(tx: Session, who: Someone, kind: str) -> date | None:
    """The latest day a row of this kind stands for, done or open; None: there is none."""
    found: date | None = run(
        tx, sa.select(sa.func.max(dues.c.for_date)).where(owned_by(dues, who), dues.c.kind == kind)
    ).scalar()
    return found


def finish_all(tx: Session, due_ids: Sequence[int], now: datetime) -> None:
    run(tx, sa.update(dues).where(dues.c.id.in_(_IDS)).values(done_at=now), {"ids": list(due_ids)})


def finish(tx: Session, due_id: int, now: datetime) -> None:
    run(tx, sa.update(dues).where(dues.c.id == due_id), {"done_at": now})


def note_failure(tx: Session, due_id: int, why: str, now: datetime) -> bool:
    """Count a failed try, in a transaction of its own. True: given up now. Retries after 0, 60, 240 and 540 s."""
    attempts = int(run(tx, sa.select(dues.c.attempts).where(dues.c.id == due_id)).scalar_one()) + 1
    values: dict[str, Any] = {"attempts": attempts, "due_at": now + timedelta(seconds=60 * (attempts - 1) ** 2)}
    given_up = attempts >= MAX_ATTEMPTS
    if given_up:
        values = {"attempts": attempts, "done_at": now, "given_up_because": why}
    run(tx, sa.update(dues).where(dues.c.id == due_id), values)
    return given_up


def cancel(tx: Session, who: Someone, kind: str | None = None, for_date: date | None = None) -> int:
    """Drop open rows of a person: of one kind, of one day, or all; how many."""
    asked = {"kind": kind, "for_date": for_date}
    given = {name: value for name, value in asked.items() if value is not None}
    return int(run(tx, _cancelling(who.role, frozenset(given)), {"wanted": who.id, **given}).rowcount)


@cache
def _cancelling(role: Role, given: frozenset[str]) -> sa.Delete:
    """Parameters: `wanted`, the person's id, and those of `kind` and `for_date` that are given."""
    column = dues.c.athlete_id if role == "athlete" else dues.c.coach_id
    here = sa.delete(dues).where(column == sa.bindparam("wanted", type_=BigId), _open)
    return here.where(*(dues.c[name] == sa.bindparam(name, type_=dues.c[name].type) for name in sorted(given)))
