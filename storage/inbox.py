"""What came in, kept before it is confirmed to the service, and handled once."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field
from datetime import datetime, timedelta
from functools import cache
from typing import Any, Literal

import sqlalchemy as sa
from sqlmodel import Field, Index, Session, UniqueConstraint

from storage import persons
from storage.chats import chats
from storage.database import BigId, Json, Row, insert_ignoring, loose, loose_all, on_postgres, run, table_of
from storage.persons import Someone, Who

MAX_ATTEMPTS = 5
_BATCH = 200
_CANDIDATES = 20

IncomingKind = Literal["text", "press", "clip", "member"]


@dataclass(frozen=True)
class IncomingUpdate:
    """What a channel received. `update_key`: the service's own number of it, so that it counts once."""

    channel: str
    update_key: str
    address: str
    kind: IncomingKind
    text: str
    sent_at: datetime
    data: dict[str, Any] = field(default_factory=dict)


class Incoming(Row, table=True):
    """One message, press, clip or change of membership. Open until `handled_at`; a row that kept failing is set
    aside, with the reason, and counts as handled."""

    __table_args__ = (
        # Services deliver again what they think we missed.
        UniqueConstraint("channel", "update_key"),
        Index("ix_incoming_open", "id", sqlite_where=sa.text("handled_at IS NULL"),
              postgresql_where=sa.text("handled_at IS NULL")),
        Index("ix_incoming_open_sender", "sender", "id", sqlite_where=sa.text("handled_at IS NULL"),
              postgresql_where=sa.text("handled_at IS NULL")),
    )  # fmt: skip

    channel: str
    update_key: str
    address: str
    sender: str  # whose rows are taken in order: "athlete:3", "coach:1", or a stranger's channel and address
    athlete_id: int | None = Field(default=None, foreign_key="athlete.id", sa_type=BigId, index=True)
    coach_id: int | None = Field(default=None, foreign_key="coach.id", sa_type=BigId, index=True)
    kind: str
    text: str = ""
    data: dict[str, Any] = Field(default_factory=dict, sa_type=Json)
    sent_at: datetime
    received_at: datetime
    handled_at: datetime | None = None
    attempts: int = 0
    not_before: datetime | None = None
    set_aside_because: str | None = None


incoming = table_of(Incoming)
_open = incoming.c.handled_at.is_(None)


def accept(tx: Session, updates: Sequence[IncomingUpdate], now: datetime) -> int:
    """Keep a batch; give how many of them are new. Duplicates are left out without a word."""
    kept = 0
    for start in range(0, len(updates), _BATCH):
        batch = updates[start : start + _BATCH]
        known = _people_at(tx, batch)
        rows = [_values(update, known.get((update.channel, update.address)), now) for update in batch]
        kept += len(insert_ignoring(tx, incoming, rows))
    return kept


def next_unhandled(tx: Session, now: datetime) -> Incoming | None:
    """The oldest open row whose sender has no older one open, and which is not waiting after a failure.

    On PostgreSQL the row and its sender are locked until the transaction ends; what others work on is passed over.
    """
    if not on_postgres(tx):
        return loose(Incoming, run(tx, _ready(False), {"now": now, "most": 1}).first())
    for row in run(tx, _ready(False), {"now": now, "most": _CANDIDATES}).all():
        if _try_lock_sender(tx, row):
            # Looked at again under the lock: another worker may have handled it, or an older one, meanwhile.
            found = run(tx, _ready(True), {"now": now, "most": 1, "wanted": row.id}).first()
            if found is not None:
                return loose(Incoming, found)
    return None


@cache  # building it takes longer than running it
def _ready(one: bool) -> sa.Select[Any]:
    """Parameters: `now`, `most`, and `wanted`, the id of the row to lock, if `one`."""
    now: sa.BindParameter[datetime] = sa.bindparam("now", type_=incoming.c.received_at.type)
    older = incoming.alias()
    blocked = sa.exists().where(
        older.c.sender == incoming.c.sender, older.c.id < incoming.c.id, older.c.handled_at.is_(None)
    )
    waited = sa.or_(incoming.c.not_before.is_(None), incoming.c.not_before <= now)
    query = sa.select(incoming).where(_open, waited, sa.not_(blocked)).order_by(incoming.c.id)
    query = query.limit(sa.bindparam("most", type_=sa.Integer))
    if one:
        query = query.where(incoming.c.id == sa.bindparam("wanted", type_=BigId))
        query = query.with_for_update(of=incoming, skip_locked=True)
    return query


