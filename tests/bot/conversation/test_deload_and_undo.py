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


def said(chat, words, at):
    return " ".join(one["text"] for one in chat.says("coach", words, at) if one["to"] == "coach")


def test_undo_takes_back_a_rule_for_all(chat):
    chat.waits_until("08:00")
    assert "is 5 for everyone" in said(chat, "rule block.loading_weeks 5", "09:00")
    said(chat, "rule block.loading_weeks 6", "09:01")
    assert "block.loading_weeks is 5 again" in said(chat, "undo", "09:02")
    assert chat.record().athlete.rules["block.loading_weeks"] == 5
    assert "block.loading_weeks is 4 again" in said(chat, "undo", "09:03")
    assert "block.loading_weeks" not in chat.record().athlete.rules


def test_a_nickname_set_three_times_is_taken_back_step_by_step(chat):
    chat.waits_until("08:00")
    for at, movement in enumerate(("dips", "chin-ups", "push-ups")):
        said(chat, f"call {movement} zaps", f"09:0{at}")
    assert "“zaps” is chin-ups again" in said(chat, "undo", "09:04")
    assert "“zaps” is dips again" in said(chat, "undo", "09:05")
    assert "“zaps” is no nickname any more" in said(chat, "undo", "09:06")


def test_a_rule_that_was_not_set_before_is_the_default_again(chat):
    chat.waits_until("08:00")
    said(chat, "rule block.loading_weeks 5", "09:00")
    assert "block.loading_weeks is 4 again" in said(chat, "undo", "09:02")
    assert "block.loading_weeks" not in chat.record().athlete.rules


def test_undo_takes_back_an_athletes_rule(chat):
    chat.waits_until("08:00")
    said(chat, "mira rule block.loading_weeks 5", "09:00")
    assert "block.loading_weeks" in said(chat, "undo", "09:02")
    assert not chat.record().orders


def test_undo_takes_back_a_nickname(chat):
    chat.waits_until("08:00")
    said(chat, "call archers with low ring ALR", "09:00")
    assert "“alr” is no nickname any more" in said(chat, "undo", "09:01")
    said(chat, "call archers with low ring ALR", "09:02")
    said(chat, "call dips ALR", "09:03")
    assert "is archers" in said(chat, "undo", "09:04")


def test_undo_takes_back_a_lock_and_what_an_unlock_lifted(chat):
    chat.waits_until("08:00")
    said(chat, "mira lock 10", "09:00")
    said(chat, "mira unlock", "09:01")
    assert "+10 kg" in said(chat, "undo", "09:02")
    assert "+10 kg" not in said(chat, "undo", "09:03").split("Next")[1]


def test_the_newest_is_taken_back_be_it_for_all_or_for_one(chat):
    chat.waits_until("08:00")
    said(chat, "rule block.loading_weeks 5", "09:00")
    said(chat, "mira hold rung 3 weeks", "09:01")
    assert "rung held" in said(chat, "undo", "09:02")
    assert "loading_weeks" in said(chat, "undo", "09:03")
    assert "no order of yours" in said(chat, "undo", "09:04")
