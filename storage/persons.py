"""Coaches and athletes: who they are and how they train."""

from __future__ import annotations

import secrets
from collections.abc import Collection, Mapping, Sequence
from dataclasses import dataclass
from datetime import date, datetime, time
from typing import Any, Literal, Protocol

import sqlalchemy as sa
from sqlmodel import Field, Session, UniqueConstraint

from planner.facts import Cycle, Weekly
from storage.at_hand import at_hand, forget, know, one_at_hand, staying
from storage.database import (
    NUMBERS_ONCE,
    Among,
    BigId,
    Json,
    Row,
    insert_row,
    loose,
    loose_all,
    made_of,
    on_postgres,
    run,
    run_later,
    table_of,
)
from storage.errors import NoSuchPerson
from storage.record_cache import changes_facts

Role = Literal["coach", "athlete"]


class Coach(Row, table=True):
    """A coach. `summary_day` Monday 0, `summary_at` local time; both None: no weekly summary."""

    name: str
    timezone: str
    language: str = "en"
    unit: str = "kg"
    summary_day: int | None = None
    summary_at: time | None = None
    # Changed with every rule of the coach, so that no record is taken from the cache that lacks it.
    stamp: int = Field(default=0, sa_type=BigId)


class Athlete(Row, table=True):
    """An athlete of one coach, with the settings the roster gave and messages changed since.

    `equipment` a list, `schedule` as `schedule_to_json` makes it, `ladders` pairs of ladder and rung (None: to be
    placed), `rules` the coach's values for this athlete alone. `silenced`: asked to be left alone. `added_at`: None
    where nobody had noted it yet; later than any erasure of the handle before (`storage/tombstones.py`).
    `roster_said`: what the roster last gave for the settings that are the athlete's too (`storage/loading.py`); None
    where nobody had noted it yet. `own_before`: what each setting of their own was before, and the message that set
    it, oldest first, for as long as that can be undone.
    """

    # Handles are how a coach names an athlete; two of one name would get each other's orders. Numbers are given once:
    # an old button and a record at hand would take who comes next for who was erased.
    __table_args__ = (UniqueConstraint("coach_id", "handle"), NUMBERS_ONCE)

    coach_id: int = Field(foreign_key="coach.id", sa_type=BigId)
    handle: str
    name: str
    timezone: str
    language: str = "en"
    unit: str = "kg"
    bodyweight_kg: float
    plate_step: float = 1.25
    plate_unit: str = "kg"
    equipment: list[str] = Field(default_factory=list, sa_type=Json)
    schedule: dict[str, Any] = Field(default_factory=dict, sa_type=Json)
    plan_at: time
    ladders: list[list[str | None]] = Field(default_factory=list, sa_type=Json)
    screened: bool = False
    started_on: date
    added_at: datetime | None = None
    silenced: bool = False
    rules: dict[str, Any] = Field(default_factory=dict, sa_type=Json)
    roster_said: dict[str, Any] | None = Field(default=None, sa_type=Json)
    own_before: list[list[Any]] | None = Field(default=None, sa_type=Json, nullable=True)
    # A new number with every change of a setting or fact: what a cached record is known by. Not a counter: one that
    # was rolled back would come again for something else.
    stamp: int = Field(default=0, sa_type=BigId)


coaches = table_of(Coach)
athletes = table_of(Athlete)
# Built once: building a statement costs more than running it.
_COACHES = Among(sa.select(coaches), coaches.c.id)
_ATHLETES = Among(sa.select(athletes, coaches).join(coaches, coaches.c.id == athletes.c.coach_id), athletes.c.id)
_COLUMNS = tuple(athletes.c.keys()), tuple(coaches.c.keys())
_TABLES: tuple[tuple[Role, sa.Table], ...] = (("athlete", athletes), ("coach", coaches))


class Someone(Protocol):
    """Whoever has a role and an id: a `Person` or a `Who`."""

    @property
    def role(self) -> Role: ...
    @property
    def id(self) -> int: ...


@dataclass(frozen=True, slots=True)
class Who:
    """A person by role and id, where no more is at hand."""

    role: Role
    id: int


@dataclass(frozen=True, slots=True)
class Person:
    """Someone the bot talks with. `coach_id` is the coach's own id for a coach; their `handle` is "coach"."""

    role: Role
    id: int
    coach_id: int
    name: str
    handle: str
    timezone: str
    language: str


