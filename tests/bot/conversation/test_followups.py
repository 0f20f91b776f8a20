"""One report in several messages, and what is said once."""

from __future__ import annotations

import pytest

from tests.bot.conversation.conftest import Chat, athlete


def sets_of(chat):
    sessions = [one for one in chat.record().sessions if not one.is_test]
    return [(one.movement, one.reps, one.load_kg, one.rpe) for session in sessions for one in session.sets]


@pytest.mark.parametrize(("language", "words"), [("en", "last one @8"), ("de", "letzter @8"), ("es", "la última @8")])
def test_an_effort_told_after_belongs_to_what_was_done_and_not_to_the_plan(language, words):
    chat = Chat(athlete("mira", language=language))
    chat.waits_until("08:00")
    chat.answer("mira", "pull ups 4x4 +20", "18:00")
    chat.answer("mira", words, "18:01")

    assert sets_of(chat) == [("pull_up", 4, 20.0, None)] * 3 + [("pull_up", 4, 20.0, 8.0)]
    chat.close()


def test_three_messages_are_one_report_with_one_question(chat):
    chat.waits_until("08:00")
    answers = [
        chat.answer("mira", words, f"18:0{at}")
        for at, words in enumerate(("pull ups 4x4 +20", "last one @8", "archers 2x1 per side", "elbow 2"))
    ]

    assert sum(answer.count("Any pain") for answer in answers) == 1
    assert len(sets_of(chat)) == 4 + 4
    assert chat.record().pain[-1].score == 2


def test_the_rest_as_planned_leaves_out_what_was_told(chat):
    chat.waits_until("08:00")
    chat.answer("mira", "pull ups 4x4 +20", "18:00")
    chat.answer("mira", "rest as planned", "18:01")

    assert [one for one in sets_of(chat) if one[0] == "pull_up"] == [("pull_up", 4, 20.0, None)] * 4
    assert {one[0] for one in sets_of(chat)} > {"pull_up", "archer_ring_elbow"}


def test_a_scheme_put_right_without_its_movement_is_the_work_s_and_no_warm_up_s(chat):
    chat.waits_until("08:00")
    chat.answer("mira", "scapular pull-ups 1x5, pull ups 4x4 +20", "18:00")
    chat.answer("mira", "actually it was 4x3", "18:01")

    assert sets_of(chat) == [("scapular_pull_up", 5, 0.0, None)] + [("pull_up", 3, 20.0, None)] * 4


@pytest.mark.parametrize(
    ("language", "words"), [("en", "the last one was 9"), ("de", "der letzte war 9"), ("es", "la última fue 9")]
)
@pytest.mark.parametrize(
    ("button", "last"), [(0, (9, 20.0, None)), (1, (4, 9.0, None)), (2, (4, 20.0, 9.0))], ids=["reps", "load", "effort"]
)
def test_a_bare_nine_of_the_last_is_asked_and_mends_what_was_told(language, words, button, last):
    chat = Chat(athlete("mira", language=language))
    chat.waits_until("08:00")
    chat.answer("mira", "pull ups 4x4 +20", "18:00")
    chat.answer("mira", words, "18:01")
    labels = chat.heard[-1]["buttons"]
    chat.says("mira", None, "18:02", press=labels[button])

    assert sets_of(chat) == [("pull_up", 4, 20.0, None)] * 3 + [("pull_up", *last)]
    chat.close()


def test_a_report_told_again_with_its_effort_counts_once(chat):
    chat.answer("mira", "pull ups 4x4 +20", "18:00")
    chat.answer("mira", "pull ups 4x4 +20 last @8", "18:01")

    assert sets_of(chat) == [("pull_up", 4, 20.0, None)] * 3 + [("pull_up", 4, 20.0, 8.0)]


def test_what_a_pain_changes_is_told_once(chat):
    chat.answer("mira", "pull ups 4x4 +15, left elbow 4", "18:00")
    first = chat.answer("mira", "left elbow 4 this morning", "08:00", "2027-01-05")
    again = chat.answer("mira", "left elbow 3", "12:00", "2027-01-05")

    assert "a step down" in first
    assert "a step down" not in again
    assert "left elbow 3/10" in again


