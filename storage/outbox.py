"""What is owed to people: written with what caused it, sent by delivery alone, at least once."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from datetime import datetime, timedelta
from functools import cache
from typing import Any

import sqlalchemy as sa
from sqlmodel import Field, Index, Session, UniqueConstraint

from storage.chats import addresses_of, chats, numbers_of
from storage.database import (
    NUMBERS_ONCE,
    BigId,
    Json,
    Row,
    conflict_insert_on,
    insert_ignoring,
    loose_all,
    on_postgres,
    run,
    run_later,
    table_of,
)
from storage.persons import Someone, athletes

# A send may wait 25 s for the service; a claim that outlives this belongs to a process that died, and is to be taken
# over within a minute.
LEASE = timedelta(seconds=50)
# A chat takes a short burst, then about one a second; a group twenty a minute (the service's documentation).
CHAT_BURST, CHAT_WINDOW = 3, timedelta(seconds=3)
GROUP_BURST, GROUP_WINDOW = 20, timedelta(seconds=60)
_GROUP = "-%"  # how the service numbers groups
# A moment of sending that lies further ahead was noted before the clock was set back.
CLOCKS_DIFFER = timedelta(seconds=5)
# A service that is down for a day is waited for; what is older than this helps nobody, but for alerts.
LONGEST_OWED = timedelta(hours=36)
_OPEN = "sent_at IS NULL AND given_up_because IS NULL"
_WHOLE = "text <> '' OR address <> ''"

ALERT, REPLY, PLAN, SUMMARY = range(4)
UNREACHABLE = "unreachable"  # why a message was given up


class Outgoing(Row, table=True):
    """A message owed to one address.

    `to`: a handle or "coach"; `about`: the handle a coach's message is about. `importance`: 0 alerts, 1 replies and
    questions, 2 plans, 3 summaries. `buttons`: rows of label and data. `cause` and `part` name what asked for it
    ("incoming:17", 0); where others may ask by the same cause, `part` is the chat's number, below zero (`to_chat`).
    `athlete_id` and `coach_id` (whose it is and whom it is about) are found when it is posted.
    `parts_sent`: how much of a long one the service took, while the rest is still owed.
    """

    __table_args__ = (
        # One cause can ask twice (a redelivered update, a second sweep); the message goes once.
        UniqueConstraint("cause", "part"),
        Index("ix_outgoing_open", "channel", "importance", "id", sqlite_where=sa.text(_OPEN),
              postgresql_where=sa.text(_OPEN)),
        Index("ix_outgoing_open_address", "channel", "address", sqlite_where=sa.text(_OPEN),
              postgresql_where=sa.text(_OPEN)),
        Index("ix_outgoing_address", "channel", "address", "sent_at"),
        # What the daily tidying looks through: not what it has emptied on the days before.
        Index("ix_outgoing_whole", "due_at", sqlite_where=sa.text(_WHOLE), postgresql_where=sa.text(_WHOLE)),
        NUMBERS_ONCE,
    )  # fmt: skip

    channel: str
    address: str
    to: str
    about: str | None = None
    athlete_id: int | None = Field(default=None, foreign_key="athlete.id", sa_type=BigId, index=True)
    coach_id: int | None = Field(default=None, foreign_key="coach.id", sa_type=BigId, index=True)
    text: str
    buttons: list[list[str]] = Field(default_factory=list, sa_type=Json)
    picture: bytes | None = None
    picture_alt: str | None = None
    document: bytes | None = None  # a file that goes along, until it is sent
    document_name: str | None = None
    media: str | None = None  # the service's id of a clip that goes along
    plan: dict[str, Any] | None = Field(default=None, sa_type=Json)
    importance: int = REPLY
    cause: str
    part: int = 0
    due_at: datetime
    stale_after: datetime | None = None
    claimed_until: datetime | None = None
    attempts: int = 0
    parts_sent: int = Field(default=0, sa_column_kwargs={"server_default": "0"})
    not_before: datetime | None = None
    sent_at: datetime | None = None
    service_id: str | None = None
    given_up_at: datetime | None = None
    given_up_because: str | None = None


outgoing = table_of(Outgoing)
_open = sa.and_(outgoing.c.sent_at.is_(None), outgoing.c.given_up_because.is_(None))


def post(tx: Session, message: Outgoing) -> int | None:
    """Owe a message. None: the same cause and part has asked for it before, and nothing is done."""
    _own(tx, message)
    new = insert_ignoring(tx, outgoing, [message.model_dump(exclude={"id"})])
    return new[0] if new else None


def owe(tx: Session, message: Mapping[str, Any]) -> None:
    """As `post`, with others at once, for a message of which everything is known: by column, `athlete_id` or
    `coach_id` among them. A cause and part that has asked before goes by without a word."""
    run_later(tx, _owing(on_postgres(tx)), {**_BLANK, **message})


_BLANK = {name: field.get_default(call_default_factory=True) for name, field in Outgoing.model_fields.items()
          if name != "id" and not field.is_required()}  # fmt: skip


@cache
def _owing(postgres: bool) -> sa.Executable:
    owing: sa.Executable = conflict_insert_on(postgres, outgoing).on_conflict_do_nothing()
    return owing


def to_chat(number: int) -> int:
    """The `part` of a message that a cause asks for once a chat."""
    return -number


@cache  # building it takes longer than running it
def _claimable(one_channel: bool, locking: bool, paced: bool) -> sa.Select[Any]:
    """Parameters: `now`, `most`, and `channel` if `one_channel`."""
    now = _moment("now")
    before = outgoing.alias()
    ahead = sa.exists().where(
        before.c.channel == outgoing.c.channel,
        before.c.address == outgoing.c.address,
        before.c.id != outgoing.c.id,
        before.c.sent_at.is_(None),
        before.c.given_up_because.is_(None),
        sa.or_(
            before.c.claimed_until > now,
            sa.and_(
                before.c.due_at <= now,
                sa.tuple_(before.c.importance, before.c.id) < sa.tuple_(outgoing.c.importance, outgoing.c.id),
            ),
        ),
    )
    query = sa.select(outgoing).where(
        _open,
        outgoing.c.due_at <= now,
        sa.or_(outgoing.c.not_before.is_(None), outgoing.c.not_before <= now),
        sa.or_(outgoing.c.claimed_until.is_(None), outgoing.c.claimed_until <= now),
        sa.not_(ahead),
        sa.not_(held()),
    )
    if one_channel:
        query = query.where(outgoing.c.channel == sa.bindparam("channel"))
    if paced:
        query = query.where(_chat_is_free())
    query = query.order_by(outgoing.c.importance, outgoing.c.id).limit(sa.bindparam("most", type_=sa.Integer))
    return query.with_for_update(of=outgoing, skip_locked=True) if locking else query


def held() -> sa.Exists:
    """What is owed to a coach is kept while their chat is blocked: alerts are among it."""
    return sa.exists().where(
        chats.c.channel == outgoing.c.channel,
        chats.c.address == outgoing.c.address,
        chats.c.blocked,
        chats.c.coach_id.is_not(None),
    )


def _moment(name: str) -> sa.BindParameter[datetime]:
    return sa.bindparam(name, type_=outgoing.c.due_at.type)


def _chat_is_free() -> sa.ColumnElement[bool]:
    """What a chat was sent of late is in the table, so that replicas keep one pace. Parameters: `soon`, `chat_since`,
    `group_since`."""

    def sent_since(name: str) -> sa.ScalarSelect[int]:
        sent = outgoing.alias()
        here = sa.and_(sent.c.channel == outgoing.c.channel, sent.c.address == outgoing.c.address)
        of_late = sa.and_(sent.c.sent_at > _moment(name), sent.c.sent_at <= _moment("soon"))
        return sa.select(sa.func.count()).where(here, of_late).scalar_subquery()

    group = outgoing.c.address.like(_GROUP)
    calm = sa.or_(sa.not_(group), sent_since("group_since") < GROUP_BURST)
    return sa.and_(sent_since("chat_since") < CHAT_BURST, calm)


def claim(
    tx: Session,
    now: datetime,
    limit: int,
    channel: str | None = None,
    lease: timedelta = LEASE,
    *,
    paced: bool = False,
) -> list[Outgoing]:
    """Take messages to send, the most important first; at most one an address, so that each chat keeps its order.

    What is not marked, deferred or given up until `lease` has passed can be claimed again. A message that waits
    after a failure holds back the less important and later ones of its chat. Call until nothing comes. `paced`: leave
    chats alone that were sent as much of late as the service allows.
    """
    query = _claimable(channel is not None, on_postgres(tx), paced)
    values: dict[str, Any] = {"now": now, "most": limit}
    if channel is not None:
        values["channel"] = channel
    if paced:
        values |= {"soon": now + CLOCKS_DIFFER, "chat_since": now - CHAT_WINDOW, "group_since": now - GROUP_WINDOW}
    found = loose_all(Outgoing, run(tx, query, values).all())
    if found:
        until = now + lease
        run(tx, _CLAIM, {"ids": [row.id for row in found], "claimed_until": until})
        for row in found:
            row.claimed_until = until
    return found


_IDS: sa.BindParameter[Any] = sa.bindparam("ids", expanding=True)
_CLAIM = sa.update(outgoing).where(outgoing.c.id.in_(_IDS))


def let_go(tx: Session, outgoing_ids: Sequence[int]) -> None:
    """End the claims on messages that were not sent after all; no attempt is counted."""
    run(tx, sa.update(outgoing).where(outgoing.c.id.in_(outgoing_ids)), {"claimed_until": None})


def hurry(tx: Session, channel: str) -> int:
    """The service is back: nobody waits any longer for having failed before, so that the important go first."""
    here = sa.update(outgoing).where(_open, outgoing.c.channel == channel, outgoing.c.not_before.is_not(None))
    return int(run(tx, here.where(outgoing.c.attempts > 0), {"not_before": None}).rowcount)


def release(tx: Session, channel: str) -> int:
    """End every claim on a channel's messages: for the only process that sends, as it starts; how many there were."""
    here = sa.update(outgoing).where(_open, outgoing.c.channel == channel, outgoing.c.claimed_until.is_not(None))
    return int(run(tx, here, {"claimed_until": None}).rowcount)


