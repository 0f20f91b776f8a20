"""Answers to questions complete the earlier reading, or are messages of their own."""

import pytest

from bot.reading import complete, read
from bot.reading.reading import Ask
from tests.bot.reading.messages import context


def answered(text, answer):
    reading = read(text, context())
    return complete(text, reading, reading.ask[0], answer, context())


@pytest.mark.parametrize(
    ("text", "answer", "reps", "load"),
    [
        ("pull ups 20", "reps", 20, 0),
        ("pull ups 20", "20", 20, 0),
        ("pull-ups 4x5 @8", "kg", 5, 8),
        ("pull-ups 4x5 @8", "bodyweight", 5, 0),
        ("pull-ups 5x3 +250", "25", 3, 25),
        ("one set of pull ups at +20, 5 or 6", "the second one", 6, 20),
    ],
)
def test_an_answer_fills_the_gap(text, answer, reps, load):
    reading = answered(text, answer)
    assert reading.ask == ()
    assert (reading.sets[0].reps, reading.sets[0].load_kg) == (reps, load)


def test_an_answer_can_name_the_movement():
    assert {one.movement for one in answered("levers 4x8s", "tuck front lever").sets} == {"tuck_front_lever"}


def test_a_load_for_an_answer_leaves_the_reps_to_be_asked():
    reading = answered("pull ups 20", "kg")
    assert reading.sets[0].load_kg == 20
    assert [ask.about for ask in reading.ask] == ["reps"]
    whole = complete("pull ups 20", reading, reading.ask[0], "5", context())
    assert (whole.sets[0].reps, whole.sets[0].load_kg) == (5, 20)


@pytest.mark.parametrize("answer", ["what's today?", "dips 3x8", "", "see you on Friday my friend"])
def test_a_new_message_is_no_answer(answer):
    assert answered("pull ups 20", answer) is None


def test_not_knowing_ends_the_question():
    reading = answered("pull-ups 5x4 +15, rpe 7-9 across", "no idea")
    assert reading.ask == ()
    assert len(reading.sets) == 5


def test_an_answer_that_tells_sets_is_a_report_of_its_own():
    text = "pull-ups 5x3 +250"
    reading = read(text, context())
    assert complete(text, reading, reading.ask[0], "dips 5x3 +900kg", context()) is None


def test_today_is_a_day_for_an_answer():
    text = "pull-ups 5x3 +20"
    day = Ask("performed_on", "+20")
    assert complete(text, read(text, context()), day, "today", context()).performed_on.isoformat() == "2027-03-10"


def test_the_reps_of_counted_sets_leave_the_count():
    text = "pull-ups 4 sets"
    reading = read(text, context())
    whole = complete(text, reading, reading.ask[0], "5", context())
    assert [one.reps for one in whole.sets] == [5] * 4
