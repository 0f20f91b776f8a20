import math
from datetime import date, timedelta

import pytest

from planner.evidence import errors_of, measure
from planner.facts import Session, WorkSet
from planner.habits import NEUTRAL, learn
from planner.repetitions import one_rep_max_factor
from planner.rules import default_rules
from planner.trend import follow, model_of

ERRORS, MODEL = errors_of(default_rules()), model_of(default_rules())
START = date(2027, 1, 4)


def learned(sets):
    """Habits from one pull-up set of a 75 kg athlete every fourth day."""
    found = [
        measure(Session(START + timedelta(days=4 * n), (work,)), 75.0, ERRORS)["pull_up", None]
        for n, work in enumerate(sets)
    ]
    surprises = []
    follow(found, MODEL, surprises)
    return learn(surprises)


def a_set(n, rpe, one_rep_max_kg=110.0, steepness=1.0, truly_left=None):
    """The load at which somebody with this maximum and steepness has `n` reps to failure, told at `rpe`."""
    load = one_rep_max_kg / one_rep_max_factor(n) ** steepness - 75.0
    left = 10 - rpe if truly_left is None else truly_left
    return WorkSet("pull_up", round(n - left), load_kg=load, rpe=rpe)


def test_nothing_is_learned_where_nothing_differed():
    assert learned([a_set(6, 8)] * 40) == NEUTRAL


def test_nothing_is_learned_from_a_handful():
    assert learned([a_set(4, 9), a_set(9, 7)] * 5) == NEUTRAL


def test_an_honest_athlete_by_the_book_stays_neutral():
    habits = learned([a_set(4, 8), a_set(9, 8), a_set(6, 10)] * 15)

    assert habits.steepness == pytest.approx(1.0, abs=0.02)
    assert habits.reserve_bias == pytest.approx(0.0, abs=0.05)


def test_reps_that_fall_faster_with_load_are_learned():
    habits = learned([a_set(4, 8, steepness=0.75), a_set(9, 8, steepness=0.75)] * 25)

    assert 0.7 < habits.steepness < 0.9


def test_a_reserve_larger_than_said_is_learned_from_sets_to_failure():
    # says two left where three are: at RPE 8 six reps are worth nine
    habits = learned([a_set(6, 8, truly_left=3), a_set(5, 10)] * 25)

    assert habits.reserve_bias > 0.15


def test_neutral_habits_change_no_measurement():
    one = measure(Session(START, (a_set(6, 8),)), 75.0, ERRORS)["pull_up", None]

    assert NEUTRAL.corrected([one])[0].log_e1rm == pytest.approx(one.log_e1rm)
    assert math.isfinite(one.variance)
