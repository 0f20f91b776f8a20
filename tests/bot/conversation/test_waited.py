"""A message that waited (the service was down overnight) tells of the day on which it was sent, whatever it tells."""

from __future__ import annotations

from dataclasses import replace
from datetime import date

import pytest

from planner.facts import Absence

MONDAY, TUESDAY = date(2027, 1, 4), date(2027, 1, 5)
SENT, HANDLED = "2027-01-04T22:00", "2027-01-05T09:00"


def pain(chat):
    return [(one.on, one.site, one.score, one.when) for one in chat.record().pain]


def test_sets_and_bodyweight_are_of_the_day_they_were_sent(chat):
    said = chat.waited("mira", "pull ups 5x3 +20, bodyweight 62.5", SENT, HANDLED)
    assert "Noted for Mon 4 Jan: pull-ups 5×3 +20 kg" in said
    assert [one.on for one in chat.record().sessions if not one.is_test] == [MONDAY]
    assert chat.record().bodyweights[-1].on == MONDAY
    assert chat.record().bodyweights[-1].kg == 62.5


def test_a_score_is_of_the_day_it_was_sent(chat):
    chat.waited("mira", "left elbow 3", SENT, HANDLED)
    assert pain(chat) == [(MONDAY, "elbow", 3.0, None)]


def test_a_warning_sign_is_of_the_day_it_was_sent(chat):
    chat.waited("mira", "my elbow is swollen", SENT, HANDLED)
    assert [one.on for one in chat.record().signs] == [MONDAY]


@pytest.mark.parametrize(
    ("words", "expected"),
    [
        ("can't train today", Absence("missed", MONDAY, MONDAY, MONDAY)),
        ("I'm ill", Absence("ill", MONDAY, MONDAY, None)),
        ("away from tomorrow until friday", Absence("away", MONDAY, TUESDAY, date(2027, 1, 8))),
    ],
)
def test_an_absence_begins_by_the_day_it_was_sent(chat, words, expected):
    chat.waited("mira", words, SENT, HANDLED)
    (told,) = chat.record().absences
    assert replace(told, fact=None) == expected


def test_a_move_of_today_moves_the_day_it_was_sent_and_its_plan_goes_out(chat):
    chat.waited("mira", "move today to tomorrow", SENT, HANDLED)
    (moved,) = chat.record().moves
    assert (moved.said_on, moved.moved_from, moved.moved_to) == (MONDAY, MONDAY, TUESDAY)
    assert [one["plan"]["date"] for one in chat.heard if one.get("plan")][-1] == "2027-01-05"


def test_i_am_back_counts_from_the_day_it_was_sent_and_the_next_plan_from_now(chat):
    chat.answer("mira", "away until further notice", "08:00")
    chat.waited("mira", "I'm back", SENT, HANDLED)
    assert [one.on for one in chat.record().resumes] == [MONDAY]
    assert chat.says(None, None, "07:31", "2027-01-07")[-1]["plan"]["date"] == "2027-01-07"


def test_equipment_is_changed_from_the_day_it_was_sent(chat):
    chat.waited("mira", "my belt broke", SENT, HANDLED)
    assert chat.record().equipment[-1].since == MONDAY


def test_a_number_answers_the_question_that_stood_open_when_it_was_sent(chat):
    chat.answer("mira", "pull ups 5x3 +20", "19:00")
    # The morning's question goes out before the evening's answer is handled.
    chat.waited("mira", "3", SENT, HANDLED)
    assert pain(chat) == [(MONDAY, None, 3.0, "after")]


def test_a_report_that_waited_past_the_morning_is_asked_about_this_morning(chat):
    said = chat.waited("mira", "pull ups 5x3 +20", SENT, HANDLED)
    assert "Good morning. Any pain today" in said
    chat.answer("mira", "2", "09:05", "2027-01-05")
    assert pain(chat) == [(TUESDAY, None, 2.0, "morning")]


def test_a_report_handled_in_the_night_is_asked_about_its_session(chat):
    said = chat.waited("mira", "pull ups 5x3 +20", SENT, "2027-01-05T00:30")
    assert "Any pain in or after the session" in said
    chat.answer("mira", "2", "00:40", "2027-01-05")
    assert pain(chat) == [(MONDAY, None, 2.0, "after")]
    assert "Good morning" in chat.waits_until("07:31", "2027-01-05")[-1]["text"]


def test_an_answer_completes_a_report_of_the_evening_before(chat):
    assert "reps, or added weight?" in chat.answer("mira", "pull-ups 20, left elbow 3", "22:00")
    chat.answer("mira", "5x3 +20", "09:00", "2027-01-05")
    assert [(one.on, one.score) for one in chat.record().pain] == [(MONDAY, 3.0)]
    assert [one.on for one in chat.record().sessions if not one.is_test] == [MONDAY]


def test_an_order_of_the_coach_is_of_the_day_it_was_sent(chat):
    chat.waited("coach", "mira hold rung 3 weeks", SENT, HANDLED)
    assert [(one.on, one.until) for one in chat.record().orders if one.kind == "hold_rung"] == [
        (MONDAY, date(2027, 1, 25))
    ]
    chat.waited("coach", "mira 4x3 at 17.5 on thursday", "2027-01-06T23:00", "2027-01-07T06:30")
    assert [one.for_date for one in chat.record().orders if one.kind == "set_sets"] == [date(2027, 1, 7)]


def test_a_message_ahead_of_our_clock_is_of_now(chat):
    chat.waited("mira", "left elbow 3", "2027-01-05T00:01", "2027-01-04T23:59")
    assert pain(chat) == [(MONDAY, "elbow", 3.0, None)]
