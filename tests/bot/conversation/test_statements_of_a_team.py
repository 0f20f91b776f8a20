"""What a coach asks of all their athletes takes as many statements for many as for few, nothing being known before."""

from __future__ import annotations

import pytest
import sqlalchemy as sa

from .conftest import Chat, athlete

FEW, MANY = 5, 25
ASKED = (
    "roster",
    "rungs",
    "summary",
    "who hasn't reported?",
    "what if archers train 3 days",
    "undo",
    "thanks for that",
)
# Their waiting words are answered, the coach's are kept, owed to them, and sent: four writes that are each one's own.
WRITES_OF_WORDS = 4


@pytest.fixture(scope="module")
def teams():
    made = {size: Chat(*(athlete(f"a{number:02}") for number in range(size))) for size in (FEW, MANY)}
    for size, chat in made.items():
        chat.waits_until("08:00")
        for number in range(size):
            chat.says(f"a{number:02}", "tell the coach my bar is broken", "09:00")
    yield made
    for chat in made.values():
        chat.close()


def statements(chat, text):
    chat.store.forget_records()
    seen = []
    listen = lambda *given: seen.append(given[2])  # noqa: E731
    sa.event.listen(chat.store._engine, "before_cursor_execute", listen)
    try:
        assert chat.says("coach", text, "09:30")
    finally:
        sa.event.remove(chat.store._engine, "before_cursor_execute", listen)
    return seen


@pytest.mark.parametrize("text", ASKED)
def test_a_question_of_all_does_not_grow_with_the_team(teams, text):
    # A long summary is sent in more than one message: what is counted is what is asked.
    few, many = ([one for one in statements(teams[size], text) if one.startswith("SELECT")] for size in (FEW, MANY))
    assert len(many) <= len(few) + 1


def test_words_for_everyone_take_four_writes_each_and_no_more(teams):
    few, many = (len(statements(teams[size], "tell everyone: the hall is closed")) for size in (FEW, MANY))
    assert many - few <= WRITES_OF_WORDS * (MANY - FEW)
