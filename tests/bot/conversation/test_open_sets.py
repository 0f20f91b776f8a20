"""A test day's open sets: asked for, answered by a number, a report or nobody."""

from __future__ import annotations

import pytest

from tests.bot.conversation.conftest import Chat, athlete

TEST_DAY = "2027-01-28"  # three loading weeks and the deload week's second day
DONE = {"en": "done as planned", "de": "wie geplant", "es": "hecho según el plan"}


@pytest.fixture(params=["en", "de", "es"])
def tested(request):
    """An athlete who has just said "done as planned" on a test day; the answer to that in `asked`."""
    chat = Chat(athlete("mira", language=request.param))
    chat.waits_until("07:00")
    chat.says("coach", "mira rule block.loading_weeks 3", "07:10")
    for day in ("01-04", "01-07", "01-11", "01-14", "01-18", "01-21", "01-25"):
        chat.says("mira", DONE[request.param], "18:00", f"2027-{day}")
    chat.asked = chat.answer("mira", DONE[request.param], "18:00", TEST_DAY)
    chat.language = request.param
    yield chat
    chat.close()


def tops(chat):
    """Reps and effort of the day's heaviest work."""
    sets = [one for session in chat.record().sessions if str(session.on) == TEST_DAY for one in session.sets]
    heaviest = max(one.load_kg for one in sets)
    return [(one.reps, one.rpe) for one in sets if one.load_kg == heaviest]


def test_the_open_set_is_the_only_question(tested):
    plan = next(one["plan"] for one in reversed(tested.heard) if one["plan"] and one["plan"]["kind"] == "test")

    assert any(one["reps"] is None and one["hold_s"] is None for one in plan["sets"])
    assert tested.asked.count("?") == 1


@pytest.mark.parametrize(("answer", "reps", "rpe"), [("5", 5, None), ("5 @9", 5, 9.0), ("5 reps", 5, None)])
def test_a_short_answer_fills_it(tested, answer, reps, rpe):
    tested.answer("mira", answer, "18:01", TEST_DAY)

    assert tops(tested) == [(reps, rpe)]


def test_a_number_in_letters_fills_it(tested):
    tested.answer("mira", {"en": "five", "de": "fünf", "es": "cinco"}[tested.language], "18:01", TEST_DAY)

    assert tops(tested) == [(5, None)]


def test_after_the_answer_a_number_is_for_pain(tested):
    tested.answer("mira", "5", "18:01", TEST_DAY)
    tested.answer("mira", "2", "18:02", TEST_DAY)

    assert tested.record().pain[-1].score == 2
    assert tops(tested) == [(5, None)]


def test_a_report_instead_of_the_answer_is_taken_as_one(tested):
    tested.answer("mira", "pull-ups 1x6 +22.5 @9", "18:01", TEST_DAY)
    after = tested.waits_until("20:00", "2027-01-29")

    assert tops(tested) == [(6, 9.0)]
    assert not [one for one in after if one["to"] == "coach"]


def test_pain_instead_of_the_answer_is_pain(tested):
    tested.answer("mira", {"en": "left elbow 3", "de": "linker Ellbogen 3", "es": "codo izquierdo 3"}[tested.language],
                  "18:01", TEST_DAY)  # fmt: skip

    assert (tested.record().pain[-1].site, tested.record().pain[-1].score) == ("elbow", 3)


def test_nobody_answers_and_the_summary_says_what_is_missing(tested):
    said = [one["text"] for one in tested.waits_until("20:00", "2027-01-31") if one["to"] == "coach"]

    assert [text for text in said if "the result of an open set is missing" in text]
    assert not [text for text in said if "did not answer" in text]
    assert [one for one in tested.record().sessions if str(one.on) == TEST_DAY]
