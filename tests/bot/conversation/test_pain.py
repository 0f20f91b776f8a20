"""Pain, warning signs and wishes that are refused."""

from __future__ import annotations

import pytest


def test_a_bare_number_answers_the_question_for_pain_after_the_session(chat):
    chat.answer("mira", "pull-ups 4x4 +15 @7", "18:30")
    chat.answer("mira", "2", "18:31")

    (pain,) = chat.record().pain
    assert (pain.score, pain.when) == (2, "after")


def test_next_morning_is_asked_for_by_the_place_that_hurt(chat):
    chat.answer("mira", "pull-ups 4x4 +15 @7, left elbow 3/10", "18:30")
    asked = chat.waits_until("08:00", "2027-01-05")

    assert [one["text"] for one in asked] == ["Good morning. How is the left elbow, 0 to 10?"]


def test_the_morning_answer_is_kept_for_that_place_and_moment(chat):
    chat.answer("mira", "pull-ups 4x4 +15 @7, left elbow 3/10", "18:30")
    chat.answer("mira", "1", "08:00", "2027-01-05")

    pain = chat.record().pain[-1]
    assert (pain.site, pain.side, pain.score, pain.when) == ("elbow", "left", 1, "morning")


def test_more_asks_how_much_more(chat):
    chat.answer("mira", "pull-ups 4x4 +15 @7", "18:30")
    answers = chat.says("mira", None, "18:31", press="More")

    assert answers[0]["buttons"] == ["6", "7", "8", "9", "10"]


def test_a_number_that_answers_nothing_is_asked_about_and_not_kept(chat):
    answer = chat.answer("mira", "7", "09:00")

    assert "of what?" in answer
    assert not chat.record().pain


def test_pain_over_five_reaches_the_coach_at_once_and_once(chat):
    chat.answer("mira", "left elbow 6/10", "09:00")
    chat.answer("mira", "bw 62.5", "09:05")

    assert len([one for one in chat.to_coach() if "elbow 6/10" in one["text"]]) == 1


@pytest.mark.parametrize(
    "words", ["I felt a pop in my elbow", "my elbow is swollen", "numb fingers after the last set"]
)
def test_a_warning_sign_stops_training_and_the_coach_hears_of_it(chat, words):
    answer = chat.answer("mira", words, "09:00")

    assert "Stop training now" in answer
    assert "May train again" in chat.to_coach()[-1]["buttons"]


def test_chest_pain_names_the_emergency_number(chat):
    assert "112" in chat.answer("mira", "chest pain when pulling", "09:00")


def test_the_plan_of_the_day_is_withdrawn_after_a_warning_sign(chat):
    chat.waits_until("08:00")
    plans = [one["plan"] for one in chat.says("mira", "I felt a pop in my elbow", "09:00") if one["plan"]]

    assert [(one["kind"], one["sets"]) for one in plans] == [("rest", [])]


def test_only_the_coach_starts_the_plan_again(chat):
    chat.answer("mira", "I felt a pop in my elbow", "09:00")
    chat.waits_until("08:00", "2027-01-07")
    before = [one for one in chat.heard if one["to"] == "mira" and one["plan"] and one["plan"]["date"] == "2027-01-07"]
    chat.says("coach", "mira restart", "09:00", "2027-01-07")

    assert not before
    assert any(one["plan"] and one["plan"]["sets"] and one["plan"]["date"] == "2027-01-07" for one in chat.heard)


def test_a_sign_after_a_restart_on_the_same_day_stops_anew(chat):
    chat.says("mira", "my elbow popped", "09:00")
    chat.says("coach", "mira restart", "10:00")
    chat.says("mira", "chest pain and short of breath", "11:00")

    assert "4×" not in chat.answer("mira", "what's today?", "11:30")
    assert not [one for one in chat.waits_until("08:00", "2027-01-07") if one["plan"] and one["plan"]["sets"]]
    chat.says("coach", "mira restart", "09:00", "2027-01-07")
    assert "4×" in chat.answer("mira", "what's today?", "09:30", "2027-01-07")


def test_worse_pain_after_a_restart_on_the_same_day_stops_anew_and_is_told(chat):
    chat.says("mira", "left elbow 7/10", "09:00")
    chat.says("coach", "mira restart", "10:00")
    answer = chat.answer("mira", "left elbow 8/10", "11:00")

    assert "stop everything that loads it" in answer
    assert "4×" not in chat.answer("mira", "what's today?", "11:30")
    assert [one["text"] for one in chat.to_coach() if "elbow 8/10" in one["text"]]


def test_the_same_pain_after_a_restart_on_the_same_day_is_told_to_the_coach_again_once(chat):
    chat.says("mira", "left elbow 7/10", "09:00")
    chat.says("coach", "mira restart", "10:00")
    chat.heard.clear()
    assert "Your coach knows" in chat.answer("mira", "left elbow 7/10", "11:00")
    chat.says("mira", "what's today?", "11:30")

    assert len([one for one in chat.to_coach() if "elbow 7/10" in one["text"]]) == 1


def test_the_coach_hears_of_each_place_that_hurts_on_a_day(chat):
    chat.says("mira", "left elbow 7/10", "09:00")
    chat.says("mira", "right shoulder 7/10", "09:10")

    told = [one["text"] for one in chat.to_coach() if "7/10" in one["text"]]
    assert ["left elbow" in one for one in told] == [True, False]
    assert "right shoulder" in told[1]


