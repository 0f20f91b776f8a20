"""An order acts only where every word of it was understood; words for an athlete stay words."""

from __future__ import annotations

from datetime import date, timedelta

import pytest
import sqlalchemy as sa

from bot.conversation.coach_words import parse
from storage.database import run
from storage.persons import athletes

NAMES = [("mira", "Mira"), ("tom", "Tom"), ("anna_k", "Anna"), ("anna_b", "Anna"), ("msol", "Mira Sol")]
MONDAY = date(2027, 1, 4)


@pytest.mark.parametrize(
    ("language", "words"),
    [
        ("en", "tell mira she may train again when the doctor says so"),
        ("en", "tell mira to pause at the top"),
        ("de", "sag mira sie darf wieder trainieren"),
        ("es", "dile a mira que puede entrenar otra vez"),
    ],
)
def test_what_is_to_be_told_is_no_order(language, words):
    command = parse(words, NAMES, language, MONDAY)

    assert command is not None
    assert (command.verb, command.handle) == ("tell", "mira")


@pytest.mark.parametrize(
    "words",
    [
        "mira may train again when the doctor says so",
        "mira can stop when it hurts",
        "mira is free on friday",
        "mira stay strong",
        "mira 4x3 at -10",
        "mira 4x3 @8",
        "mira 4x3 rpe 8",
        "mira 5x3 with 10 kg assistance",
        "mira 5x3 bananas at 20",
        "mira lock 10 until easter",
        "mira lock 10 until 29 february",
        "mira pause for some weeks",
        "mira pause next week",
        "mira pause from thursday until sunday",
    ],
)
def test_an_order_with_something_odd_in_it_is_not_carried_out(chat, words):
    chat.waits_until("08:00")
    orders, before = chat.record().orders, chat.record().absences
    answer = " ".join(one["text"] for one in chat.says("coach", words, "09:00"))

    assert "Nothing is done" in answer
    assert (chat.record().orders, chat.record().absences) == (orders, before)


@pytest.mark.parametrize(
    ("words", "verb"),
    [
        ("restart mira", "restart"),
        ("mira may train again", "restart"),
        ("mira approved", "approve"),
        ("unlock mira please", "unlock"),
        ("mira pause 2 weeks", "pause"),
        ("mira pause for two weeks", "pause"),
        ("mira pause for the next two weeks please", "pause"),
        ("mira 4x3 weighted at 17.5", "sets"),
        ("mira lock 12.5 this week", "lock"),
        ("mira lock 10 until 1 march", "lock"),
        ("mira 4x3 at 17.5 on thursday", "sets"),
        ("mira move thursday to friday", "move"),
    ],
)
def test_a_whole_order_is_one(words, verb):
    command = parse(words, NAMES, "en", MONDAY)

    assert command is not None
    assert (command.verb, command.handle, command.odd) == (verb, "mira", ())


@pytest.mark.parametrize(
    ("words", "handle"),
    [("tell mira sol: hi", "msol"), ("tell anna: your scan", None), ("mira and tom pause", None)],
)
def test_an_athlete_is_named_by_the_whole_name_and_alone(words, handle):
    command = parse(words, NAMES, "en", MONDAY)

    assert command is not None
    assert command.handle == handle


@pytest.mark.parametrize(
    ("words", "load", "day"),
    [("mira 4x3 on 14 january", None, "2027-01-14"), ("mira 4x3 at 15 thursday 14 january", 15.0, "2027-01-14")],
)
def test_a_date_is_no_load(words, load, day):
    command = parse(words, NAMES, "en", MONDAY)

    assert command is not None
    assert (command.load, str(command.day)) == (load, day)


@pytest.mark.parametrize("words", ["mria: the scan shows a tear", "and mira fewer rows please", "4x3 then rest well"])
def test_words_for_somebody_else_go_to_nobody(chat, words):
    chat.waits_until("08:00")
    chat.answer("mira", "coach, is that enough for today?", "08:30")
    sent = chat.says("coach", words, "09:00")

    assert [one["to"] for one in sent] == ["coach"]


def test_pain_of_the_day_of_a_restart_that_is_told_the_next_day_stops(chat):
    chat.waits_until("08:00")
    chat.answer("mira", "left elbow 7/10", "08:10")
    chat.says("coach", "mira restart", "10:00")
    chat.answer("mira", "yesterday: pull-ups 4x4 +11.25, left elbow 8/10 during the last set", "09:00", "2027-01-05")

    assert not [one for one in chat.record().orders if one.kind == "restart"]


