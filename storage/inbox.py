"""What came in, kept before it is confirmed to the service, and handled once."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from datetime import datetime, timedelta
from functools import cache
from typing import Any, Literal

import sqlalchemy as sa
from sqlmodel import Field, Index, Session, UniqueConstraint

from storage import persons
from storage.chats import chats
from storage.database import (
    NUMBERS_ONCE,
    Among,
    BigId,
    Json,
    Row,
    insert_ignoring,
    loose,
    loose_all,
    on_postgres,
    run,
    table_of,
)
from storage.persons import Someone, Who

MAX_ATTEMPTS = 5
_BATCH = 200
_CANDIDATES = 20

# While messages wait, those of one sender take their turns so far apart: a flood lets everybody else in between.
TURN = timedelta(seconds=2)
MINUTE = timedelta(minutes=1)
# A stranger is heard once an hour, and a code as often as codes may be tried; the rest is not even kept.
STRANGER_HEARD = timedelta(hours=1)
STRANGER_FORGOTTEN = timedelta(days=2)
CODES_A_DAY = 10
WHILE_JOINING = 20
_START = "/start"
IMPORTED = "import"  # the channel of old notes

_ASIDE = "set_aside_because IS NOT NULL"
_WHOLE = "text <> '' OR address <> ''"

IncomingKind = Literal["text", "press", "clip", "member", "edit"]


@dataclass(frozen=True)
class IncomingUpdate:
    """What a channel received. `update_key`: the service's own number of it, so that it counts once.

    `of`: whose it is, where the channel knows better than an address tells (old notes have none).
    """

    channel: str
    update_key: str
    address: str
    kind: IncomingKind
    text: str
    sent_at: datetime
    data: dict[str, Any] = field(default_factory=dict)
    of: Who | None = None


class Incoming(Row, table=True):
    """One message, press, clip, edit or change of membership. Open until `handled_at`; a row that kept failing is set
    aside, with the reason, and counts as handled. `turn_at`: its place in the order among people."""

    __table_args__ = (
        # Services deliver again what they think we missed.
        UniqueConstraint("channel", "update_key"),
        Index("ix_incoming_open", "turn_at", "id", sqlite_where=sa.text("handled_at IS NULL"),
              postgresql_where=sa.text("handled_at IS NULL")),
        Index("ix_incoming_open_sender", "sender", "id", sqlite_where=sa.text("handled_at IS NULL"),
              postgresql_where=sa.text("handled_at IS NULL")),
        Index("ix_incoming_sender", "sender", "sent_at"),
        Index("ix_incoming_set_aside", "id", sqlite_where=sa.text(_ASIDE), postgresql_where=sa.text(_ASIDE)),
        # What the daily tidying looks through: not what it has emptied on the days before.
        Index("ix_incoming_whole", "received_at", sqlite_where=sa.text(_WHOLE), postgresql_where=sa.text(_WHOLE)),
        NUMBERS_ONCE,
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
    turn_at: datetime | None = None
    handled_at: datetime | None = None
    attempts: int = 0
    not_before: datetime | None = None
    set_aside_because: str | None = None

    @property
    def who(self) -> Who | None:
        """Whose it was as it came in; None: a stranger's."""
        return persons.owner_of(self.athlete_id, self.coach_id)


incoming = table_of(Incoming)
_open = incoming.c.handled_at.is_(None)
# Set aside: after so many tries, or, without any, what could not be read at all.
failed = sa.and_(incoming.c.set_aside_because.is_not(None), incoming.c.attempts > 0)
unreadable = sa.and_(incoming.c.set_aside_because.is_not(None), incoming.c.attempts == 0)


