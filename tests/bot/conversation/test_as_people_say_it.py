"""What a fresh reader of the bot's answers stumbled over: equipment of some days, sore places, stops, long words."""

from datetime import date

import pytest

from bot.conversation.travels import told_of_equipment

USUAL = frozenset({"bar", "rings", "belt"})


@pytest.mark.parametrize(
    ("words", "left"),
    [
        ("next week I only have rings", {"rings"}),
        ("I only have a bar, no rings, no belt", {"bar"}),
        ("no rings no belt only a bar", {"bar"}),
        (
            "there's a gym with a pulldown machine and dumbbells but no bar",
            {"belt", "rings", "lat_pulldown", "dumbbells"},
        ),
        ("my belt broke", {"bar", "rings"}),
        ("nur ringe diese woche", {"rings"}),
        ("sin barra hasta el viernes", {"belt", "rings"}),
        ("I have bands now too", {"bar", "belt", "rings", "bands"}),
    ],
)
def test_what_there_is_to_train_with_is_told_word_by_word(words, left):
    told = told_of_equipment(words)
    assert told is not None
    assert told.of(USUAL) == left


@pytest.mark.parametrize(
    ("words", "since", "until"),
    [
        ("next week I only have rings", date(2027, 1, 11), date(2027, 1, 17)),
        ("no bar here until sunday", date(2027, 1, 4), date(2027, 1, 10)),
        ("I have no belt this week", date(2027, 1, 4), date(2027, 1, 10)),
        ("I forgot my belt today", date(2027, 1, 4), date(2027, 1, 4)),
        ("my belt broke yesterday", date(2027, 1, 4), None),
        ("my belt broke", date(2027, 1, 4), None),
    ],
)
def test_equipment_holds_for_the_days_that_are_said(chat, words, since, until):
    chat.answer("mira", words, "08:00")
    (fact,) = chat.record().equipment

    assert (fact.since, fact.until) == (since, until)


def test_the_worst_of_a_day_is_what_its_pain_counts_as(chat):
    chat.waits_until("08:00")
    answer = chat.answer("mira", "done as planned. left elbow 4 during, 1 now", "18:00")

    assert "fine" not in answer


def test_the_next_morning_asks_about_the_sorest_place(chat):
    chat.waits_until("08:00")
    chat.answer("mira", "done as planned. left elbow 3 right elbow 2", "18:00")
    asked = [one["text"] for one in chat.waits_until("08:00", "2027-01-05") if one["to"] == "mira"]

    assert any("left elbow" in text for text in asked)


def test_feeling_fine_lifts_no_stop_and_reaches_the_coach(chat):
    chat.waits_until("08:00")
    chat.answer("mira", "felt a pop in my elbow", "18:00")
    sent = chat.says("mira", "I'm fine now", "18:05")

    assert any(one["to"] == "mira" and "stays stopped" in one["text"] for one in sent)
    assert any(one["to"] == "coach" and "fine again" in one["text"] for one in sent)


def test_a_long_text_is_passed_on_whole(chat):
    words = "long word " * 300
    sent = chat.says("coach", f"tell mira: {words}", "08:30")

    assert any(one["to"] == "mira" and one["text"].count("long word") == 300 for one in sent)


@pytest.mark.parametrize(
    "words", ["same", "still 3", "immer noch 3", "sigue igual", "same as yesterday", "gleich wie gestern"]
)
def test_pain_may_be_told_by_what_it_was(chat, words):
    chat.waits_until("08:00")
    chat.answer("mira", "done as planned. left elbow 3", "18:00")
    chat.answer("mira", words, "08:00", "2027-01-05")

    told = chat.record().pain[-1]
    assert (told.site, told.side, told.score, told.when) == ("elbow", "left", 3.0, "morning")


def test_worse_is_asked_for_its_number(chat):
    chat.waits_until("08:00")
    chat.answer("mira", "done as planned. left elbow 3", "18:00")

    assert "left elbow" in chat.answer("mira", "worse", "08:00", "2027-01-05")
    chat.answer("mira", "5", "08:01", "2027-01-05")
    assert chat.record().pain[-1].score == 5.0


def test_a_score_does_not_go_into_the_sets_that_an_older_question_is_about(chat):
    chat.waits_until("08:00")
    chat.answer("mira", "pull-ups 4x4 +11.25, last set 8", "19:00")
    chat.answer("mira", "elbow left 3", "19:01")
    chat.answer("mira", "still 3", "08:00", "2027-01-05")

    assert {one.reps for one in chat.record().sessions[-1].sets} == {4}
    assert chat.record().pain[-1].when == "morning"


@pytest.mark.parametrize(
    "words",
    [
        "my doctor said no pulling for 2 weeks",
        "physio says no pull-ups until february",
        "I'm 8 weeks pregnant",
        "I broke my finger",
        "mein arzt sagt 2 wochen nix ziehen",
        "el medico me dijo nada de tirar por 2 semanas",
    ],
)
def test_a_doctors_word_reaches_the_coach_at_once(chat, words):
    chat.waits_until("08:00")
    sent = chat.says("mira", words, "10:00")

    assert any(one["to"] == "coach" and words in one["text"] for one in sent)
    assert not any("👍" in one["text"] for one in sent)


@pytest.mark.parametrize("words", ["I'm not going away after all", "my trip got cancelled", "bin doch nicht weg"])
def test_a_journey_that_is_called_off_stops_nothing(chat, words):
    chat.waits_until("08:00")
    chat.answer("mira", "away 25 to 29 january", "10:00")
    assert chat.record().absences
    chat.answer("mira", words, "10:02")

    assert not chat.record().absences


@pytest.mark.parametrize("words", ["missed it", "I missed it"])
def test_a_session_may_be_missed_in_the_words_of_the_button(chat, words):
    chat.waits_until("08:00")
    chat.answer("mira", words, "19:00")

    assert [one.kind for one in chat.record().absences] == ["missed"]


@pytest.mark.parametrize(
    "words",
    [
        "the gym here has a pulldown machine but no bar",
        "next week I only have a bar, no rings, no belt",
        "traveling 11 to 15 january, no rings no belt only a bar",
        "could you give me 6 reps at 20 on thursday",
        "planning 4x4 at 12.5 tonight",
        "pienso hacer 4x4 con 2,5 esta noche",
        "me voy de vacas del 18 al 29, sin material",
    ],
)
def test_what_is_there_or_wished_for_is_no_session(chat, words):
    chat.waits_until("08:00")
    before = len(chat.record().sessions)
    chat.answer("mira", words, "10:00")

    assert len(chat.record().sessions) == before


@pytest.mark.parametrize("words", ["what did I do today?", "was hab ich gestern gemacht?", "qué hice ayer?"])
def test_who_asks_what_they_did_is_told(chat, words):
    chat.waits_until("08:00")
    chat.answer("mira", "pull-ups 4x4 +11.25 @7", "18:00")

    assert "4×4" in chat.answer("mira", words, "18:05")


@pytest.mark.parametrize("words", ["I broke my record yesterday!", "broke my belt"])
def test_a_record_broken_is_no_doctors_word(chat, words):
    chat.waits_until("08:00")
    assert "doctor" not in chat.answer("mira", words, "10:00")
