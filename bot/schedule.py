"""What is due, swept: plans, questions, nudges and summaries, a batch in a transaction."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime, timedelta

import structlog

from bot import conversation, metrics
from bot.conversation import privacy
from storage import due, health, retention, rewriting
from storage.away import again, is_away
from storage.due import Due
from storage.errors import StorageError
from storage.store import Store

log = structlog.get_logger(__name__)

AT_ONCE = 500
# What a commit and a round of queries cost is shared by so many; a message that came in waits no longer than that.
BATCH = 25
KEEP = retention.Keep()


def sweep(store: Store, now: datetime, limit: int = AT_ONCE) -> int:
    """Handle the rows due by `now`, the longest due first, at most `limit`; how many were taken up.

    A row that fails does not stop the others: it is tried again later, and after some tries given up. Rows that another
    replica has in its hands are left to it and not counted.

    Raises:
        Exception: Of the database, which is away (`storage/away.py`).
    """
    with store.reading() as tx:
        found = due.due_now(tx, now, limit)
    taken = _erase(store, [row for row in found if row.kind == privacy.ERASE], now)
    others = [row for row in found if row.kind != privacy.ERASE]
    for start in range(0, len(others), BATCH):
        batch = others[start : start + BATCH]
        try:
            taken += again(lambda: _together(store, batch, now))  # noqa: B023  called before it changes
        except Exception as error:
            if is_away(error):
                raise
            # All of them were rolled back; one by one it shows whose fault it was.
            taken += sum(_alone(store, row, now) for row in batch)
    _rewrite_where_owed(store, now)
    return taken


def _erase(store: Store, rows: Sequence[Due], now: datetime) -> int:
    """Let athletes go who asked for it; how many rows were taken."""
    taken = 0
    for row in rows:
        try:
            taken += again(lambda: _erase_one(store, row, now))  # noqa: B023  called before it changes
        except Exception as error:
            if is_away(error):
                raise
            _failed(store, row, error, now)
            taken += 1
    return taken


def _erase_one(store: Store, row: Due, now: datetime) -> bool:
    assert row.id is not None
    with store.transaction() as tx:
        mine = due.take(tx, row.id, now)
        if mine is not None:
            privacy.carry_out(tx, mine, now)
    return mine is not None


def _rewrite_where_owed(store: Store, now: datetime) -> None:
    """Take the bytes of who was erased out of the files; last, since nothing else is done meanwhile."""
    with store.reading() as tx:
        owed = rewriting.is_time(tx, now)
    if not owed:
        return
    try:
        rewriting.rewrite(store, now)
    except StorageError:
        log.warning("erased rows may still be in the database's files; it is tried again")


def _together(store: Store, batch: Sequence[Due], now: datetime) -> int:
    with store.transaction() as tx:
        mine = due.take_all(tx, [row.id for row in batch if row.id is not None], now)
        conversation.have_at_hand(tx, mine, now)
        for row in mine:
            conversation.handle_due(tx, row, now)
        due.finish_all(tx, [row.id for row in mine if row.id is not None], now)
    for row in mine:
        metrics.DUE.labels(row.kind).inc()
    return len(mine)


def _alone(store: Store, row: Due, now: datetime) -> bool:
    try:
        return again(lambda: _handle_one(store, row, now))
    except Exception as error:
        if is_away(error):
            raise
        _failed(store, row, error, now)
        return True


def _handle_one(store: Store, row: Due, now: datetime) -> bool:
    assert row.id is not None
    with store.transaction() as tx:
        mine = due.take(tx, row.id, now)
        if mine is not None:
            conversation.handle_due(tx, mine, now)
            due.finish(tx, row.id, now)
    if mine is not None:
        metrics.DUE.labels(mine.kind).inc()
    return mine is not None


def _failed(store: Store, row: Due, error: Exception, now: datetime) -> None:
    log.error("due row failed", due=row.id, kind=row.kind, error=type(error).__name__)
    try:
        again(lambda: _note_failure(store, row, error, now, go_on=True))
    except Exception as second:
        if is_away(second):
            raise
        # It must be counted whatever else fails, or it would be in the way of all others for ever.
        log.error("due row not gone on from", due=row.id, kind=row.kind, error=type(second).__name__)
        again(lambda: _note_failure(store, row, error, now, go_on=False))


def _note_failure(store: Store, row: Due, error: Exception, now: datetime, *, go_on: bool) -> None:
    assert row.id is not None
    with store.transaction() as tx:
        if due.note_failure(tx, row.id, type(error).__name__, now) and go_on:
            conversation.go_on(tx, row, now)


def sweep_and_beat(store: Store, now: datetime, limit: int = AT_ONCE, keep: retention.Keep = KEEP) -> int:
    """A sweep that leaves a mark of when it was, so that a standstill can be seen.

    Once a day what is kept no longer is let go of, some with each sweep until all is.
    """
    swept = sweep(store, now, limit)
    with store.transaction() as tx:
        health.beat(tx, "sweep", now)
        tidied = health.last_beat(tx, "tidy")
        untidy = tidied is None or now - tidied >= timedelta(days=1)
        if untidy and retention.tidy(tx, now, keep):
            health.beat(tx, "tidy", now)
    return swept
