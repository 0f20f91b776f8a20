from datetime import date, time

import pytest

from bot.roster import RosterError, parse_roster, read_roster
from planner.facts import Cycle, Weekly

# The example of the rehearsal contract.
ROSTER = """
[coach]
name = "Inês"
timezone = "Europe/Lisbon"
summary = { day = "sunday", at = "18:00" }

[[athlete]]
handle = "mira"
name = "Mira"
timezone = "Europe/Zurich"
language = "en"
unit = "kg"
bodyweight_kg = 62.0
plate_step_kg = 1.25            # smallest change of added load she can make
equipment = ["bar", "rings", "belt"]        # also pulley, bands
training_days = ["monday", "thursday"]
plan_at = "07:30"
ladder = "one_arm_pull_up"
rung = "weighted_pull_up"
screened = true
tests = [ { date = 2027-01-02, movement = "pull_up", reps = 5, load_kg = 15.0, rpe = 9.0 } ]
"""


def line_with(words: str, text: str = ROSTER) -> int:
    return next(number for number, line in enumerate(text.splitlines(), 1) if words in line)


def test_the_roster_of_the_contract_is_read():
    roster = parse_roster(ROSTER)
    mira = roster.athletes[0]
    assert (roster.coach.name, roster.coach.summary_day, roster.coach.summary_at) == ("Inês", 6, time(18))
    assert (mira.handle, mira.plan_at, mira.rung, mira.screened) == ("mira", time(7, 30), "weighted_pull_up", True)
    assert mira.schedule == Weekly(frozenset({0, 3}))
    assert (mira.tests[0].on, mira.tests[0].load_kg) == (date(2027, 1, 2), 15.0)


def test_several_ladders_are_read():
    more = 'more_ladders = [ { ladder = "front_lever", rung = "tuck_front_lever" }, { ladder = "planche" } ]'
    mira = parse_roster(ROSTER.replace('rung = "weighted_pull_up"', f'rung = "weighted_pull_up"\n{more}')).athletes[0]
    assert (mira.ladder, mira.rung) == ("one_arm_pull_up", "weighted_pull_up")
    assert mira.more_ladders == (("front_lever", "tuck_front_lever"), ("planche", None))


@pytest.mark.parametrize(
    ("more", "key"),
    [
        ('{ ladder = "one_arm_pull_up" }', "ladder: 'one_arm_pull_up' is given twice"),
        ('{ ladder = "front_lever" }, { ladder = "front_lever" }', "ladder: 'front_lever' is given twice"),
        ('{ ladder = "front_lever", rung = "archer_shoulder" }', "rung: 'archer_shoulder' should be one of"),
        ('{ rung = "tuck_front_lever" }', "ladder: missing"),
        ('{ ladder = "front_lever", steps = 3 }', "steps: unknown key"),
        ('"front_lever"', "more_ladders: should be a list of tables"),
    ],
)
def test_a_bad_ladder_beside_the_first_is_named_with_its_line(more, key):
    text = ROSTER.replace('rung = "weighted_pull_up"', f'rung = "weighted_pull_up"\nmore_ladders = [ {more} ]')
    with pytest.raises(RosterError) as error:
        parse_roster(text)
    line = line_with("more_ladders", text)
    assert any(f"roster:{line}: {key}" in problem for problem in error.value.problems)


def test_a_cycle_of_days_takes_the_place_of_weekdays():
    text = ROSTER.replace(
        'training_days = ["monday", "thursday"]', "cycle = { days = 8, train = [1, 3, 5, 7], from = 2027-01-04 }"
    )
    assert parse_roster(text).athletes[0].schedule == Cycle(8, frozenset({1, 3, 5, 7}), date(2027, 1, 4))


def test_a_plate_step_in_pounds_stays_in_pounds():
    mira = parse_roster(ROSTER.replace("plate_step_kg = 1.25", "plate_step_lb = 2.5")).athletes[0]
    assert (mira.plate_step, mira.plate_unit) == (2.5, "lb")


