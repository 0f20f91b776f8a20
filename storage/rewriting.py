"""After an erasure the files are owed a rewriting, until it is done: by whoever erased, else by the next sweep.

The marks stand beside those of other recurring tasks. So a crash between the two, or a reader who is in the way, only
puts it off.
"""

from __future__ import annotations

from datetime import datetime, timedelta

from sqlmodel import Session

from storage import health
from storage.store import Store

OWED, TRIED, DONE = "erased", "rewriting", "rewritten"
AGAIN_AFTER = timedelta(minutes=10)


def owe(tx: Session, now: datetime) -> None:
    """Rows are being deleted whose bytes must go."""
    done = health.last_beat(tx, DONE)
    # Later than the last one, wherever the clock was set meanwhile.
    health.beat(tx, OWED, now if done is None else max(now, done + timedelta(microseconds=1)))


def owed_since(tx: Session) -> datetime | None:
    """When the erasure was whose bytes may still be in the files; None: they are gone."""
    owed, done = health.last_beat(tx, OWED), health.last_beat(tx, DONE)
    return None if owed is None or (done is not None and done >= owed) else owed


def is_time(tx: Session, now: datetime) -> bool:
    """Whether it is owed and was not tried just now."""
    owed, tried = owed_since(tx), health.last_beat(tx, TRIED)
    if owed is None or tried is None or tried < owed:
        return owed is not None
    return not tried <= now < tried + AGAIN_AFTER


def rewrite(store: Store, now: datetime) -> None:
    """Rewrite the files without what was erased. Raises StorageError where that is to be tried again."""
    with store.transaction() as tx:
        owed = owed_since(tx)
        health.beat(tx, TRIED, max(now, owed or now))
    store.forget_records()
    store.vacuum()
    if owed is not None:
        with store.transaction() as tx:
            health.beat(tx, DONE, owed)
