"""One order for several athletes by name."""

from __future__ import annotations

from datetime import date

import pytest

from bot.conversation import coach_several
from bot.conversation.coach_words import parse
from tests.bot.conversation.conftest import Chat, athlete

NAMES = [("mira", "Mira"), ("jon", "Jon"), ("tom", "Tom"), ("anna_k", "Anna"), ("anna_b", "Anna")]
SUNDAY = "2027-01-10"


@pytest.fixture
def three():
    made = Chat(athlete("mira"), athlete("jon"), athlete("tom"))
    made.waits_until("08:00")
    yield made
    made.close()


def paused(chat):
    return [
        handle
        for handle in ("mira", "jon", "tom")
        if [one.until.isoformat() for one in chat.record(handle).absences if one.until] == [SUNDAY]
    ]


@pytest.mark.parametrize(
    ("language", "words"),
    [
        ("en", "Mira and Jon rest this week"),
        ("en", "pause mira & jon this week"),
        ("de", "Mira und Jon pausieren diese Woche"),
        ("es", "Mira y Jon descansan esta semana"),
    ],
)
def test_both_are_meant_in_every_language(language, words):
    commands = [
        parse(text, NAMES, language, date(2027, 1, 4)) for _, text in coach_several.orders(words, NAMES, language)
    ]

    assert [(one.verb, one.handle, one.until, one.odd) for one in commands if one is not None] == [
        ("pause", handle, date(2027, 1, 10), ()) for handle in ("mira", "jon")
    ]


def test_an_order_for_two_is_given_to_both_and_taken_back_from_both(three):
    three.says("coach", "Mira and Jon rest this week", "09:00")
    assert paused(three) == ["mira", "jon"]

    three.says("coach", "undo", "09:01")
    assert paused(three) == []


def test_of_an_order_that_is_not_whole_nobody_gets_a_part(three):
    answer = three.answer("coach", "mira and jon pause this week if they like", "09:00")

    assert "Nothing is done" in answer
    assert paused(three) == []


def test_words_for_several_go_to_each(three):
    answers = three.says("coach", "tell mira, jon and tom: the hall is closed", "09:00")

    assert {one["to"] for one in answers if "hall is closed" in one["text"]} == {"mira", "jon", "tom"}


def test_a_name_that_nobody_knows_leaves_all_undone(three):
    assert "“anna”" in three.answer("coach", "mira and anna no dips this week", "09:00")
    assert not three.record("mira").orders


def test_who_is_named_in_what_is_told_is_not_told(three):
    answers = three.says("coach", "tell mira that jon is away", "09:00")

    assert [one["to"] for one in answers] == ["mira", "coach"]


@pytest.mark.parametrize(
    "words", ["mira pause", "mira likes tom", "mira and anna pause", "tell mira: jon and tom wait"]
)
def test_other_names_are_no_row(words):
    assert coach_several.orders(words, NAMES, "en") == []


def test_a_pause_with_an_end_names_the_session_after_it(three):
    assert "Next, Mon 11 Jan" in three.answer("coach", "mira pause until sunday", "09:00")
