"""What people say in passing: more of it, put right, still so; days that nobody can name; whether one may train."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from tests.bot.conversation.conftest import Chat


def test_more_sets_without_a_movement_are_of_the_one_told_last(chat: Chat) -> None:
    chat.answer("mira", "dips 3x8 +5", "18:00")

    assert "dips 5×8 +5 kg" in chat.answer("mira", "2 more sets", "18:05")
    assert len(chat.record().sessions[-1].sets) == 5


def test_an_at_after_a_report_of_that_movement_is_its_effort(chat: Chat) -> None:
    chat.answer("mira", "dips 3x8 +5", "18:00")

    assert "last RPE 9" in chat.answer("mira", "dips were @9", "18:05")
    assert chat.record().sessions[-1].sets[-1].rpe == 9


@pytest.mark.parametrize(
    ("language", "told", "instead"),
    [
        ("en", "left elbow 4", "actually 2"),
        ("de", "Ellbogen links 4", "doch nur 2"),
        ("es", "codo izquierdo 4", "perdón, un 2"),
    ],
)
def test_a_score_put_right_at_once_replaces_it(
    of_language: Callable[[str], Chat], language: str, told: str, instead: str
) -> None:
    chat = of_language(language)
    chat.answer("mira", told, "18:00")
    chat.answer("mira", instead, "18:05")

    assert [(one.site, one.side, one.score) for one in chat.record().pain] == [("elbow", "left", 2)]


def test_a_number_put_right_after_a_report_is_no_pain(chat: Chat) -> None:
    chat.answer("mira", "dips 3x8 +5, left elbow 4", "18:00")
    chat.answer("mira", "actually 2", "18:05")

    assert [one.score for one in chat.record().pain] == [4]


def test_what_still_hurts_is_the_place_told_before(chat: Chat) -> None:
    chat.answer("mira", "left elbow 4", "18:00")

    assert "left elbow" in chat.answer("mira", "still hurts", "18:05")
    chat.answer("mira", "3", "18:06")
    assert [(one.site, one.score) for one in chat.record().pain][-1] == ("elbow", 3)


def test_one_s_own_pain_is_heard_behind_another_s(chat: Chat) -> None:
    chat.answer("mira", "my wife's elbow is at 4, mine is at 1", "18:00")

    assert [(one.site, one.score) for one in chat.record().pain] == [("elbow", 1)]


def test_an_added_load_that_cannot_be_is_asked_for_and_its_number_taken(chat: Chat) -> None:
    assert "cannot be right" in chat.answer("mira", "pull-ups 5x3 +250", "18:00")
    assert "5×3 +25 kg" in chat.answer("mira", "25", "18:05")


@pytest.mark.parametrize("asked", ["can I train?", "can I train today?"])
def test_whether_one_may_train_is_answered_with_the_plan(chat: Chat, asked: str) -> None:
    assert "pull-ups" in chat.answer("mira", asked, "08:00")


def test_whether_one_may_train_tomorrow_moves_nothing(of_language: Callable[[str], Chat]) -> None:
    chat = of_language("de")

    assert "Dienstag, 5. Januar" in chat.answer("mira", "kann ich morgen trainieren?", "08:05")
    assert not chat.record().moves


def test_what_cannot_be_noted_is_not_met_with_a_thumb(chat: Chat) -> None:
    assert "did not find anything" in chat.answer("mira", "scrap the dips", "08:00")


def test_the_other_day_is_taken_from_the_sentence_before(chat: Chat) -> None:
    assert "Moved from Thu 7 Jan to Fri 8 Jan" in chat.answer("mira", "can't do Thursday. Could we do Friday?", "08:00")


def test_an_end_that_nobody_can_name_is_asked_and_put_where_it_stood(chat: Chat) -> None:
    assert "which days" in chat.answer("mira", "pause until mid april", "08:00")
    assert "until Thu 15 Apr" in chat.answer("mira", "15 april", "08:05")


def test_days_missed_are_not_written_down_before_they_are_known(chat: Chat) -> None:
    assert "which days" in chat.answer("mira", "missed the last two sessions", "08:00")
    assert not chat.record().absences
    assert "Missed Sun 3 Jan" in chat.answer("mira", "sunday and monday", "08:05")


def test_a_coach_s_stop_is_a_pause(chat: Chat) -> None:
    assert "paused" in chat.answer("coach", "mira stop", "08:00")