def test_a_stop_is_told_each_time(chat):
    chat.answer("mira", "left elbow 7", "09:00")

    assert "stop everything that loads it" in chat.answer("mira", "left elbow 7", "12:00")


@pytest.mark.parametrize(
    ("words", "dips"),
    [
        ("dips were at +10", [(8, 10.0)] * 3),
        ("first set of dips was 6", [(6, 0.0), (8, 0.0), (8, 0.0)]),
        ("and the last dip set was only 5", [(8, 0.0), (8, 0.0), (5, 0.0)]),
        ("with 20 kg", [(8, 20.0)] * 3),
        ("dips 1x5", [(8, 0.0)] * 3 + [(5, 0.0)]),
        ("one more set of dips, 6 reps", [(8, 0.0)] * 3 + [(6, 0.0)]),
    ],
)
def test_what_is_said_of_told_sets_mends_them_and_more_sets_are_more(chat, words, dips):
    chat.waits_until("08:00")
    chat.answer("mira", "dips 3x8", "18:00")
    chat.answer("mira", words, "18:01")

    assert sets_of(chat) == [("dip", reps, load, None) for reps, load in dips]


def test_an_effort_of_a_movement_told_before_is_its_last_sets(chat):
    chat.answer("mira", "pull ups 2x3 +15, dips 3x8", "18:00")
    chat.answer("mira", "rpe 8 on dips", "18:01")

    assert sets_of(chat)[-1] == ("dip", 8, 0.0, 8.0)
    assert [session.session_rpe for session in chat.record().sessions if not session.is_test] == [None]


def test_the_effort_of_a_session_is_kept_when_its_sets_were_told_before(chat):
    chat.answer("mira", "dips 3x8", "18:00")
    chat.answer("mira", "rpe 8, 60 min", "18:01")

    assert [(one.session_rpe, one.duration_min) for one in chat.record().sessions][-1] == (8.0, 60.0)


def test_a_set_missed_of_those_told_is_asked_for_its_reps(chat):
    chat.answer("mira", "dips 3x8", "18:00")
    asked = chat.answer("mira", "dips last one failed", "18:01")
    chat.answer("mira", "6", "18:02")

    assert "how many reps" in asked
    assert sets_of(chat) == [("dip", 8, 0.0, None), ("dip", 8, 0.0, None), ("dip", 6, 0.0, None)]


def test_a_load_told_alone_is_the_works_and_not_the_warm_ups(chat):
    chat.waits_until("08:00")
    chat.answer("mira", "done", "18:00")
    before = [one for one in sets_of(chat) if one[0] == "pull_up"]
    chat.answer("mira", "with 20 kg", "18:01")

    most = max(load for _, _, load, _ in before)
    assert [one for one in sets_of(chat) if one[0] == "pull_up"] == [
        (name, reps, 20.0 if load == most else load, rpe) for name, reps, load, rpe in before
    ]


@pytest.mark.parametrize(
    ("language", "first", "then"),
    [
        ("en", "left elbow 3", "no, right"),
        ("de", "Ellbogen links 3", "nein rechts"),
        ("es", "codo izquierdo 3", "era el derecho"),
    ],
)
def test_a_pain_may_be_the_other_sides_after_all(language, first, then):
    chat = Chat(athlete("mira", language=language))
    chat.waits_until("08:00")
    chat.answer("mira", first, "09:00")
    chat.answer("mira", then, "09:01")

    assert [(one.site, one.side, one.score) for one in chat.record().pain] == [("elbow", "right", 3)]
    chat.close()


@pytest.mark.parametrize(
    ("told", "then"), [("left elbow 3, right elbow 1", "no, right"), ("left elbow 3", "right, thanks")]
)
def test_a_side_named_in_passing_exchanges_nothing(chat, told, then):
    chat.waits_until("08:00")
    chat.answer("mira", told, "09:00")
    before = chat.record().pain
    chat.answer("mira", then, "09:01")

    assert chat.record().pain == before


