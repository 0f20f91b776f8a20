"""A coach orders a deload, and takes orders back."""

from datetime import timedelta

import pytest

from bot.conversation.coach_words import parse
from planner import plan_for
from tests.bot.conversation.test_exact_orders import MONDAY, NAMES


def kinds(chat, days=21):
    """What kinds the sessions of the days from Monday on are planned to be."""
    record = chat.record()
    plans = [plan_for(record, MONDAY, MONDAY + timedelta(days=ahead)) for ahead in range(days)]
    return [plan.kind for plan in plans if plan.sets]


def test_a_deload_begins_with_the_next_session_and_is_told_with_its_reason(chat):
    chat.waits_until("08:00")
    assert "deload" not in kinds(chat, 14)
    answer = " ".join(one["text"] for one in chat.says("coach", "mira deload", "09:00"))

    assert "the deload begins on" in answer
    assert {"deload", "test"} & set(kinds(chat, 7))
    assert any("as your coach ordered" in one["text"] for one in chat.says("mira", "why", "09:30"))


def test_a_deload_that_is_ordered_twice_stays_one(chat):
    chat.waits_until("08:00")
    chat.says("coach", "mira deload", "09:00")
    once = kinds(chat)
    chat.says("coach", "mira deload", "09:05")

    assert kinds(chat) == once


def test_a_deload_ordered_after_the_session_begins_with_the_next_one(chat):
    chat.waits_until("08:00")
    chat.says("mira", "done as planned, last @7", "18:00")
    answer = " ".join(one["text"] for one in chat.says("coach", "mira deload", "19:00"))

    assert "the deload begins on Thu 7 Jan" in answer
    assert kinds(chat, 8) == ["training", "deload", "test"]


def test_a_deload_that_was_trained_on_the_day_of_its_order_goes_on(chat):
    chat.waits_until("08:00")
    chat.says("coach", "mira deload", "09:00")
    chat.says("mira", "done as planned", "18:00")

    assert kinds(chat, 4) == ["deload", "test"]


def test_a_deload_of_next_week_leaves_this_one_alone(chat):
    chat.waits_until("08:00")
    before = kinds(chat, 7)
    chat.says("coach", "mira deload next week", "09:00")

    assert kinds(chat, 7) == before
    assert "deload" in kinds(chat, 14)


def test_undo_takes_back_the_newest_order_alone(chat):
    chat.waits_until("08:00")
    before = kinds(chat)
    chat.says("coach", "mira hold rung 3 weeks", "09:00")
    chat.says("coach", "mira deload", "09:05")
    answer = " ".join(one["text"] for one in chat.says("coach", "undo", "09:10"))

    assert "taken back: deload from" in answer
    assert kinds(chat) == before
    assert [order.kind for order in chat.record().orders if order.kind in ("hold_rung", "deload")] == ["hold_rung"]


def test_undo_of_a_move_is_told_to_the_athlete(chat):
    chat.waits_until("08:00")
    chat.says("coach", "mira move thursday to friday", "09:00")
    told = chat.says("coach", "mira undo", "09:05")

    assert any(one["to"] == "mira" and "took back" in one["text"] for one in told)
    assert not chat.record().moves


def test_nothing_to_take_back_is_said(chat):
    chat.waits_until("08:00")

    assert "no order of yours" in " ".join(one["text"] for one in chat.says("coach", "mira undo", "09:00"))


@pytest.mark.parametrize(
    ("language", "words", "verb", "dated"),
    [
        ("en", "mira deload week please", "deload", False),
        ("en", "mira deload from thursday", "deload", True),
        ("en", "deload mira next week", "deload", True),
        ("en", "mira take that back", "undo", False),
        ("de", "mira deload-woche", "deload", False),
        ("de", "mira deload ab donnerstag", "deload", True),
        ("de", "mira nächste woche deload", "deload", True),
        ("de", "mira leichte woche", "deload", False),
        ("de", "mira nimm das zurück", "undo", False),
        ("es", "mira semana de descarga", "deload", False),
        ("es", "mira descarga desde el jueves", "deload", True),
        ("es", "mira descarga la próxima semana", "deload", True),
        ("es", "mira deshacer eso", "undo", False),
    ],
)
def test_both_orders_are_heard_in_three_languages(language, words, verb, dated):
    command = parse(words, NAMES, language, MONDAY)

    assert command is not None
    assert (command.verb, command.handle, command.odd, command.day is not None) == (verb, "mira", (), dated)
