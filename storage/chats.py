"""Where people are reached: the addresses of each person on each channel."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime
from functools import cache
from typing import Any

import sqlalchemy as sa
from sqlmodel import Field, Session, UniqueConstraint

from storage import persons
from storage.at_hand import at_hand, one_at_hand
from storage.database import BigId, Row, conflict_insert, run, table_of
from storage.persons import Person, Someone, Who, owner_columns


class Chat(Row, table=True):
    """One address of one person. `blocked`: the service says that they take no messages from us."""

    # Whoever writes from an address is one person; without this a message could count for two.
    __table_args__ = (UniqueConstraint("channel", "address"),)

    channel: str
    address: str
    coach_id: int | None = Field(default=None, foreign_key="coach.id", sa_type=BigId, index=True)
    athlete_id: int | None = Field(default=None, foreign_key="athlete.id", sa_type=BigId, index=True)
    blocked: bool = False
    bound_at: datetime


chats = table_of(Chat)


_WHO_AT = sa.select(chats.c.athlete_id, chats.c.coach_id).where(
    chats.c.channel == sa.bindparam("at_channel"), chats.c.address == sa.bindparam("at_address")
)


def who_at(tx: Session, channel: str, address: str) -> Who | None:
    row = run(tx, _WHO_AT, {"at_channel": channel, "at_address": address}).first()
    if row is None:
        return None
    return Who("athlete", row.athlete_id) if row.athlete_id is not None else Who("coach", row.coach_id)


def person_at(tx: Session, channel: str, address: str) -> Person | None:
    """Who writes from that address; None for a stranger."""
    who = who_at(tx, channel, address)
    return None if who is None else persons.person(tx, who)


def addresses_of(tx: Session, who: Someone, *, blocked: bool = False) -> list[tuple[str, str]]:
    """Channel and address, newest bound first; the blocked ones only when asked for."""

    def read() -> list[tuple[str, str]]:
        found = run(tx, _addresses(who.role, blocked), {"wanted": who.id})
        return [(row.channel, row.address) for row in found]

    return one_at_hand(tx, chats, (who.role, who.id, blocked), read)


def have_at_hand(tx: Session, athlete_ids: Sequence[int]) -> None:
    """Read the addresses of several athletes at once: `addresses_of` needs no query for them while none changes."""

    def read(keys: list[tuple[persons.Role, int, bool]]) -> dict[tuple[persons.Role, int, bool], list[tuple[str, str]]]:
        found: dict[tuple[persons.Role, int, bool], list[tuple[str, str]]] = {key: [] for key in keys}
        for row in run(tx, _ADDRESSES, {"ids": [athlete_id for _, athlete_id, _ in keys]}).all():
            found["athlete", row.athlete_id, False].append((row.channel, row.address))
        return found

    at_hand(tx, chats, [("athlete", athlete_id, False) for athlete_id in athlete_ids], read)


_ADDRESSES = (
    sa.select(chats.c.athlete_id, chats.c.channel, chats.c.address)
    .where(chats.c.athlete_id.in_(sa.bindparam("ids", expanding=True)), sa.not_(chats.c.blocked))
    .order_by(chats.c.bound_at.desc(), chats.c.id.desc())
)


@cache  # building it takes longer than running it
def _addresses(role: persons.Role, blocked: bool) -> sa.Select[Any]:
    """Parameter: `wanted`, the person's id."""
    column = chats.c.athlete_id if role == "athlete" else chats.c.coach_id
    query = sa.select(chats.c.channel, chats.c.address).where(column == sa.bindparam("wanted", type_=BigId))
    if not blocked:
        query = query.where(sa.not_(chats.c.blocked))
    return query.order_by(chats.c.bound_at.desc(), chats.c.id.desc())


def numbers_of(tx: Session, who: Someone) -> dict[tuple[str, str], int]:
    """The number of each of a person's chats, blocked ones too: it stays when the chat moves or is bound anew."""

    def read() -> dict[tuple[str, str], int]:
        return {(row.channel, row.address): row.id for row in run(tx, _numbers(who.role), {"wanted": who.id})}

    return one_at_hand(tx, chats, (who.role, who.id, "numbers"), read)


@cache
def _numbers(role: persons.Role) -> sa.Select[Any]:
    """Parameter: `wanted`, the person's id."""
    column = chats.c.athlete_id if role == "athlete" else chats.c.coach_id
    columns = (chats.c.id, chats.c.channel, chats.c.address)
    return sa.select(*columns).where(column == sa.bindparam("wanted", type_=BigId))


def bind_chat(tx: Session, channel: str, address: str, who: Someone, now: datetime) -> None:
    """From now on the address is that person's, whoever's it was before."""
    values = {**owner_columns(who), "blocked": False, "bound_at": now}
    statement = conflict_insert(tx, chats).values(channel=channel, address=address, **values)
    run(tx, statement.on_conflict_do_update(index_elements=["channel", "address"], set_=values))


def unbind_chat(tx: Session, channel: str, address: str) -> None:
    run(tx, sa.delete(chats).where(chats.c.channel == channel, chats.c.address == address))


def set_blocked(tx: Session, channel: str, address: str, blocked: bool) -> None:
    """The service said that the address takes no messages, or takes them again."""
    here = sa.update(chats).where(chats.c.channel == channel, chats.c.address == address)
    run(tx, here, {"blocked": blocked})


def move_chat(tx: Session, channel: str, old: str, new: str, now: datetime) -> None:
    """The service gave a chat a new address (Telegram does when a group grows)."""
    if who_at(tx, channel, old) is not None:
        unbind_chat(tx, channel, new)
        here = sa.update(chats).where(chats.c.channel == channel, chats.c.address == old)
        run(tx, here, {"address": new, "blocked": False, "bound_at": now})
