from dataclasses import replace
from datetime import date, timedelta

import pytest

from planner.facts import Athlete, Bodyweight, Record, Session, WorkSet
from planner.history import History
from planner.main_done import exposure_of
from planner.rules import default_rules
from planner.slots import Slot
from planner.strength import BodyweightHistory, basis_from, best_sets, strength_of

START = date(2027, 1, 4)
ATHLETE = Athlete("mira", START, 62.0)
RULES = default_rules()


def session(day, *sets):
    return Session(START + timedelta(days=day), sets)


def test_bodyweight_is_the_newest_word_up_to_the_day():
    history = BodyweightHistory(Record(ATHLETE, bodyweights=(Bodyweight(START + timedelta(days=5), 60.0),)))

    assert history.on(START) == 62.0
    assert history.on(START + timedelta(days=5)) == 60.0


def test_the_same_plate_on_a_lighter_body_is_less_strength():
    sessions = tuple(session(4 * n, WorkSet("pull_up", 3, load_kg=20.0, rpe=9)) for n in range(6))
    lighter = Record(ATHLETE, sessions, bodyweights=(Bodyweight(START + timedelta(days=10), 59.0),))
    day = START + timedelta(days=21)

    one = strength_of(Record(ATHLETE, sessions), day, RULES)["pull_up", None].at(day)
    other = strength_of(lighter, day, RULES)["pull_up", None].at(day)

    assert other.e1rm_kg < one.e1rm_kg


def test_facts_after_the_day_are_not_seen():
    sessions = (session(0, WorkSet("pull_up", 3, load_kg=20.0, rpe=9)), session(9, WorkSet("dip", 5, rpe=9)))

    assert set(strength_of(Record(ATHLETE, sessions), START + timedelta(days=8), RULES)) == {("pull_up", None)}


def test_loads_are_made_from_the_cautious_side():
    record = Record(ATHLETE, (session(0, WorkSet("pull_up", 3, load_kg=20.0, rpe=9)),))
    trend = strength_of(record, START, RULES)["pull_up", None]

    assert basis_from(trend, START, RULES).e1rm_kg < trend.at(START).e1rm_kg


def test_the_best_sets_of_late_are_those_of_four_weeks_before_the_day():
    work = WorkSet("pull_up", 3, load_kg=20.0, rpe=9)
    record = Record(ATHLETE, (session(0, work), session(20, work, work), session(30, work)))

    found = best_sets(record, "pull_up", None, START + timedelta(days=30), RULES)

    assert [(one.system_load_kg, one.reps, one.n) for one in found] == [(82.0, 3.0, 4.0)] * 2


def test_halves_are_not_compared_with_whole_reps():
    record = Record(ATHLETE, (session(0, WorkSet("pull_up", 3, load_kg=60.0, rom="upper_half")),))

    assert best_sets(record, "pull_up", None, START + timedelta(days=1), RULES) == ()


def test_the_caution_grows_with_time_away():
    record = Record(ATHLETE, tuple(session(4 * n, WorkSet("pull_up", 3, load_kg=20.0, rpe=9)) for n in range(6)))
    trend = strength_of(record, START + timedelta(days=90), RULES)["pull_up", None]

    soon = basis_from(trend, START + timedelta(days=21), RULES).e1rm_kg
    late = basis_from(trend, START + timedelta(days=90), RULES).e1rm_kg
    assert late < soon
    assert late == pytest.approx(soon, rel=0.05)


def alternating(told):
    """Forty sessions of one athlete: sets to failure, and sets of six that leave four and are told as `told`."""
    to_failure, easier = WorkSet("pull_up", 5, load_kg=22.0, rpe=10), WorkSet("pull_up", 6, load_kg=9.0, rpe=told)
    return Record(ATHLETE, tuple(session(4 * n, to_failure if n % 2 else easier) for n in range(40)))


def test_a_known_habit_takes_no_point_off_an_effort_told():
    record, last = alternating(9.0), session(164, WorkSet("pull_up", 6, load_kg=9.0, rpe=8.0))
    history = History(replace(record, sessions=(*record.sessions, last)), last.on)
    week_one = Slot(last.on, last.on, "heavy", 5, 1, 4, last.on, last.on, pulling=True, main="pull_up")

    assert history.strength["pull_up", None].habits.reserve_bias > 0.1
    # told at 8 where the plan of a first week asks for 7
    assert exposure_of(history, last, week_one).over == 1.0


def test_a_new_grip_starts_from_the_habits_of_the_others():
    record = alternating(9.0)
    new = session(163, WorkSet("chin_up", 6, load_kg=9.0, rpe=9.0))
    found = strength_of(replace(record, sessions=(*record.sessions, new)), new.on, RULES)

    assert found["chin_up", None].habits.reserve_bias == found["pull_up", None].habits.reserve_bias > 0.1
