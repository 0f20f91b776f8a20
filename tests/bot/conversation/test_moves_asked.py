"""Who asks whether a session may move is answered: granted where it fits, refused where not, advised where asked."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from tests.bot.conversation.conftest import Chat
from tests.bot.conversation.test_mind_changed import absences, moves


@pytest.mark.parametrize(
    ("language", "words", "said", "button"),
    [
        ("en", "can I train tomorrow instead of Thursday", "does not fit on Tue 5 Jan", "Move it to Wed 6 Jan"),
        (
            "de",
            "kann ich morgen statt Donnerstag trainieren?",
            "Am Di 5. Jan passt es nicht",
            "Auf Mi 6. Jan verschieben",
        ),
        ("es", "¿puedo entrenar mañana en vez del jueves?", "El mar 5 ene no cabe", "Mover al mié 6 ene"),
    ],
)
def test_where_it_does_not_fit_nothing_moves_and_another_day_is_offered(
    of_language: Callable[[str], Chat], language: str, words: str, said: str, button: str
) -> None:
    chat = of_language(language)
    chat.waits_until("08:00")

    assert said in chat.answer("mira", words, "18:00")
    assert not moves(chat)

    chat.says("mira", None, "18:05", press=button)
    assert moves(chat) == [("2027-01-07", "2027-01-06")]


def test_where_it_fits_it_is_granted_and_can_be_taken_back(chat: Chat) -> None:
    answer = chat.answer("mira", "could I do thursday's session on friday?", "18:00")

    assert answer.startswith("Yes, that fits. Moved from Thu 7 Jan to Fri 8 Jan.")
    assert "“Undo” takes it back" in answer
    chat.answer("mira", "undo", "18:05")
    assert not moves(chat)


@pytest.mark.parametrize(
    ("language", "words", "said", "yes"),
    [
        ("en", "should I move thursday to friday?", "Shall I move it?", "yes please"),
        ("de", "soll ich Donnerstag auf Freitag verschieben?", "Soll ich sie verschieben?", "ja"),
        ("es", "¿debería pasar el jueves al viernes?", "¿La muevo?", "sí"),
    ],
)
def test_who_asks_for_advice_decides_on_the_answer(
    of_language: Callable[[str], Chat], language: str, words: str, said: str, yes: str
) -> None:
    chat = of_language(language)

    assert said in chat.answer("mira", words, "18:00")
    assert not moves(chat)
    chat.answer("mira", yes, "18:05")
    assert moves(chat) == [("2027-01-07", "2027-01-08")]


def test_what_else_moves_is_said(chat: Chat) -> None:
    assert "the session of Mon 11 Jan goes to Tue 12 Jan" in chat.answer("mira", "move thursday to sunday", "18:00")


@pytest.mark.parametrize(
    ("language", "words", "said"),
    [
        ("en", "can I skip thursday?", "Yes, you can. Thu 7 Jan is left out"),
        ("en", "may I take thursday off?", "Yes, you can. Thu 7 Jan is left out"),
        ("de", "könnte ich Donnerstag ausfallen lassen?", "Ja, das geht. Do 7. Jan fällt aus"),
        ("es", "¿puedo saltarme el jueves?", "Sí, puedes. El jue 7 ene queda sin entreno"),
    ],
)
def test_leave_for_a_day_to_come_is_given(
    of_language: Callable[[str], Chat], language: str, words: str, said: str
) -> None:
    chat = of_language(language)

    assert said in chat.answer("mira", words, "18:00")
    assert absences(chat) == [("missed", "2027-01-07", "2027-01-07")]


def test_who_asks_whether_to_skip_skips_nothing(chat: Chat) -> None:
    assert "pass it on" in chat.answer("mira", "should I skip thursday?", "18:00")
    assert not absences(chat)


@pytest.mark.parametrize("words", ["can I go for a run tomorrow?", "can I go climbing on thursday?"])
def test_other_sports_move_no_session(chat: Chat, words: str) -> None:
    chat.waits_until("08:00")

    assert "pass it on" in chat.answer("mira", words, "18:00")
    assert not moves(chat)
