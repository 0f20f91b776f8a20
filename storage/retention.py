"""Words are let go after some time: what people wrote, pressed and filmed, what they were sent, and what quotes either;
and with them where it came from and went. What was done, answered and tried is deleted whole. Facts stay."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime, timedelta
from typing import Any

import sqlalchemy as sa
from sqlmodel import Session

from storage import inbox
from storage.database import run
from storage.due import dues
from storage.invites import invite_tries, invites
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


@dataclass(frozen=True)
class Keep:
    """For how many days what is kept. `messages`: the words of what was handled and sent; `done`: what fell due and was
    done, and questions that were answered or lapsed; `codes`: codes that were used or ran out, and who tried wrong
    ones."""

    messages: int = 365
    done: int = 365
    codes: int = 30


def tidy(tx: Session, now: datetime, keep: Keep, most: int = AT_ONCE) -> bool:
    """Let go of what is kept no longer, some of it at once. False: there is more, to be asked for again."""
    words = let_go_of_words(tx, now - timedelta(days=keep.messages), most)
    rows = let_go_of_rows(tx, now - timedelta(days=keep.done), now - timedelta(days=keep.codes), most)
    return max(words, rows) < most


def let_go_of_rows(tx: Session, done_before: datetime, codes_before: datetime, most: int = AT_ONCE) -> int:
    """Delete what is over: due rows that are done, questions that no answer is waited for, codes and tries of them; at
    most so many of each table, and how many of that which had the most."""
    over = (
        (dues, dues.c.done_at < done_before),
        (questions, sa.or_(questions.c.answered_at < done_before, questions.c.expired_at < done_before)),
        (invites, sa.or_(invites.c.used_at < codes_before, invites.c.expires_at < codes_before)),
        (invite_tries, invite_tries.c.since < codes_before),
    )
    return max(_delete(tx, table, where, most) for table, where in over)


def _delete(tx: Session, table: sa.Table, where: sa.ColumnElement[bool], most: int) -> int:
    some = sa.select(table.c.id).where(where).limit(most)
    return int(run(tx, sa.delete(table).where(table.c.id.in_(some))).rowcount)


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