@pytest.mark.parametrize(
    ("words", "asked"),
    [("one more, 3 reps", "did not find"), ("one more at +20", "What were the sets of “one more at +20”?")],
)
def test_what_says_too_little_changes_nothing_and_asks_to_be_told(chat, words, asked):
    chat.waits_until("08:00")
    chat.answer("mira", "pull ups 4x4 +15", "18:00")
    answer = chat.answer("mira", words, "18:01")

    assert asked in answer
    assert sets_of(chat) == [("pull_up", 4, 15.0, None)] * 4


def test_a_further_set_that_was_asked_about_stands_beside_those_told(chat):
    chat.waits_until("08:00")
    chat.answer("mira", "pull ups 4x4 +15", "18:00")
    chat.answer("mira", "one more at +20", "18:01")
    chat.answer("mira", "pull-ups 1x3 +20", "18:02")

    assert sets_of(chat) == [("pull_up", 4, 15.0, None)] * 4 + [("pull_up", 3, 20.0, None)]


@pytest.mark.parametrize(
    ("words", "sets"),
    [
        ("only 3 on the last", [(4, None)] * 3 + [(3, None)]),
        ("last one @8", [(4, None)] * 3 + [(4, 8.0)]),
        ("actually it was 3x4", [(4, None)] * 3),
    ],
)
def test_the_last_and_the_scheme_are_those_of_the_report_before(chat, words, sets):
    chat.waits_until("08:00")
    chat.answer("mira", "pull ups 4x4 +15", "18:00")
    chat.answer("mira", words, "18:01")

    assert sets_of(chat) == [("pull_up", reps, 15.0, rpe) for reps, rpe in sets]


def test_a_later_report_takes_the_plans_load_like_a_first_one(chat):
    chat.waits_until("08:00")
    chat.answer("mira", "archers 2x1 per side", "18:00")
    chat.answer("mira", "pull ups 4x4", "18:01")

    assert {one[2] for one in sets_of(chat) if one[0] == "pull_up"} == {11.25}


OTHER_DAY = ("19:00", "2027-01-07")


def reps_on(chat: Chat, day: str, movement: str) -> list[int | float | None]:
    told = [work for one in chat.record().sessions if str(one.on) == day for work in one.sets]
    return [work.hold_s or work.reps for work in told if work.movement == movement]


@pytest.mark.parametrize(
    ("language", "report", "later", "words"),
    [
        ("en", "pull-ups 4x4 +15, dips 3x10", "pull-ups 4x6 +10", "sorry it was 12 dips"),
        ("en", "pull-ups 4x4 +15, dips 3x10", "pull-ups 4x6 +10", "on monday it was 12 dips"),
        ("en", "pull-ups 4x4 +15, dips 3x10", "pull-ups 4x6 +10", "sorry, monday's dips were 3x12"),
        ("de", "Klimmzüge 4x4 +15, Dips 3x10", "Klimmzüge 4x6 +10", "sorry es waren 12 Dips"),
        ("de", "Klimmzüge 4x4 +15, Dips 3x10", "Klimmzüge 4x6 +10", "Dips am Montag waren 12"),
        ("es", "dominadas 4x4 +15, fondos 3x10", "dominadas 4x6 +10", "perdón, eran 12 fondos"),
    ],
)
def test_sets_of_another_day_are_put_right_and_not_added(of_language, language, report, later, words):
    chat = of_language(language)
    chat.answer("mira", report, "18:00")
    chat.answer("mira", later, *OTHER_DAY)
    chat.answer("mira", words, "19:05", "2027-01-07")

    assert reps_on(chat, "2027-01-04", "dip") == [12, 12, 12]
    assert reps_on(chat, "2027-01-07", "dip") == []


@pytest.mark.parametrize(
    ("language", "words"),
    [
        ("en", "only 20 s hollow hold"),
        ("en", "hollow hold only 20 s"),
        ("de", "nur 20 s Hollow Hold"),
        ("es", "solo 20 s de hollow hold"),
    ],
)
def test_less_of_each_set_told_is_no_further_set(of_language, language, words):
    chat = of_language(language)
    chat.answer("mira", "pull-ups 4x4 +15, hollow hold 2x30s", "18:00")
    for at in ("18:05", "18:06"):
        chat.answer("mira", words, at)

    assert reps_on(chat, "2027-01-04", "hollow_hold") == [20, 20]


