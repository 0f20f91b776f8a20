"""One report in several messages, and what is said once."""

from __future__ import annotations

import pytest

from tests.bot.conversation.conftest import Chat, athlete


def sets_of(chat):
    sessions = [one for one in chat.record().sessions if not one.is_test]
    return [(one.movement, one.reps, one.load_kg, one.rpe) for session in sessions for one in session.sets]


@pytest.mark.parametrize(("language", "words"), [("en", "last one @8"), ("de", "letzter @8"), ("es", "la última @8")])
def test_an_effort_told_after_belongs_to_what_was_done_and_not_to_the_plan(language, words):
    chat = Chat(athlete("mira", language=language))
    chat.waits_until("08:00")
    chat.answer("mira", "pull ups 4x4 +20", "18:00")
    chat.answer("mira", words, "18:01")

    assert sets_of(chat) == [("pull_up", 4, 20.0, None)] * 3 + [("pull_up", 4, 20.0, 8.0)]
    chat.close()


def test_three_messages_are_one_report_with_one_question(chat):
    chat.waits_until("08:00")
    answers = [
        chat.answer("mira", words, f"18:0{at}")
        for at, words in enumerate(("pull ups 4x4 +20", "last one @8", "archers 2x1 per side", "elbow 2"))
    ]

    assert sum(answer.count("Any pain") for answer in answers) == 1
    assert len(sets_of(chat)) == 4 + 4
    assert chat.record().pain[-1].score == 2


def test_the_rest_as_planned_leaves_out_what_was_told(chat):
    chat.waits_until("08:00")
    chat.answer("mira", "pull ups 4x4 +20", "18:00")
    chat.answer("mira", "rest as planned", "18:01")

    assert [one for one in sets_of(chat) if one[0] == "pull_up"] == [("pull_up", 4, 20.0, None)] * 4
    assert {one[0] for one in sets_of(chat)} > {"pull_up", "archer_ring_elbow"}


def test_a_scheme_put_right_without_its_movement_is_the_work_s_and_no_warm_up_s(chat):
    chat.waits_until("08:00")
    chat.answer("mira", "scapular pull-ups 1x5, pull ups 4x4 +20", "18:00")
    chat.answer("mira", "actually it was 4x3", "18:01")

    assert sets_of(chat) == [("scapular_pull_up", 5, 0.0, None)] + [("pull_up", 3, 20.0, None)] * 4


@pytest.mark.parametrize(
    ("language", "words"), [("en", "the last one was 9"), ("de", "der letzte war 9"), ("es", "la última fue 9")]
)
@pytest.mark.parametrize(
    ("button", "last"), [(0, (9, 20.0, None)), (1, (4, 9.0, None)), (2, (4, 20.0, 9.0))], ids=["reps", "load", "effort"]
)
def test_a_bare_nine_of_the_last_is_asked_and_mends_what_was_told(language, words, button, last):
    chat = Chat(athlete("mira", language=language))
    chat.waits_until("08:00")
    chat.answer("mira", "pull ups 4x4 +20", "18:00")
    chat.answer("mira", words, "18:01")
    labels = chat.heard[-1]["buttons"]
    chat.says("mira", None, "18:02", press=labels[button])

    assert sets_of(chat) == [("pull_up", 4, 20.0, None)] * 3 + [("pull_up", *last)]
    chat.close()


def test_a_report_told_again_with_its_effort_counts_once(chat):
    chat.answer("mira", "pull ups 4x4 +20", "18:00")
    chat.answer("mira", "pull ups 4x4 +20 last @8", "18:01")

    assert sets_of(chat) == [("pull_up", 4, 20.0, None)] * 3 + [("pull_up", 4, 20.0, 8.0)]


def test_what_a_pain_changes_is_told_once(chat):
    chat.answer("mira", "pull ups 4x4 +15, left elbow 4", "18:00")
    first = chat.answer("mira", "left elbow 4 this morning", "08:00", "2027-01-05")
    again = chat.answer("mira", "left elbow 3", "12:00", "2027-01-05")

    assert "a step down" in first
    assert "a step down" not in again
    assert "left elbow 3/10" in again


def test_a_stop_is_told_each_time(chat):
    chat.answer("mira", "left elbow 7", "09:00")

    assert "stop everything that loads it" in chat.answer("mira", "left elbow 7", "12:00")
