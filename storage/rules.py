"""What a coach set for all of their athletes: rule values, and nicknames of movements."""

from __future__ import annotations

from typing import Any

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


class Nickname(Row, table=True):
    """A coach's own word for a movement, in lower case."""

    __table_args__ = (UniqueConstraint("coach_id", "phrase"),)

    coach_id: int = Field(foreign_key="coach.id", sa_type=BigId)
    phrase: str
    movement: str


rule_overrides = table_of(RuleOverride)
nicknames = table_of(Nickname)


def set_coach_rule(tx: Session, coach_id: int, rule: str, value: float | str | bool | None) -> None:
    """None: the default is good again."""
    touch_coach(tx, coach_id)
    if value is None:
        here = sa.delete(rule_overrides).where(rule_overrides.c.coach_id == coach_id)
        run(tx, here.where(rule_overrides.c.rule == rule))
        return
    statement = conflict_insert(tx, rule_overrides).values(coach_id=coach_id, rule=rule, value=value)
    run(tx, statement.on_conflict_do_update(index_elements=["coach_id", "rule"], set_={"value": value}))


def set_nickname(tx: Session, coach_id: int, phrase: str, movement: str | None) -> None:
    """None: the word means nothing special any more."""
    phrase = phrase.casefold().strip()
    if movement is None:
        run(tx, sa.delete(nicknames).where(nicknames.c.coach_id == coach_id, nicknames.c.phrase == phrase))
        return
    statement = conflict_insert(tx, nicknames).values(coach_id=coach_id, phrase=phrase, movement=movement)
    run(tx, statement.on_conflict_do_update(index_elements=["coach_id", "phrase"], set_={"movement": movement}))


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