def mark_sent(tx: Session, outgoing_id: int, now: datetime, service_id: str | None = None) -> None:
    """The service accepted it. A file that went along is not kept: it holds all that is stored of a person."""
    values = {"sent_at": now, "service_id": service_id, "claimed_until": None, "document": None}
    run(tx, _ONE, {"which": outgoing_id, **values})


_ONE = sa.update(outgoing).where(outgoing.c.id == sa.bindparam("which", type_=BigId))


def mark_part(tx: Session, outgoing_id: int, parts: int, now: datetime) -> None:
    """The service took another part of a long message, the `parts`th of it; the next is owed as soon as a chat takes
    one more."""
    values = {"parts_sent": parts, "claimed_until": None, "not_before": now + CHAT_WINDOW / CHAT_BURST}
    run(tx, _ONE, {"which": outgoing_id, **values})


def leave_out_clip(tx: Session, outgoing_id: int) -> None:
    """The service does not take the clip: what is left of the message is owed as before."""
    run(tx, _ONE, {"which": outgoing_id, "media": None, "claimed_until": None})


def defer(tx: Session, outgoing_id: int, until: datetime) -> None:
    """Not now: try again at that moment. Counts as an attempt."""
    here = sa.update(outgoing).where(outgoing.c.id == outgoing_id)
    run(tx, here.values(not_before=until, claimed_until=None, attempts=outgoing.c.attempts + 1))


