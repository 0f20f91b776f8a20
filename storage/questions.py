"""Questions put to people and not yet answered: what a bare "8" is the answer to."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime, timedelta
from functools import cache
from typing import Any

import sqlalchemy as sa
from sqlmodel import Field, Index, Session

from storage.at_hand import at_hand, one_at_hand
from storage.database import NUMBERS_ONCE, BigId, Json, Row, insert_row, loose_all, run, table_of
from storage.persons import Role, Someone, owned_by, owner_columns

# A service's clock and ours differ a little, and it tells whole seconds only.
CLOCKS_APART = timedelta(minutes=2)
_ONE_ASK = sa.text("kind = 'ask' AND answered_at IS NULL AND expired_at IS NULL")


class Question(Row, table=True):
    """One question. `text` is the message it asks about, `about` and `span` the field and words that were unclear.

    `data` is the asker's own. Open until it is answered or expired.
    """

    __table_args__ = (
        # Two open "what did you mean" at once, and an answer would fit both.
        Index("uq_question_open_ask_athlete", "athlete_id", unique=True, sqlite_where=_ONE_ASK,
              postgresql_where=_ONE_ASK),
        Index("uq_question_open_ask_coach", "coach_id", unique=True, sqlite_where=_ONE_ASK,
              postgresql_where=_ONE_ASK),
        NUMBERS_ONCE,
    )  # fmt: skip

    athlete_id: int | None = Field(default=None, foreign_key="athlete.id", sa_type=BigId, index=True)
    coach_id: int | None = Field(default=None, foreign_key="coach.id", sa_type=BigId, index=True)
    asked_at: datetime
    kind: str
    text: str = ""
    about: str | None = None
    span: str | None = None
    cause: int | None = Field(default=None, sa_type=BigId)
    data: dict[str, Any] = Field(default_factory=dict, sa_type=Json)
    answered_at: datetime | None = None
    expired_at: datetime | None = None


questions = table_of(Question)
_open = sa.and_(questions.c.answered_at.is_(None), questions.c.expired_at.is_(None))


def ask(
    tx: Session,
    who: Someone,
    kind: str,
    asked_at: datetime,
    *,
    text: str = "",
    about: str | None = None,
    span: str | None = None,
    cause: int | None = None,
    data: dict[str, Any] | None = None,
) -> int:
    """Note a question. An open one of kind "ask" expires when another is asked."""
    if kind == "ask":
        expire(tx, who, "ask", asked_at)
    row = Question(
        asked_at=asked_at, kind=kind, text=text, about=about, span=span, cause=cause, data=data or {},
        **owner_columns(who),
    )  # fmt: skip
    return insert_row(tx, row)


def keep(tx: Session, who: Someone, kind: str, at: datetime, *, cause: int | None, data: dict[str, Any]) -> int:
    """Keep what a person said, for later words that refer to it ("the same for jon"); no answer is waited for."""
    row = Question(asked_at=at, answered_at=at, kind=kind, cause=cause, data=data, **owner_columns(who))
    return insert_row(tx, row)


def kept_since(tx: Session, who: Someone, kind: str, since: datetime, most: int = 8) -> list[Question]:
    """What was kept of a kind, newest first."""
    mine = sa.select(questions).where(owned_by(questions, who), questions.c.kind == kind, questions.c.asked_at >= since)
    return loose_all(Question, run(tx, mine.order_by(questions.c.id.desc()).limit(most)).all())


def open_question(tx: Session, who: Someone, kind: str | None = None) -> Question | None:
    """The newest open question to a person, of one kind or any."""
    found = open_questions(tx, who, kind)
    return found[0] if found else None


def open_questions(tx: Session, who: Someone, kind: str | None = None) -> list[Question]:
    """Open questions to a person, newest first."""

    def read() -> list[Question]:
        return loose_all(Question, run(tx, _open_to(who.role), {"wanted": who.id}).all())

    return _of_kind(one_at_hand(tx, questions, (who.role, who.id), read), kind)


def stood_open(tx: Session, who: Someone, at: datetime, kind: str | None = None) -> list[Question]:
    """The questions that words said at a moment can answer, newest first: asked by then, and open at that time.

    A message can wait: what was asked meanwhile it did not know of, and what has lapsed since it may well mean.
    """
    then, now = (who.role, who.id, at), (who.role, who.id)

    def read(_keys: object) -> dict[tuple[Any, ...], list[Question]]:
        found = loose_all(Question, run(tx, _open_since(who.role), {"wanted": who.id, "at": at}).all())
        asked = [one for one in found if one.asked_at <= at + CLOCKS_APART]
        return {then: asked, now: [one for one in found if one.expired_at is None]}  # asked for next, mostly

    return _of_kind(at_hand(tx, questions, [then], read)[then], kind)


def _of_kind(found: list[Question], kind: str | None) -> list[Question]:
    # A person has few: the many who ask, each for a kind, share one query.
    return [one for one in found if kind is None or one.kind == kind]


def find(tx: Session, who: Someone, question_id: int) -> Question | None:
    """A question once put to this person, open or not; None where there is none of theirs with that id."""
    mine = sa.select(questions).where(questions.c.id == question_id, owned_by(questions, who))
    found = loose_all(Question, run(tx, mine).all())
    return found[0] if found else None


def lapsed_since(tx: Session, athlete_ids: Sequence[int], kind: str, since: datetime) -> dict[int, list[Question]]:
    """Questions of a kind that these athletes did not answer and that lapsed at or after `since`, oldest first; who let
    none lapse is left out."""
    here = sa.select(questions).where(questions.c.athlete_id.in_(athlete_ids), questions.c.kind == kind)
    late = here.where(questions.c.answered_at.is_(None), questions.c.expired_at >= since)
    found: dict[int, list[Question]] = {}
    for one in loose_all(Question, run(tx, late.order_by(questions.c.id)).all()):
        if one.athlete_id is not None:
            found.setdefault(one.athlete_id, []).append(one)
    return found


@cache  # building it takes longer than running it
def _open_to(role: Role) -> sa.Select[Any]:
    """Parameter: `wanted`, the person's id."""
    column = questions.c.athlete_id if role == "athlete" else questions.c.coach_id
    query = sa.select(questions).where(column == sa.bindparam("wanted", type_=BigId), _open)
    return query.order_by(questions.c.id.desc())


