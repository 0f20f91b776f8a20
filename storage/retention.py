"""Words are let go after some time: what people wrote, what they were sent, and what quotes either. Facts stay."""

from __future__ import annotations

from datetime import datetime
from typing import Any

import sqlalchemy as sa
from sqlmodel import Session

from storage.database import run
from storage.inbox import empty_texts
from storage.notes import passed
from storage.outbox import outgoing
from storage.questions import questions


def let_go_of_words(tx: Session, before: datetime) -> int:
    """Empty the words of all that was over and done with before a moment; how many rows.

    What is still open stays whole: messages set aside, unsent or unanswered, and questions not yet answered. The
    coach's notes are no messages and stay.
    """
    sent = sa.or_(outgoing.c.sent_at < before, outgoing.c.given_up_at < before)
    over = sa.or_(questions.c.answered_at < before, questions.c.expired_at < before)
    answered = sa.or_(passed.c.direction == "to_athlete", passed.c.answered_at < before)
    return empty_texts(tx, before) + sum(
        _empty(tx, table, sa.and_(*where), values)
        for table, where, values in (
            (outgoing, (sent, outgoing.c.text != ""), {"text": "", "picture": None, "picture_alt": None, "plan": None}),
            (questions, (over, questions.c.text != ""), {"text": "", "span": None, "data": {}}),
            (passed, (passed.c.passed_at < before, answered, passed.c.text != ""), {"text": ""}),
        )
    )


def _empty(tx: Session, table: sa.Table, where: sa.ColumnElement[bool], values: dict[str, Any]) -> int:
    return int(run(tx, sa.update(table).where(where), values).rowcount)
