"""How fast a channel may be used, all replicas together: a row a channel that hands out moments to send at.

Whoever claims messages takes as many moments as there are messages, in the same transaction, and sends each at its
own. The row is locked until then, so that no moment is given twice; who asks next finds the first one that is free.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime, timedelta

import sqlalchemy as sa
from sqlmodel import Field, Session

from storage.database import Row, insert_ignoring, run, table_of

# Replicas' clocks differ by less than this; a row from further ahead was written before the clock was set back.
CLOCKS_DIFFER = timedelta(seconds=60)


class SendPace(Row, table=True):
    """`next_at`: the first moment that nobody has; `paused_until`: the service asked to be left alone till then."""

    __tablename__ = "send_pace"

    channel: str = Field(unique=True)
    next_at: datetime
    paused_until: datetime | None = None
    as_of: datetime


paces = table_of(SendPace)


@dataclass(frozen=True)
class Room:
    """Moments that may be taken: `slots` of them, the first at `first`."""

    first: datetime
    slots: int


def room(tx: Session, channel: str, now: datetime, gap: timedelta, ahead: timedelta) -> Room:
    """What is free until `ahead` from now, a moment each `gap`; kept for the caller until the transaction ends."""
    next_at, paused_until = _locked(tx, channel, now)
    first = max(now, next_at, paused_until or now)
    return Room(first, max(0, int((now + ahead - first) / gap)))


def take(tx: Session, channel: str, now: datetime, until: datetime) -> None:
    """The moments before `until` are the caller's."""
    run(tx, _OF_CHANNEL, {"of": channel, "next_at": until, "as_of": now})


def pause(tx: Session, channel: str, now: datetime, until: datetime) -> None:
    """Nobody sends before then."""
    _, paused_until = _locked(tx, channel, now)
    run(tx, _OF_CHANNEL, {"of": channel, "paused_until": max(until, paused_until or until), "as_of": now})


_OF_CHANNEL = sa.update(paces).where(paces.c.channel == sa.bindparam("of"))
_LOCK = sa.select(paces).where(paces.c.channel == sa.bindparam("of")).with_for_update()


def _locked(tx: Session, channel: str, now: datetime) -> tuple[datetime, datetime | None]:
    row = run(tx, _LOCK, {"of": channel}).first()
    if row is None:
        insert_ignoring(tx, paces, [{"channel": channel, "next_at": now, "paused_until": None, "as_of": now}])
        row = run(tx, _LOCK, {"of": channel}).one()
    if row.as_of > now + CLOCKS_DIFFER:
        run(tx, sa.update(paces).where(paces.c.id == row.id), {"next_at": now, "paused_until": None, "as_of": now})
        return now, None
    return row.next_at, row.paused_until
