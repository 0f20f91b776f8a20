"""Orders of a step on what is planned, and of a day of every week."""

from __future__ import annotations

from datetime import date

import pytest

from bot.conversation import coach_every
from bot.conversation.coach_steps import Step, step_of
from bot.conversation.coach_words import parse
from planner.plan import BlockPosition
from tests.bot.conversation.conftest import Chat, athlete

NAMES = [("mira", "Mira"), ("tom", "Tom")]
MONDAY, THURSDAY = date(2027, 1, 4), date(2027, 1, 7)


def sets_of(chat, day):
    found = [one for one in chat.record().orders if one.kind == "set_sets" and one.for_date == day]
    return [(one.sets, one.reps, one.load_kg) for one in found]


@pytest.mark.parametrize(
    ("language", "words", "step"),
    [
        ("en", "Mira +1.25", Step("load", 1.25)),
        ("en", "mira \u22122.5 kg on thursday", Step("load", -2.5, "kg")),
        ("en", "a set more for Mira", Step("set", 1)),
        ("en", "mira one set less", Step("set", -1)),
        ("en", "mira two fewer reps", Step("rep", -2)),
        ("en", "add 2.5 kg for mira", Step("load", 2.5, "kg")),
        ("en", "drop a set for mira", Step("set", -1)),
        ("en", "another set for mira", Step("set", 1)),
        ("en", "mira +5 lb", Step("load", 5, "lb")),
        ("de", "Mira +1,25", Step("load", 1.25)),
        ("de", "ein Satz mehr für Mira", Step("set", 1)),
        ("de", "Mira einen Satz weniger", Step("set", -1)),
        ("de", "Mira 2,5 kg weniger am Donnerstag", Step("load", -2.5, "kg")),
        ("de", "noch eine Wiederholung für Mira", Step("rep", 1)),
        ("es", "Mira +1,25", Step("load", 1.25)),
        ("es", "una serie más para Mira", Step("set", 1)),
        ("es", "Mira una serie menos el jueves", Step("set", -1)),
        ("es", "Mira 2,5 kg más", Step("load", 2.5, "kg")),
    ],
)
def test_a_step_is_read_in_every_language(language, words, step):
    command = parse(words, NAMES, language, MONDAY)

    assert command is not None
    assert (command.verb, command.handle, command.step, command.odd) == ("sets", "mira", step, ())


@pytest.mark.parametrize(
    "words", ["mira 4x3 +20 on thursday", "mira lock +20", "mira hold rung 3 weeks", "mira a set of 5", "mira sets"]
)
def test_loads_and_spans_are_no_step(words):
    command = parse(words, NAMES, "en", MONDAY)

    assert command is None or command.step is None


def test_two_steps_in_one_order_are_none():
    assert step_of("mira +1.25 +2.5", "en")[0] is None


@pytest.mark.parametrize(
    ("words", "day", "found"),
    [
        # The plan of the day is 4x4 +11.25 on Monday, 4x6 +6.25 on Thursday, as the chat shows it.
        ("mira +1.25", MONDAY, (4, 4, 12.5)),
        ("mira a set more", MONDAY, (5, 4, None)),
        ("mira one set less on thursday", THURSDAY, (3, 6, None)),
        ("mira 2.5 kg less on thursday", THURSDAY, (4, 6, 3.75)),
        ("mira two reps less on thursday", THURSDAY, (4, 4, None)),
    ],
)
def test_a_step_is_taken_from_what_is_planned(chat, words, day, found):
    chat.waits_until("08:00")
    answer = chat.answer("coach", words, "09:00")

    assert sets_of(chat, day) == [found]
    assert f"{found[0]}×{found[1]}" in answer


def test_a_set_more_of_the_rungs_work_is_one_more_a_side(chat):
    chat.waits_until("08:00")
    assert "ring at elbow height 3×1 a side" in chat.answer("coach", "mira archers one set more", "09:00")


@pytest.mark.parametrize("words", ["mira +17.5", "mira 12 sets less", "mira dips +2.5"])
def test_a_step_that_fits_nothing_is_not_taken(chat, words):
    chat.waits_until("08:00")

    assert "no sets that a step like that fits on" in chat.answer("coach", words, "09:00")
    assert not chat.record().orders


def test_a_step_in_pounds_lands_on_pounds():
    chat = Chat(athlete("mira", unit="lb", plate_step=2.5, plate_unit="lb"))
    chat.waits_until("08:00")
    chat.says("coach", "mira +2.5", "09:00")
    (one,) = chat.record().orders
    chat.close()

    pounds = one.load_kg / 0.45359237
    assert pounds == pytest.approx(2.5 * round(pounds / 2.5), abs=0.01)


@pytest.mark.parametrize(
    ("language", "words", "meant"),
    [
        ("en", "mira 4x3 at 10 every monday", {0}),
        ("en", "mira 4x3 at 10 on mondays", {0}),
        ("en", "mira 4x3 at 10 every monday and thursday", {0, 3}),
        ("de", "mira 4x3 mit 10 jeden Montag", {0}),
        ("de", "mira 4x3 mit 10 montags", {0}),
        ("es", "mira 4x3 con 10 cada lunes", {0}),
        ("es", "mira 4x3 con 10 todos los lunes", {0}),
        ("es", "mira 4x3 con 10 los lunes", {0}),
    ],
)
def test_a_day_of_every_week_is_read_in_every_language(language, words, meant):
    command = parse(words, NAMES, language, MONDAY)

    assert command is not None
    assert (command.verb, command.scheme, command.load, command.every) == ("sets", (4, 3), 10.0, frozenset(meant))
    assert command.odd == ()


@pytest.mark.parametrize("words", ["mira no dips every monday", "mira 4x3 at 10 every monday on friday"])
def test_other_orders_of_every_week_are_not_carried_out(chat, words):
    chat.waits_until("08:00")

    assert "Nothing is done" in chat.answer("coach", words, "09:00")
    assert not chat.record().orders


def test_every_monday_is_the_mondays_of_the_blocks_loading_weeks_and_one_undo_takes_them_back(chat):
    chat.waits_until("08:00")
    answer = chat.answer("coach", "mira 4x3 at 10 every monday", "09:00")

    assert [one.for_date for one in chat.record().orders] == [date(2027, 1, day) for day in (4, 11, 18, 25)]
    assert "The same on Mon 11 Jan, Mon 18 Jan, Mon 25 Jan" in answer
    chat.says("coach", "undo", "09:01")
    assert not chat.record().orders


def test_every_monday_until_a_day_ends_there(chat):
    chat.waits_until("08:00")
    chat.says("coach", "mira 4x3 at 10 every monday until 18 january", "09:00")

    assert [one.for_date for one in chat.record().orders] == [date(2027, 1, day) for day in (4, 11, 18)]


def test_in_a_deload_the_next_blocks_weeks_are_meant():
    block = BlockPosition(1, 5, 4, MONDAY, date(2027, 2, 7), deload=True)

    found = coach_every.days(frozenset({0}), date(2027, 2, 2), None, block)
    assert found == [date(2027, 2, day) for day in (8, 15, 22)] + [date(2027, 3, 1)]
