"""Where people are reached: the addresses of each person on each channel."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime
from typing import Any

import sqlalchemy as sa
from sqlmodel import Field, Session, UniqueConstraint

from storage import persons
from storage.at_hand import at_hand
from storage.database import Among, BigId, Row, conflict_insert, run, table_of
from storage.persons import Person, Role, Someone, Who, owner_columns


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
    return None if row is None else persons.owner_of(row.athlete_id, row.coach_id)


def person_at(tx: Session, channel: str, address: str, known: Someone | None = None) -> Person | None:
    """Who writes from that address; None for a stranger. `known`: who it was a while ago, so most likely still is."""
    if known is not None and (channel, address) in numbers_of(tx, known):
        return persons.person(tx, known)
    who = who_at(tx, channel, address)
    return None if who is None else persons.person(tx, who)


@dataclass(frozen=True, slots=True)
class _Address:
    number: int
    channel: str
    address: str
    blocked: bool


def addresses_of(tx: Session, who: Someone, *, blocked: bool = False) -> list[tuple[str, str]]:
    """Channel and address, newest bound first; the blocked ones only when asked for."""
    return [(one.channel, one.address) for one in _all_of(tx, who) if blocked or not one.blocked]


def numbers_of(tx: Session, who: Someone) -> dict[tuple[str, str], int]:
    """The number of each of a person's chats, blocked ones too: it stays when the chat moves or is bound anew."""
    return {(one.channel, one.address): one.number for one in _all_of(tx, who)}


def have_at_hand(tx: Session, athlete_ids: Sequence[int]) -> None:
    """Read the chats of several athletes at once: no query for them is needed while none changes."""
    at_hand(tx, chats, [("athlete", athlete_id) for athlete_id in athlete_ids], lambda keys: _read(tx, "athlete", keys))


def _all_of(tx: Session, who: Someone) -> list[_Address]:
    key = who.role, who.id
    return at_hand(tx, chats, [key], lambda keys: _read(tx, who.role, keys))[key]


def _read(tx: Session, role: Role, keys: list[tuple[Role, int]]) -> dict[tuple[Role, int], list[_Address]]:
    found: dict[tuple[Role, int], list[_Address]] = {key: [] for key in keys}
    for owner, *values in _CHATS_OF[role](tx, [person_id for _, person_id in keys]):
        found[role, owner].append(_Address(*values))
    return found


def _chats_of(owner: sa.Column[Any]) -> Among:
    query = sa.select(owner, chats.c.id, chats.c.channel, chats.c.address, chats.c.blocked)
    return Among(query.order_by(chats.c.bound_at.desc(), chats.c.id.desc()), owner)


_CHATS_OF: dict[Role, Among] = {"athlete": _chats_of(chats.c.athlete_id), "coach": _chats_of(chats.c.coach_id)}


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