def test_one_arm_eccentrics_are_refused_with_numbers_and_the_coach_is_told(chat):
    answer = chat.answer("mira", "can I do one-arm negatives?", "09:00")

    assert "62 kg" in answer
    assert "refused" in chat.to_coach()[-1]["text"]


def test_pain_without_a_number_is_asked_for_and_the_number_is_kept_for_that_place(chat):
    asked = chat.answer("mira", "my left elbow hurts", "09:00")
    chat.answer("mira", "4", "09:01")

    assert "left elbow" in asked
    pain = chat.record().pain[-1]
    assert (pain.site, pain.side, pain.score) == ("elbow", "left", 4)


def test_a_sign_of_long_ago_is_told_to_the_coach_and_stops_nothing(chat):
    answer = chat.answer("mira", "last month I had a pop in the elbow", "09:00")

    assert "Stop" not in answer
    assert "past sign" in chat.to_coach()[-1]["text"]
    assert not chat.record().signs


def test_who_asks_to_train_while_stopped_is_told_of_the_stop(chat):
    chat.answer("mira", "my elbow popped", "09:00")

    assert "stopped" in chat.answer("mira", "can I train?", "09:05")
    assert chat.answer("mira", "thanks", "09:06") == "👍"


@pytest.mark.parametrize(
    ("said_at", "asked"), [("08:00", True), ("17:50", False), ("18:00", False)], ids=["before", "with it", "at once"]
)
def test_a_score_without_a_time_said_long_before_the_session_is_not_of_it(chat, said_at, asked):
    chat.answer("mira", "left elbow 2/10", said_at)
    assert ("Any pain in or after" in chat.answer("mira", "pull ups 5x3 +20", "18:00")) is asked


def test_a_score_said_after_the_report_is_of_the_session(chat):
    chat.answer("mira", "pull ups 5x3 +20", "18:00")
    chat.answer("mira", "left elbow 2/10", "18:30")
    assert "Any pain in or after" not in chat.answer("mira", "dips 3x8", "18:40")


SORE = "pull-ups 4x4 +15 @7, left elbow 4, right shoulder 3"
TUESDAY = "2027-01-05"


def morning_scores(chat):
    return {(one.site, one.side): one.score for one in chat.record().pain if one.when == "morning"}


def test_next_morning_asks_for_both_places_in_one_message(chat):
    chat.answer("mira", SORE, "18:30")
    (asked,) = chat.waits_until("08:00", TUESDAY)
    assert "left elbow" in asked["text"]
    assert "right shoulder" in asked["text"]


@pytest.mark.parametrize(
    ("answers", "elbow", "shoulder"),
    [
        (["2 1"], 2, 1),
        (["2/10 and 1/10"], 2, 1),
        (["both 1"], 1, 1),
        (["left elbow 2, right shoulder 1"], 2, 1),
        (["2", "1"], 2, 1),
        (["right shoulder 1", "2"], 2, 1),
    ],
)
def test_the_morning_of_two_places_is_answered_at_once_or_one_by_one(chat, answers, elbow, shoulder):
    chat.answer("mira", SORE, "18:30")
    for at, words in enumerate(answers):
        chat.answer("mira", words, f"08:0{at}", TUESDAY)
    assert morning_scores(chat) == {("elbow", "left"): elbow, ("shoulder", "right"): shoulder}


def test_a_press_anew_puts_its_own_place_right(chat):
    chat.answer("mira", SORE, "18:30")
    chat.waits_until("08:00", TUESDAY)
    for at, score in enumerate(("2", "3", "1")):
        chat.says("mira", None, f"08:0{at + 1}", TUESDAY, press=score)
    assert morning_scores(chat) == {("elbow", "left"): 2, ("shoulder", "right"): 1}


def test_a_place_that_still_holds_is_asked_for_beside_the_one_told_last(chat):
    chat.answer("mira", "left elbow 4/10", "18:30")
    chat.answer("mira", "pull-ups 4x4 +15 @7, right shoulder 2/10", "18:30", TUESDAY)
    (asked,) = [one for one in chat.waits_until("08:00", "2027-01-06") if one["to"] == "mira"]
    assert "right shoulder" in asked["text"]
    assert "left elbow" in asked["text"]


@pytest.mark.parametrize(
    "asked", [("mira", "why?"), ("mira", "what's today?"), ("coach", "mira"), ("coach", "summary")]
)
def test_a_score_without_a_place_is_of_no_other_place(chat, asked):
    chat.waits_until("08:00")
    chat.answer("mira", "pain 7", "18:00")
    who, words = asked
    answer = chat.answer(who, words, "18:05")
    assert "place not named 7/10" in answer
    assert not [one for one in chat.heard if "other place" in one["text"]]


def test_two_scores_of_a_day_at_one_place_are_answered_by_the_worst(chat):
    said = chat.answer("mira", "left elbow 4/10 this morning, 1 by lunch", "12:00")
    assert "4/10" in said
    assert "1/10" not in said
    assert [one.score for one in chat.record().pain] == [4.0, 1.0]