def give_up(tx: Session, outgoing_id: int, why: str, now: datetime) -> None:
    """It will not be sent, and why."""
    values = {"given_up_because": why, "given_up_at": now, "claimed_until": None, "document": None}
    run(tx, _ONE, {"which": outgoing_id, **values})


def drop_stale(tx: Session, now: datetime) -> list[tuple[str, str]]:
    """Give up what is of no use any more (yesterday's plan after an outage); the chats concerned, by channel.

    Besides what says so itself, that is whatever is older than `LONGEST_OWED`. Alerts never grow old.
    """
    too_old = sa.and_(outgoing.c.due_at <= now - LONGEST_OWED, outgoing.c.importance > ALERT)
    stale = sa.and_(outgoing.c.importance > ALERT, outgoing.c.stale_after <= now)
    not_in_flight = sa.or_(outgoing.c.claimed_until.is_(None), outgoing.c.claimed_until <= now)
    values = {"given_up_because": "stale", "given_up_at": now, "document": None}
    unheld_and_old = sa.and_(too_old, sa.not_(held()))
    dropped = sa.update(outgoing).where(_open, sa.or_(stale, unheld_and_old), not_in_flight)
    found = run(tx, dropped.values(values).returning(outgoing.c.channel, outgoing.c.address)).all()
    return sorted({(row.channel, row.address) for row in found})


def over_and_whole(before: datetime) -> sa.ColumnElement[bool]:
    """What was sent or given up before a moment and still has its words or its address."""
    # Nothing is over before it was due: so the index of what is whole, by due time, finds it.
    over = sa.or_(outgoing.c.sent_at < before, outgoing.c.given_up_at < before)
    return sa.and_(outgoing.c.due_at < before, over, sa.text(f"({_WHOLE})"))


def owed_to(tx: Session, channel: str, address: str, cause_begins: str) -> bool:
    """Whether a message of such a cause is still owed to a chat."""
    query = sa.select(outgoing.c.id).where(
        _open,
        outgoing.c.channel == channel,
        outgoing.c.address == address,
        outgoing.c.cause.startswith(cause_begins, autoescape=True),
    )
    return run(tx, query.limit(1)).first() is not None


def newest_id(tx: Session) -> int:
    """The number of the newest message; 0 where there is none."""
    return int(run(tx, _NEWEST).scalar() or 0)


_NEWEST = sa.select(sa.func.max(outgoing.c.id))


def posted_since(tx: Session, outgoing_id: int, cause: str, athlete_id: int | None) -> list[Outgoing]:
    """What was owed after a message: for one cause, or to or about an athlete."""
    values = {"after": outgoing_id, "of_cause": cause, "of": athlete_id}
    return loose_all(Outgoing, run(tx, _POSTED_SINCE, values).all())


