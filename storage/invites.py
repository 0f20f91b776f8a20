"""Invitations: a code that binds a chat address to a person, once."""

from __future__ import annotations

import hashlib
import hmac
import secrets
from datetime import datetime, timedelta

import sqlalchemy as sa
from sqlmodel import Field, Session, UniqueConstraint

from storage import inbox, persons
from storage.chats import bind_chat, who_at
from storage.database import BigId, Row, conflict_insert, insert_row, loose, run, table_of
from storage.persons import Person, Someone, Who, owned_by, owner_columns

VALID_FOR = timedelta(days=30)
TRIES_A_DAY = 10


class Invite(Row, table=True):
    """A code given to one person. Only its hash is kept: who reads the database can't join with it."""

    code_hash: str = Field(unique=True)
    coach_id: int | None = Field(default=None, foreign_key="coach.id", sa_type=BigId, index=True)
    athlete_id: int | None = Field(default=None, foreign_key="athlete.id", sa_type=BigId, index=True)
    made_at: datetime
    expires_at: datetime
    used_at: datetime | None = None
    used_by: str | None = None  # channel and address


class InviteTry(Row, table=True):
    """How often an address tried codes that don't fit, since `since`."""

    __tablename__ = "invite_try"
    __table_args__ = (UniqueConstraint("channel", "address"),)

    channel: str
    address: str
    tries: int
    since: datetime


invites = table_of(Invite)
invite_tries = table_of(InviteTry)


def new_invite(tx: Session, who: Someone, now: datetime) -> str:
    """A new code for a person; the unused ones they had are void. 32 characters of A-Z a-z 0-9 - _."""
    run(tx, sa.delete(invites).where(owned_by(invites, who), invites.c.used_at.is_(None)))
    code = secrets.token_urlsafe(24)
    insert_row(tx, Invite(code_hash=_hash(code), made_at=now, expires_at=now + VALID_FOR, **owner_columns(who)))
    return code


def redeem(tx: Session, code: str, channel: str, address: str, now: datetime) -> Person | None:
    """Bind the address to the person the code was made for. None: unknown, used up, expired, or too many tries.

    The same code from the same address again is the person again: chat services repeat a first message.
    """
    if _tries(tx, channel, address, now) >= TRIES_A_DAY:
        return None
    hashed = _hash(code)
    found = loose(Invite, run(tx, sa.select(invites).where(invites.c.code_hash == hashed).with_for_update()).first())
    if found is None or not hmac.compare_digest(found.code_hash, hashed):
        _count_try(tx, channel, address, now)
        return None
    who = Who("athlete", found.athlete_id) if found.athlete_id is not None else Who("coach", found.coach_id or 0)
    here = f"{channel}:{address}"
    if found.used_at is not None:
        if found.used_by == here and who_at(tx, channel, address) == who:
            return persons.person(tx, who)
        _count_try(tx, channel, address, now)
        return None
    if found.expires_at <= now:
        _count_try(tx, channel, address, now)
        return None
    run(tx, sa.update(invites).where(invites.c.id == found.id), {"used_at": now, "used_by": here})
    run(tx, sa.delete(invite_tries).where(_at(channel, address)))
    bind_chat(tx, channel, address, who, now)
    inbox.adopt(tx, channel, address, who)
    return persons.person(tx, who)


def _hash(code: str) -> str:
    # The code has 192 random bits: nothing to guess, so no slow hash is needed.
    return hashlib.sha256(code.encode()).hexdigest()


def _at(channel: str, address: str) -> sa.ColumnElement[bool]:
    return sa.and_(invite_tries.c.channel == channel, invite_tries.c.address == address)


def _tries(tx: Session, channel: str, address: str, now: datetime) -> int:
    row = run(tx, sa.select(invite_tries.c.tries, invite_tries.c.since).where(_at(channel, address))).first()
    return 0 if row is None or row.since <= now - timedelta(days=1) else int(row.tries)


def _count_try(tx: Session, channel: str, address: str, now: datetime) -> None:
    tries = _tries(tx, channel, address, now)
    values = {"tries": tries + 1} if tries else {"tries": 1, "since": now}
    statement = conflict_insert(tx, invite_tries).values(channel=channel, address=address, tries=1, since=now)
    run(tx, statement.on_conflict_do_update(index_elements=["channel", "address"], set_=values))
