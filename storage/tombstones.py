"""Who was erased: enough to know them again if a roster or a backup brings them back, and nothing else."""

from __future__ import annotations

import hashlib
import hmac
import secrets
from collections.abc import Iterable, Mapping, Sequence
from datetime import datetime, timedelta
from typing import Any

import sqlalchemy as sa
from sqlmodel import Field, Session

from storage.database import BigId, Row, insert_row, run, table_of
from storage.persons import athletes, coaches


class Tombstone(Row, table=True):
    """An athlete of a coach was erased at that moment. It stays when they are taken up again: copies from before still
    know what was erased.

    The handle is kept as a hash with a key of the row's own, so that no search for a name finds it. Whoever holds the
    database and guesses the handle can see that the guess is right; that is what the row is for.
    """

    coach_id: int = Field(foreign_key="coach.id", sa_type=BigId, index=True)
    key: str
    handle_hash: str
    erased_at: datetime


tombstones = table_of(Tombstone)


def bury(tx: Session, coach_id: int, handle: str, now: datetime) -> None:
    """Remember that the coach's athlete of that handle was erased."""
    key = secrets.token_hex(16)
    insert_row(tx, Tombstone(coach_id=coach_id, key=key, handle_hash=hashed(key, handle), erased_at=now))


def buried_of(tx: Session, coach_id: int, handles: Iterable[str]) -> dict[str, datetime]:
    """Those of the handles whose athlete the coach once had and who was erased, and when that was last."""
    known = _of(tx, coach_id)
    erased = {handle: _last(known, handle) for handle in handles}
    return {handle: at for handle, at in erased.items() if at is not None}


def is_erased(added_at: datetime | None, erased_at: datetime) -> bool:
    """Whether an athlete who was added then is the one who was erased; else the handle was taken up anew."""
    return added_at is None or added_at <= erased_at


def after(erased_at: datetime | None, now: datetime) -> datetime:
    """The moment for whoever is added now: later than the erasure, wherever the clock was set meanwhile."""
    return now if erased_at is None else max(now, erased_at + timedelta(microseconds=1))


def moments(tx: Session) -> list[datetime]:
    """When somebody was erased, oldest first."""
    return [row.erased_at for row in run(tx, sa.select(tombstones.c.erased_at).order_by(tombstones.c.erased_at))]


def come_back(tx: Session) -> list[int]:
    """Ids of athletes who were erased and are there all the same: an older copy of the database was put back."""
    found: list[int] = []
    for coach_id in sorted({row.coach_id for row in run(tx, sa.select(tombstones.c.coach_id))}):
        team = run(tx, sa.select(athletes).where(athletes.c.coach_id == coach_id)).all()
        erased = buried_of(tx, coach_id, [row.handle for row in team])
        found += [row.id for row in team if row.handle in erased and is_erased(row.added_at, erased[row.handle])]
    return sorted(found)


def carry_over(tx: Session, known: Iterable[Mapping[str, Any]]) -> None:
    """Set up the tombstones of another copy of this database, where the coach is known and they are not yet there."""
    here = {row.handle_hash for row in run(tx, sa.select(tombstones.c.handle_hash))}
    team = {row.id for row in run(tx, sa.select(coaches.c.id))}
    for row in known:
        if row["coach_id"] in team and row["handle_hash"] not in here:
            insert_row(tx, Tombstone(**{name: value for name, value in row.items() if name != "id"}))


def hashed(key: str, handle: str) -> str:
    """HMAC-SHA256 of the handle, case aside; hexadecimal."""
    return hmac.new(bytes.fromhex(key), handle.casefold().encode(), hashlib.sha256).hexdigest()


def _of(tx: Session, coach_id: int) -> Sequence[sa.Row[*tuple[Any, ...]]]:
    return run(tx, sa.select(tombstones).where(tombstones.c.coach_id == coach_id)).all()


def _last(known: Sequence[sa.Row[*tuple[Any, ...]]], handle: str) -> datetime | None:
    mine = [row.erased_at for row in known if hmac.compare_digest(row.handle_hash, hashed(row.key, handle))]
    return max(mine, default=None)