@pytest.mark.parametrize(
    ("good", "bad", "key"),
    [
        ('name = "Inês"', 'name = "Inês"\ncolour = "red"', "colour"),
        ('name = "Inês"', "name = 3", "name"),
        ('timezone = "Europe/Lisbon"', 'timezone = "Lisbon"', "timezone"),
        ('timezone = "Europe/Lisbon"', "", "timezone"),
        ('day = "sunday"', 'day = "someday"', "day"),
        ('at = "18:00"', 'at = "25:00"', "at"),
        ('handle = "mira"', 'handle = "Mira S."', "handle"),
        ('handle = "mira"', 'handle = "coach"', "handle"),
        ('handle = "mira"', "", "handle"),
        ('unit = "kg"', 'unit = "stone"', "unit"),
        ("bodyweight_kg = 62.0", "bodyweight_kg = 620", "bodyweight_kg"),
        ("bodyweight_kg = 62.0", 'bodyweight_kg = "62"', "bodyweight_kg"),
        ("bodyweight_kg = 62.0", "bodyweight_kg = true", "bodyweight_kg"),
        ("bodyweight_kg = 62.0", "bodyweight_kg = nan", "bodyweight_kg"),
        ("plate_step_kg = 1.25", "plate_step_kg = 0", "plate_step_kg"),
        ("plate_step_kg = 1.25", "plate_step_kg = 1.25\nplate_step_lb = 2.5", "plate_step_lb"),
        ('"bar", "rings", "belt"', '"bar", "trapeze"', "equipment"),
        ('"monday", "thursday"', '"monday", "funday"', "training_days"),
        ('"monday", "thursday"', "", "training_days"),
        ('plan_at = "07:30"', 'plan_at = "7:30"', "plan_at"),
        ('ladder = "one_arm_pull_up"', 'ladder = "rope"', "ladder"),
        ('rung = "weighted_pull_up"', 'rung = "sideways"', "rung"),
        ("screened = true", 'screened = "yes"', "screened"),
        ("reps = 5,", "reps = 5.5,", "reps"),
        ("reps = 5,", "", "reps"),
        ("rpe = 9.0", "rpe = 11", "rpe"),
        ("rpe = 9.0", "effort = 9", "effort"),
        ('movement = "pull_up"', 'movement = "shrug"', "movement"),
        ("date = 2027-01-02", 'date = "soon"', "date"),
    ],
)
def test_a_wrong_key_or_value_is_named_with_its_line(good, bad, key):
    text = ROSTER.replace(good, bad, 1)
    with pytest.raises(RosterError) as caught:
        parse_roster(text, "roster.toml")
    assert len(caught.value.problems) == 1
    where, rest = caught.value.problems[0].split(": ", 1)
    assert rest.startswith(f"{key}: ")
    line = int(where.removeprefix("roster.toml:"))
    if bad:
        assert line == line_with(bad.splitlines()[-1], text)


def test_a_cycle_that_trains_on_a_day_it_has_not_is_refused():
    text = ROSTER.replace(
        'training_days = ["monday", "thursday"]', "cycle = { days = 4, train = [5], from = 2027-01-04 }"
    )
    with pytest.raises(RosterError, match=r"roster:16: train: \[5\] should be a list of days from 1 to 4"):
        parse_roster(text)


def test_weekdays_and_a_cycle_together_are_refused():
    text = ROSTER + "cycle = { days = 4, train = [1], from = 2027-01-04 }\n"
    with pytest.raises(RosterError, match="cycle: give training_days or cycle, not both"):
        parse_roster(text)


def test_a_handle_given_twice_names_the_second():
    text = ROSTER + ROSTER[ROSTER.index("[[athlete]]") :]
    with pytest.raises(RosterError, match=r"'mira' is given twice") as caught:
        parse_roster(text)
    assert caught.value.problems[0].startswith(f"roster:{len(ROSTER.splitlines()) + 2}: handle")


@pytest.mark.parametrize("name", ["Mira", "mira", " MIRA  "])
def test_a_name_given_twice_names_the_second(name):
    again = ROSTER[ROSTER.index("[[athlete]]") :].replace('"mira"', '"other"').replace('"Mira"', f'"{name}"')
    text = ROSTER + again
    with pytest.raises(RosterError) as caught:
        parse_roster(text)
    (problem,) = caught.value.problems
    line = text[: text.rindex("name =")].count("\n") + 1
    assert problem.startswith(f"roster:{line}: name: ")
    assert f"{name!r} is given twice" in problem


def test_names_that_share_a_word_are_two_names():
    text = ROSTER + ROSTER[ROSTER.index("[[athlete]]") :].replace('"mira"', '"other"').replace('"Mira"', '"Mira K."')
    assert [one.name for one in parse_roster(text).athletes] == ["Mira", "Mira K."]


def test_all_that_is_wrong_is_said_at_once():
    text = ROSTER.replace("screened = true", "screened = 1").replace("reps = 5", "reps = -5")
    with pytest.raises(RosterError) as caught:
        parse_roster(text)
    assert [problem.split(": ")[1] for problem in caught.value.problems] == ["screened", "reps"]


@pytest.mark.parametrize(
    "text", ["", "[coach", "athlete = 3", "coach = 1", "[[coach]]\nname='x'", "[athlete]\nx=1", "\x00"]
)
def test_a_file_that_is_no_roster_is_refused_with_a_sentence(text):
    with pytest.raises(RosterError, match="roster"):
        parse_roster(text)


def test_a_key_in_the_third_line_of_a_list_is_found():
    text = ROSTER.replace(
        "tests = [ {", 'tests = [  # two\n  { date = 2027-01-01, movement = "pull_up", reps = 1 },\n {'
    ).replace("rpe = 9.0", "rpe = 99")
    with pytest.raises(RosterError, match=f"roster:{line_with('rpe = 99', text)}: rpe"):
        parse_roster(text)


def test_a_file_that_is_not_there_is_a_sentence(tmp_path):
    with pytest.raises(RosterError, match="No such file"):
        read_roster(tmp_path / "none.toml")
