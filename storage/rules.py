"""What a coach set for all of their athletes: rule values, and nicknames of movements."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any, Literal

import sqlalchemy as sa
from sqlmodel import Field, Session, UniqueConstraint

from storage.at_hand import one_at_hand
from storage.database import BigId, Json, Row, conflict_insert, run, table_of
from storage.persons import touch_coach


class RuleOverride(Row, table=True):
    """A coach's value of a rule, for every athlete who has none of their own."""

    __tablename__ = "rule_override"
    __table_args__ = (UniqueConstraint("coach_id", "rule"),)

    coach_id: int = Field(foreign_key="coach.id", sa_type=BigId)
    rule: str
    value: Any = Field(default=None, sa_type=Json)
    cause: int | None = Field(default=None, sa_type=BigId)  # the message that set it, for as long as that can be undone
    before: Any = Field(default=None, sa_type=Json, nullable=True)


class Nickname(Row, table=True):
    """A coach's own word for a movement, in lower case."""

    __table_args__ = (UniqueConstraint("coach_id", "phrase"),)

    coach_id: int = Field(foreign_key="coach.id", sa_type=BigId)
    phrase: str
    movement: str
    cause: int | None = Field(default=None, sa_type=BigId)
    before: str | None = None


rule_overrides = table_of(RuleOverride)
nicknames = table_of(Nickname)


def set_coach_rule(
    tx: Session, coach_id: int, rule: str, value: float | str | bool | None, cause: int | None = None
) -> None:
    """None: the default is good again. `cause`: the message that says so, by which it can be taken back."""
    touch_coach(tx, coach_id)
    here = sa.and_(rule_overrides.c.coach_id == coach_id, rule_overrides.c.rule == rule)
    if value is None:
        run(tx, sa.delete(rule_overrides).where(here))
        return
    before = run(tx, sa.select(rule_overrides.c.value).where(here)).scalar()
    told = {"value": value, "cause": cause, "before": before if cause is not None else None}
    statement = conflict_insert(tx, rule_overrides).values(coach_id=coach_id, rule=rule, **told)
    run(tx, statement.on_conflict_do_update(index_elements=["coach_id", "rule"], set_=told))


def set_nickname(tx: Session, coach_id: int, phrase: str, movement: str | None, cause: int | None = None) -> None:
    """None: the word means nothing special any more. `cause`: the message that says so."""
    phrase = phrase.casefold().strip()
    here = sa.and_(nicknames.c.coach_id == coach_id, nicknames.c.phrase == phrase)
    if movement is None:
        run(tx, sa.delete(nicknames).where(here))
        return
    before = run(tx, sa.select(nicknames.c.movement).where(here)).scalar()
    told = {"movement": movement, "cause": cause, "before": before if cause is not None else None}
    statement = conflict_insert(tx, nicknames).values(coach_id=coach_id, phrase=phrase, **told)
    run(tx, statement.on_conflict_do_update(index_elements=["coach_id", "phrase"], set_=told))


@dataclass(frozen=True)
class TakenBack:
    """A rule or a nickname that reads as before again; `value` None: it is not set at all any more."""

    kind: Literal["rule", "nickname"]
    name: str
    value: Any


def last_cause_for_all(tx: Session, coach_id: int) -> int | None:
    """The newest message that set a rule for all or a nickname, where that can still be taken back."""
    tables = (rule_overrides, nicknames)
    newest = [sa.select(sa.func.max(table.c.cause)).where(table.c.coach_id == coach_id) for table in tables]
    found = [cause for query in newest if (cause := run(tx, query).scalar()) is not None]
    return max(found, default=None)


def take_back(tx: Session, coach_id: int, cause: int) -> list[TakenBack]:
    """What a message set for all reads as before it."""
    rules = sa.and_(rule_overrides.c.coach_id == coach_id, rule_overrides.c.cause == cause)
    words = sa.and_(nicknames.c.coach_id == coach_id, nicknames.c.cause == cause)
    back = [TakenBack("rule", row.rule, row.before) for row in run(tx, sa.select(rule_overrides).where(rules)).all()]
    back += [TakenBack("nickname", row.phrase, row.before) for row in run(tx, sa.select(nicknames).where(words)).all()]
    for one in back:
        if one.kind == "rule":
            set_coach_rule(tx, coach_id, one.name, one.value)
        else:
            set_nickname(tx, coach_id, one.name, one.value)
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
