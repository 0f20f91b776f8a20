"""Small things that annoyed somebody who used it: said once, and kept so."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from tests.bot.conversation.conftest import Chat
from tests.bot.conversation.test_mind_changed import absences, moves


@pytest.mark.parametrize(
    ("language", "told", "side"),
    [
        ("en", "shoulder 2", "left"),
        ("en", "shoulder 2", "the left one"),
        ("de", "schulter 2", "links"),
        ("es", "hombro 2", "izquierdo"),
    ],
)
def test_a_side_told_behind_the_pain_is_its_side(
    of_language: Callable[[str], Chat], language: str, told: str, side: str
) -> None:
    chat = of_language(language)
    chat.answer("mira", told, "18:00")
    chat.answer("mira", side, "18:01")

    assert [(one.site, one.side, one.score) for one in chat.record().pain] == [("shoulder", "left", 2)]


@pytest.mark.parametrize(
    ("language", "words"),
    [("en", "no, rather friday"), ("de", "nein, lieber Freitag"), ("es", "no, mejor el viernes")],
)
def test_a_change_of_mind_is_no_answer_to_what_was_asked_before(
    of_language: Callable[[str], Chat], language: str, words: str
) -> None:
    chat = of_language(language)
    chat.answer("mira", "pull-ups 4x4 +11.25 @7, archers 2x1", "18:00")  # which archers is asked
    chat.answer(
        "mira",
        {"en": "move thursday to saturday", "de": "verschieb Donnerstag auf Samstag"}.get(
            language, "pasa el jueves al sábado"
        ),
        "18:05",
    )
    chat.answer("mira", words, "18:06")

    assert moves(chat) == [("2027-01-07", "2027-01-08")]
    assert not chat.record().pain


def test_only_until_a_weekday_is_one_of_the_days_agreed(chat: Chat) -> None:
    chat.answer("mira", "away from friday to 17 january", "18:00")
    chat.answer("mira", "sorry, only until wednesday", "18:05")

    assert absences(chat) == [("away", "2027-01-08", "2027-01-13")]


@pytest.mark.parametrize(
    ("language", "agreed", "words"),
    [
        ("en", "away from friday to 17 january", "not going after all"),
        ("en", "away from friday to 17 january", "actually i'm staying home"),
        ("de", "bin von Freitag bis 17. Januar weg", "ich fahr doch nicht"),
        ("es", "estoy fuera del viernes al 17 de enero", "al final no voy"),
    ],
)
def test_a_journey_is_called_off_in_plain_words(
    of_language: Callable[[str], Chat], language: str, agreed: str, words: str
) -> None:
    chat = of_language(language)
    chat.answer("mira", agreed, "18:00")
    assert absences(chat)

    chat.answer("mira", words, "18:05")
    assert not absences(chat)


@pytest.mark.parametrize(
    ("language", "words", "said"),
    [
        ("en", "next week i'm travelling, only bands with me", "With that I can plan no session"),
        ("en", "only have bands from monday to sunday", "With that I can plan no session"),
        ("de", "nächste Woche auf Dienstreise, nur Bänder dabei", "Damit kann ich keine Einheit planen"),
        ("es", "la semana que viene estoy de viaje, solo tengo gomas", "Con eso no puedo planificar ninguna sesión"),
    ],
)
def test_where_nothing_can_be_done_with_what_there_is_nobody_is_promised_a_plan(
    of_language: Callable[[str], Chat], language: str, words: str, said: str
) -> None:
    chat = of_language(language)

    assert said in chat.answer("mira", words, "18:00")
    assert "no session can be planned" in chat.to_coach()[-1]["text"]


def test_no_more_today_after_the_report_is_no_missed_day(chat: Chat) -> None:
    chat.answer("mira", "pull-ups 4x4 +11.25 @7", "17:00")
    answer = chat.answer("mira", "can't train any more today", "18:00")

    assert "What you told me of Mon 4 Jan counts" in answer
    assert not absences(chat)


def test_all_done_yesterday_is_not_the_plan_of_today(chat: Chat) -> None:
    chat.waits_until("08:00")
    answer = chat.answer("mira", "did everything as planned yesterday", "09:00")

    assert "What were the sets" in answer
    assert not [one for one in chat.record().sessions if not one.is_test]
    assert chat.answer("mira", "what's today?", "09:05").startswith("Monday 4 January · block 1, week 1")


def test_all_done_yesterday_is_the_plan_before_that_was_not_told_of(chat: Chat) -> None:
    chat.waits_until("08:00")
    chat.answer("mira", "did everything as planned yesterday", "09:00", "2027-01-07")

    (told,) = [one for one in chat.record().sessions if not one.is_test]
    assert str(told.on) == "2027-01-06"
    assert max(work.load_kg for work in told.sets) == 11.25  # Monday's


@pytest.mark.parametrize("words", ["mira rest until monday", "mira no dips until monday", "mira lock 10 until monday"])
def test_until_a_weekday_that_is_today_is_until_the_next_one(chat: Chat, words: str) -> None:
    assert "until Mon 11 Jan" in chat.answer("coach", words, "08:00")


@pytest.mark.parametrize(
    ("language", "words"), [("de", "kannst du mir das in Pfund zeigen"), ("en", "can you show me that in pounds")]
)
def test_that_in_pounds(of_language: Callable[[str], Chat], language: str, words: str) -> None:
    answer = of_language(language).answer("mira", words, "18:00")

    assert "pounds" in answer or "Pfund" in answer


@pytest.mark.parametrize(
    ("language", "words", "said"),
    [
        ("en", "what does rpe mean", "at 10 nothing was left"),
        ("en", "What's RPE?", "at 8 two"),
        ("de", "was heißt RPE?", "Bei 10 ging nichts mehr"),
        ("es", "¿qué significa RPE?", "con 10 no quedaba nada"),
    ],
)
def test_the_word_of_every_plan_is_explained(
    of_language: Callable[[str], Chat], language: str, words: str, said: str
) -> None:
    assert said in of_language(language).answer("mira", words, "18:00")


def test_a_phone_that_died_is_no_grief(chat: Chat) -> None:
    chat.waits_until("08:00")

    assert "sorry to hear" not in chat.answer("mira", "my phone died yesterday", "09:00")


@pytest.mark.parametrize(
    ("language", "words", "said"),
    [
        ("en", "can you move my training days to tuesday and friday", "are Inês's to set"),
        ("de", "kann ich meine Trainingstage auf Dienstag und Freitag legen?", "legt Inês fest"),
        ("es", "¿puedo cambiar mis días de entreno al martes y viernes?", "los fija Inês"),
        ("en", "my dog died", "I am sorry to hear that"),
        ("de", "mein Opa ist gestorben", "Das tut mir leid"),
        ("es", "ayer falleció mi abuela", "Lo siento mucho"),
    ],
)
def test_what_is_the_coachs_is_offered_to_be_passed_on(
    of_language: Callable[[str], Chat], language: str, words: str, said: str
) -> None:
    chat = of_language(language)
    assert said in chat.answer("mira", words, "18:00")
    assert not moves(chat)

    chat.says("mira", None, "18:05", press=chat.heard[-1]["buttons"][0])
    assert words in chat.to_coach()[-1]["text"]