_POSTED_SINCE = sa.select(outgoing).where(
    outgoing.c.id > sa.bindparam("after"),
    sa.or_(outgoing.c.cause == sa.bindparam("of_cause"), outgoing.c.athlete_id == sa.bindparam("of", type_=BigId)),
)


def newest_buttons(tx: Session, channel: str, address: str, until: int, limit: int = 20) -> list[list[list[str]]]:
    """The rows of buttons of the newest messages to a chat, up to the one with the number `until`."""
    query = sa.select(outgoing.c.buttons).where(
        outgoing.c.channel == channel, outgoing.c.address == address, outgoing.c.id <= until
    )
    return [row.buttons for row in run(tx, query.order_by(outgoing.c.id.desc()).limit(limit)) if row.buttons]


def withdraw(tx: Session, outgoing_ids: Sequence[int]) -> None:
    """Take back messages that this transaction posted."""
    run(tx, _WITHDRAW, {"ids": list(outgoing_ids)})


_WITHDRAW = sa.delete(outgoing).where(outgoing.c.id.in_(_IDS))


def is_owed(tx: Session, cause: str) -> bool:
    """Whether something that a cause asked for is neither sent nor given up."""
    return run(tx, sa.select(outgoing.c.id).where(_open, outgoing.c.cause == cause).limit(1)).first() is not None


def with_button(tx: Session, channel: str, address: str, limit: int = 200) -> list[Outgoing]:
    """The newest sent messages to an address that carry buttons, newest first: where a press by label belongs."""
    query = sa.select(outgoing).where(
        outgoing.c.channel == channel, outgoing.c.address == address, outgoing.c.sent_at.is_not(None)
    )
    found = loose_all(Outgoing, run(tx, query.order_by(outgoing.c.id.desc()).limit(limit)).all())
    return [row for row in found if row.buttons]


def readdress(tx: Session, channel: str, old: str, new: str) -> None:
    """What is still owed to an address goes to its new one."""
    here = sa.update(outgoing).where(_open, outgoing.c.channel == channel, outgoing.c.address == old)
    run(tx, here, {"address": new})


def hand_over(tx: Session, coach: Someone, now: datetime) -> None:
    """What is owed to a coach at blocked chats goes to the newest that takes it; where none does, it waits.

    What had to wait is due now: it did not grow old by anybody's choice.
    """
    reached, numbers = addresses_of(tx, coach), numbers_of(tx, coach)
    if not reached:
        return
    channel, address = reached[0]
    to_there, there = to_chat(numbers[channel, address]), outgoing.alias()
    here = sa.and_(there.c.channel == channel, there.c.address == address, there.c.text == outgoing.c.text)
    known = sa.exists().where(there.c.cause == outgoing.c.cause, sa.or_(here, there.c.part == to_there))
    for old in numbers:
        if old in reached:
            continue
        owed = sa.update(outgoing).where(_open, outgoing.c.channel == old[0], outgoing.c.address == old[1])
        run(tx, owed.where(known), {"given_up_because": UNREACHABLE, "given_up_at": now, "document": None})
        part = sa.case((outgoing.c.part == to_chat(numbers[old]), to_there), else_=outgoing.c.part)
        run(tx, owed.values(channel=channel, address=address, part=part))
    waited = sa.update(outgoing).where(_open, outgoing.c.channel == channel, outgoing.c.address == address)
    run(tx, waited.where(outgoing.c.due_at < now), {"due_at": now})


def next_open_at(tx: Session) -> datetime | None:
    """When the next message may be claimed; None: nothing is owed."""
    at = sa.func.coalesce(outgoing.c.not_before, outgoing.c.due_at)
    query = sa.select(sa.func.min(at, type_=outgoing.c.due_at.type)).where(_open, sa.not_(held()))
    found: datetime | None = run(tx, query).scalar()
    return found


_WHOSE = sa.select(chats.c.athlete_id, chats.c.coach_id).where(
    chats.c.channel == sa.bindparam("channel"), chats.c.address == sa.bindparam("address")
)


def _own(tx: Session, message: Outgoing) -> None:
    """Find whose message it is, so that erasing an athlete finds it: who lives at the address, whom it is about."""
    if message.athlete_id is None and message.coach_id is None:
        row = run(tx, _WHOSE, {"channel": message.channel, "address": message.address}).first()
        if row is not None:
            message.athlete_id, message.coach_id = row.athlete_id, row.coach_id
    if message.athlete_id is None and message.coach_id is not None and message.about is not None:
        about = sa.select(athletes.c.id).where(
            athletes.c.coach_id == message.coach_id, athletes.c.handle == message.about
        )
        message.athlete_id = run(tx, about).scalar()
