"""Words are let go after some time: what people wrote, pressed and filmed, what they were sent, and what quotes either;
and with them where it came from and went. Facts stay."""

from __future__ import annotations

from datetime import datetime
from typing import Any

import sqlalchemy as sa
from sqlmodel import Session

from storage import inbox
from storage.database import run
from storage.notes import passed
from storage.outbox import outgoing, over_and_whole
from storage.questions import questions

# So many messages each way in one transaction: nobody else writes meanwhile on SQLite.
AT_ONCE = 2000

# A cause that names the chat ("stranger:telegram:5000000001:…") says the address once more; it must stay unlike others.
_HERE = sa.literal("%:") + outgoing.c.channel + ":" + outgoing.c.address + ":%"
_CAUSE = sa.case((outgoing.c.cause.like(_HERE), sa.literal("over:") + sa.cast(outgoing.c.id, sa.String)),
                 else_=outgoing.c.cause)  # fmt: skip
_NOTHING: dict[str, Any] = {"text": "", "address": "", "cause": _CAUSE, "buttons": []}
_NOTHING |= dict.fromkeys(("picture", "picture_alt", "media", "plan", "document_name"))


def let_go_of_words(tx: Session, before: datetime, most: int = AT_ONCE) -> int:
    """Empty what was over and done with before a moment of words, data and addresses; how many rows.

    At most so many messages each way, and the rest only when all messages are done: to be called again until fewer than
    `most` come.

    What is still open stays whole: messages set aside, unsent or unanswered, and questions not yet answered. The
    coach's notes are no messages and stay.
    """
    sent = sa.select(outgoing.c.id).where(over_and_whole(before)).limit(most)
    messages = (inbox.strip(tx, before, most), _empty(tx, outgoing, outgoing.c.id.in_(sent), _NOTHING))
    if max(messages) == most:
        return sum(messages)
    over = sa.or_(questions.c.answered_at < before, questions.c.expired_at < before)
    # A question for pain asks about no text, and has its day and place in the data.
    asked = sa.or_(questions.c.text != "", questions.c.span.is_not(None), sa.cast(questions.c.data, sa.String) != "{}")
    answered = sa.or_(passed.c.direction == "to_athlete", passed.c.answered_at < before)
    return sum(messages) + sum(
        _empty(tx, table, sa.and_(*where), values)
        for table, where, values in (
            (questions, (over, asked), {"text": "", "span": None, "data": {}}),
            (passed, (passed.c.passed_at < before, answered, passed.c.text != ""), {"text": ""}),
        )
    )


def _empty(tx: Session, table: sa.Table, where: sa.ColumnElement[bool], values: dict[str, Any]) -> int:
    return int(run(tx, sa.update(table).where(where).values(values)).rowcount)
