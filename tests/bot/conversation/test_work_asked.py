"""Who asks whether they may do some work on a day is answered from the plan of that day; nothing is moved unasked."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from tests.bot.conversation.conftest import Chat
from tests.bot.conversation.test_mind_changed import moves


@pytest.mark.parametrize(
    ("language", "words", "said"),
    [
        ("en", "can i do pull-ups today?", "Yes, that day’s plan has pull-ups."),
        ("en", "hey, may I do pull ups thursday?", "Yes, that day’s plan has pull-ups."),
        ("en", "can i do dips today?", "Not in that day’s plan: dips."),
        ("de", "kann ich heute Klimmzüge machen?", "Ja, der Plan des Tages hat Klimmzüge."),
        ("de", "kann ich donnerstag klimmzüge machen?", "Ja, der Plan des Tages hat Klimmzüge."),
        ("es", "¿puedo hacer dominadas hoy?", "Sí, el plan de ese día tiene dominadas."),
        ("es", "puedo hacer dominadas el jueves?", "Sí, el plan de ese día tiene dominadas."),
    ],
)
def test_the_plan_of_the_day_answers(of_language: Callable[[str], Chat], language: str, words: str, said: str) -> None:
    chat = of_language(language)
    answer = chat.answer("mira", words, "09:00")

    assert answer.startswith(said)
    assert "4×" in answer
    assert not moves(chat)


@pytest.mark.parametrize(
    ("language", "words", "button", "yes"),
    [
        ("en", "can i do pull-ups on friday?", "Move it to Fri 8 Jan", "yes please"),
        ("de", "kann ich Freitag Klimmzüge machen?", "Auf Fr 8. Jan verschieben", "ja"),
        ("es", "¿puedo hacer dominadas el viernes?", "Mover al vie 8 ene", "sí"),
    ],
)
def test_a_free_day_is_offered_the_nearest_session(
    of_language: Callable[[str], Chat], language: str, words: str, button: str, yes: str
) -> None:
    chat = of_language(language)
    found = [one for one in chat.says("mira", words, "09:00") if one["to"] == "mira"]
    assert [one["buttons"] for one in found] == [[button]]
    assert not moves(chat)

    chat.answer("mira", yes, "09:01")
    assert moves(chat) == [("2027-01-07", "2027-01-08")]


def test_what_is_done_is_said_to_be_done(chat: Chat) -> None:
    chat.waits_until("08:00")
    chat.answer("mira", "done as planned", "18:00")
    assert "is done already" in chat.answer("mira", "can i do pull-ups today?", "19:00")


def test_after_a_warning_sign_the_answer_is_no(chat: Chat) -> None:
    chat.waits_until("08:00")
    chat.answer("mira", "something popped in my elbow", "08:10")
    assert chat.answer("mira", "can i do pull-ups today?", "09:00").startswith("No, not yet.")


@pytest.mark.parametrize(
    ("language", "words"),
    [
        ("en", "can i do pull-ups today, my left elbow hurts 3/10"),
        ("de", "kann ich heute klimmzüge machen, ellbogen links zwickt 3/10"),
        ("es", "¿puedo hacer dominadas hoy? me molesta el codo izquierdo 3/10"),
    ],
)
def test_pain_told_beside_it_is_noted_and_no_days_are_asked_for(
    of_language: Callable[[str], Chat], language: str, words: str
) -> None:
    chat = of_language(language)
    found = [one["text"] for one in chat.says("mira", words, "09:00") if one["to"] == "mira"]

    assert [one.score for one in chat.record().pain] == [3.0]
    assert len(found) == 1  # the plan is shown with it, and goes out no second time
    assert "4×4" in found[0]


@pytest.mark.parametrize("words", ["can i do thursday's session on friday?", "can i do pull-ups friday instead?"])
def test_what_asks_for_a_move_still_moves(chat: Chat, words: str) -> None:
    chat.waits_until("08:00")
    chat.answer("mira", words, "09:00")
    assert moves(chat)


@pytest.mark.parametrize(
    ("language", "words"), [("es", "cómo voy"), ("es", "como voy"), ("es", "y cómo voy"), ("de", "wo stehe ich")]
)
def test_how_am_i_doing_needs_no_question_mark(of_language: Callable[[str], Chat], language: str, words: str) -> None:
    chat = of_language(language)
    assert "2x1" in chat.answer("mira", words, "09:00")


def test_what_is_only_asked_is_not_noted_as_done(chat: Chat) -> None:
    chat.waits_until("08:00")
    answer = chat.answer(
        "mira", "ok great, heading to the gym in an hour. can i do pull-ups first and then the archers?", "18:00"
    )

    assert "4×4" in answer
    assert not [one for one in chat.record().sessions if not one.is_test]


def test_what_is_told_beside_a_question_is_noted(chat: Chat) -> None:
    chat.waits_until("08:00")
    chat.answer("mira", "did everything. can i do pull-ups first next time?", "18:00")

    assert [one for one in chat.record().sessions if not one.is_test]


def test_work_that_is_in_no_plan_is_for_the_coach_to_allow(chat: Chat) -> None:
    chat.waits_until("08:00")
    assert "Shall I pass it on" in chat.answer("mira", "btw can i do dips on wednesday just for fun?", "18:00")
    assert not moves(chat)


@pytest.mark.parametrize(
    ("language", "words"),
    [
        ("en", "can i do something tomorrow?"),
        ("de", "kann ich morgen was machen?"),
        ("es", "¿puedo hacer algo mañana?"),
    ],
)
def test_something_on_a_day_off_is_no_move(of_language: Callable[[str], Chat], language: str, words: str) -> None:
    chat = of_language(language)
    chat.answer("mira", words, "09:00")
    assert not moves(chat)


@pytest.mark.parametrize(
    ("language", "words"), [("en", "pain? no"), ("de", "schmerz? nee, nix"), ("es", "¿dolor? nada")]
)
def test_the_question_for_pain_may_stand_before_the_no(
    of_language: Callable[[str], Chat], language: str, words: str
) -> None:
    chat = of_language(language)
    chat.answer("mira", "pull-ups 4x4 +10", "18:00")
    chat.answer("mira", words, "18:01")
    assert [one.score for one in chat.record().pain] == [0.0]


@pytest.mark.parametrize(
    ("language", "words"),
    [("en", "what did i log today"), ("de", "was hab ich heute eingetragen"), ("es", "qué apunté hoy")],
)
def test_what_was_logged_is_told_back(of_language: Callable[[str], Chat], language: str, words: str) -> None:
    chat = of_language(language)
    chat.answer("mira", "pull-ups 4x4 +10", "18:00")
    assert "4×4 +10 kg" in chat.answer("mira", words, "18:01")