def accept(tx: Session, updates: Sequence[IncomingUpdate], now: datetime) -> int:
    """Keep a batch; give how many of them are new. Duplicates are left out without a word, as are strangers' floods.

    Everybody else's messages are all kept, however many. Those of one sender that wait get turns `TURN` apart.
    """
    kept = 0
    for start in range(0, len(updates), _BATCH):
        batch = updates[start : start + _BATCH]
        known = _people_at(tx, batch)
        if _wait_for_strangers(tx, batch, known):
            known = _people_at(tx, batch)
        rows = [_values(update, update.of or known.get((update.channel, update.address)), now) for update in batch]
        rows = _without_floods_of_strangers(tx, rows, now)
        _give_turns(tx, rows, now)
        kept += len(insert_ignoring(tx, incoming, rows))
    return kept


def _give_turns(tx: Session, rows: Sequence[dict[str, Any]], now: datetime) -> None:
    senders = {row["sender"] for row in rows}
    last = {row[0]: row[1] for row in _LAST_TURNS(tx, senders)} if senders else {}
    for row in rows:
        before = last.get(row["sender"])
        row["turn_at"] = last[row["sender"]] = now if before is None else max(now, before + TURN)


_LAST_TURNS = Among(
    sa.select(incoming.c.sender, sa.func.max(incoming.c.turn_at, type_=incoming.c.received_at.type))
    .where(_open)
    .group_by(incoming.c.sender),
    incoming.c.sender,
)


def _without_floods_of_strangers(tx: Session, rows: list[dict[str, Any]], now: datetime) -> list[dict[str, Any]]:
    strangers = {row["sender"] for row in rows if row["athlete_id"] is None and row["coach_id"] is None}
    if not strangers:
        return rows
    strange = sa.and_(incoming.c.sender.in_(strangers), incoming.c.athlete_id.is_(None), incoming.c.coach_id.is_(None))
    old = sa.and_(strange, incoming.c.sent_at < now - STRANGER_FORGOTTEN, incoming.c.handled_at.is_not(None))
    run(tx, sa.delete(incoming).where(old))
    kept = [row._asdict() for row in run(tx, sa.select(incoming).where(strange).order_by(incoming.c.id))]
    heard: dict[str, list[dict[str, Any]]] = {sender: [] for sender in strangers}
    for row in kept:
        heard[row["sender"]].append(row)
    wanted = []
    for row in rows:
        if row["sender"] not in strangers:
            wanted.append(row)
        elif _hear_stranger(row, heard[row["sender"]]):
            wanted.append(row)
            heard[row["sender"]].append(row)
    return wanted


def _hear_stranger(row: dict[str, Any], heard: Sequence[dict[str, Any]]) -> bool:
    if row["kind"] in ("member", "edit"):
        return False
    since = row["sent_at"] - (timedelta(days=1) if _is_code(row) else STRANGER_HEARD)
    recent: int = sum(one["sent_at"] > since and _is_code(one) == _is_code(row) for one in heard)
    if _is_code(row):
        return recent < CODES_A_DAY
    # Who is joining just now is a stranger until the code has been read: what they say next must not be lost.
    waiting = [one for one in heard if one.get("handled_at") is None]
    joining: bool = any(_is_code(one) for one in waiting) and len(waiting) < WHILE_JOINING
    return joining or not recent


def _is_code(row: dict[str, Any]) -> bool:
    word, _, rest = row["text"].strip().partition(" ")
    return bool(row["kind"] == "text" and rest.strip() and word.split("@")[0].casefold() == _START)


def keep_aside(tx: Session, channel: str, update_key: str, why: str, now: datetime) -> int | None:
    """Note an update that could not be understood at all, so that somebody can ask why; its id, None if known before.

    Nothing of what it says is kept: nobody can tell whose it is.
    """
    update = IncomingUpdate(channel, update_key, "", "text", "", now)
    row = _values(update, None, now) | {"turn_at": now, "handled_at": now, "set_aside_because": why}
    new = insert_ignoring(tx, incoming, [row])
    return new[0] if new else None


def sent_within_a_minute(tx: Session, row: Incoming) -> int:
    """How many messages the sender wrote in the minute before this one, by the service's clock."""
    values = {"of": row.sender, "since": row.sent_at - MINUTE, "until": row.sent_at, "before": row.id}
    return int(run(tx, _SENT_WITHIN, values).scalar_one())