def test_who_wants_no_messages_is_erased_all_the_same(chat):
    chat.waits_until("08:00")
    chat.answer("mira", "delete all my data", "08:10")
    chat.answer("mira", "delete all my data", "08:12")
    chat.says("mira", "stop sending me messages", "08:13")
    chat.waits_until("12:00", "2027-01-06")

    with chat.store.reading() as tx:
        assert not run(tx, sa.select(athletes.c.id).where(athletes.c.handle == "mira")).all()


def test_a_second_thing_that_broke_is_missing_beside_the_first(chat):
    chat.waits_until("08:00")
    chat.answer("mira", "my belt broke", "08:10")
    chat.answer("mira", "and my rings are gone too", "08:20")

    assert {"belt", "rings"}.isdisjoint(chat.record().equipment[-1].has)


@pytest.mark.parametrize(
    ("language", "words", "verb"),
    [
        ("en", "how's everyone", "summary"),
        ("de", "wie geht's allen", "summary"),
        ("de", "mira Dips ausschließen", "exclude"),
    ],
)
def test_a_word_is_found_as_it_is_typed(language, words, verb):
    command = parse(words, NAMES, language, MONDAY)

    assert command is not None
    assert command.verb == verb


@pytest.mark.parametrize(
    ("words", "movement", "load"),
    [("mira pull-ups 4x3 at 12.5", "pull_up", 12.5), ("mira dips 3x5 at 10", "dip", 10.0)],
)
def test_sets_may_be_of_a_movement_by_its_name(chat, words, movement, load):
    chat.waits_until("08:00", "2027-01-05")
    chat.says("coach", f"{words} on thursday", "09:00", "2027-01-05")
    plan = next(one["plan"] for one in chat.waits_until("12:00", "2027-01-07") if one.get("plan"))

    sets = [one for one in plan["sets"] if one["movement"] == movement and one["load_kg"] == load]
    assert len(sets) == int(words.split("x")[0][-1])


@pytest.mark.parametrize(
    ("language", "words"),
    [
        ("en", "move mira from thursday to friday"),
        ("de", "verschiebe mira von donnerstag auf freitag"),
        ("es", "mueve a mira del jueves al viernes"),
    ],
)
def test_a_move_may_say_from_where(language, words):
    command = parse(words, NAMES, language, MONDAY)

    assert command is not None
    assert (command.verb, command.day, command.until) == ("move", date(2027, 1, 7), date(2027, 1, 8))
    assert command.odd == ()


def test_a_pause_from_a_day_to_come_is_not_one_of_now():
    command = parse("mira pause from thursday until sunday", NAMES, "en", MONDAY)

    assert command is not None
    assert command.odd == ("from", "thursday")


@pytest.mark.parametrize(
    ("words", "kind"), [("mira: 4x3 at 10 thursday", "set_sets"), ("mira: hold rung 3 weeks", "hold_rung")]
)
def test_a_whole_order_behind_a_colon_is_carried_out(chat, words, kind):
    chat.waits_until("08:00")
    sent = chat.says("coach", words, "09:00")

    assert [one.kind for one in chat.record().orders] == [kind]
    assert not [one for one in sent if one["to"] == "mira" and "hold rung" in one["text"]]


@pytest.mark.parametrize(
    "said",
    ["tell mira: hold rung 3 weeks", "mira: hold the bar longer", "mira: 4x3 went well", "mira: yes", "mira: ok"],
)
def test_words_behind_a_colon_stay_words(chat, said):
    chat.waits_until("08:00")
    sent = chat.says("coach", said, "09:00")

    assert not chat.record().orders
    assert [one["text"] for one in sent if one["to"] == "mira"] == [f"Inês: {said.partition(': ')[2]}"]


@pytest.mark.parametrize(
    ("words", "until"), [("300 weeks", MONDAY + timedelta(weeks=300)), ("12 weeks", date(2027, 3, 29))]
)
def test_a_span_is_read_with_all_its_digits(words, until):
    command = parse(f"mira hold rung {words}", NAMES, "en", MONDAY)

    assert command is not None
    assert (command.until, command.odd) == (until, ())


@pytest.mark.parametrize("words", ["1000 weeks", "1.5 weeks"])
def test_a_span_that_is_none_is_not_cut_down_to_one(words):
    command = parse(f"mira hold rung {words}", NAMES, "en", MONDAY)

    assert command is not None
    assert command.odd
