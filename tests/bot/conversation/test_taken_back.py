""" "Undo" says what is gone, and what stands again because it is."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from storage import persons
from storage.persons import all_coaches
from tests.bot.conversation.conftest import Chat
from tests.bot.conversation.test_mind_changed import absences, moves


def settings(chat: Chat) -> tuple[str, str, bool]:
    with chat.store.reading() as tx:
        found = persons.athlete_by_handle(tx, all_coaches(tx)[0].id or 0, "mira")
        assert found is not None
        return found.unit, f"{found.plan_at:%H:%M}", found.silenced


def test_days_away_are_named_and_the_next_training_with_them(chat: Chat) -> None:
    chat.answer("mira", "away from tomorrow until 20 january", "18:00")

    assert chat.answer("mira", "undo", "18:05") == (
        "Taken back: away from Tue 5 Jan until Wed 20 Jan.\nNext training: Monday 4 January."
    )
    assert not absences(chat)


@pytest.mark.parametrize(
    ("language", "agreed", "changed", "back", "again"),
    [
        ("en", "move thursday to saturday", "no wait, friday", "undo", "As before again: Thu 7 Jan moved to Sat 9 Jan"),
        (
            "de",
            "verschieb Donnerstag auf Samstag",
            "nein, lieber Freitag",
            "rückgängig",
            "Wieder wie zuvor: Do 7. Jan auf Sa 9. Jan verschoben",
        ),
        (
            "es",
            "pasa el jueves al sábado",
            "no, mejor el viernes",
            "deshacer",
            "Otra vez como antes: el jue 7 ene movido al sáb 9 ene",
        ),
    ],
)
def test_what_a_change_of_mind_had_changed_stands_again(
    of_language: Callable[[str], Chat], language: str, agreed: str, changed: str, back: str, again: str
) -> None:
    chat = of_language(language)
    chat.answer("mira", agreed, "18:00")
    chat.answer("mira", changed, "18:05")
    assert moves(chat) == [("2027-01-07", "2027-01-08")]

    assert again in chat.answer("mira", back, "18:10")
    assert moves(chat) == [("2027-01-07", "2027-01-09")]
    chat.answer("mira", back, "18:15")
    assert not moves(chat)


def test_a_journey_called_off_and_then_not_is_agreed_again(chat: Chat) -> None:
    chat.answer("mira", "pull-ups 4x4 +11.25 @7", "17:00")
    chat.answer("mira", "away from friday until 20 january", "18:00")
    chat.answer("mira", "not going after all", "18:05")
    assert not absences(chat)

    assert "As before again: away from Fri 8 Jan until Wed 20 Jan" in chat.answer("mira", "undo", "18:10")
    assert absences(chat) == [("away", "2027-01-08", "2027-01-20")]
    assert chat.record().sessions[-1].sets


@pytest.mark.parametrize(
    ("language", "wish", "back", "again"),
    [
        ("en", "show my loads in pounds", "undo", "As before again: loads in kilograms"),
        ("en", "send the plan at 9", "undo", "As before again: the day's plan at 07:30"),
        ("en", "stop texting me", "undo", "As before again: messages to you"),
        ("de", "zeig mir alles in Pfund", "rückgängig", "Wieder wie zuvor: Lasten in Kilogramm"),
        ("de", "schick den Plan um 9", "rückgängig", "Wieder wie zuvor: der Tagesplan um 07:30"),
        ("es", "muéstrame las cargas en libras", "deshacer", "Otra vez como antes: cargas en kilos"),
        ("es", "manda el plan a las 9", "deshacer", "Otra vez como antes: el plan del día a las 07:30"),
    ],
)
def test_settings_are_as_before_and_the_report_before_them_stays(
    of_language: Callable[[str], Chat], language: str, wish: str, back: str, again: str
) -> None:
    chat = of_language(language)
    chat.answer("mira", "pull-ups 4x4 +11.25 @7", "17:00")
    before = settings(chat)
    chat.answer("mira", wish, "18:00")
    assert settings(chat) != before

    assert again in chat.answer("mira", back, "18:05")
    assert settings(chat) == before
    assert chat.record().sessions[-1].sets


def test_two_settings_are_taken_back_one_after_the_other(chat: Chat) -> None:
    for at, hour in enumerate(("8", "9")):
        chat.answer("mira", f"send the plan at {hour}", f"07:0{at + 1}")

    chat.answer("mira", "undo", "07:05")
    assert settings(chat)[1] == "08:00"
    chat.answer("mira", "undo", "07:06")
    assert settings(chat)[1] == "07:30"
    assert chat.answer("mira", "undo", "07:07") == "There is nothing to take back."


def test_the_plan_comes_at_the_hour_that_is_good_again(chat: Chat) -> None:
    chat.waits_until("08:00")
    chat.answer("mira", "send the plan at 9", "18:00")
    chat.answer("mira", "undo", "18:05")

    assert [one for one in chat.waits_until("07:45", "2027-01-07") if one["plan"]]


def test_who_is_left_alone_no_more_gets_the_next_plan_and_the_coach_hears_of_it(chat: Chat) -> None:
    chat.waits_until("08:00")
    chat.answer("mira", "stop texting me", "18:00")
    chat.answer("mira", "undo", "18:05")

    assert chat.to_coach()[-1]["text"] == "Mira wants messages again."
    assert [one for one in chat.waits_until("08:00", "2027-01-07") if one["plan"]]


def test_a_score_put_right_reads_as_before(chat: Chat) -> None:
    chat.waits_until("08:00")
    chat.answer("mira", "left elbow 3", "18:00")
    chat.answer("mira", "no, right", "18:01")
    answer = chat.answer("mira", "undo", "18:02")

    assert "Taken back: right elbow 3/10." in answer
    assert "As before again: left elbow 3/10." in answer
    assert [(one.side, one.score) for one in chat.record().pain] == [("left", 3)]


def test_all_that_a_message_told_is_named(chat: Chat) -> None:
    chat.waits_until("08:00")
    chat.answer("mira", "bw 61, slept 8h", "18:00")

    assert chat.answer("mira", "undo", "18:01") == "Taken back: 8 h of sleep; 61 kg."


def test_a_coach_takes_back_nothing_of_what_the_athlete_put_aside(chat: Chat) -> None:
    chat.waits_until("08:00")
    chat.answer("mira", "move thursday to saturday", "18:00")
    chat.answer("mira", "no wait, friday", "18:05")

    assert "no order of yours" in chat.answer("coach", "mira undo", "18:10")
    assert moves(chat) == [("2027-01-07", "2027-01-08")]
