"""A coach's order is carried out whole or not at all, and lifts or takes back only what it names."""

from __future__ import annotations

from datetime import date

import pytest

from bot.conversation.coach_words import parse

NAMES = [("mira", "Mira")]
MONDAY = date(2027, 1, 4)


@pytest.mark.parametrize(
    "words",
    [
        "mira 5x3 +20 on thursday not friday",
        "mira lock 15 until thursday and friday",
        "mira thursday 5x3 at 15, thursday 4x3 at 20",
        "mira 5x3 at 15 on thursday 2025",
        "mira 4x3 at 15 this week",
        "mira lock 15 on thursday",
        "mira no dips on thursday",
        "mira hold rung 0 weeks",
        "mira hold rung 3",
        "mira rung archer_shoulder on thursday",
        "mira move monday to tuesday and wednesday",
    ],
)
def test_an_order_of_which_a_part_would_be_dropped_is_not_carried_out(chat, words):
    chat.waits_until("08:00")
    answer = chat.answer("coach", words, "09:00")

    assert "Nothing is done" in answer
    assert not chat.record().orders
    assert not chat.record().moves


@pytest.mark.parametrize(
    ("language", "words"),
    [
        ("en", "mira 4x3 at 15 on thursday and friday"),
        ("de", "mira 4x3 mit 15 am donnerstag und freitag"),
        ("es", "mira 4x3 con 15 el jueves y viernes"),
    ],
)
def test_two_days_in_a_row_of_words_are_both_meant_in_every_language(language, words):
    command = parse(words, NAMES, language, MONDAY)

    assert command is not None
    assert (command.days, command.odd) == ((date(2027, 1, 7), date(2027, 1, 8)), ())


@pytest.mark.parametrize(
    ("language", "words"),
    [
        ("en", "mira 3 sets of 4 at 15 on thurs"),
        ("de", "mira 3 Sätze à 4 mit 15 kg am Donnerstag"),
        ("es", "mira 3 series de 4 con 15 el jueves"),
        ("en", "mira 3x4 at 15 thursday 7 january 2027"),
        ("en", "mira thursday 3x4 at 15 this week"),
    ],
)
def test_sets_and_a_day_in_other_words_are_a_whole_order(language, words):
    command = parse(words, NAMES, language, MONDAY)

    assert command is not None
    assert (command.verb, command.scheme, command.load, command.day) == ("sets", (3, 4), 15.0, date(2027, 1, 7))
    assert command.odd == ()


@pytest.mark.parametrize(
    ("language", "words"),
    [("en", "mira lock 15 until march"), ("de", "mira sperre 15 bis märz"), ("es", "mira bloquea 15 hasta marzo")],
)
def test_until_a_month_is_until_it_begins(language, words):
    command = parse(words, NAMES, language, MONDAY)

    assert command is not None
    assert (command.until, command.odd) == (date(2027, 3, 1), ())


def test_no_sets_at_all_cannot_be_meant(chat):
    assert "nothing was set" in chat.answer("coach", "mira 0x3 at 10", "08:00")
    assert not chat.record().orders


@pytest.mark.parametrize("words", ["mira 4x3 at 17.3 on thursday", "mira lock 17.3"])
def test_a_load_that_the_plates_do_not_make_is_kept_with_a_word(chat, words):
    said = "\n".join(one["text"] for one in chat.says("coach", words, "08:00"))

    assert "do not make 17.3 kg: the next below is 16.25 kg" in said
    assert [one.load_kg for one in chat.record().orders] == [17.3]


def test_an_unlock_lifts_what_it_names(chat):
    chat.answer("coach", "mira lock 10", "08:00")
    chat.answer("coach", "mira hold rung 3 weeks", "08:05")
    answer = chat.answer("coach", "mira unlock rung", "08:10")

    assert "rung held" in answer
    assert "10 kg" not in answer.splitlines()[0]
    assert "nothing was changed" in chat.answer("coach", "mira unlock rung", "08:15")
    assert "locked at +10 kg" in chat.answer("coach", "mira unlock load", "08:20")


def test_what_was_left_out_is_included_again(chat):
    chat.answer("coach", "mira no dips", "08:00")
    chat.answer("coach", "mira lock 10", "08:05")

    assert "without dips" in chat.answer("coach", "mira include dips", "08:10")
    assert "locked at +10 kg" in chat.answer("coach", "mira unlock", "08:15")


def test_a_day_without_an_order_takes_back_nothing_else(chat):
    chat.answer("coach", "mira hold rung 3 weeks", "08:00")

    assert "Nothing is done" in chat.answer("coach", "mira cancel thursday", "08:05")
    assert [one.kind for one in chat.record().orders] == ["hold_rung"]


def test_the_newest_order_is_taken_back_by_its_day(chat):
    chat.answer("coach", "mira 5x3 at 15 on thursday", "08:00")

    assert "taken back" in chat.answer("coach", "mira cancel thursday", "08:05")
    assert not chat.record().orders


def test_a_session_is_not_moved_to_a_day_that_has_one(chat):
    answer = chat.answer("coach", "mira move thursday to monday", "08:00")

    assert "Nothing was moved" in answer
    assert not chat.record().moves
    assert not [one for one in chat.heard if one["to"] == "mira" and "moved your session" in one["text"]]


def test_what_moves_with_a_session_is_said(chat):
    answer = chat.answer("coach", "mira move thursday to sunday", "08:00")

    assert "Mon 11 Jan goes to Tue 12 Jan" in answer


def test_a_session_moved_there_and_back_is_where_it_was(chat):
    chat.answer("coach", "mira move thursday to friday", "08:00")
    chat.answer("coach", "mira move friday to thursday", "08:05")
    week = chat.answer("coach", "mira week", "08:10")

    assert "Thu 7 Jan" in week
    assert "Fri 8 Jan" not in week
