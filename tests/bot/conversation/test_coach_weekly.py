"""A step of every week, ordered by a message: the same days as sets of every week, shown, explained and ended."""

from __future__ import annotations

from datetime import date

import pytest

from bot.conversation.coach_words import parse
from tests.bot.conversation.conftest import Chat

NAMES = [("mira", "Mira")]
MONDAY = date(2027, 1, 4)
MONDAYS = [date(2027, 1, day) for day in (4, 11, 18, 25)]


def steps(chat: Chat) -> list[tuple[date | None, float | None, int | None]]:
    return [(one.for_date, one.load_kg, one.sets) for one in chat.record().orders if one.kind == "step_sets"]


@pytest.mark.parametrize(
    ("language", "words"),
    [("en", "mira +1.25 every monday"), ("de", "Mira +1,25 jeden Montag"), ("es", "Mira +1,25 cada lunes")],
)
def test_it_is_read_in_every_language(language: str, words: str) -> None:
    command = parse(words, NAMES, language, MONDAY)

    assert command is not None
    assert command.step is not None
    assert (command.verb, command.step.by, command.every, command.odd) == ("sets", 1.25, frozenset({0}), ())


def test_it_is_kept_for_the_blocks_loading_weeks_shown_and_explained(chat: Chat) -> None:
    chat.waits_until("08:00")
    answer = chat.answer("coach", "mira +1.25 every monday", "09:00")

    assert steps(chat) == [(day, 1.25, None) for day in MONDAYS]
    assert "+1.25 kg on what is planned, on Mon 4 Jan, Mon 11 Jan, Mon 18 Jan, Mon 25 Jan" in answer
    assert "at most 5 %" in answer
    assert "pull-ups 4×4 +12.5 kg" in chat.answer("coach", "mira week", "09:01")
    assert "instead of 4×4 11.25 kg" in chat.answer("coach", "mira why", "09:02")
    assert "+1.25 kg on what is planned, on Mon 4 Jan, Mon 11 Jan" in chat.answer("coach", "mira", "09:03")


@pytest.mark.parametrize("words", ["undo", "mira unlock", "mira unlock steps"])
def test_it_is_ended(chat: Chat, words: str) -> None:
    chat.waits_until("08:00")
    chat.says("coach", "mira +1.25 every monday", "09:00")
    chat.says("coach", words, "09:01")

    assert "pull-ups 4×4 +11.25 kg" in chat.answer("coach", "mira week", "09:02")


def test_another_takes_its_place_and_another_end_is_heeded(chat: Chat) -> None:
    chat.waits_until("08:00")
    chat.says("coach", "mira +1.25 every monday", "09:00")
    answer = chat.answer("coach", "mira +2.5 every monday until 11 january", "09:01")

    assert "takes the place of your order of Mon 4 Jan" in answer
    assert "pull-ups 4×4 +13.75 kg" in chat.answer("coach", "mira week", "09:02")


def test_sets_and_locks_that_stand_above_it_are_named(chat: Chat) -> None:
    chat.waits_until("08:00")
    chat.says("coach", "mira 4x3 at 10 on monday", "09:00")
    assert "goes before it: 4×3 +10 kg" in chat.answer("coach", "mira +1.25 every monday", "09:01")


@pytest.mark.parametrize("words", ["mira archers a set more every monday", "mira +7.5 every monday"])
def test_what_no_step_of_every_week_may_be_is_not_set(chat: Chat, words: str) -> None:
    chat.waits_until("08:00")
    chat.answer("coach", words, "09:00")
    assert not chat.record().orders


def test_a_set_more_every_thursday(chat: Chat) -> None:
    chat.waits_until("08:00")
    chat.says("coach", "mira a set more every thursday", "09:00")

    assert steps(chat) == [(date(2027, 1, day), None, 1) for day in (7, 14, 21, 28)]
    assert "5×6" in chat.answer("coach", "mira thursday", "09:01")
