""" "When's my next test", "when's the deload", "how many weeks left": one line, to athletes and to the coach."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from tests.bot.conversation.conftest import Chat

# Of the block that began on Monday 4 January: four loading weeks, then the deload, and the test on its last day.
TEST, DELOAD, WEEK = "Thursday 4 February: pull-ups", "the deload begins on Monday 1 February", "week 1 of 5"


@pytest.mark.parametrize(
    ("language", "words", "said"),
    [
        ("en", "when is my next test", TEST),
        ("en", "when's test day?", TEST),
        ("en", "When do we test again?", TEST),
        ("en", "next test?", TEST),
        ("en", "when's the deload", DELOAD),
        ("en", "is next week deload?", DELOAD),
        ("en", "how long until deload", DELOAD),
        ("en", "when does the block end", "until Sun 7 Feb"),
        ("en", "how many weeks left in the block", WEEK),
        ("en", "what week am I in?", WEEK),
        ("de", "wann ist mein nächster Test?", "am Donnerstag, 4. Februar: Klimmzüge"),
        ("de", "wann kommt der Deload", "beginnt der Deload am Montag, 1. Februar"),
        ("de", "wie lange geht der Block noch?", "Woche 1 von 5"),
        ("de", "in welcher Woche bin ich gerade", "Woche 1 von 5"),
        ("es", "¿cuándo es mi próximo test?", "el jueves 4 de febrero: dominadas"),
        ("es", "cuando toca descarga", "la descarga empieza el lunes 1 de febrero"),
        ("es", "¿cuántas semanas quedan del bloque?", "semana 1 de 5"),
    ],
)
def test_an_athlete_gets_one_line(of_language: Callable[[str], Chat], language: str, words: str, said: str) -> None:
    answer = of_language(language).answer("mira", words, "18:00")

    assert said in answer
    assert "\n" not in answer


@pytest.mark.parametrize(
    "words",
    ["mira: when is her next test", "when's mira's next test?", "mira when's the next test", "when does mira test"],
)
def test_a_coach_gets_it_of_the_athlete_who_is_named(two: Chat, words: str) -> None:
    two.waits_until("08:00")
    answers = two.says("coach", words, "09:00")

    assert [one["to"] for one in answers] == ["coach"]
    assert answers[-1]["text"] == f"Mira: As things stand, the next test is on {TEST}."


def test_a_coach_asks_for_the_deload_and_orders_none(chat: Chat) -> None:
    assert DELOAD in chat.answer("coach", "when does mira deload?", "09:00")
    assert not chat.record().orders


def test_words_for_an_athlete_are_passed_on(chat: Chat) -> None:
    chat.waits_until("08:00")
    answers = chat.says("coach", "mira: when is your next test at school", "09:00")

    assert answers[0]["to"] == "mira"
    assert "when is your next test at school" in answers[0]["text"]


@pytest.mark.parametrize("words", ["when was my last test", "when can I test the one-arm pull-up?"])
def test_what_was_and_what_may_be_are_other_questions(chat: Chat, words: str) -> None:
    chat.waits_until("08:00")
    assert "next test is on" not in chat.answer("mira", words, "09:00")


def test_in_the_deload_week_its_end_and_the_test_are_told(chat: Chat) -> None:
    chat.waits_until("12:00", "2027-02-02")

    assert chat.answer("mira", "when's the deload", "12:05", "2027-02-02") == (
        "This is the deload week, until Sun 7 Feb. Test: Thu 4 Feb."
    )


def test_a_stop_is_the_answer_where_one_stands(chat: Chat) -> None:
    chat.answer("mira", "my elbow popped", "09:00")

    assert "Training is stopped" in chat.answer("mira", "when's my next test", "09:05")