@pytest.mark.parametrize("words", ["sorry, pull-ups were 4x5", "sorry it was 4x5 pull-ups"])
def test_sets_told_otherwise_take_the_place_of_the_first_with_their_load(chat, words):
    chat.answer("mira", "pull-ups 4x4 +15, dips 3x10", "18:00")
    chat.answer("mira", words, "18:05")

    assert [one for one in sets_of(chat) if one[0] == "pull_up"] == [("pull_up", 5, 15.0, None)] * 4


def test_reps_of_told_sets_are_no_load(chat):
    chat.answer("mira", "pull-ups 4x4 +11.25", "18:00")
    chat.answer("mira", "sorry it was 12 pull-ups", "18:05")

    assert sets_of(chat) == [("pull_up", 12, 11.25, None)] * 4


def test_a_number_asked_for_of_told_sets_puts_them_right(chat):
    chat.answer("mira", "pull-ups 4x4 +15, dips 3x10", "18:00")
    chat.answer("mira", "dips were 12", "18:05")
    chat.says("mira", None, "18:06", press="12 reps")

    assert reps_on(chat, "2027-01-04", "dip") == [12, 12, 12]


def test_more_of_another_day_s_movement_is_a_report(chat):
    chat.answer("mira", "pull-ups 4x4 +15, dips 3x10", "18:00")
    chat.answer("mira", "pull-ups 4x6 +10", *OTHER_DAY)
    chat.answer("mira", "dips 3x12", "19:05", "2027-01-07")

    assert reps_on(chat, "2027-01-07", "dip") == [12, 12, 12]


def test_sets_by_side_behind_their_number_are_told_once(chat):
    for at in ("18:00", "18:05"):
        chat.answer("mira", "archers, ring at elbow height 2 sets: left 2,2 right 2,1", at)

    assert reps_on(chat, "2027-01-04", "archer_ring_elbow") == [2, 2, 2, 1]


@pytest.mark.parametrize(
    ("language", "words"),
    [
        ("en", "next monday I did pull-ups 4x4 +15"),
        ("de", "nächsten Montag hab ich Klimmzüge 4x4 +15 gemacht"),
        ("es", "el próximo lunes hice dominadas 4x4 +15"),
    ],
)
def test_what_was_done_on_a_day_to_come_is_asked(of_language, language, words):
    chat = of_language(language)
    before = len(chat.record().sessions)
    chat.answer("mira", words, "18:00")

    assert "?" in chat.heard[-1]["text"]
    assert len(chat.record().sessions) == before


@pytest.mark.parametrize(
    ("language", "report", "words"),
    [
        ("en", "done", "actually only 3 sets of pull-ups"),
        ("de", "alles gemacht", "doch nur 3 Sätze Klimmzüge"),
        ("es", "todo hecho", "en realidad solo 3 series de dominadas"),
    ],
)
def test_fewer_sets_are_those_of_the_work_and_none_that_warm_up(of_language, language, report, words):
    chat = of_language(language)
    chat.waits_until("08:00")
    chat.answer("mira", report, "18:00")
    chat.answer("mira", words, "18:05")

    assert reps_on(chat, "2027-01-04", "pull_up") == [3, 4, 4, 4]


@pytest.mark.parametrize(
    ("language", "report", "words"),
    [
        ("en", "on saturday I did 3x5 pull-ups +10", "no wait that was friday"),
        ("de", "am Samstag Klimmzüge 3x5 +10", "Moment, das war Freitag"),
        ("es", "el sábado hice dominadas 3x5 +10", "perdón, fue el viernes"),
    ],
)
def test_a_report_goes_to_the_day_that_is_named_then(of_language, language, report, words):
    chat = of_language(language)
    chat.answer("mira", report, "18:00")
    chat.answer("mira", words, "18:05")

    assert reps_on(chat, "2027-01-01", "pull_up") == [5, 5, 5]
    assert reps_on(chat, "2027-01-02", "pull_up") == [5]  # the test of the roster
