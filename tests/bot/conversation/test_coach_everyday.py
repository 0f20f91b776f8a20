"""Orders as coaches type them: spans in words, families of movements, other grips, pounds, slips in a name."""

from __future__ import annotations

from datetime import date

import pytest

from planner.units import KG_PER_LB
from tests.bot.conversation.conftest import Chat, athlete

THURSDAY = "2027-01-07"


def orders(chat, handle="mira"):
    return chat.record(handle).orders


@pytest.mark.parametrize(
    ("words", "until"),
    [
        ("mira no dips for two weeks", date(2027, 1, 18)),
        ("mira exclude dips for the next two weeks please", date(2027, 1, 18)),
        ("mira no dips for a week", date(2027, 1, 11)),
        ("mira no dips until 1 march", date(2027, 3, 1)),
    ],
)
def test_a_movement_is_left_out_for_as_long_as_was_said(chat, words, until):
    assert "without dips until" in chat.answer("coach", words, "08:00")
    assert [(one.movement, one.until) for one in orders(chat)] == [("dip", until)]


def test_of_a_family_all_are_left_out_and_one_undo_takes_them_back(chat):
    assert "without archers until Mon 18 Jan" in chat.answer("coach", "mira no archers for two weeks", "08:00")
    assert {one.movement for one in orders(chat)} >= {"archer_ring_elbow", "archer_ring_shoulder"}
    today = chat.answer("mira", "what's today?", "08:01")
    assert "Skill" not in today
    assert "left out, as your coach said" in today

    chat.answer("coach", "mira undo", "08:02")
    assert not orders(chat)


def test_spans_in_german_and_spanish_words():
    from bot.conversation.coach_words import parse

    names, monday = [("mira", "Mira")], date(2027, 1, 4)
    for language, words in (("de", "mira pausiere die nächsten zwei wochen"), ("es", "mira pausa dos semanas")):
        command = parse(words, names, language, monday)
        assert command is not None
        assert (command.verb, command.until, command.odd) == ("pause", date(2027, 1, 18), ())


def test_words_to_be_told_stay_as_they_were_written(chat):
    chat.answer("coach", "tell mira to rest for two weeks", "08:00")
    assert any(one["text"].endswith("rest for two weeks") for one in chat.heard if one["to"] == "mira")


@pytest.mark.parametrize(
    ("words", "grip", "load"),
    [
        ("mira chin-ups 4x3 at 15 on thursday", "chin_up", 15.0),
        ("mira 4x3 neutral grip pull-ups at 10 thursday", "neutral_grip_pull_up", 10.0),
    ],
)
def test_sets_of_another_grip_take_the_main_lifts_place(chat, words, grip, load):
    chat.answer("coach", words, "08:00")
    (plan,) = [one["plan"] for one in chat.waits_until("08:00", THURSDAY) if one["plan"]]
    main = [(one["movement"], one["reps"], one["load_kg"]) for one in plan["sets"] if one["part"] == "main"]
    assert main == [(grip, 3, load)] * 4
    assert not [one for one in plan["sets"] if one["movement"] == "pull_up"]


def test_without_a_load_the_other_grips_own_is_planned(chat):
    chat.answer("coach", "mira chin ups 4x4 thursday", "08:00")
    (plan,) = [one["plan"] for one in chat.waits_until("08:00", THURSDAY) if one["plan"]]
    (load,) = {one["load_kg"] for one in plan["sets"] if one["part"] == "main"}
    assert 0 < load <= 11.25


def test_of_two_orders_for_a_day_the_newest_alone_is_done_and_shown(chat):
    chat.answer("coach", "mira 5x3 at 15 on thursday", "08:00")
    chat.answer("coach", "mira chin-ups 3x5 at 10 on thursday", "08:01")
    assert "5×3" not in chat.answer("coach", "mira", "08:02")
    text = chat.answer("mira", "what's on thursday?", "08:03")
    assert text.count("Your coach set these") == 1
    assert "chin-ups 3×5 +10 kg" in text


def test_a_slip_in_the_load_of_another_grip_is_not_set(chat):
    assert "nothing was set" in chat.answer("coach", "mira chin-ups 4x3 at 150 on thursday", "08:00")


@pytest.mark.parametrize("words", ["mira 4x3 at 35 lb on thursday", "mira lock 35 lb", "mira lock 35 pounds"])
def test_pounds_for_plates_of_kilograms_are_rounded_down_to_them_and_said(chat, words):
    answer = chat.answer("coach", words, "08:00")
    assert "is 15 kg on Mira’s plates" in answer
    assert [one.load_kg for one in orders(chat)] == [15.0]


