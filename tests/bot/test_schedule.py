"""A moment that fails is tried again, then given up; what follows it comes all the same."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta

import pytest
import sqlalchemy as sa

from bot import conversation, schedule
from storage import due
from storage.database import run
from tests.bot.conversation.conftest import Chat, athlete


@pytest.fixture
def chat():
    made = Chat(athlete("mira"))
    yield made
    made.close()


def open_rows(chat, kind):
    with chat.store.reading() as tx:
        query = sa.select(due.dues).where(due.dues.c.kind == kind, due.dues.c.done_at.is_(None))
        return run(tx, query.order_by(due.dues.c.due_at)).all()


@pytest.mark.parametrize(("kind", "step"), [("plan", timedelta(days=1)), ("summary", timedelta(weeks=1))])
def test_the_next_of_its_kind_is_planted_when_one_is_given_up(chat, monkeypatch, kind, step):
    chat.waits_until("08:00")
    (row,) = open_rows(chat, kind)

    def fails(*_):
        raise ValueError

    monkeypatch.setattr(conversation, "handle_due", fails)
    now = max(row.due_at.replace(tzinfo=UTC), datetime(2027, 1, 4, 8, tzinfo=UTC))
    for _ in range(40):
        schedule.sweep(chat.store, now)
        now += timedelta(minutes=1)

    (after,) = open_rows(chat, kind)
    assert after.for_date == row.for_date + step
