"""A score of pain said otherwise: put right where one is meant, asked about where more than one value can be."""

from __future__ import annotations

import pytest


def scores(chat):
    return [(one.site, one.side, one.score) for one in chat.record().pain]


@pytest.mark.parametrize("words", ["actually 2", "oops 2", "sorry, it was 2", "wait no 2", "actually elbow 2"])
def test_a_score_told_alone_is_put_right(chat, words):
    chat.waits_until("08:00")
    chat.answer("mira", "pull ups 4x4 +15", "18:00")
    chat.answer("mira", "left elbow 4", "18:01")
    chat.answer("mira", words, "18:02")
    assert scores(chat) == [("elbow", "left", 2.0)]


def test_beside_a_report_both_values_are_offered(chat):
    chat.waits_until("08:00")
    chat.answer("mira", "pull ups 4x4 +15, left elbow 4/10", "18:00")
    asked = chat.says("mira", "actually 2", "18:01")[-1]
    assert asked["buttons"] == ["left elbow: 4 → 2 of 10", "pull-ups: 4 → 2 reps"]

    chat.says("mira", None, "18:02", press="left elbow: 4 → 2 of 10")
    assert scores(chat) == [("elbow", "left", 2.0)]
    assert {work.reps for one in chat.record().sessions if not one.is_test for work in one.sets} == {4}


def test_hold_on_names_no_hold(chat):
    chat.waits_until("08:00")
    chat.answer("mira", "pull ups 4x4 +15, hollow hold 2x30 s", "18:00")
    chat.answer("mira", "left elbow 4", "18:01")
    asked = chat.says("mira", "hold on, that was 2", "18:02")[-1]
    assert asked["buttons"][0] == "left elbow: 4 → 2 of 10"


def test_reps_chosen_leave_the_pain_as_it_is(chat):
    chat.waits_until("08:00")
    chat.answer("mira", "pull ups 4x4 +15, left elbow 4/10", "18:00")
    chat.answer("mira", "actually 2", "18:01")
    chat.answer("mira", "reps", "18:02")
    assert scores(chat) == [("elbow", "left", 4.0)]


@pytest.mark.parametrize("answer", ["the left", "left elbow"])
def test_of_two_places_the_one_that_is_named(chat, answer):
    chat.waits_until("08:00")
    chat.answer("mira", "left elbow 4, right elbow 3", "18:00")
    assert "which value" in chat.answer("mira", "sorry 2", "18:01")
    chat.answer("mira", answer, "18:02")
    assert sorted(scores(chat)) == [("elbow", "left", 2.0), ("elbow", "right", 3.0)]


def test_a_place_named_with_a_word_of_putting_right(chat):
    chat.waits_until("08:00")
    chat.answer("mira", "left elbow 4, right elbow 3", "18:00")
    chat.answer("mira", "no, left elbow 6", "18:01")
    assert sorted(scores(chat)) == [("elbow", "left", 6.0), ("elbow", "right", 3.0)]


def test_later_pain_of_the_place_stands_beside(chat):
    chat.waits_until("08:00")
    chat.answer("mira", "left elbow 4", "18:00")
    chat.answer("mira", "left elbow 2 now", "20:00")
    assert len(scores(chat)) == 2
