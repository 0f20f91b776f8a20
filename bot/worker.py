"""Takes what came in, person by person in order, and handles each message in one transaction."""

from __future__ import annotations

from datetime import datetime

import structlog
from sqlmodel import Session

from bot import conversation, metrics
from storage import chats, inbox, outbox, questions
from storage.away import again, is_away
from storage.persons import Person
from storage.store import Store

log = structlog.get_logger(__name__)

# Messages of one chat in a minute beyond which plain answers are left out. Nobody trains that fast.
A_MINUTE = 20


def handle_next(store: Store, now: datetime) -> bool:
    """Handle the oldest message that is free to be handled. False: there is none.

    Facts, due rows, answers and the mark that it is done are committed together. What fails is rolled back and tried
    again; what keeps failing is set aside, and the person and the coach are told.

    Raises:
        Exception: Of the database, which is away (`storage/away.py`); nothing is lost and nothing counted.
    """
    row: inbox.Incoming | None = None

    def handle() -> bool:
        nonlocal row
        with store.transaction() as tx:
            row = inbox.next_unhandled(tx, now)
            if row is None:
                return False
            assert row.id is not None
            person = chats.person_at(tx, row.channel, row.address, row.who)
            if person is not None and inbox.sent_within_a_minute(tx, row) >= A_MINUTE:
                _handle_one_of_many(tx, row, person, now)
            else:
                conversation.handle(tx, row, person, now)
            inbox.mark_handled(tx, row.id, now)
            return True

    try:
        handled = again(handle)
    except Exception as error:
        if row is None or is_away(error):
            raise
        _failed(store, row, error, now)
        return True
    if handled:
        metrics.HANDLED.labels("done").inc()
    return handled


def _handle_one_of_many(tx: Session, row: inbox.Incoming, person: Person, now: datetime) -> None:
    """Somebody writes faster than anybody reads: what they say counts as ever, but plain answers to it are left out.

    An alert, a plan, a question or a word to the coach goes with all that was said beside it.
    """
    cause, before = f"incoming:{row.id}", outbox.newest_id(tx)
    open_before = {question.id for question in questions.open_questions(tx, person)}
    conversation.handle(tx, row, person, now)
    posted = outbox.posted_since(tx, before, cause, person.id if person.role == "athlete" else None)
    # What was asked with the same buttons of late (the pain after a session) is asked already.
    asking = any(message.buttons for message in posted)
    known = outbox.newest_buttons(tx, row.channel, row.address, before) if asking else []
    fresh = [one for one in questions.open_questions(tx, person) if one.id not in open_before]
    in_words = fresh and not asking
    doubt = any(question.cause == row.id for question in fresh)
    if not doubt and not in_words and all(_is_plain(one, row, known) for one in posted):
        # Of its own only: what the coach writes to them just now can stand among them.
        outbox.withdraw(tx, [one.id for one in posted if one.id is not None and one.cause == cause])
        conversation.tell_too_fast(tx, row, person, now)


def _is_plain(message: outbox.Outgoing, row: inbox.Incoming, known: list[list[list[str]]]) -> bool:
    more = message.plan or message.document_name or message.media or message.picture_alt
    here = (message.channel, message.address) == (row.channel, row.address)
    asks = bool(message.buttons) and message.buttons not in known
    return here and not more and not asks and message.importance == outbox.REPLY


def handle_all(store: Store, now: datetime, most: int = 1000) -> int:
    """Handle what there is, at most `most`; how many."""
    for handled in range(most):
        if not handle_next(store, now):
            return handled
    return most


def _failed(store: Store, row: inbox.Incoming, error: Exception, now: datetime) -> None:
    # The type and place of an error say enough; its text could quote the message.
    log.error("message failed", incoming=row.id, error=type(error).__name__, where=_place(error))
    try:
        set_aside = again(lambda: _note_failure(store, row, error, now, tell=True))
    except Exception as second:
        if is_away(second):
            raise
        # It must be counted whatever else fails, or it would be in the way of all others for ever.
        log.error("nobody told of it", incoming=row.id, error=type(second).__name__, where=_place(second))
        set_aside = again(lambda: _note_failure(store, row, error, now, tell=False))
    metrics.HANDLED.labels("set aside" if set_aside else "failed").inc()


def _note_failure(store: Store, row: inbox.Incoming, error: Exception, now: datetime, *, tell: bool) -> bool:
    assert row.id is not None
    with store.transaction() as tx:
        set_aside = inbox.note_failure(tx, row.id, type(error).__name__, now)
        if set_aside and tell:
            conversation.tell_set_aside(tx, row, chats.person_at(tx, row.channel, row.address, row.who), now)
    return set_aside


def _place(error: BaseException) -> str:
    trace = error.__traceback__
    while trace is not None and trace.tb_next is not None:
        trace = trace.tb_next
    return "" if trace is None else f"{trace.tb_frame.f_code.co_filename.rsplit('/', 1)[-1]}:{trace.tb_lineno}"
