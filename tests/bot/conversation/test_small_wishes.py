"""Small things that people ask for: the next session, words for the coach by name, what was taken back."""

from __future__ import annotations

import pytest


@pytest.mark.parametrize("words", ["when's my next session?", "next training?", "when do I train next", "what's next?"])
def test_the_next_session_is_shown(chat, words):
    chat.waits_until("08:00")
    chat.answer("mira", "done as planned", "18:00")
    answer = chat.answer("mira", words, "18:05")
    assert answer.startswith("Thursday 7 January")
    assert "pull-ups 4×6" in answer


def test_before_todays_is_done_it_is_todays(chat):
    chat.waits_until("08:00")
    assert chat.answer("mira", "when's my next session?", "09:00").startswith("Monday 4 January")


@pytest.mark.parametrize(
    "words",
    ["tell Inês I am moving house", "please tell Ines I'd like more rings", "sag Inês danke", "dile a Inês que sí"],
)
def test_words_for_the_coach_by_name_are_passed_on(chat, words):
    chat.waits_until("08:00")
    assert chat.answer("mira", words, "09:00") == "Passed on to your coach."
    assert words in chat.to_coach()[-1]["text"]


def test_a_sign_told_to_the_coach_still_stops(chat):
    chat.waits_until("08:00")
    assert "Stop training now" in chat.answer("mira", "tell Inês my elbow popped", "09:00")


def test_what_was_taken_back_is_said(chat):
    chat.waits_until("08:00")
    chat.answer("mira", "left elbow 3/10", "09:00")
    assert "Taken back: left elbow 3/10" in chat.answer("mira", "delete that", "09:01")
    chat.answer("mira", "bw 61.5", "09:02")
    assert "Taken back: 61.5 kg" in chat.answer("mira", "delete that", "09:03")
