"""What falls due, days that change, and people who are away."""

from __future__ import annotations

import pytest

from tests.bot.conversation.conftest import Chat, athlete


def plans(answers, day=None):
    return [one["plan"] for one in answers if one["plan"] and (day is None or one["plan"]["date"] == day)]


def test_the_first_days_plan_comes_with_a_welcome(chat):
    (first,) = chat.waits_until("08:00")

    assert first["at"].startswith("2027-01-04T06:30")
    assert "Welcome, Mira" in first["text"]
    assert first["plan"]["kind"] == "training"


def test_plans_come_on_training_days_only(chat):
    chat.waits_until("23:00", "2027-01-10")

    assert [one["date"] for one in plans(chat.heard)] == ["2027-01-04", "2027-01-07"]


def test_a_silent_training_day_is_asked_about_in_the_evening_once(chat):
    chat.waits_until("20:29")
    nudges = [one for one in chat.waits_until("23:59") if "No word yet" in one["text"]]

    assert [one["buttons"] for one in nudges] == [["Done as planned", "Missed it", "Tomorrow"]]


def test_a_reported_day_is_not_asked_about(chat):
    chat.answer("mira", "done as planned", "18:30")

    assert not [one for one in chat.waits_until("23:59") if "No word yet" in one["text"]]


def test_the_button_of_the_nudge_reports_the_day(chat):
    chat.waits_until("21:00")
    chat.says("mira", None, "21:05", press="Done as planned")

    assert [one.on.isoformat() for one in chat.record().sessions if not one.is_test] == ["2027-01-04"]


def test_a_moved_session_is_sent_on_its_new_day(chat):
    answer = chat.answer("mira", "can I move thursday to friday", "09:00", "2027-01-06")
    chat.waits_until("09:00", "2027-01-08")

    assert "Moved from Thu 7 Jan to Fri 8 Jan" in answer
    assert [one["date"] for one in plans(chat.heard)] == ["2027-01-04", "2027-01-08"]


def test_moving_today_withdraws_the_plan_that_was_sent(chat):
    chat.waits_until("08:00")
    answers = chat.says("mira", "can I move today to tomorrow?", "09:00")

    assert [(one["kind"], one["sets"]) for one in plans(answers, "2027-01-04")] == [("rest", [])]


def test_nothing_is_sent_while_away_and_the_return_is_lighter(chat):
    chat.answer("mira", "away from 10 jan to 24 jan", "09:00", "2027-01-08")
    chat.waits_until("23:00", "2027-01-25")

    days = [one["date"] for one in plans(chat.heard)]
    assert days == ["2027-01-04", "2027-01-07", "2027-01-25"]
    assert "days away" in [one["text"] for one in chat.heard if one["plan"]][-1]


@pytest.mark.parametrize(
    ("until", "lighter"), [("12 jan", False), ("16 jan", False), ("17 jan", True), ("24 jan", True)]
)
def test_only_an_absence_of_eight_days_and_more_is_said_to_be_followed_by_less(chat, until, lighter):
    answer = chat.answer("mira", f"away from 10 jan to {until}", "09:00", "2027-01-08")

    assert ("lighter" in answer) == lighter


def test_after_stop_nothing_more_is_sent_until_the_athlete_is_back(chat):
    chat.answer("mira", "stop messaging me", "09:00")
    quiet = [one for one in chat.waits_until("23:00", "2027-01-08") if one["to"] == "mira"]
    chat.answer("mira", "I'm back", "09:00", "2027-01-10")

    assert not quiet
    assert plans(chat.waits_until("08:00", "2027-01-11"), "2027-01-11")


def test_the_coach_hears_that_an_athlete_wants_no_messages(chat):
    chat.answer("mira", "stop messaging me", "09:00")

    assert "no more messages" in chat.to_coach()[-1]["text"]


def test_silence_is_listed_in_the_summary(chat):
    chat.waits_until("19:30", "2027-01-17")

    (first, second) = [one["text"] for one in chat.to_coach() if one["text"].startswith("Week to")]
    assert "no word for" in second
    assert "Mira" in first


@pytest.mark.parametrize(
    ("words", "shown"),
    [
        ("what's today?", "block 1, week 1"),
        ("what's the week look like?", "The next seven days"),
        ("why less weight?", "maximum"),
        ("how far am I?", "one-arm pull-up"),
        ("help", "Tell me in your own words"),
        ("", "no words"),
        ("🎉🎉", "👍"),
        ("pull-ups 5x500", "cannot be right"),
        ("pull-ups 5x3 +900kg", "cannot be right"),
        ("bw 61.5", "Bodyweight 61.5 kg"),
    ],
)
def test_each_message_gets_a_short_useful_answer(chat, words, shown):
    chat.waits_until("08:00")

    assert shown in chat.answer("mira", words, "09:00")


@pytest.mark.parametrize(
    "words", ["x" * 10_000, "pull-ups 5x3 +20 " * 600, "مرحبا كيف الحال", "Ich habe heute gut geschlafen", "5" * 400]
)
def test_any_text_is_answered_and_breaks_nothing(chat, words):
    answer = chat.answer("mira", words, "09:00")

    assert answer
    assert len(answer) < 3_500


def test_a_date_ahead_is_no_report_of_that_day(chat):
    chat.answer("mira", "pull-ups 4x4 +15 on 20 january 2027", "09:00")

    assert not [one for one in chat.record().sessions if one.on.isoformat() > "2027-01-04"]


@pytest.mark.parametrize(
    ("words", "has"),
    [
        ("my belt broke", {"bar", "rings"}),
        ("only rings this week", {"rings"}),
        ("my belt broke, only rings this week", {"rings"}),
    ],
)
def test_equipment_is_what_is_left_clause_by_clause(chat, words, has):
    chat.answer("mira", words, "09:00")

    assert chat.record().equipment[-1].has == has


@pytest.mark.parametrize(
    ("language", "words", "heading"),
    [
        ("en", "what's on thursday?", "Thursday 7 January"),
        ("en", "what's tomorrow?", "Tuesday 5 January"),
        ("de", "was steht am Donnerstag an?", "Donnerstag, 7. Januar"),
        ("es", "¿qué toca el jueves?", "jueves 7 de enero"),
        ("en", "what's today?", "Monday 4 January"),
    ],
)
def test_a_question_about_a_day_is_answered_with_that_day(language, words, heading):
    chat = Chat(athlete("mira", language=language))
    chat.waits_until("08:00")
    assert heading in chat.answer("mira", words, "09:00")
    chat.close()