def owner_columns(who: Someone) -> dict[str, Any]:
    """The two columns by which rows belong to either an athlete or a coach."""
    return {
        "athlete_id": who.id if who.role == "athlete" else None,
        "coach_id": who.id if who.role == "coach" else None,
    }


def owner_of(athlete_id: int | None, coach_id: int | None) -> Who | None:
    """Who the two columns name; None: nobody."""
    if athlete_id is not None:
        return Who("athlete", athlete_id)
    return None if coach_id is None else Who("coach", coach_id)


def owned_by(table: sa.Table, who: Someone) -> sa.ColumnElement[bool]:
    column = table.c.athlete_id if who.role == "athlete" else table.c.coach_id
    return column == who.id


def coach(tx: Session, coach_id: int) -> Coach:
    found = coaches_by_id(tx, [coach_id]).get(coach_id)
    if found is None:
        raise NoSuchPerson(f"There is no coach {coach_id}.")
    return found


def athlete(tx: Session, athlete_id: int) -> Athlete:
    found = athletes_by_id(tx, [athlete_id]).get(athlete_id)
    if found is None:
        raise NoSuchPerson(f"There is no athlete {athlete_id}.")
    return found


def athletes_by_id(tx: Session, athlete_ids: Sequence[int]) -> dict[int, Athlete]:
    """Several at once, their coaches with them, of whom every matter of theirs asks; ids that nobody has are left
    out."""

    def read(ids: list[int]) -> dict[int, Athlete]:
        found: dict[int, Athlete] = {}
        theirs: dict[int, Coach] = {}
        own, of_coach = _COLUMNS
        for row in _ATHLETES(tx, ids).all():
            one = made_of(Athlete, own, row[: len(own)])
            assert one.id is not None
            found[one.id] = one
            if one.coach_id not in theirs:
                theirs[one.coach_id] = made_of(Coach, of_coach, row[len(own) :])
        know(tx, coaches, theirs)
        return found

    return at_hand(tx, athletes, athlete_ids, read)


def coaches_by_id(tx: Session, coach_ids: Sequence[int]) -> dict[int, Coach]:
    """Several at once; ids that nobody has are left out."""

    def read(ids: list[int]) -> dict[int, Coach]:
        return {row.id: row for row in loose_all(Coach, _COACHES(tx, ids).all()) if row.id}

    return at_hand(tx, coaches, coach_ids, read)


def athlete_by_handle(tx: Session, coach_id: int, handle: str) -> Athlete | None:
    """The coach's athlete of that handle, case aside; None if there is none."""
    mine = sa.select(athletes).where(athletes.c.coach_id == coach_id)
    for row in run(tx, mine.where(sa.func.lower(athletes.c.handle) == handle.lower())):
        return loose(Athlete, row)
    return None


def athletes_of(tx: Session, coach_id: int) -> list[Athlete]:
    """The coach's athletes by handle."""
    statement = sa.select(athletes).where(athletes.c.coach_id == coach_id).order_by(athletes.c.handle)
    return loose_all(Athlete, run(tx, statement).all())


def names_in_squad(tx: Session, coach_id: int) -> frozenset[str]:
    """The handles and first names of a coach's athletes, case folded."""

    def read() -> frozenset[str]:
        mine = sa.select(athletes.c.handle, athletes.c.name).where(athletes.c.coach_id == coach_id)
        called = [word for handle, name in run(tx, mine) for word in (handle, *name.split()[:1])]
        return frozenset(word.casefold() for word in called)

    return one_at_hand(tx, athletes, ("names", coach_id), read)


def all_coaches(tx: Session) -> list[Coach]:
    return loose_all(Coach, run(tx, sa.select(coaches).order_by(coaches.c.id)).all())


def person(tx: Session, who: Someone) -> Person:
    """Raises NoSuchPerson."""
    return person_of(athlete(tx, who.id) if who.role == "athlete" else coach(tx, who.id))


def person_of(row: Athlete | Coach) -> Person:
    assert row.id is not None
    if isinstance(row, Coach):
        return Person("coach", row.id, row.id, row.name, "coach", row.timezone, row.language)
    return Person("athlete", row.id, row.coach_id, row.name, row.handle, row.timezone, row.language)


def add_coach(tx: Session, row: Coach) -> int:
    return insert_row(tx, row)


