"""What is due, swept: plans, questions, nudges and summaries, each in its own transaction."""

from __future__ import annotations

from datetime import datetime

import structlog
from sqlalchemy.exc import OperationalError

from bot import conversation
from storage import due, health
from storage.store import Store

log = structlog.get_logger(__name__)

AT_ONCE = 500


def sweep(store: Store, now: datetime, limit: int = AT_ONCE) -> int:
    """Handle the rows due by `now`, the longest due first, at most `limit`; how many were taken up.

    A row that fails does not stop the others: it is tried again later, and after some tries given up.

    Raises:
        sqlalchemy.exc.OperationalError: The database is away.
    """
    with store.reading() as tx:
        found = due.due_now(tx, now, limit)
    for row in found:
        assert row.id is not None
        try:
            with store.transaction() as tx:
                mine = due.take(tx, row.id, now)
                if mine is not None:
                    conversation.handle_due(tx, mine, now)
                    due.finish(tx, row.id, now)
        except OperationalError:
            raise
        except Exception as error:
            log.error("due row failed", due=row.id, kind=row.kind, error=type(error).__name__)
            with store.transaction() as tx:
                due.note_failure(tx, row.id, type(error).__name__, now)
    return len(found)


def sweep_and_beat(store: Store, now: datetime) -> int:
    """A sweep that leaves a mark of when it was, so that a standstill can be seen."""
    swept = sweep(store, now)
    with store.transaction() as tx:
        health.beat(tx, "sweep", now)
    return swept
