"""What a coach set for all of their athletes: rule values, and nicknames of movements."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any, Literal

import sqlalchemy as sa
from sqlmodel import Field, Session, UniqueConstraint

from storage.at_hand import one_at_hand
from storage.database import BigId, Json, Row, conflict_insert, run, table_of
from storage.persons import touch_coach


class RuleOverride(Row, table=True):
    """A coach's value of a rule, for every athlete who has none of their own.

    `cause`: the message that set it, for as long as that can be undone, `before`: what stood before it; `earlier`: both
    of each message that set it before, oldest first.
    """

    __tablename__ = "rule_override"
    __table_args__ = (UniqueConstraint("coach_id", "rule"),)

    coach_id: int = Field(foreign_key="coach.id", sa_type=BigId)
    rule: str
    value: Any = Field(default=None, sa_type=Json)
    cause: int | None = Field(default=None, sa_type=BigId)
    before: Any = Field(default=None, sa_type=Json, nullable=True)
    earlier: Any = Field(default=None, sa_type=Json, nullable=True)


class Nickname(Row, table=True):
    """A coach's own word for a movement, in lower case. How it is undone: as a rule is."""

    __table_args__ = (UniqueConstraint("coach_id", "phrase"),)

    coach_id: int = Field(foreign_key="coach.id", sa_type=BigId)
    phrase: str
    movement: str
    cause: int | None = Field(default=None, sa_type=BigId)
    before: str | None = None
    earlier: Any = Field(default=None, sa_type=Json, nullable=True)


rule_overrides = table_of(RuleOverride)
nicknames = table_of(Nickname)


def set_coach_rule(
    tx: Session, coach_id: int, rule: str, value: float | str | bool | None, cause: int | None = None
) -> None:
    """None: the default is good again. `cause`: the message that says so, by which it can be taken back."""
    _set(tx, _RULES, coach_id, rule, value, cause)


def set_nickname(tx: Session, coach_id: int, phrase: str, movement: str | None, cause: int | None = None) -> None:
    """None: the word means nothing special any more. `cause`: the message that says so."""
    _set(tx, _WORDS, coach_id, phrase.casefold().strip(), movement, cause)


@dataclass(frozen=True)
class _Kept:
    """A table of what a coach set for all: the columns of what it is called and of what it is."""

    kind: Literal["rule", "nickname"]
    table: sa.Table
    name: str
    value: str

    def of(self, coach_id: int, *more: sa.ColumnElement[bool]) -> sa.Select[Any]:
        return sa.select(self.table).where(self.table.c.coach_id == coach_id, *more)


_RULES = _Kept("rule", rule_overrides, "rule", "value")
_WORDS = _Kept("nickname", nicknames, "phrase", "movement")
KEPT = (_RULES, _WORDS)
MOST_STEPS = 20  # that can be taken back, of one rule or word
Step = tuple[int, Any]  # the message, and what stood before it


def _set(tx: Session, kept: _Kept, coach_id: int, name: str, value: Any, cause: int | None) -> None:
    row = run(tx, kept.of(coach_id, kept.table.c[kept.name] == name)).first()
    steps = [] if row is None or cause is None else _steps(row)
    if cause is not None:
        steps.append((cause, None if row is None else getattr(row, kept.value)))
    _put(tx, kept, coach_id, name, value, steps[-MOST_STEPS:])


def _steps(row: Any) -> list[Step]:
    """What can be taken back of a row, the newest last."""
    return [
        *((cause, before) for cause, before in row.earlier or ()),
        *([(row.cause, row.before)] if row.cause else []),
    ]


def _put(tx: Session, kept: _Kept, coach_id: int, name: str, value: Any, steps: Sequence[Step]) -> None:
    touch_coach(tx, coach_id)
    table = kept.table
    if value is None:
        run(tx, sa.delete(table).where(table.c.coach_id == coach_id, table.c[kept.name] == name))
        return
    cause, before = steps[-1] if steps else (None, None)
    told = {kept.value: value, "cause": cause, "before": before, "earlier": [*map(list, steps[:-1])] or None}
    statement = conflict_insert(tx, table).values(coach_id=coach_id, **{kept.name: name}, **told)
    run(tx, statement.on_conflict_do_update(index_elements=["coach_id", kept.name], set_=told))


@dataclass(frozen=True)
class TakenBack:
    """A rule or a nickname that reads as before again; `value` None: it is not set at all any more."""

    kind: Literal["rule", "nickname"]
    name: str
    value: Any


def last_cause_for_all(tx: Session, coach_id: int) -> int | None:
    """The newest message that set a rule for all or a nickname, where that can still be taken back."""
    newest = [sa.select(sa.func.max(kept.table.c.cause)).where(kept.table.c.coach_id == coach_id) for kept in KEPT]
    found = [cause for query in newest if (cause := run(tx, query).scalar()) is not None]
    return max(found, default=None)


def take_back(tx: Session, coach_id: int, cause: int) -> list[TakenBack]:
    """What a message set for all, where nothing was set over it since, reads as before it."""
    back = []
    for kept in KEPT:
        for row in run(tx, kept.of(coach_id, kept.table.c.cause == cause)).all():
            name = getattr(row, kept.name)
            _put(tx, kept, coach_id, name, row.before, _steps(row)[:-1])
            back.append(TakenBack(kept.kind, name, row.before))
    return back


def nicknames_of(tx: Session, coach_id: int) -> tuple[tuple[str, str], ...]:
    """Phrase and movement id, by phrase: as a reading's context takes them."""

    def read() -> tuple[tuple[str, str], ...]:
        return tuple((row.phrase, row.movement) for row in run(tx, _NICKNAMES, {"of": coach_id}))

    return one_at_hand(tx, nicknames, coach_id, read)


_NICKNAMES = (
    sa.select(nicknames.c.phrase, nicknames.c.movement)
    .where(nicknames.c.coach_id == sa.bindparam("of", type_=BigId))
    .order_by(nicknames.c.phrase)
)