def add_athlete(tx: Session, row: Athlete) -> int:
    return insert_row(tx, row)


def update_athlete(tx: Session, athlete_id: int, changes: Mapping[str, Any]) -> None:
    """Change settings by column name."""
    changes_facts(tx)
    run(tx, sa.update(athletes).where(athletes.c.id == athlete_id), {**changes, "stamp": new_stamp()})


def update_coach(tx: Session, coach_id: int, changes: Mapping[str, Any]) -> None:
    """Change settings by column name."""
    changes_facts(tx)
    run(tx, sa.update(coaches).where(coaches.c.id == coach_id), {**changes, "stamp": new_stamp()})


def touch(tx: Session, athlete_id: int) -> None:
    """Note that something of this athlete changed."""
    changes_facts(tx)
    run(tx, sa.update(athletes).where(athletes.c.id == athlete_id), {"stamp": new_stamp()})


def restamp(tx: Session, athlete_id: int, last: int) -> int | None:
    """As `touch`, where the athlete's stamp still is `last`: the new one. None: it is another's by now."""
    changes_facts(tx)
    stamp = new_stamp()
    with staying(tx, athletes) as known:
        if not run(tx, _RESTAMP, {"of": athlete_id, "last": last, "stamp": stamp}).rowcount:
            known.clear()
            return None
        if athlete_id in known:
            known[athlete_id].stamp = stamp
    return stamp


_RESTAMP = sa.update(athletes).where(athletes.c.id == sa.bindparam("of"), athletes.c.stamp == sa.bindparam("last"))


def touch_later(tx: Session, athlete_id: int) -> None:
    """As `touch`, with others at once."""
    changes_facts(tx)
    run_later(tx, _TOUCH, {"of": athlete_id, "stamp": new_stamp()})


_TOUCH = sa.update(athletes).where(athletes.c.id == sa.bindparam("of"))


def touch_coach(tx: Session, coach_id: int) -> None:
    """Note that something of all this coach's athletes changed."""
    changes_facts(tx)
    run(tx, sa.update(coaches).where(coaches.c.id == coach_id), {"stamp": new_stamp()})


def new_stamp() -> int:
    return secrets.randbits(62)


def try_lock(tx: Session, who: Someone) -> bool:
    """Have this person to ourselves until the transaction ends; False at once where another works on them.

    On SQLite, which has one writer, they always are ours.
    """
    if not on_postgres(tx):
        return True
    return run(tx, _locking(who).with_for_update(key_share=True, skip_locked=True)).first() is not None


def lock(tx: Session, who: Someone) -> bool:
    """As `try_lock`, but wait for the other transaction: what is read of this person from here on is as that left it.
    False where there was nobody to wait for, as on SQLite.

    For who has the coach and wants one of their athletes, and for nobody else: those who begin with an athlete, or have
    many as the sweep has, wait for no person, so that no two wait for each other.
    """
    if not on_postgres(tx):
        return False
    run(tx, _locking(who).with_for_update(key_share=True))
    forget(tx)
    return True


def try_lock_all(tx: Session, people: Collection[Who]) -> set[Who]:
    """As `try_lock`, several people at once: those whom no other transaction works on, now ours."""
    if not on_postgres(tx):
        return set(people)
    mine: set[Who] = set()
    for role, table in _TABLES:
        ids = [who.id for who in people if who.role == role]
        if ids:
            query = sa.select(table.c.id).where(table.c.id.in_(ids)).with_for_update(key_share=True, skip_locked=True)
            mine |= {Who(role, row.id) for row in run(tx, query)}
    return mine


def _locking(who: Someone) -> sa.Select[Any]:
    table = athletes if who.role == "athlete" else coaches
    return sa.select(table.c.id).where(table.c.id == who.id)


def schedule_to_json(schedule: Weekly | Cycle) -> dict[str, Any]:
    if isinstance(schedule, Weekly):
        return {"days": sorted(schedule.days)}
    return {"length": schedule.length, "train": sorted(schedule.train), "since": schedule.since.isoformat()}


def schedule_from_json(data: Mapping[str, Any]) -> Weekly | Cycle:
    if "days" in data:
        return Weekly(frozenset(data["days"]))
    return Cycle(data["length"], frozenset(data["train"]), date.fromisoformat(data["since"]))
