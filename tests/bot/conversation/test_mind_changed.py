"""What was agreed a moment ago, said otherwise: "no, from saturday", "no wait leave it thursday"."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from tests.bot.conversation.conftest import Chat


def absences(chat: Chat) -> list[tuple[str, str, str | None]]:
    return [(one.kind, str(one.since), str(one.until) if one.until else None) for one in chat.record().absences]


def moves(chat: Chat) -> list[tuple[str, str]]:
    return [(str(one.moved_from), str(one.moved_to)) for one in chat.record().moves]


@pytest.mark.parametrize(
    ("language", "first", "then", "said"),
    [
        ("en", "away from friday to 20 january", "no, from saturday", "Changed. Away from Sat 9 Jan until Wed 20 Jan"),
        ("de", "bin von Freitag bis 20. Januar weg", "nein, ab Samstag", "Geändert. Weg ab Sa 9. Jan"),
        ("es", "estoy fuera del viernes al 20 de enero", "no, desde el sábado", "Cambiado. Fuera desde el sáb 9 ene"),
    ],
)
def test_another_beginning_takes_the_place_of_the_first(
    of_language: Callable[[str], Chat], language: str, first: str, then: str, said: str
) -> None:
    chat = of_language(language)
    chat.answer("mira", first, "18:00")

    assert said in chat.answer("mira", then, "18:05")
    assert absences(chat) == [("away", "2027-01-09", "2027-01-20")]


@pytest.mark.parametrize(
    ("first", "then", "expected"),
    [
        ("away from friday", "until the 20th", ("away", "2027-01-08", "2027-01-20")),
        ("I'm away 8-15 january", "actually until the 20th", ("away", "2027-01-08", "2027-01-20")),
        ("I'm away 8-15 january", "sorry, back on the 12th", ("away", "2027-01-08", "2027-01-11")),
        ("I'm away 8-15 january", "I mean from the 10th to the 12th", ("away", "2027-01-10", "2027-01-12")),
        ("pause for a week", "make it two weeks", ("pause", "2027-01-04", "2027-01-17")),
    ],
)
def test_the_other_days_are_told_in_many_ways(
    chat: Chat, first: str, then: str, expected: tuple[str, str, str]
) -> None:
    chat.answer("mira", first, "18:00")
    chat.answer("mira", then, "18:05")

    assert absences(chat) == [expected]


def test_which_of_two_days_is_meant_is_asked(chat: Chat) -> None:
    chat.answer("mira", "away from friday to 20 january", "18:00")

    assert "From when to when" in chat.answer("mira", "no, saturday", "18:05")
    assert absences(chat) == [("away", "2027-01-08", "2027-01-20")]


@pytest.mark.parametrize(
    ("language", "first", "then", "said"),
    [
        ("en", "move thursday to friday", "no wait leave it thursday", "Changed. The session of Thu 7 Jan stays"),
        ("en", "move thursday to friday", "leave it", "Changed. The session of Thu 7 Jan stays"),
        (
            "de",
            "verschieb Donnerstag auf Freitag",
            "nein warte, lass Donnerstag",
            "Geändert. Die Einheit vom Do 7. Jan",
        ),
        ("es", "pasa el jueves al viernes", "no espera, déjalo el jueves", "Cambiado. La sesión del jue 7 ene queda"),
    ],
)
def test_a_session_stays_after_all(
    of_language: Callable[[str], Chat], language: str, first: str, then: str, said: str
) -> None:
    chat = of_language(language)
    chat.answer("mira", first, "18:00")

    assert said in chat.answer("mira", then, "18:05")
    assert not moves(chat)


@pytest.mark.parametrize(
    ("language", "first", "then"),
    [
        ("en", "move thursday to friday", "actually make it saturday"),
        ("en", "can we move thursday to friday", "nah saturday"),
        ("en", "move thursday to friday", "saturday would be better"),
        ("de", "verschieb Donnerstag auf Freitag", "lieber Samstag"),
        ("es", "pasa el jueves al viernes", "mejor el sábado"),
    ],
)
def test_a_session_goes_to_another_day_instead(
    of_language: Callable[[str], Chat], language: str, first: str, then: str
) -> None:
    chat = of_language(language)
    chat.answer("mira", first, "18:00")
    chat.answer("mira", then, "18:05")

    assert moves(chat) == [("2027-01-07", "2027-01-09")]


def test_who_can_train_after_all_is_not_ill(chat: Chat) -> None:
    chat.waits_until("08:00")
    chat.answer("mira", "ill", "09:00")

    answer = chat.answer("mira", "actually I can train after all", "09:05")

    assert "as if you had not said it" in answer
    assert "This one counts" in answer
    assert not absences(chat)


def test_a_session_missed_goes_to_the_day_named_then(chat: Chat) -> None:
    chat.waits_until("08:00")
    chat.answer("mira", "missed today", "18:00")

    assert "Moved from Mon 4 Jan to Tue 5 Jan" in chat.answer("mira", "actually make it tomorrow", "18:05")
    assert not absences(chat)


def test_words_after_something_else_change_nothing(chat: Chat) -> None:
    chat.answer("mira", "move thursday to friday", "18:00")
    chat.answer("mira", "pull-ups 4x4 +15", "18:05")
    chat.answer("mira", "0", "18:06")
    chat.answer("mira", "no, saturday", "18:07")

    assert moves(chat) == [("2027-01-07", "2027-01-08")]


def test_another_journey_is_one_more(chat: Chat) -> None:
    chat.answer("mira", "away 8-15 january", "18:00")
    chat.answer("mira", "I'm away 20 to 25 january", "18:05")

    assert len(absences(chat)) == 2


def test_a_change_of_mind_holds_for_a_day(chat: Chat) -> None:
    chat.answer("mira", "move thursday to saturday", "18:00")
    chat.answer("mira", "no, friday", "18:00", "2027-01-06")

    assert moves(chat) == [("2027-01-07", "2027-01-09")]
