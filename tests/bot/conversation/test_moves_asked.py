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


@pytest.mark.parametrize(
    ("language", "words", "said", "following"),
    [
        ("en", "can monday's session go to wednesday", "Mon 4 Jan is done already", "Thursday 7 January"),
        ("en", "move today to wednesday", "Mon 4 Jan is done already", "Thursday 7 January"),
        ("de", "verschieb heute auf Mittwoch", "Mo 4. Jan ist schon gemacht", "Donnerstag"),
        ("es", "pasa la sesión de hoy al miércoles", "lun 4 ene ya está hecha", "jueves"),
    ],
)
def test_a_session_that_is_done_is_not_moved_and_the_next_is_named(
    of_language: Callable[[str], Chat], language: str, words: str, said: str, following: str
) -> None:
    chat = of_language(language)
    chat.answer("mira", "pull-ups 4x4 +11.25 @7", "10:00")
    answer = chat.answer("mira", words, "18:00")

    assert said in answer
    assert following in answer
    assert not moves(chat)


def test_a_session_done_on_the_day_it_went_to_is_done_by_its_first_day_too(chat: Chat) -> None:
    chat.answer("mira", "pull-ups 4x4 +11.25 @7", "10:00")
    chat.answer("mira", "move thursday to wednesday", "18:00")
    chat.answer("mira", "pull-ups 4x6 +6.25 @7", "10:00", "2027-01-06")

    assert "is done already" in chat.answer("mira", "move thursday to friday", "18:00", "2027-01-06")
    assert moves(chat) == [("2027-01-07", "2027-01-06")]


def test_a_coach_moves_no_session_that_is_done(chat: Chat) -> None:
    chat.answer("mira", "pull-ups 4x4 +11.25 @7", "10:00")
    answer = chat.answer("coach", "mira move monday to wednesday", "18:00")

    assert answer.startswith("Mira has done the session of Mon 4 Jan already; nothing was moved.\nNext, Thu 7 Jan:")
    assert not moves(chat)


def test_told_to_where_it_does_not_fit_nothing_moves_and_another_day_is_offered(chat: Chat) -> None:
    chat.answer("mira", "pull-ups 4x4 +11.25 @7", "10:00")
    answer = chat.answer("mira", "move thursday to tuesday", "18:00")

    assert "does not fit on Tue 5 Jan" in answer
    assert "Thu 7 Jan stays as it is" in answer
    assert not moves(chat)
    chat.says("mira", None, "18:05", press="Move it to Wed 6 Jan")
    assert moves(chat) == [("2027-01-07", "2027-01-06")]


def test_a_day_to_itself_is_no_move(chat: Chat) -> None:
    assert "stays where it was" in chat.answer("mira", "move thursday to thursday", "18:00")
    assert not moves(chat)


def test_another_mind_that_does_not_fit_leaves_what_was_agreed(chat: Chat) -> None:
    chat.answer("mira", "pull-ups 4x4 +11.25 @7", "10:00")
    chat.answer("mira", "move thursday to friday", "18:00")

    assert "What was agreed before stands" in chat.answer("mira", "no, rather tuesday", "18:05")
    assert moves(chat) == [("2027-01-07", "2027-01-08")]
