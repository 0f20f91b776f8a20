"""What a coach meets in a month: clips that wait, steps of every week, orders for everyone, tests, half sentences."""

from __future__ import annotations

import pytest

from tests.bot.conversation.conftest import Chat, athlete
from tests.bot.conversation.test_away import SUNDAY, summary


def orders(chat: Chat) -> list[str]:
    return [one.kind for one in chat.record().orders]


def clip(chat: Chat, at: str) -> None:
    chat.says("mira", "archer left", at, video=f"clip-{at}")


def test_clips_that_wait_are_in_the_week_with_a_button_for_all_of_them(two: Chat) -> None:
    clip(two, "18:00")
    clip(two, "18:05")
    (message,) = summary(two)

    assert "Mira: 2 clips wait to be seen, the oldest of Mon 4 Jan." in message["text"].split("Fine")[0]
    answers = two.says("coach", None, "20:05", SUNDAY, press="Seen: Mira")
    assert answers[0]["text"] == "Mira: 2 clips marked as seen."
    assert all(one.seen_by_coach for one in two.record().clips)


def test_a_clip_that_came_after_the_week_is_not_marked_by_its_button(two: Chat) -> None:
    clip(two, "18:00")
    summary(two)
    two.says("mira", "archer right", "20:02", SUNDAY, video="clip-late")
    two.says("coach", None, "20:05", SUNDAY, press="Seen: Mira")

    assert [one.seen_by_coach for one in two.record().clips] == [True, False]


def test_the_card_shows_that_a_clip_waits(chat: Chat) -> None:
    clip(chat, "18:00")

    assert "a clip of Mon 4 Jan waits to be seen." in chat.answer("coach", "mira", "19:00")


def test_a_step_of_every_session_is_answered_with_what_can_be_ordered(chat: Chat) -> None:
    answer = chat.answer("coach", "mira +1.25 every session", "08:00")

    assert "NAME +1.25 every monday" in answer
    assert not orders(chat)


@pytest.mark.parametrize("words", ["jon thu -> fri", "jon thu->fri", "thursday → friday jon"])
def test_an_arrow_moves_a_session(words: str) -> None:
    chat = Chat(athlete("jon"))
    chat.waits_until("08:00")

    assert "the session of Thu 7 Jan is on Fri 8 Jan" in chat.answer("coach", words, "09:00")
    chat.close()


def test_who_tests_and_who_is_in_a_deload(two: Chat) -> None:
    assert two.answer("coach", "who tests this week?", "08:00") == "Nobody has a test in the next two weeks."
    late = two.answer("coach", "who tests this week?", "08:00", "2027-02-01")

    assert late.startswith("Tests in the next two weeks: Mira Thu 4 Feb, Tom Thu 4 Feb.")
    assert "In their deload week: Mira, Tom." in late


@pytest.mark.parametrize(
    ("words", "said"),
    [
        ("how are they", "Week to Monday"),
        ("mira lock 10 til sunday", "locked"),
        ("miras elbow", "Mira, Monday 4 January"),
        ("whats toms plan", "The next seven days"),
        ("mira deload next wk", "deload begins on Mon 11 Jan"),
        ("mira hold rung 2wks", "held until Mon 18 Jan"),
        ("who hasnt reported", "No word of today"),
    ],
)
def test_half_sentences_are_understood(two: Chat, words: str, said: str) -> None:
    assert said in two.answer("coach", words, "08:00")


def test_the_roster_names_no_session_where_pain_leaves_it_empty(chat: Chat) -> None:
    chat.waits_until("08:00")
    chat.answer("mira", "both elbows 8/10", "09:00")

    assert "next none" in chat.answer("coach", "roster", "09:05")
