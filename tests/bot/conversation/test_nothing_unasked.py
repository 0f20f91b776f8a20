"""What is not sure is neither done nor noted: a deletion called off, a load that is asked for, leave to train."""

from __future__ import annotations

import pytest

SURE = {"en": "cannot be undone", "de": "nicht rückgängig", "es": "no se puede deshacer"}
WISH = {"en": "delete all my data", "de": "lösche alle meine daten", "es": "borra todos mis datos"}


def loads(chat):
    return [work.load_kg for one in chat.record().sessions if not one.is_test for work in one.sets]


@pytest.mark.parametrize(
    ("language", "words"),
    [
        ("en", "no"),
        ("en", "No, wait"),
        ("en", "no, don't delete my data"),
        ("de", "nein"),
        ("de", "Nein, lieber doch nicht"),
        ("es", "no"),
        ("es", "no, mejor no"),
    ],
)
def test_a_no_calls_the_end_off_and_is_no_word_of_pain(of_language, language, words):
    chat = of_language(language)
    chat.answer("mira", "done as planned", "18:00")
    asked = chat.answer("mira", WISH[language], "18:01")
    chat.answer("mira", words, "18:02")

    assert not chat.record().pain
    assert chat.answer("mira", WISH[language], "18:03") == asked  # asked anew, and not carried out


def test_a_no_to_a_later_question_for_pain_answers_that_and_ends_no_one(chat):
    chat.waits_until("08:00")
    asked = chat.answer("mira", "delete all my data", "18:00")
    chat.answer("mira", "done as planned", "18:01")
    assert "No pain" in chat.answer("mira", "no", "18:02")
    assert chat.answer("mira", "delete all my data", "18:03") == asked


@pytest.mark.parametrize("words", ["pull-ups 4x6 10 @8", "4x4 at 10", "5x3 7.5 - 7,7,7.5,8,8"])
def test_no_load_of_the_plan_is_noted_while_another_is_asked_for(chat, words):
    chat.waits_until("08:00")
    chat.answer("mira", words, "18:00")
    assert loads(chat) == []


def test_what_is_told_beside_an_open_load_is_noted(chat):
    chat.waits_until("08:00")
    chat.answer("mira", "done as planned but pull-ups 4x6 10", "18:00")
    assert set(loads(chat)) == {0.0}
    chat.answer("mira", "10 kg", "18:01")
    assert loads(chat).count(10.0) == 4


@pytest.mark.parametrize(
    ("language", "words", "answer"),
    [
        ("en", "am i allowed to train?", "no training"),
        ("en", "am I good to train", "No, not yet"),
        ("de", "darf ich wieder trainieren?", "Nein, noch nicht"),
        ("es", "puedo volver a entrenar?", "No, todavía no"),
    ],
)
def test_who_asks_for_leave_says_not_that_it_feels_fine(of_language, language, words, answer):
    chat = of_language(language)
    chat.answer("mira", "felt a pop in my elbow, big bruise", "18:00")
    before = len(chat.to_coach())
    assert answer in chat.answer("mira", words, "18:05")
    assert len(chat.to_coach()) == before


def test_who_says_it_and_asks_besides_is_heard(chat):
    chat.waits_until("08:00")
    chat.answer("mira", "felt a pop in my elbow", "18:00")
    chat.answer("mira", "I'm fine again, can I train?", "18:05")
    assert "fine again" in chat.to_coach()[-1]["text"]


@pytest.mark.parametrize(
    ("language", "words"), [("en", "what does rpe mean"), ("de", "was heißt rpe"), ("es", "qué significa rpe")]
)
def test_a_question_answers_no_question(of_language, language, words):
    chat = of_language(language)
    chat.answer("mira", "5x3 7.5 - 7,7,7.5,8,8", "18:00")
    chat.answer("mira", words, "18:01")
    assert loads(chat) == []
    chat.answer("mira", "7.5", "18:02")
    assert loads(chat) == [7.5] * 5
