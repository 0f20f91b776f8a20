"""Orders for everyone: carried out for each, answered in one message, taken back as one."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date

import pytest

from bot.conversation import coach_everyone
from bot.conversation.coach_words import parse
from planner.facts import Weekly
from tests.bot.conversation.conftest import Chat, athlete

NAMES = [("mira", "Mira"), ("jon", "Jon"), ("lea", "Lea")]
HANDLES = ("mira", "jon", "lea")
MONDAY = date(2027, 1, 4)


@pytest.fixture
def team() -> Iterator[Chat]:
    """Three athletes; Lea trains on Tuesdays and Fridays."""
    made = Chat(athlete("mira"), athlete("jon"), athlete("lea", schedule=Weekly(frozenset({1, 4}))))
    made.waits_until("08:00")
    yield made
    made.close()


def answers(chat: Chat, words: str, at: str = "09:00") -> list[str]:
    return [one["text"] for one in chat.says("coach", words, at) if one["to"] == "coach"]


def paused(chat: Chat) -> list[str]:
    return [handle for handle in HANDLES if chat.record(handle).absences]


def ordered(chat: Chat) -> list[str]:
    return [handle for handle in HANDLES if chat.record(handle).orders]


@pytest.mark.parametrize(
    ("language", "words", "verb"),
    [
        ("en", "everyone rest this week", "pause"),
        ("en", "no archers for anyone this week", "exclude"),
        ("en", "everyone -10% on sunday", "sets"),
        ("en", "everyone: deload next week", "deload"),
        ("de", "alle pausieren diese Woche", "pause"),
        ("de", "keine Archers für alle diese Woche", "exclude"),
        ("de", "alle -10 % am Sonntag", "sets"),
        ("es", "todos descansan esta semana", "pause"),
        ("es", "sin arqueras para nadie esta semana", "exclude"),
        ("es", "todos -10 % el domingo", "sets"),
    ],
)
def test_everyone_is_each_of_them_in_every_language(language: str, words: str, verb: str) -> None:
    commands = [parse(text, NAMES, language, MONDAY) for _, text in coach_everyone.orders(words, NAMES, language)]

    assert [(one.verb, one.handle, one.odd if verb != "exclude" else one.left) for one in commands if one] == [
        (verb, handle, ()) for handle in HANDLES
    ]


@pytest.mark.parametrize(
    ("language", "words", "meant"),
    [
        ("en", "everyone but jon and lea rest this week", ["mira"]),
        ("en", "everyone rest this week except lea", ["mira", "jon"]),
        ("de", "alle außer Jon pausieren diese Woche", ["mira", "lea"]),
        ("es", "todos descansan esta semana menos Mira", ["jon", "lea"]),
    ],
)
def test_who_is_excepted_is_not_meant(language: str, words: str, meant: list[str]) -> None:
    assert [handle for handle, _ in coach_everyone.orders(words, NAMES, language)] == meant


@pytest.mark.parametrize("words", ["mira 4x3 con 10 todos los lunes", "4x3 con 10 todos los lunes"])
def test_every_monday_is_not_everyone(words: str) -> None:
    assert coach_everyone.orders(words, NAMES, "es") == []


def test_an_order_for_everyone_is_answered_once_and_taken_back_as_one(team: Chat) -> None:
    (answer,) = answers(team, "everyone rest this week")
    assert answer == "Done for 3 of 3:\n· Jon, Lea, Mira: paused until Sun 10 Jan."
    assert paused(team) == list(HANDLES)

    (answer,) = answers(team, "undo", "09:01")
    assert answer.startswith("Done for 3 of 3:")
    assert paused(team) == []


def test_for_whom_it_was_not_done_is_said_with_the_reason(team: Chat) -> None:
    (answer,) = answers(team, "everyone -10% on thursday")

    done, _, undone = answer.partition("\nNot done:\n")
    assert done.startswith("Done for 2 of 3:")
    assert "Lea" not in done
    assert undone.startswith("· Lea, Thu 7 Jan: there are no sets")
    assert ordered(team) == ["mira", "jon"]


def test_ten_per_cent_less_is_of_the_system_load(team: Chat) -> None:
    # 62 kg and 11.25 kg: 73.25 kg, nine tenths are 65.93 kg; 3.75 kg is the plate below.
    answers(team, "everyone -10%")

    assert [(one.sets, one.reps, one.load_kg) for one in team.record("mira").orders] == [(4, 4, 3.75)]


@pytest.mark.parametrize(
    "words",
    ["everyone restart", "everyone 4x3 at 10 on thursday", "everyone lock 10", "approve everyone", "everyone seen"],
)
def test_what_one_athlete_has_shown_decides_for_that_one_alone(team: Chat, words: str) -> None:
    (answer,) = answers(team, words)

    assert "by name only" in answer
    assert ordered(team) == []


@pytest.mark.parametrize("words", ["everyone +1.25", "a set more for everyone", "everyone resume", "everyone unlock"])
def test_what_asks_more_of_all_is_asked_twice(team: Chat, words: str) -> None:
    team.says("coach", "everyone hold rung 3 weeks", "08:59")
    before = {handle: team.record(handle) for handle in HANDLES}
    (answer,) = answers(team, words)
    assert "Nothing is done yet" in answer
    assert {handle: team.record(handle) for handle in HANDLES} == before

    team.says("coach", None, "09:01", press="Do it for all 3")
    assert all(team.record(handle) != before[handle] for handle in HANDLES)


def test_a_yes_is_as_good_as_the_button(team: Chat) -> None:
    team.says("coach", "everyone +1.25", "09:00")
    team.says("coach", "yes", "09:01")
    assert ordered(team) == list(HANDLES)


def test_a_yes_to_something_else_is_none(team: Chat) -> None:
    team.says("coach", "everyone +1.25", "09:00")
    team.says("coach", "roster", "09:01")
    team.says("coach", "yes", "09:02")
    assert ordered(team) == []


@pytest.mark.parametrize("words", ["everyone rest when they like", "did everyone rest?"])
def test_an_order_for_everyone_that_is_not_whole_is_none(team: Chat, words: str) -> None:
    (answer,) = answers(team, words)

    assert "Nothing is done" in answer
    assert paused(team) == []


def test_words_behind_everyone_go_to_each(team: Chat) -> None:
    found = team.says("coach", "everyone: the hall is closed on friday", "09:00")
    assert {one["to"] for one in found if "hall is closed" in one["text"]} == set(HANDLES)


@pytest.mark.parametrize("words", ["everyone", "how is everyone", "who has reported", "is everyone ok?"])
def test_what_only_shows_orders_nothing(team: Chat, words: str) -> None:
    answers(team, words)
    assert not paused(team)
    assert not ordered(team)


def test_a_day_of_rest_for_everyone_leaves_the_others_as_they_are(team: Chat) -> None:
    answers(team, "everyone rest thursday")

    assert [[(one.since, one.until) for one in team.record(handle).absences] for handle in HANDLES] == [
        [(date(2027, 1, 7), date(2027, 1, 7))]
    ] * 3


def test_one_order_for_several_by_name_is_answered_once_too(team: Chat) -> None:
    assert answers(team, "mira and jon rest this week") == ["Done for 2 of 2:\n· Mira, Jon: paused until Sun 10 Jan."]


@pytest.mark.parametrize("behind", ["but jon and lea: good week!", "except jon and lea good week!"])
def test_who_is_excepted_is_not_told(team: Chat, behind: str) -> None:
    found = team.says("coach", f"tell everyone {behind}", "09:00")
    assert [one["to"] for one in found if "good week" in one["text"]] == ["mira"]


def test_a_step_on_each_session_of_a_week(team: Chat) -> None:
    answers(team, "everyone -10% next week")

    assert [[one.for_date for one in team.record(handle).orders] for handle in ("mira", "lea")] == [
        [date(2027, 1, 11), date(2027, 1, 14)],
        [date(2027, 1, 12), date(2027, 1, 15)],
    ]


def test_this_week_said_on_a_sunday_is_the_week_to_come(team: Chat) -> None:
    team.says("coach", "everyone rest this week", "18:00", "2027-01-10")
    assert [one.until for one in team.record("mira").absences] == [date(2027, 1, 17)]


def test_a_no_to_the_question_leaves_all_undone(team: Chat) -> None:
    answers(team, "everyone +1.25")
    assert answers(team, "no", "09:01") == ["Nothing is done."]


def test_a_pause_takes_the_place_of_the_coachs_pause_and_an_undo_brings_that_back(team: Chat) -> None:
    answers(team, "everyone rest this week")
    (answer,) = answers(team, "everyone rest until wednesday", "09:01")
    assert "takes the place of your pause until Sun 10 Jan" in answer
    assert [one.until for one in team.record("mira").absences] == [date(2027, 1, 6)]

    (answer,) = answers(team, "undo", "09:02")
    assert "stands again: paused until Sun 10 Jan" in answer


def test_the_coachs_word_of_a_silent_athlete_is_none_of_theirs(team: Chat) -> None:
    team.waits_until("18:00", "2027-01-10")
    assert "no word for 2 sessions" in team.answer("coach", "mira", "18:01", "2027-01-10")
    team.says("coach", "everyone rest on 14 january", "18:02", "2027-01-10")

    assert "no word for 2 sessions" in team.answer("coach", "mira", "18:03", "2027-01-10")


@pytest.mark.parametrize("order", ["mira 4x3 at 10 on thursday", "mira rung archer_shoulder", "mira lock 10"])
def test_the_same_for_everyone_is_held_to_the_same(team: Chat, order: str) -> None:
    team.says("coach", order, "08:59")
    (answer,) = answers(team, "same for everyone")

    assert "by name only" in answer
    assert ordered(team) == ["mira"]


def test_a_correction_that_asks_more_of_all_is_asked_twice(team: Chat) -> None:
    answers(team, "everyone -1.25")
    (answer,) = answers(team, "no, +1.25", "09:01")
    assert "Nothing is done yet" in answer

    team.says("coach", "yes", "09:02")
    assert [one.load_kg for one in team.record("mira").orders] == [12.5]


def test_words_for_everyone_but_one(team: Chat) -> None:
    found = team.says("coach", "everyone but lea: good week!", "09:00")
    assert {one["to"] for one in found if "good week" in one["text"]} == {"mira", "jon"}