@cache
def _open_since(role: Role) -> sa.Select[Any]:
    """What is open, or lapsed after a moment. Parameters: `wanted`, the person's id, and `at`."""
    column, expired = questions.c.athlete_id if role == "athlete" else questions.c.coach_id, questions.c.expired_at
    query = sa.select(questions).where(
        column == sa.bindparam("wanted", type_=BigId),
        questions.c.answered_at.is_(None),
        sa.or_(expired.is_(None), expired > sa.bindparam("at")),
    )
    return query.order_by(questions.c.id.desc())


def close(tx: Session, question_id: int, now: datetime) -> None:
    """It was answered."""
    run(tx, _CLOSE, {"which": question_id, "answered_at": now})


def settle(tx: Session, question_id: int, now: datetime) -> None:
    """As `close`, of a question that a button answers after it has lapsed."""
    run(
        tx,
        sa.update(questions).where(questions.c.id == question_id, questions.c.answered_at.is_(None)),
        {"answered_at": now},
    )


_CLOSE = sa.update(questions).where(questions.c.id == sa.bindparam("which"), _open)


def expire(tx: Session, who: Someone, kind: str | None, now: datetime) -> int:
    """Open questions to a person (of a kind) lapse unanswered; how many."""
    values = {"wanted": who.id, "expired_at": now} | ({} if kind is None else {"of_kind": kind})
    return int(run(tx, _expiring(who.role, kind is not None), values).rowcount)


@cache
def _expiring(role: Role, one_kind: bool) -> sa.Update:
    """Parameters: `wanted`, the person's id, and `of_kind` if `one_kind`."""
    column = questions.c.athlete_id if role == "athlete" else questions.c.coach_id
    here = sa.update(questions).where(column == sa.bindparam("wanted", type_=BigId), _open)
    return here.where(questions.c.kind == sa.bindparam("of_kind")) if one_kind else here
