"""Which question a number, a word or an old button answers."""

from __future__ import annotations

import pytest


def sets_of(chat, day="2027-01-04"):
    sessions = [one for one in chat.record().sessions if str(one.on) == day and not one.is_test]
    return [(one.movement, one.reps, one.load_kg, one.rpe) for session in sessions for one in session.sets]


def test_another_number_than_the_one_asked_about_is_asked_again(chat):
    chat.answer("mira", "pull ups 20", "18:00")
    again = chat.answer("mira", "3", "18:01")

    assert "“20”: reps, or added weight?" in again
    assert not sets_of(chat)


def test_a_number_answers_pain_where_the_newer_question_cannot_take_it(chat):
    chat.answer("mira", "archers 2x1 each arm", "18:00")
    chat.answer("mira", "dips 20", "18:01")
    chat.answer("mira", "0", "18:02")

    assert [one.score for one in chat.record().pain] == [0]


def test_a_button_answers_its_own_question_though_another_was_asked_since(chat):
    chat.answer("mira", "archers 2x1 each arm", "18:00")
    chat.answer("mira", "pull ups 20", "18:01")
    chat.says("mira", None, "18:02", press="3")

    assert [one.score for one in chat.record().pain] == [3]
    assert all(movement != "pull_up" for movement, *_ in sets_of(chat))


def test_a_slip_of_the_thumb_is_mended_by_the_other_button(chat):
    chat.answer("mira", "pull-ups 4x4 +15 @7", "18:00")
    chat.says("mira", None, "18:01", press="5")
    chat.says("mira", None, "18:02", press="1")

    assert [one.score for one in chat.record().pain] == [1]


def test_a_button_for_pain_of_days_ago_is_refused(chat):
    chat.answer("mira", "pull-ups 4x4 +15 @7", "18:00")
    chat.waits_until("07:00", "2027-01-05")
    answers = chat.says("mira", None, "09:00", "2027-01-08", press="4")

    assert "no longer means anything" in answers[-1]["text"]
    assert not chat.record().pain


def test_a_button_of_a_question_that_lapsed_is_refused(chat):
    chat.answer("mira", "pull ups 20", "07:10")
    answers = chat.says("mira", None, "09:00", "2027-01-06", press="20 reps")

    assert "no longer means anything" in answers[-1]["text"]


def test_done_pressed_the_day_after_is_a_report_of_the_day_asked_about(chat):
    chat.waits_until("21:00")
    chat.says("mira", None, "09:00", "2027-01-05", press="Done as planned")

    assert sets_of(chat)
    assert not sets_of(chat, "2027-01-05")


def test_done_pressed_after_a_report_adds_nothing(chat):
    chat.waits_until("21:00")
    chat.answer("mira", "pull-ups 4x4 +15 @7", "21:30")
    chat.says("mira", None, "21:31", press="Done as planned")

    assert len(sets_of(chat)) == 4


def test_tomorrow_pressed_a_day_late_moves_nothing(chat):
    chat.waits_until("21:00")
    chat.says("mira", None, "09:00", "2027-01-05", press="Tomorrow")

    assert not chat.record().moves


def test_a_number_for_pain_of_days_ago_is_not_kept(chat):
    chat.answer("mira", "pull-ups 4x4 +15 @7", "18:00")
    chat.waits_until("07:00", "2027-01-05")
    with_question_gone = chat.answer("mira", "4", "20:00", "2027-01-06")

    assert "of what?" in with_question_gone


def test_a_score_that_holds_something_back_is_asked_for_its_place(chat):
    chat.answer("mira", "pull-ups 4x4 +15 @7", "18:00")
    asked = chat.says("mira", None, "18:01", press="4")[0]
    chat.says("mira", None, "18:02", press="left elbow")

    assert "Where is it?" in asked["text"]
    assert [(one.site, one.side, one.score, one.when) for one in chat.record().pain] == [("elbow", "left", 4, "after")]


def test_what_is_taken_back_is_asked_for_no_more(chat):
    chat.answer("mira", "archers 2x1 each arm, pull ups 20", "07:10")
    chat.answer("mira", "delete that", "07:11")
    chat.waits_until("19:00", "2027-01-05")

    assert not [one for one in chat.to_coach() if "did not answer" in one["text"]]


@pytest.mark.parametrize(
    ("first", "answer", "dips"),
    [
        ("dips with 10", "3x8", [(8, 10.0)] * 3),
        ("dips with 10", "8, 8, 7, elbow 2", [(8, 10.0), (8, 10.0), (7, 10.0)]),
        ("dips 20", "3x5", [(5, 20.0)] * 3),
        ("dips 8", "8, 7, 6", [(8, 0.0), (7, 0.0), (6, 0.0)]),
        ("dips 5x3 +250", "5x3 +25", [(3, 25.0)] * 5),
    ],
)
def test_sets_in_answer_leave_the_load_where_it_was(chat, first, answer, dips):
    chat.waits_until("08:00")
    chat.answer("mira", first, "18:00")
    chat.answer("mira", answer, "18:01")

    assert [(reps, load) for _, reps, load, _ in sets_of(chat)] == dips


@pytest.mark.parametrize("told", ["left elbow 3", "slept 7h", "bw 72.5", "my elbow popped"])
def test_what_is_told_of_the_body_answers_no_question_about_sets(chat, told):
    chat.waits_until("08:00")
    chat.answer("mira", "dips with 10", "18:00")
    chat.answer("mira", told, "18:01")

    assert sets_of(chat) == []
