"""What a coach types after an order: put right, given to another, on another day; names that are nearly one."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from datetime import date

import pytest

from tests.bot.conversation.conftest import Chat, athlete

THURSDAY, FRIDAY = date(2027, 1, 7), date(2027, 1, 8)


Team = Callable[..., Chat]


@pytest.fixture
def of_coach() -> Iterator[Team]:
    """Mira, Jon and Lea, and a coach of a language."""
    chats: list[Chat] = []

    def made(language: str = "en") -> Chat:
        chats.append(Chat(athlete("mira"), athlete("jon"), athlete("lea"), coach_language=language))
        chats[-1].waits_until("08:00")
        return chats[-1]

    yield made
    for chat in chats:
        chat.close()


@pytest.fixture
def team(of_coach: Team) -> Chat:
    return of_coach()


def sets(chat: Chat, handle: str = "mira") -> list[tuple[int | None, int | None, float | None, date | None]]:
    return [(one.sets, one.reps, one.load_kg, one.for_date) for one in chat.record(handle).orders]


@pytest.mark.parametrize(
    ("language", "order", "words"),
    [
        ("en", "mira thurs 4x3 @ 17,5", "no make it 12.5"),
        ("en", "mira 4x3 at 17.5 on thursday", "no, 12.5"),
        ("en", "mira 4x3 at 17.5 on thursday", "sorry 12.5 not 17.5"),
        ("de", "Mira 4x3 mit 17,5 am Donnerstag", "nein, 12,5"),
        ("de", "Mira 4x3 mit 17,5 am Donnerstag", "doch lieber 12,5"),
        ("es", "Mira 4x3 con 17,5 el jueves", "no, mejor 12,5"),
        ("es", "Mira 4x3 con 17,5 el jueves", "perdón, que sean 12,5"),
    ],
)
def test_a_load_put_right_takes_the_place_of_the_order(of_coach: Team, language: str, order: str, words: str) -> None:
    team = of_coach(language)
    team.says("coach", order, "09:00")
    team.says("coach", words, "09:01")

    assert sets(team) == [(4, 3, 12.5, THURSDAY)]


def test_what_it_takes_the_place_of_is_said_and_an_undo_brings_it_back(team: Chat) -> None:
    team.says("coach", "mira 4x3 at 17.5 on thursday", "09:00")
    answer = team.answer("coach", "no make it 12.5", "09:01")
    assert "Instead of: 4×3 +17.5 kg on Thu 7 Jan." in answer

    answer = team.answer("coach", "undo", "09:02")
    assert "stands again: 4×3 +17.5 kg on Thu 7 Jan" in answer
    assert sets(team) == [(4, 3, 17.5, THURSDAY)]


@pytest.mark.parametrize(
    ("words", "found"),
    [
        ("no, friday", (4, 3, 10.0, FRIDAY)),
        ("sorry, 5x2", (5, 2, 10.0, THURSDAY)),
        ("make it 5x2 at 12.5 on friday", (5, 2, 12.5, FRIDAY)),
        ("rather +12.5", (4, 3, 12.5, THURSDAY)),
    ],
)
def test_only_what_is_said_changes(team: Chat, words: str, found: tuple[int, int, float, date]) -> None:
    team.says("coach", "mira 4x3 at 10 on thursday", "09:00")
    team.says("coach", words, "09:01")

    assert sets(team) == [found]


def test_a_correction_that_cannot_be_carried_out_leaves_the_order(team: Chat) -> None:
    team.says("coach", "mira 4x3 at 17.5 on thursday", "09:00")
    assert "nothing was set" in team.answer("coach", "no make it 175", "09:01")

    assert sets(team) == [(4, 3, 17.5, THURSDAY)]


@pytest.mark.parametrize(
    ("language", "order", "words"),
    [
        ("en", "mira 4x3 at 10 on thursday", "same for jon"),
        ("en", "mira 4x3 at 10 on thursday", "jon too"),
        ("en", "mira 4x3 at 10 on thursday", "and jon"),
        ("de", "Mira 4x3 mit 10 am Donnerstag", "das gleiche für Jon"),
        ("de", "Mira 4x3 mit 10 am Donnerstag", "Jon auch"),
        ("es", "Mira 4x3 con 10 el jueves", "lo mismo para Jon"),
        ("es", "Mira 4x3 con 10 el jueves", "y Jon también"),
    ],
)
def test_the_same_is_given_to_another(of_coach: Team, language: str, order: str, words: str) -> None:
    team = of_coach(language)
    team.says("coach", order, "09:00")
    team.says("coach", words, "09:01")

    assert sets(team, "jon") == sets(team, "mira") == [(4, 3, 10.0, THURSDAY)]


def test_the_same_step_is_taken_from_the_others_own_plan(team: Chat) -> None:
    team.says("coach", "jon 4x4 at 5 on monday", "08:58")
    team.says("coach", "mira +1.25", "09:00")
    team.says("coach", "same for jon", "09:01")

    assert sets(team, "mira") == [(4, 4, 12.5, date(2027, 1, 4))]
    assert sets(team, "jon")[-1] == (4, 4, 6.25, date(2027, 1, 4))


@pytest.mark.parametrize("words", ["and friday too", "friday as well", "also on friday"])
def test_another_day_is_added(team: Chat, words: str) -> None:
    team.says("coach", "mira 4x3 at 10 on thursday", "09:00")
    team.says("coach", words, "09:01")

    assert sets(team) == [(4, 3, 10.0, THURSDAY), (4, 3, 10.0, FRIDAY)]


def test_who_was_meant_gets_it_and_who_was_not_loses_it(team: Chat) -> None:
    team.says("coach", "mira 4x3 at 10 on thursday", "09:00")
    answer = team.answer("coach", "sorry i meant jon", "09:01")

    assert "Mira, taken back: 4×3 +10 kg on Thu 7 Jan." in answer
    assert (sets(team, "mira"), sets(team, "jon")) == ([], [(4, 3, 10.0, THURSDAY)])


def test_no_before_a_movement_leaves_it_out_and_is_no_correction(team: Chat) -> None:
    team.says("coach", "mira 4x3 at 10 on thursday", "09:00")
    assert "Whom do you mean?" in team.answer("coach", "no archers this week", "09:01")

    assert sets(team) == [(4, 3, 10.0, THURSDAY)]


@pytest.mark.parametrize("words", ["no make it 12.5", "same for jon", "and friday too"])
def test_nothing_follows_an_order_of_yesterday(team: Chat, words: str) -> None:
    team.says("coach", "mira 4x3 at 10 on thursday", "09:00")
    team.says("coach", words, "09:00", "2027-01-05")

    assert sets(team) == [(4, 3, 10.0, THURSDAY)]
    assert sets(team, "jon") == []


def test_nothing_is_put_right_that_was_taken_back(team: Chat) -> None:
    team.says("coach", "mira 4x3 at 10 on thursday", "09:00")
    team.says("coach", "undo", "09:01")
    team.says("coach", "no make it 12.5", "09:02")

    assert sets(team) == []


def test_weeks_may_be_a_letter(team: Chat) -> None:
    team.says("coach", "mira hold rung 2w", "09:00")
    assert [(one.kind, one.until) for one in team.record().orders] == [("hold_rung", date(2027, 1, 18))]


@pytest.mark.parametrize("words", ["leah 4x3 at 10 thursday", "le 4x3 at 10 thursday"])
def test_a_name_that_is_nearly_one_is_asked_about(team: Chat, words: str) -> None:
    assert "Did you mean Lea?" in team.answer("coach", words, "09:00")
    assert sets(team, "lea") == []

    team.says("coach", "yes", "09:01")
    assert sets(team, "lea") == [(4, 3, 10.0, THURSDAY)]


def test_of_two_near_names_neither_is_guessed() -> None:
    chat = Chat(athlete("lea"), athlete("leo"))
    chat.waits_until("08:00")
    assert "Whom do you mean?" in chat.answer("coach", "le 4x3 at 10 thursday", "09:00")
    chat.says("coach", "leo", "09:01")

    assert (sets(chat, "lea"), sets(chat, "leo")) == ([], [(4, 3, 10.0, THURSDAY)])
    chat.close()


@pytest.mark.parametrize("words", ["move to friday", "on thursday 4x3"])
def test_the_small_words_of_orders_are_no_slips_of_names(words: str) -> None:
    chat = Chat(athlete("tom"), athlete("ona"))
    chat.waits_until("08:00")
    assert "Did you mean" not in chat.answer("coach", words, "09:00")
    chat.close()


def test_a_name_alone_answers_whom_and_else_shows_the_card(team: Chat) -> None:
    team.says("coach", "+1.25", "09:00")
    assert "4×4 +12.5 kg" in team.answer("coach", "jon", "09:01")
    assert "Block 1, week 1" in team.answer("coach", "jon", "09:02")


def test_of_many_athletes_those_spoken_of_last_are_offered() -> None:
    chat = Chat(*(athlete(f"a{letter}") for letter in "bcdefghijklm"))
    chat.waits_until("08:00")
    chat.says("coach", "ac", "09:00")
    found = [one for one in chat.says("coach", "+1.25", "09:01") if one["to"] == "coach"]

    assert [one["buttons"] for one in found] == [["Ac"]]
    chat.says("coach", "ad", "09:02")
    assert [one.load_kg for one in chat.record("ad").orders] == [12.5]
    chat.close()


@pytest.mark.parametrize("words", ["mira 12.5", "mira @ 12,5 kg"])
def test_a_load_alone_is_asked_about(team: Chat, words: str) -> None:
    found = [one for one in team.says("coach", words, "09:00") if one["to"] == "coach"]
    assert [one["buttons"] for one in found] == [["Set it"]]
    assert sets(team) == []

    team.says("coach", None, "09:01", press="Set it")
    assert sets(team) == [(4, 4, 12.5, date(2027, 1, 4))]


@pytest.mark.parametrize(
    ("words", "found"),
    [
        ("mira 4x3 at 10 monday and thursday", [(4, 3, 10.0, date(2027, 1, 4)), (4, 3, 10.0, THURSDAY)]),
        ("mira +1.25 on monday, thursday", [(4, 4, 12.5, date(2027, 1, 4)), (4, 6, 7.5, THURSDAY)]),
    ],
)
def test_an_order_may_be_for_two_days(team: Chat, words: str, found: list[tuple[int, int, float, date]]) -> None:
    team.says("coach", words, "09:00")
    assert sets(team) == found


@pytest.mark.parametrize("words", ["and 12.5", "plus 2.5", "ok"])
def test_what_adds_no_day_and_names_nobody_adds_nothing(team: Chat, words: str) -> None:
    team.says("coach", "mira 4x3 at 10 on thursday", "09:00")
    team.says("coach", words, "09:01")
    assert sets(team) == [(4, 3, 10.0, THURSDAY)]