def test_kilograms_for_plates_of_pounds_are_whole_pounds():
    chat = Chat(athlete("mira", unit="lb", plate_step=2.5, plate_unit="lb"))
    chat.waits_until("07:00")
    try:
        chat.answer("coach", "mira 4x3 at 15 kg on thursday", "08:00")
        assert [one.load_kg for one in orders(chat)] == [pytest.approx(32.5 * KG_PER_LB)]
    finally:
        chat.close()


def test_a_load_in_the_plates_own_unit_stays_as_it_was_ordered(chat):
    assert "do not make 15.5 kg" in chat.answer("coach", "mira 4x3 at 15.5 on thursday", "08:00")
    assert [one.load_kg for one in orders(chat)] == [15.5]


def test_a_slip_in_a_name_is_asked_about_and_the_button_carries_the_order_out(two):
    asked = two.says("coach", "mria 4x3 weighted at 20", "08:00")[-1]
    assert asked["buttons"] == ["Mira"]
    assert not orders(two)

    two.says("coach", None, "08:01", press="Mira")
    assert [(one.sets, one.reps, one.load_kg) for one in orders(two)] == [(4, 3, 20.0)]


def test_an_order_without_a_name_is_asked_about_among_a_small_roster(two):
    asked = two.says("coach", "4x3 at 20 on thursday", "08:00")[-1]
    assert asked["buttons"] == ["Mira", "Tom"]
    two.says("coach", None, "08:01", press="Tom")
    assert [one.load_kg for one in orders(two, "tom")] == [20.0]
    assert not orders(two)


def test_a_button_pressed_twice_orders_once(two):
    two.says("coach", "mria 4x3 at 20", "08:00")
    two.says("coach", None, "08:01", press="Mira")
    two.says("coach", None, "08:02", press="Mira")
    assert len(orders(two)) == 1


@pytest.mark.parametrize("words", ["more pull-ups please", "what about mria", "4x3 then rest well", "mira's fine"])
def test_talk_is_no_order_whatever_looks_like_a_name(two, words):
    said = two.says("coach", words, "08:00")[-1]
    assert not said["buttons"]
    assert not orders(two)


@pytest.mark.parametrize(
    "words",
    [
        "mira 5 x 3 @ 12.5 kg on Thu", "mira thursday 5x3 @ 12.5kg", "give mira 5x3 at 12.5 on thursday instead",
        "mira 5×3 @12.5 kg thursday",
    ],
)  # fmt: skip
def test_sets_are_read_in_the_notation_of_the_trade(chat, words):
    chat.answer("coach", words, "08:00")
    assert [(one.sets, one.reps, one.load_kg, str(one.for_date)) for one in orders(chat)] == [(5, 3, 12.5, THURSDAY)]


@pytest.mark.parametrize("words", ["mira 5 x 3 @ 8 on thursday", "mira 5x3 @8"])
def test_an_effort_is_still_no_load(chat, words):
    assert "Nothing is done" in chat.answer("coach", words, "08:00")
    assert not orders(chat)


@pytest.mark.parametrize("words", ["mira thursday", "what's mira's plan for thursday", "mira week thursday"])
def test_a_day_named_shows_its_plan(chat, words):
    answer = chat.answer("coach", words, "08:00")
    assert answer.startswith("Thursday 7 January")
    assert "nothing was changed" not in answer


def test_a_session_moved_to_a_day_is_the_next_one(chat):
    chat.waits_until("08:00")
    chat.answer("mira", "done as planned", "18:00")
    chat.answer("coach", "move mira's session to friday", "19:00")
    assert [(str(one.moved_from), str(one.moved_to)) for one in chat.record().moves] == [(THURSDAY, "2027-01-08")]


@pytest.mark.parametrize("words", ["how's mira doing", "mira's elbow?", "has mira approved the questions yet?"])
def test_a_question_about_an_athlete_shows_the_card(chat, words):
    assert chat.answer("coach", words, "08:00").startswith("Mira, Monday 4 January")
    assert not orders(chat)


def test_rest_until_a_day_is_a_pause(chat):
    assert "paused until Thu 7 Jan" in chat.answer("coach", "mira rest until thursday", "08:00")


@pytest.mark.parametrize("words", ["hi", "thanks!", "good morning"])
def test_a_greeting_is_met_with_a_thumb(chat, words):
    assert chat.answer("coach", words, "08:00") == "👍"


def test_cancel_that_takes_back(chat):
    chat.answer("coach", "mira lock 10", "08:00")
    assert "taken back" in chat.answer("coach", "cancel that", "08:01")
    assert not orders(chat)
