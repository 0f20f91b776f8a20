"""Away, ill, paused: what the coach reads of it, in the summary and after an order."""

from __future__ import annotations

from datetime import date

import pytest

from tests.bot.conversation.conftest import Chat, athlete

SUNDAY = "2027-01-10"


def summary(chat):
    return [one for one in chat.waits_until("20:00", SUNDAY) if one["to"] == "coach" and one["about"] is None]


def test_who_is_away_is_listed_with_until_when_and_not_as_fine(two):
    two.answer("mira", "pull-ups 4x4 +15 @7", "18:30")
    two.answer("tom", "pull-ups 4x4 +15 @7", "18:30")
    two.answer("mira", "away from tomorrow until 20 january", "18:31")
    (message,) = summary(two)

    away, fine = message["text"].split("Fine (1)")
    assert "Mira: away until Wed 20 Jan" in away
    assert "Tom" in fine
    assert "Mira" not in fine


def test_sets_for_a_day_away_are_answered_with_the_reason(chat):
    chat.answer("mira", "away from tomorrow until 15 january", "18:00")
    chat.says("coach", "mira 4x3 at 17.5 on thursday", "18:05")

    assert "will not be sent. Away from Tue 5 Jan until Fri 15 Jan." in chat.to_coach()[-1]["text"]


def test_sets_for_the_day_a_session_left_name_the_session_that_gives_way(chat):
    chat.answer("mira", "pull-ups 4x4 +15 @7", "10:00")
    chat.answer("mira", "move thursday to friday", "18:00")
    chat.says("coach", "mira 4x3 at 17.5 on thursday", "18:05")

    answer = chat.to_coach()[-1]["text"]
    assert "4×3 +17.5 kg" in answer
    assert "They stand in for the session of Fri 8 Jan" in answer


def test_sets_next_to_a_session_say_that_it_is_near(chat):
    chat.answer("mira", "pull-ups 4x4 +15 @7", "10:00")
    chat.says("coach", "mira 4x3 at 15 on friday", "18:05")

    assert "Thu 7 Jan is nearer than 48 hours" in chat.to_coach()[-1]["text"]


def test_a_pause_after_a_return_on_the_same_day_holds(chat):
    chat.answer("mira", "pausing for 3 weeks", "09:00")
    chat.answer("mira", "I'm back", "09:05")
    answer = chat.answer("mira", "pausing for 2 weeks", "09:10")

    assert "Next training" not in answer or "7 Jan" not in answer
    assert not [one for one in chat.waits_until("12:00", "2027-01-14") if one["plan"] and one["plan"]["sets"]]


def test_a_return_after_that_pause_ends_it(chat):
    for at, words in enumerate(("pausing for 3 weeks", "I'm back", "pausing for 2 weeks", "I'm back")):
        chat.answer("mira", words, f"06:1{at}", "2027-01-05")

    assert [one for one in chat.waits_until("12:00", "2027-01-07") if one["plan"] and one["plan"]["sets"]]


def test_the_days_away_before_such_a_return_stay_days_away(chat):
    chat.answer("mira", "away until 30 january", "09:00")
    chat.answer("mira", "I'm back", "09:00", "2027-01-13")
    chat.answer("mira", "pausing for 1 week", "09:05", "2027-01-13")

    spans = [(one.kind, str(one.since), str(one.until)) for one in chat.record().absences]
    assert ("away", "2027-01-04", "2027-01-12") in spans


def test_a_large_roster_comes_in_messages_that_fit_those_in_need_first():
    chat = Chat(*(athlete(f"a{number}", name=f"Athlete {number}") for number in range(80)))
    chat.waits_until("07:00")
    for number in range(1, 80):
        chat.says(f"a{number}", "done as planned", "18:00")
    chat.says("a5", "my elbow popped", "18:10")
    messages = summary(chat)

    assert all(len(one["text"]) <= 4096 for one in messages)  # the service's limit on a message
    assert "Athlete 5:" in messages[0]["text"]
    assert "Fine" not in messages[0]["text"]
    assert "\n".join(one["text"] for one in messages).count("· Athlete") == 80
    assert all(one["text"].strip() for one in messages)
    chat.close()


def test_who_says_twice_that_they_are_back_was_away_once(chat):
    chat.answer("mira", "away until 30 january", "09:00")
    for at, words in enumerate(("I'm back", "I'm back", "pausing for 1 week")):
        chat.answer("mira", words, f"09:0{at}", "2027-01-13")

    assert [one.kind for one in chat.record().absences] == ["away", "pause"]


@pytest.mark.parametrize(
    ("words", "meant"),
    [
        ("away 30 February to 3 March", "28 february to 3 march"),
        ("away from 3 march to 30 february", "28 february to 3 march"),
        ("away 30/2 - 3/3", "28/2 - 3/3"),
        ("im Urlaub vom 30. Februar bis 3. März", "vom 28. Februar bis 3. März"),
        ("ich bin vom 31.2. bis 3.3. weg", "28. Februar bis 3. März"),
        ("fuera del 28 al 31 de febrero", "del 28 de febrero al 3 de marzo"),
    ],
)
def test_a_day_that_does_not_exist_is_asked_and_nobody_is_away_until_it_is_told(chat, words, meant):
    assert "which days do you mean" in chat.answer("mira", words, "08:00")
    assert not chat.record().absences

    chat.answer("mira", meant, "08:01")
    (away,) = chat.record().absences
    assert (away.since, away.until) == (date(2027, 2, 28), date(2027, 3, 3))


def test_talk_with_a_number_is_no_answer_to_which_days(chat):
    assert "which days do you mean" in chat.answer("mira", "away 30 February to 3 March", "08:00")
    chat.answer("mira", "see you at 18", "08:01")
    assert not chat.record().absences


@pytest.mark.parametrize("words", ["away 28/2 - 3/3", "away 28.2. - 3.3.", "away from 28/2 to 3/3"])
def test_days_of_an_absence_may_be_told_in_figures(chat, words):
    chat.answer("mira", words, "08:00")
    (away,) = chat.record().absences
    assert (away.since, away.until) == (date(2027, 2, 28), date(2027, 3, 3))


@pytest.mark.parametrize(
    ("words", "until"),
    [("sick today, can we do friday instead?", "2027-01-07"), ("flu, can we move thursday to saturday?", "2027-01-08")],
)
def test_who_is_ill_and_moves_a_session_is_ill_until_the_day_before(chat, words, until):
    chat.waits_until("08:00")
    chat.answer("mira", words, "09:00")
    (ill,) = chat.record().absences
    assert (ill.kind, str(ill.since), str(ill.until)) == ("ill", "2027-01-04", until)


def test_the_days_of_a_move_are_not_those_of_a_journey(chat):
    chat.waits_until("08:00")
    answer = chat.answer("mira", "away next weekend, can we do friday instead of thursday?", "09:00")
    assert "From when to when are you away?" in answer
    assert not chat.record().absences
    assert [str(one.moved_to) for one in chat.record().moves] == ["2027-01-08"]
