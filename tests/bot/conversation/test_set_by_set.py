"""Sets told as they are done, a message each: the same words after a rest are another set, at once they are none."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from tests.bot.conversation.conftest import Chat, athlete


def sets(chat: Chat, movement: str = "pull_up") -> list[tuple[int | None, float, float | None]]:
    return [
        (work.reps, work.load_kg, work.rpe)
        for one in chat.record().sessions
        if not one.is_test
        for work in one.sets
        if work.movement == movement
    ]


@pytest.fixture
def trained(chat: Chat) -> Chat:
    chat.waits_until("08:00")
    return chat


def test_the_same_set_after_a_rest_is_another(trained: Chat) -> None:
    for at in ("18:00", "18:03", "18:06"):
        answer = trained.answer("mira", "pull-ups 5 +10 @8", at)

    assert sets(trained) == [(5, 10.0, 8.0)] * 3
    assert "So far that day: pull-ups 3×5 +10 kg, RPE 8." in answer


def test_the_same_words_at_once_are_a_message_sent_twice(trained: Chat) -> None:
    trained.answer("mira", "pull-ups 5 +10 @8", "18:00")
    assert "already noted" in trained.answer("mira", "pull-ups 5 +10 @8", "18:00")

    assert sets(trained) == [(5, 10.0, 8.0)]


def test_an_undo_takes_back_the_last_of_them_alone(trained: Chat) -> None:
    for at in ("18:00", "18:03"):
        trained.answer("mira", "pull-ups 5 +10 @8", at)
    trained.answer("mira", "undo", "18:04")

    assert sets(trained) == [(5, 10.0, 8.0)]


def test_an_effort_told_of_a_set_that_had_none_is_no_other_set(trained: Chat) -> None:
    trained.answer("mira", "pull-ups 5 +10", "18:00")
    trained.answer("mira", "pull-ups 5 +10 @8", "18:03")

    assert sets(trained) == [(5, 10.0, 8.0)]


@pytest.mark.parametrize("words", ["pull-ups 4x4 +10", "pull-ups 5 +10, dips 8 reps"])
def test_a_whole_report_told_again_counts_once(trained: Chat, words: str) -> None:
    trained.answer("mira", words, "18:00")
    before = sets(trained), sets(trained, "dip")
    trained.answer("mira", words, "18:10")

    assert (sets(trained), sets(trained, "dip")) == before


def test_a_set_of_yesterday_told_twice_counts_once(trained: Chat) -> None:
    for at in ("09:00", "09:05"):
        trained.answer("mira", "yesterday pull-ups 5 +10 @8", at, "2027-01-05")

    assert sets(trained) == [(5, 10.0, 8.0)]


def test_a_set_a_side_of_the_rung_is_one_set(trained: Chat) -> None:
    for at in ("18:00", "18:03"):
        trained.answer("mira", "archers 1 each side @7", at)

    assert sets(trained, "archer_ring_elbow") == [(1, 0.0, 7.0)] * 4


def test_what_puts_a_set_right_is_no_other_set_and_leaves_the_other_side(trained: Chat) -> None:
    trained.answer("mira", "archers 1 each side @7", "18:00")
    trained.answer("mira", "archers left was only 0", "18:03")

    assert [reps for reps, _, _ in sets(trained, "archer_ring_elbow")] == [0, 1]


@pytest.mark.parametrize(
    ("language", "told", "words"),
    [
        ("en", "pull-ups 5 +10 @8", "one more"),
        ("en", "pull-ups 5 +10 @8", "another set"),
        ("de", "Klimmzüge 5 +10 @8", "noch einer"),
        ("de", "Klimmzüge 5 +10 @8", "nochmal"),
        ("es", "dominadas 5 +10 @8", "otra"),
        ("es", "dominadas 5 +10 @8", "una más"),
    ],
)
def test_one_more_is_the_set_told_last(
    of_language: Callable[[str], Chat], language: str, told: str, words: str
) -> None:
    chat = of_language(language)
    chat.answer("mira", told, "18:00")
    chat.answer("mira", words, "18:03")
    chat.answer("mira", f"{words} @9", "18:06")

    assert sets(chat) == [(5, 10.0, 8.0), (5, 10.0, None), (5, 10.0, 9.0)]
    assert not chat.record().pain


def test_one_more_of_nothing_is_none(trained: Chat) -> None:
    trained.answer("mira", "one more", "18:00")
    trained.answer("mira", "pull-ups 4x4 +10", "18:01")
    trained.answer("mira", "another", "20:30")

    assert len(sets(trained)) == 4


def test_a_day_told_set_by_set_is_shown_as_one() -> None:
    chat = Chat(athlete("mira"))
    chat.waits_until("08:00")
    for at in ("18:00", "18:03", "18:06", "18:09"):
        chat.answer("mira", "pull-ups 5 +10 @8", at)

    shown = "Mon 4 Jan: pull-ups 4×5 +10 kg, RPE 8"
    assert shown in chat.answer("mira", "what did I do today?", "18:10")
    assert chat.answer("coach", "mira", "18:11").count("Mon 4 Jan: pull-ups") == 1
    chat.close()


def test_set_by_set_leads_to_the_same_plan_as_one_report(two: Chat) -> None:
    two.waits_until("08:00")
    two.answer("mira", "pull-ups 4x4 +11.25, all @7", "18:00")
    for at in ("18:00", "18:03", "18:06", "18:09"):
        two.answer("tom", "pull-ups 4 +11.25 @7", at)

    assert two.answer("mira", "this week?", "20:00", "2027-01-10") == two.answer(
        "tom", "this week?", "20:00", "2027-01-10"
    )
