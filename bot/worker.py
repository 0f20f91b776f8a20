"""Takes what came in, person by person in order, and handles each message in one transaction."""

from __future__ import annotations

from datetime import datetime

import structlog
from sqlalchemy.exc import OperationalError

from bot import conversation
from storage import chats, inbox
from storage.store import Store

log = structlog.get_logger(__name__)


def handle_next(store: Store, now: datetime) -> bool:
    """Handle the oldest message that is free to be handled. False: there is none.

    Facts, due rows, answers and the mark that it is done are committed together. What fails is rolled back and tried
    again; what keeps failing is set aside, and the person and the coach are told.

    Raises:
        sqlalchemy.exc.OperationalError: The database is away; nothing is lost and nothing counted.
    """
    row: inbox.Incoming | None = None
    try:
        with store.transaction() as tx:
            row = inbox.next_unhandled(tx, now)
            if row is None:
                return False
            assert row.id is not None
            person = chats.person_at(tx, row.channel, row.address)
            conversation.handle(tx, row, person, now)
            inbox.mark_handled(tx, row.id, now)
    except OperationalError:
        raise
    except Exception as error:
        if row is None:
            raise
        _failed(store, row, error, now)
    return True


def handle_all(store: Store, now: datetime, most: int = 1000) -> int:
    """Handle what there is, at most `most`; how many."""
    for handled in range(most):
        if not handle_next(store, now):
            return handled
    return most


def _failed(store: Store, row: inbox.Incoming, error: Exception, now: datetime) -> None:
    assert row.id is not None
    # The type and place of an error say enough; its text could quote the message.
    log.error("message failed", incoming=row.id, error=type(error).__name__, where=_place(error))
    with store.transaction() as tx:
        if inbox.note_failure(tx, row.id, type(error).__name__, now):
            conversation.tell_set_aside(tx, row, chats.person_at(tx, row.channel, row.address), now)


def _place(error: BaseException) -> str:
    trace = error.__traceback__
    while trace is not None and trace.tb_next is not None:
        trace = trace.tb_next
    return "" if trace is None else f"{trace.tb_frame.f_code.co_filename.rsplit('/', 1)[-1]}:{trace.tb_lineno}"