_SENT_WITHIN = sa.select(sa.func.count()).where(
    incoming.c.sender == sa.bindparam("of"),
    incoming.c.sent_at > sa.bindparam("since"),
    incoming.c.sent_at <= sa.bindparam("until"),
    incoming.c.id < sa.bindparam("before"),
)


def next_unhandled(tx: Session, now: datetime) -> Incoming | None:
    """The open row whose turn is first, of those whose sender has no older one open and that don't wait after a
    failure.

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
    query = sa.select(incoming).where(_open, waited, sa.not_(blocked))
    query = query.order_by(incoming.c.turn_at, incoming.c.id).limit(sa.bindparam("most", type_=sa.Integer))
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
    run(tx, _MARK_HANDLED, {"which": incoming_id, "handled_at": now})


_MARK_HANDLED = sa.update(incoming).where(incoming.c.id == sa.bindparam("which"))


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


def retry(tx: Session) -> int:
    """Open again what was set aside after failing; how many. What could not be read at all has no words to try."""
    again = {"handled_at": None, "set_aside_because": None, "attempts": 0, "not_before": None}
    return int(run(tx, sa.update(incoming).where(failed), again).rowcount)


def strip(tx: Session, before: datetime, most: int) -> int:
    """Let go of the words, presses and addresses of what was handled and received before a moment, at most so many; the
    facts made of it stay. How many.

    What was set aside is kept until somebody has looked at it.
    """
    old = sa.and_(incoming.c.received_at < before, incoming.c.handled_at.is_not(None))
    whole = sa.and_(old, incoming.c.set_aside_because.is_(None), sa.text(f"({_WHOLE})"))
    here = sa.update(incoming).where(incoming.c.id.in_(sa.select(incoming.c.id).where(whole).limit(most)))
    # A stranger's sender is their address once more.
    nobodys = sa.and_(incoming.c.athlete_id.is_(None), incoming.c.coach_id.is_(None))
    sender = sa.case((nobodys, ""), else_=incoming.c.sender)
    return int(run(tx, here.values(text="", data={}, address="", sender=sender)).rowcount)


def adopt(tx: Session, channel: str, address: str, who: Someone) -> None:
    """The stranger at the address is that person: their open rows are theirs, and stay in order with new ones."""
    here = sa.update(incoming).where(incoming.c.channel == channel, incoming.c.address == address, _open)
    run(tx, here, {"sender": _sender(who, channel, address), **persons.owner_columns(who)})


def _people_at(tx: Session, batch: Sequence[IncomingUpdate]) -> dict[tuple[str, str], Who]:
    addresses = {update.address for update in batch}
    found = _PEOPLE_AT(tx, addresses)
    return {
        (row.channel, row.address): owner for row in found if (owner := persons.owner_of(row.athlete_id, row.coach_id))
    }


_PEOPLE_AT = Among(sa.select(chats.c.channel, chats.c.address, chats.c.athlete_id, chats.c.coach_id), chats.c.address)


def _wait_for_strangers(tx: Session, batch: Sequence[IncomingUpdate], known: Mapping[tuple[str, str], Who]) -> bool:
    """Let whoever handles a message of a stranger just now be done: it may bind the address to a person, who would not
    get what comes in meanwhile. True: look again."""
    chats_of = {(one.channel, one.address) for one in batch if one.of is None}
    senders = sorted(_sender(None, *chat) for chat in chats_of if chat not in known)
    if not senders or not on_postgres(tx):
        return False
    for sender in senders:
        run(tx, sa.select(sa.func.pg_advisory_xact_lock(_key(sender))))
    return True


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
    who = persons.owner_of(row.athlete_id, row.coach_id)
    if who is not None:
        return persons.try_lock(tx, who)
    return bool(run(tx, sa.select(sa.func.pg_try_advisory_xact_lock(_key(row.sender)))).scalar())


def _key(sender: str) -> sa.ColumnElement[int]:
    return sa.func.hashtextextended(sender, 0)
