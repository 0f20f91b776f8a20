"""How the database does: numbers for the operator's check and for metrics."""

from __future__ import annotations

import sqlite3
from collections import Counter
from dataclasses import dataclass
from datetime import datetime, timedelta

import sqlalchemy as sa
from sqlmodel import Field, Session, SQLModel

from storage.chats import chats
from storage.database import Row, conflict_insert, on_postgres, run, table_of
from storage.due import dues
from storage.inbox import failed, incoming, unreadable
from storage.outbox import UNREACHABLE, held, outgoing
from storage.persons import athletes, coaches

# A service that runs leaves a mark every ten seconds.
STILL_RUNNING = timedelta(seconds=60)
# Below this, two connections that write or checkpoint at once can, rarely, corrupt a file in WAL mode.
SQLITE_WITHOUT_WAL_RESET_BUG = (3, 51, 3)


class Heartbeat(Row, table=True):
    """When a recurring task last ran to its end ("sweep", "backup")."""

    name: str = Field(unique=True)
    at: datetime


heartbeats = table_of(Heartbeat)


@dataclass(frozen=True)
class Health:
    """`set_aside`: messages that kept failing, `unreadable`: updates of which nothing is kept; ages at
    the moment of asking, None where nothing waits or nothing ran yet."""

    unhandled: int
    oldest_unhandled: timedelta | None
    set_aside: int
    unreadable: int
    unsent: int
    oldest_unsent: timedelta | None
    overdue: int
    oldest_overdue: timedelta | None
    beats: dict[str, timedelta]
    database: str
    revision: str | None
    wal_reset_bug: bool


def beat(tx: Session, name: str, now: datetime) -> None:
    """Note that a task ran to its end."""
    statement = conflict_insert(tx, heartbeats).values(name=name, at=now)
    run(tx, statement.on_conflict_do_update(index_elements=["name"], set_={"at": now}))


def at_work(connection: sa.Connection, now: datetime) -> bool:
    """Whether a service runs on this database: what it writes while the database is carried away would be lost."""
    beats = connection.execute(sa.select(heartbeats.c.at).where(heartbeats.c.name == "sweep"))
    return any(timedelta(0) <= now - row.at < STILL_RUNNING for row in beats)


def last_beat(tx: Session, name: str) -> datetime | None:
    found: datetime | None = run(tx, sa.select(heartbeats.c.at).where(heartbeats.c.name == name)).scalar()
    return found


@dataclass(frozen=True)
class Readiness:
    """`revision`: of the tables; ages at the moment of asking, None where no sweep ran or nothing is due."""

    revision: str | None
    sweep_age: timedelta | None
    oldest_overdue: timedelta | None


def readiness(tx: Session, now: datetime) -> Readiness:
    """What tells whether this service does its work; two look-ups by index, to be asked every few seconds."""
    first = sa.select(sa.func.min(dues.c.due_at, type_=dues.c.due_at.type)).where(dues.c.done_at.is_(None))
    found: datetime | None = run(tx, first).scalar()
    overdue = None if found is None or found > now else now - found
    return Readiness(_revision(tx), _age(last_beat(tx, "sweep"), now), overdue)


def look(tx: Session, now: datetime) -> Health:
    """What waits, and what went wrong: by index, so that it may be asked every few seconds however much is kept."""
    unhandled, first_in = _waiting(tx, incoming.c.received_at, incoming.c.handled_at.is_(None))
    still_owed = sa.and_(outgoing.c.sent_at.is_(None), outgoing.c.given_up_because.is_(None), outgoing.c.due_at <= now,
                         sa.not_(held()))  # fmt: skip
    unsent, first_out = _waiting(tx, outgoing.c.due_at, still_owed)
    overdue, first_due = _waiting(tx, dues.c.due_at, sa.and_(dues.c.done_at.is_(None), dues.c.due_at <= now))
    return Health(
        unhandled=unhandled,
        oldest_unhandled=_age(first_in, now),
        set_aside=_count(tx, incoming, failed),
        unreadable=_count(tx, incoming, unreadable),
        unsent=unsent,
        oldest_unsent=_age(first_out, now),
        overdue=overdue,
        oldest_overdue=_age(first_due, now),
        beats={row.name: now - row.at for row in run(tx, sa.select(heartbeats).order_by(heartbeats.c.name))},
        database=_version(tx),
        revision=_revision(tx),
        wal_reset_bug=not on_postgres(tx) and sqlite3.sqlite_version_info < SQLITE_WITHOUT_WAL_RESET_BUG,
    )


def rows(tx: Session) -> dict[str, int]:
    """How many there are, by table. Reads every table whole."""
    return {table.name: _count(tx, table) for table in SQLModel.metadata.sorted_tables}


@dataclass(frozen=True)
class GivenUp:
    """Messages that were not sent and will not be: `expected` are those to chats that are gone and those too late to be
    of use; `lost` were refused or kept failing, and were given up since a moment."""

    expected: int
    lost: dict[str, int]


EXPECTED = ("stale", UNREACHABLE)


def given_up(tx: Session, since: datetime) -> GivenUp:
    """What became of messages that were given up, by why. Reads all of them."""
    why = outgoing.c.given_up_because
    lost = sa.select(why).where(why.not_in(EXPECTED), outgoing.c.given_up_at >= since)
    # "refused: Wrong file identifier": the first words say the kind.
    kinds = Counter(str(row[0]).partition(":")[0] for row in run(tx, lost))
    return GivenUp(_count(tx, outgoing, why.in_(EXPECTED)), dict(sorted(kinds.items())))


def unreachable_coaches(tx: Session) -> dict[int, int]:
    """Coaches who are written to and take no messages, by id: all of their chats are blocked, or they have none while
    an athlete of theirs has; with how many messages wait for each."""
    free = sa.exists().where(chats.c.coach_id == coaches.c.id, sa.not_(chats.c.blocked))
    own = sa.exists().where(chats.c.coach_id == coaches.c.id)
    of_athletes = sa.exists().where(chats.c.athlete_id == athletes.c.id, athletes.c.coach_id == coaches.c.id)
    found = run(tx, sa.select(coaches.c.id).where(sa.not_(free), sa.or_(own, of_athletes)).order_by(coaches.c.id))
    owed = sa.select(outgoing.c.coach_id, sa.func.count().label("many")).where(
        outgoing.c.sent_at.is_(None), outgoing.c.given_up_because.is_(None), held()
    )
    waiting = {row.coach_id: row.many for row in run(tx, owed.group_by(outgoing.c.coach_id))}
    return {row.id: waiting.get(row.id, 0) for row in found}


def _count(tx: Session, table: sa.Table, where: sa.ColumnElement[bool] | None = None) -> int:
    query = sa.select(sa.func.count()).select_from(table)
    return int(run(tx, query if where is None else query.where(where)).scalar_one())


def _waiting(tx: Session, at: sa.Column[datetime], where: sa.ColumnElement[bool]) -> tuple[int, datetime | None]:
    row = run(tx, sa.select(sa.func.count(), sa.func.min(at, type_=at.type)).where(where)).one()
    return int(row[0]), row[1]


def _age(since: datetime | None, now: datetime) -> timedelta | None:
    return None if since is None else now - since


def _version(tx: Session) -> str:
    if on_postgres(tx):
        return f"PostgreSQL {run(tx, sa.text('SHOW server_version')).scalar_one()}"
    return f"SQLite {sqlite3.sqlite_version}"


def _revision(tx: Session) -> str | None:
    found: str | None = run(tx, sa.text("SELECT version_num FROM alembic_version")).scalar()
    return found
