"""From what an athlete did to facts, a read-back and the next plan."""

from __future__ import annotations


def test_a_report_is_read_back_grouped_and_shows_the_next_session(chat):
    answer = chat.answer("mira", "pull-ups 4x4 +15 @7, archers 2x1 each arm", "18:30")

    assert "pull-ups 4×4 +15 kg" in answer
    assert "2×1 a side" in answer
    assert "Next, Thu 7 Jan" in answer


def test_a_report_becomes_one_session_with_each_set(chat):
    chat.answer("mira", "pull-ups 4x4 +15 @7, archers 2x1 each arm", "18:30")

    (session,) = [one for one in chat.record().sessions if not one.is_test]
    assert [one.side for one in session.sets] == [None] * 4 + ["left", "right"] * 2


def test_the_same_report_twice_counts_once_and_says_so(chat):
    chat.answer("mira", "pull-ups 4x4 +15 @7", "18:30")
    answer = chat.answer("mira", "pull-ups 4x4 +15 @7", "18:31")

    assert "already noted" in answer
    assert len([one for one in chat.record().sessions if not one.is_test]) == 1


def test_done_as_planned_means_the_plan_that_was_sent(chat):
    plan = chat.waits_until("08:00")[0]["plan"]
    chat.answer("mira", "done as planned", "18:30")

    (session,) = [one for one in chat.record().sessions if not one.is_test]
    assert [one.movement for one in session.sets] == [one["movement"] for one in plan["sets"]]


def test_yesterdays_session_as_planned_is_read_against_yesterdays_plan(chat):
    chat.waits_until("08:00")
    answer = chat.answer("mira", "did yesterday's session as planned", "09:00", "2027-01-05")

    assert "Noted for Mon 4 Jan" in answer


def test_the_pain_question_rides_on_the_read_back(chat):
    chat.waits_until("18:00")
    answers = chat.says("mira", "pull-ups 4x4 +15 @7", "18:30")

    assert len(answers) == 1
    assert answers[0]["buttons"] == ["0", "1", "2", "3", "4", "5", "More"]


def test_sleep_alone_is_kept_and_is_no_session(chat):
    answer = chat.answer("mira", "slept 6h", "09:00")

    assert "6 h of sleep" in answer
    assert chat.record().sessions[-1].sleep_h == 6


def test_a_correction_changes_the_report_and_undo_brings_it_back(chat):
    chat.answer("mira", "pull-ups 4x4 +15 @7", "18:30")
    corrected = chat.answer("mira", "that was 17.5 not 15", "18:35")
    undone = chat.answer("mira", "delete that", "18:40")

    assert "pull-ups 4×4 +17.5 kg" in corrected
    assert "pull-ups 4×4 +15 kg" in undone
    assert {one.load_kg for one in chat.record().sessions[-1].sets} == {15.0}


def test_undo_takes_a_whole_report_back(chat):
    chat.answer("mira", "pull-ups 4x4 +15 @7", "18:30")
    answer = chat.answer("mira", "delete that", "18:35")

    assert "Taken back: pull-ups 4×4 +15 kg" in answer
    assert not [one for one in chat.record().sessions if not one.is_test]


def test_a_doubt_is_asked_once_and_the_answer_completes_the_report(chat):
    question = chat.answer("mira", "pull ups 20", "07:10")
    chat.answer("mira", "reps", "07:11")

    assert "“20”: reps, or added weight?" in question
    assert [one.reps for one in chat.record().sessions[-1].sets] == [20]


def test_a_question_that_nobody_answers_goes_to_the_coach_after_a_day(chat):
    chat.answer("mira", "pull ups 20", "07:10")
    chat.waits_until("19:00", "2027-01-05")

    assert any("did not answer" in one["text"] for one in chat.to_coach())