def get(tx: Session, incoming_id: int) -> Incoming | None:
    return loose(Incoming, run(tx, sa.select(incoming).where(incoming.c.id == incoming_id)).first())


def by_key(tx: Session, channel: str, update_key: str) -> Incoming | None:
    """The row of one update."""
    here = sa.select(incoming).where(incoming.c.channel == channel, incoming.c.update_key == update_key)
    return loose(Incoming, run(tx, here).first())


def mark_handled(tx: Session, incoming_id: int, now: datetime) -> None:
    run(tx, sa.update(incoming).where(incoming.c.id == incoming_id), {"handled_at": now})


def note_failure(tx: Session, incoming_id: int, why: str, now: datetime) -> bool:
    """Count a failed try (in a transaction of its own: the failed one is rolled back). True: now set aside.

    The first retry may come at once, the next after 2, 8 and 18 seconds. `why` must not quote the message.
    """
    attempts = int(run(tx, sa.select(incoming.c.attempts).where(incoming.c.id == incoming_id)).scalar_one()) + 1
    values: dict[str, Any] = {"attempts": attempts, "not_before": now + timedelta(seconds=2 * (attempts - 1) ** 2)}
    aside = attempts >= MAX_ATTEMPTS
    if aside:
        values |= {"handled_at": now, "set_aside_because": why}
    run(tx, sa.update(incoming).where(incoming.c.id == incoming_id), values)
    return aside


def set_aside(tx: Session) -> list[Incoming]:
    """The rows that kept failing, oldest first."""
    query = sa.select(incoming).where(incoming.c.set_aside_because.is_not(None)).order_by(incoming.c.id)
    return loose_all(Incoming, run(tx, query).all())


def retry(tx: Session, incoming_id: int) -> None:
    """Open a row that was set aside again."""
    again = {"handled_at": None, "set_aside_because": None, "attempts": 0, "not_before": None}
    aside = incoming.c.set_aside_because.is_not(None)
    run(tx, sa.update(incoming).where(incoming.c.id == incoming_id, aside), again)


def empty_texts(tx: Session, before: datetime) -> int:
    """Let go of the words of what was handled and received before a moment; the facts made of it stay. How many.

    What was set aside is kept until somebody has looked at it.
    """
    old = sa.update(incoming).where(incoming.c.received_at < before, incoming.c.handled_at.is_not(None))
    told = old.where(incoming.c.set_aside_because.is_(None), incoming.c.text != "")
    return int(run(tx, told, {"text": "", "data": {}}).rowcount)


def adopt(tx: Session, channel: str, address: str, who: Someone) -> None:
    """The stranger at the address is that person: their open rows are theirs, and stay in order with new ones."""
    here = sa.update(incoming).where(incoming.c.channel == channel, incoming.c.address == address, _open)
    run(tx, here, {"sender": _sender(who, channel, address), **persons.owner_columns(who)})


def _people_at(tx: Session, batch: Sequence[IncomingUpdate]) -> dict[tuple[str, str], Who]:
    addresses = {update.address for update in batch}
    query = sa.select(chats.c.channel, chats.c.address, chats.c.athlete_id, chats.c.coach_id)
    return {
        (row.channel, row.address): Who("coach", row.coach_id)
        if row.athlete_id is None
        else Who("athlete", row.athlete_id)
        for row in run(tx, query.where(chats.c.address.in_(addresses)))
    }


def _values(update: IncomingUpdate, who: Who | None, now: datetime) -> dict[str, Any]:
    owner = {"athlete_id": None, "coach_id": None} if who is None else persons.owner_columns(who)
    return {
        "channel": update.channel,
        "update_key": update.update_key,
        "address": update.address,
        "sender": _sender(who, update.channel, update.address),
        **owner,
        "kind": update.kind,
        "text": update.text,
        "data": update.data,
        "sent_at": update.sent_at,
        "received_at": now,
        "attempts": 0,
    }


def _sender(who: Someone | None, channel: str, address: str) -> str:
    return f"{channel}:{address}" if who is None else f"{who.role}:{who.id}"


def _try_lock_sender(tx: Session, row: sa.Row[*tuple[Any, ...]]) -> bool:
    if row.athlete_id is not None:
        return persons.try_lock(tx, Who("athlete", row.athlete_id))
    if row.coach_id is not None:
        return persons.try_lock(tx, Who("coach", row.coach_id))
    key = sa.func.hashtextextended(row.sender, 0)
    return bool(run(tx, sa.select(sa.func.pg_try_advisory_xact_lock(key))).scalar())
