"""Small wishes that are carried out: other units, another hour, a movement taken out of a report."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from tests.bot.conversation.conftest import Chat


def movements(chat: Chat) -> set[str]:
    return {work.movement for one in chat.record().sessions if not one.is_test for work in one.sets}


@pytest.mark.parametrize(
    ("language", "report", "words", "said"),
    [
        ("en", "pull-ups 4x4 +15, push-ups 3x20", "delete the pushups", "Taken back: push-ups 3×20"),
        ("en", "pull-ups 4x4 +15, push-ups 3x20", "take out the push-ups please", "Taken back: push-ups 3×20"),
        ("de", "Klimmzüge 4x4 +15, Liegestütze 3x20", "lösch die Liegestütze", "Zurückgenommen: Liegestütze 3×20"),
        ("es", "dominadas 4x4 +15, flexiones 3x20", "borra las flexiones", "Deshecho: flexiones 3×20"),
    ],
)
def test_a_movement_is_taken_out_of_its_report_and_comes_back(
    of_language: Callable[[str], Chat], language: str, report: str, words: str, said: str
) -> None:
    chat = of_language(language)
    chat.answer("mira", report, "18:00")

    assert said in chat.answer("mira", words, "18:05")
    assert movements(chat) == {"pull_up"}
    chat.answer("mira", "undo", "18:06")
    assert movements(chat) == {"pull_up", "push_up"}


def test_the_only_movement_can_be_taken_out_and_told_again(chat: Chat) -> None:
    chat.answer("mira", "push-ups 3x20", "18:00")
    chat.answer("mira", "delete the pushups", "18:05")
    assert not movements(chat)

    chat.answer("mira", "push-ups 3x15", "18:06")
    assert movements(chat) == {"push_up"}


@pytest.mark.parametrize("words", ["delete the pushups", "remove the last set of push-ups", "drop the push-ups to 15"])
def test_what_was_not_told_or_means_more_is_not_taken_out(chat: Chat, words: str) -> None:
    chat.answer("mira", "pull-ups 4x4 +15", "18:00")
    chat.answer("mira", words, "18:05")

    assert movements(chat) == {"pull_up"}


@pytest.mark.parametrize(
    ("language", "words", "said"),
    [
        ("en", "in pounds please", "in pounds"),
        ("en", "switch to lbs", "in pounds"),
        ("de", "in Pfund bitte", "in Pfund"),
        ("es", "en libras por favor", "en libras"),
    ],
)
def test_loads_are_shown_and_read_in_the_unit_asked_for(
    of_language: Callable[[str], Chat], language: str, words: str, said: str
) -> None:
    chat = of_language(language)
    chat.waits_until("08:00")

    assert said in chat.answer("mira", words, "18:00")
    chat.answer("mira", "pull ups 4x4 +22", "18:05")
    assert [round(one.load_kg, 1) for one in chat.record().sessions[-1].sets] == [10.0] * 4


@pytest.mark.parametrize(
    ("language", "words", "hour", "in_utc"),
    [
        ("en", "send the plan at 8", "08:00", "07:00"),
        ("en", "can you send my plan at 6:15 am?", "06:15", "05:15"),
        ("de", "schick mir den Plan bitte um 8 Uhr", "08:00", "07:00"),
        ("es", "manda el plan a las 8", "08:00", "07:00"),
    ],
)
def test_the_plan_comes_at_the_hour_asked_for(
    of_language: Callable[[str], Chat], language: str, words: str, hour: str, in_utc: str
) -> None:
    chat = of_language(language)
    chat.waits_until("09:00")

    assert hour in chat.answer("mira", words, "18:00")
    sent = [one for one in chat.waits_until("12:00", "2027-01-07") if one["plan"] and one["to"] == "mira"]
    assert [one["at"][:16] for one in sent] == [f"2027-01-07T{in_utc}"]


def test_an_hour_at_which_a_plan_is_of_no_use_is_asked_again(chat: Chat) -> None:
    assert "between 04:00 and 21:00" in chat.answer("mira", "send the plan at 11pm", "18:00")


@pytest.mark.parametrize("words", ["send me the plan", "pull-ups 4x4 in pounds", "the plan at 8 reps was hard"])
def test_other_words_set_nothing(chat: Chat, words: str) -> None:
    chat.waits_until("08:00")

    assert "From now on" not in chat.answer("mira", words, "18:00")


@pytest.mark.parametrize(
    ("language", "report", "words"),
    [
        ("en", "done", "forgot the hollow hold, didn't do it"),
        ("en", "done", "skipped the hollow hold"),
        ("de", "alles gemacht", "Hollow Hold hab ich nicht gemacht"),
        ("es", "todo hecho", "no hice el hollow hold"),
    ],
)
def test_what_was_not_done_after_all_is_taken_out_of_today(
    of_language: Callable[[str], Chat], language: str, report: str, words: str
) -> None:
    chat = of_language(language)
    chat.waits_until("08:00")
    chat.answer("mira", report, "18:00")
    assert "hollow_hold" in movements(chat)
    chat.answer("mira", words, "18:05")

    assert "hollow_hold" not in movements(chat)
    assert "pull_up" in movements(chat)


def test_what_was_not_done_today_stays_in_the_report_of_another_day(chat: Chat) -> None:
    chat.answer("mira", "pull-ups 4x4 +15, dips 3x8", "18:00")
    chat.answer("mira", "skipped the dips", "18:00", "2027-01-07")

    assert movements(chat) == {"pull_up", "dip"}
