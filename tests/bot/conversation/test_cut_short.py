"""Little time, and work that may be left out: what counts today, what goes first, and nothing is decided by asking."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from tests.bot.conversation.conftest import Chat
from tests.bot.conversation.test_mind_changed import absences, moves


def nothing_is_decided(chat: Chat) -> bool:
    return not absences(chat) and not moves(chat) and not [one for one in chat.record().sessions if not one.is_test]


@pytest.mark.parametrize(
    ("language", "words", "counts", "first"),
    [
        (
            "en",
            "could you make the session shorter today, only have 30 min",
            "what counts is archers",
            "The first to leave out: hollow hold.",
        ),
        ("en", "only have 30 min today", "pull-ups 4×4 +11.25 kg", "The first to leave out: hollow hold."),
        ("en", "short on time today, what can i skip?", "keep the warm-up", "The first to leave out: hollow hold."),
        ("de", "hab heute wenig Zeit, was kann ich weglassen?", "was zählt, ist", "Als Erstes fällt weg: Hollow Hold."),
        ("de", "kannst du es kürzer machen, nur 30 min", "Klimmzüge 4×4", "Als Erstes fällt weg"),
        ("es", "hoy tengo poco tiempo", "lo que cuenta es", "Lo primero que se deja"),
        ("es", "¿qué puedo saltarme hoy?", "dominadas 4×4", "Lo primero que se deja"),
    ],
)
def test_with_little_time_the_accessories_go_first(
    of_language: Callable[[str], Chat], language: str, words: str, counts: str, first: str
) -> None:
    chat = of_language(language)
    answer = chat.answer("mira", words, "09:00")

    assert counts in answer
    assert first in answer
    assert nothing_is_decided(chat)


@pytest.mark.parametrize(
    ("language", "words", "said"),
    [
        ("en", "do I have to do the hollow hold?", "hollow hold: accessory work on Mon 4 Jan"),
        ("en", "can I skip the hollow hold today?", "hollow hold: accessory work on Mon 4 Jan"),
        ("en", "do i have to do the face pulls?", "face pulls: not in the plan of Mon 4 Jan."),
        ("en", "do I have to do the archers", "part of what Mon 4 Jan is about"),
        ("en", "do i have to do the warm up", "Warm-up: the warm-up of Mon 4 Jan, better kept"),
        ("de", "muss ich die Klimmzüge machen?", "Klimmzüge: darum geht es am Mo 4. Jan"),
        ("de", "kann ich den Hollow Hold weglassen?", "Assistenz am Mo 4. Jan"),
        ("es", "¿tengo que hacer las dominadas?", "dominadas: de eso va el lun 4 ene"),
    ],
)
def test_what_a_movement_is_to_the_day_is_told(
    of_language: Callable[[str], Chat], language: str, words: str, said: str
) -> None:
    chat = of_language(language)

    assert said in chat.answer("mira", words, "09:00")
    assert nothing_is_decided(chat)


def test_after_the_report_it_is_of_the_next_session(chat: Chat) -> None:
    chat.waits_until("08:00")
    chat.answer("mira", "done as planned", "18:00")

    assert chat.answer("mira", "i only have 30 min, what's most important?", "18:05").startswith("Thu 7 Jan:")


@pytest.mark.parametrize(
    ("words", "said"),
    [
        ("can I skip thursday?", "Thu 7 Jan is left out"),
        ("only had 30 min, did pull-ups 3x4 +11.25", "Noted for Mon 4 Jan"),
        ("only have rings this week", "you have rings"),
        ("just ran for 30 min today", "did not find anything to note"),
    ],
)
def test_other_wishes_and_reports_are_what_they_were(chat: Chat, words: str, said: str) -> None:
    chat.waits_until("08:00")

    assert said in chat.answer("mira", words, "09:00")


@pytest.mark.parametrize(
    ("language", "words", "said"),
    [
        ("en", "should I ice my elbow", "I give no medical advice"),
        ("en", "is it ok to take ibuprofen before training", "I give no medical advice"),
        ("de", "soll ich den Ellbogen kühlen?", "Medizinischen Rat gebe ich nicht"),
        ("es", "¿debería ponerme hielo en el codo?", "No doy consejos médicos"),
    ],
)
def test_how_to_treat_a_place_is_no_matter_of_the_bot(
    of_language: Callable[[str], Chat], language: str, words: str, said: str
) -> None:
    chat = of_language(language)
    assert said in chat.answer("mira", words, "09:00")

    button = chat.heard[-1]["buttons"][0]
    chat.says("mira", None, "09:05", press=button)
    assert words in chat.to_coach()[-1]["text"]


def test_what_is_told_of_equipment_answers_no_question_about_days(chat: Chat) -> None:
    chat.waits_until("08:00")
    assert "which days do you mean" in chat.answer("mira", "away 30 February to 3 March", "09:00")

    assert "you have rings" in chat.answer("mira", "only have rings this week", "09:05")
    assert not absences(chat)
