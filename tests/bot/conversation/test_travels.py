"""Away with something to train with is travel with less equipment, and no days off; the two are never noted both."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from tests.bot.conversation.conftest import Chat
from tests.bot.conversation.test_mind_changed import absences

DAYS = ("2027-01-09", "2027-01-19")


def equipment(chat: Chat) -> list[tuple[list[str], str, str | None]]:
    return [(sorted(one.has), str(one.since), str(one.until) if one.until else None) for one in chat.record().equipment]


@pytest.mark.parametrize(
    ("language", "words", "said", "button", "has"),
    [
        (
            "en",
            "i'm at my parents from the 9th to the 19th, only rings there",
            "From Sat 9 Jan until Tue 19 Jan you have rings: I plan training there with that.",
            "No training there",
            ["rings"],
        ),
        (
            "en",
            "visiting family 9-19 january, i'll have my rings with me",
            "you have rings: I plan training there",
            "No training there",
            ["rings"],
        ),
        (
            "de",
            "bin vom 9. bis 19. bei meinen Eltern, da gibt es nur Ringe",
            "hast du Ringe: Damit plane ich Training dort",
            "Kein Training dort",
            ["rings"],
        ),
        (
            "es",
            "estoy en casa de mis padres del 9 al 19, allí solo hay anillas",
            "tienes anillas: planifico entreno allí con eso",
            "Allí no entreno",
            ["rings"],
        ),
    ],
)
def test_what_is_there_is_trained_with_and_a_button_makes_days_off_of_it(
    of_language: Callable[[str], Chat], language: str, words: str, said: str, button: str, has: list[str]
) -> None:
    chat = of_language(language)
    assert said in chat.answer("mira", words, "18:00")
    assert equipment(chat) == [(has, *DAYS)]
    assert not absences(chat)

    chat.says("mira", None, "18:05", press=button)
    assert not equipment(chat)
    assert absences(chat) == [("away", *DAYS)]


@pytest.mark.parametrize(
    ("language", "words", "said", "answer"),
    [
        ("en", "away from the 9th until the 19th, no belt there", "tell me", "I train there"),
        ("de", "im Urlaub vom 9. bis 19., kein Gürtel dabei", "sag es mir", "ja, ich trainiere dort"),
        ("es", "de vacaciones del 9 al 19, sin cinturón", "dímelo", "entreno allí"),
    ],
)
def test_what_is_lacking_leaves_it_open_and_a_few_words_say_that_there_is_training(
    of_language: Callable[[str], Chat], language: str, words: str, said: str, answer: str
) -> None:
    chat = of_language(language)
    assert said in chat.answer("mira", words, "18:00")
    assert absences(chat) == [("away", *DAYS)]
    assert not equipment(chat)

    chat.answer("mira", answer, "18:05")
    assert equipment(chat) == [(["bar", "rings"], *DAYS)]
    assert not absences(chat)


def test_undo_of_the_button_is_the_journey_as_it_was(chat: Chat) -> None:
    chat.answer("mira", "i'm at my parents from the 9th to the 19th, only rings there", "18:00")
    chat.says("mira", None, "18:05", press="No training there")

    assert "As before again: rings from Sat 9 Jan until Tue 19 Jan" in chat.answer("mira", "undo", "18:10")
    assert not absences(chat)
    assert equipment(chat) == [(["rings"], *DAYS)]


def test_who_says_that_there_is_no_training_is_asked_nothing(chat: Chat) -> None:
    answer = chat.answer("mira", "away 9th to 19th no bar so no training", "18:00")

    assert "tell me" not in answer
    assert absences(chat) == [("away", *DAYS)]


def test_thanks_train_nowhere(chat: Chat) -> None:
    chat.answer("mira", "away from the 9th until the 19th, no belt there", "18:00")
    chat.answer("mira", "ok thanks", "18:05")

    assert absences(chat) == [("away", *DAYS)]


def test_other_days_for_the_same_equipment(chat: Chat) -> None:
    chat.answer("mira", "travelling 9th to 19th, only have rings with me", "18:00")
    answer = chat.answer("mira", "no, from the 11th", "18:05")

    assert answer.startswith("Changed. Noted: from Mon 11 Jan you have rings until Tue 19 Jan.")
    assert equipment(chat) == [(["rings"], "2027-01-11", "2027-01-19")]


def test_the_sessions_of_those_days_are_done_on_what_there_is(chat: Chat) -> None:
    chat.waits_until("08:00")
    chat.answer("mira", "done as planned", "18:00")
    chat.answer("mira", "i'm at my parents from the 9th to the 19th, only rings there", "18:05")
    sent = [one for one in chat.waits_until("08:00", "2027-01-11") if one["plan"] and one["plan"]["sets"]]

    assert "ring_pull_up" in {one["movement"] for one in sent[-1]["plan"]["sets"]}
