"""No pain in everyday words, in answer to the question for it."""

from __future__ import annotations

import pytest

TUESDAY = "2027-01-05"


def scores(chat):
    return [(one.site, one.score, one.when) for one in chat.record().pain]


@pytest.fixture
def asked(chat):
    chat.waits_until("08:00")
    assert "Any pain" in chat.answer("mira", "pull ups 4x4 +11.25", "18:00")
    return chat


@pytest.mark.parametrize(
    "words",
    [
        "nope all good", "nope", "no", "none", "all good", "nothing", "fine", "all ok", "feels fine", "not at all",
        "no, a bit tired though", "nope, feeling great", "nein", "alles gut", "nix", "gar nicht", "nada", "todo bien",
    ],
)  # fmt: skip
def test_no_pain_is_a_zero(asked, words):
    assert "No pain" in asked.answer("mira", words, "18:01")
    assert scores(asked) == [(None, 0.0, "after")]


@pytest.mark.parametrize("words", ["ok", "👍", "great", "yes", "not really", "a little"])
def test_what_says_no_number_is_asked_for_one_and_notes_nothing(asked, words):
    sets = [one.sets for one in asked.record().sessions]
    (answer,) = [one for one in asked.says("mira", words, "18:01") if one["to"] == "mira"]
    assert answer["buttons"][0] == "0"
    assert scores(asked) == []
    assert [one.sets for one in asked.record().sessions] == sets


@pytest.mark.parametrize("words", ["no good", "not good", "no muy bien", "no but the elbow is", "fine?"])
def test_a_denial_of_good_is_no_zero(asked, words):
    asked.answer("mira", words, "18:01")
    assert 0.0 not in [score for _, score, _ in scores(asked)]


def test_what_stands_behind_a_no_is_answered_too(asked):
    answer = asked.answer("mira", "nope, what's on thursday?", "18:01")
    assert "No pain" in answer
    assert "Thursday 7 January" in answer
    assert scores(asked) == [(None, 0.0, "after")]


def test_in_the_morning_it_is_of_every_place_asked_for(chat):
    chat.waits_until("08:00")
    chat.answer("mira", "pull ups 4x4 +11.25, left elbow 4, right shoulder 3", "18:00")
    chat.answer("mira", "all good", "08:00", TUESDAY)
    assert [one for one in scores(chat) if one[2] == "morning"] == [
        ("elbow", 0.0, "morning"),
        ("shoulder", 0.0, "morning"),
    ]


def test_without_the_question_a_no_is_no_score(chat):
    chat.waits_until("08:00")
    chat.answer("mira", "all good", "09:00")
    assert scores(chat) == []


def test_no_pain_is_no_answer_to_reps_or_weight(chat):
    chat.waits_until("08:00")
    assert "reps" in chat.answer("mira", "pull ups 5x3, last set 9", "18:00")
    before = [one.sets for one in chat.record().sessions]
    assert "No pain" in chat.answer("mira", "no pain at all", "18:01")
    assert [one.sets for one in chat.record().sessions] == before


def test_a_number_behind_an_ok_is_the_score(asked):
    asked.answer("mira", "ok 2", "18:01")
    assert scores(asked) == [(None, 2.0, "after")]
