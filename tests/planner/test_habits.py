from datetime import date, timedelta

import pytest

from planner.evidence import errors_of, measure
from planner.facts import Session, WorkSet
from planner.habits import Habits
from planner.repetitions import one_rep_max_factor
from planner.rules import default_rules
from planner.state_space import model_of
from planner.trend import Follower, follow

ERRORS, MODEL = errors_of(default_rules()), model_of(default_rules())
START = date(2027, 1, 4)


def learned(sets):
    """Habits from one pull-up set of a 75 kg athlete every fourth day."""
    found = [
        measure(Session(START + timedelta(days=4 * n), (work,)), 75.0, ERRORS)["pull_up", None]
        for n, work in enumerate(sets)
    ]
    return follow(found, MODEL, ERRORS).habits


def a_set(n, rpe, one_rep_max_kg=110.0, steepness=1.0, truly_left=None):
    """The load at which somebody with this maximum and steepness has `n` reps to failure, told at `rpe`."""
    load = one_rep_max_kg / one_rep_max_factor(n) ** steepness - 75.0
    left = 10 - rpe if truly_left is None else truly_left
    return WorkSet("pull_up", round(n - left), load_kg=load, rpe=rpe)


def test_nothing_is_learned_where_nothing_differed():
    habits = learned([a_set(6, 8)] * 40)

    assert (habits.steepness, habits.reserve_bias) == pytest.approx((1.0, 0.0), abs=0.005)


def test_little_is_learned_from_a_handful():
    few, many = ([a_set(6, 8, truly_left=3), a_set(5, 10)] * n for n in (2, 25))

    assert learned(few).reserve_bias < 0.7 * learned(many).reserve_bias


def test_an_honest_athlete_by_the_book_stays_neutral():
    habits = learned([a_set(4, 8), a_set(9, 8), a_set(6, 10)] * 15)

    assert habits.steepness == pytest.approx(Habits().steepness, abs=0.02)
    assert habits.reserve_bias == pytest.approx(Habits().reserve_bias, abs=0.05)


def test_reps_that_fall_faster_with_load_are_learned():
    habits = learned([a_set(4, 8, steepness=0.75), a_set(9, 8, steepness=0.75)] * 25)

    assert 0.7 < habits.steepness < 0.9


def test_a_reserve_larger_than_said_is_learned_from_sets_to_failure():
    # says two left where three are: at RPE 8 six reps are worth nine
    habits = learned([a_set(6, 8, truly_left=3), a_set(5, 10)] * 25)

    assert 0.2 < habits.reserve_bias < 0.6


def test_light_days_told_at_the_end_of_the_scale_teach_no_habit():
    # Nobody says 3: seven are left, and 5 is told.
    habits = learned([a_set(6, 8), a_set(10, 5, truly_left=7), a_set(4, 10)] * 15)

    assert habits.reserve_bias == pytest.approx(0.0, abs=0.05)


def scatter_of(sets):
    follower = Follower(MODEL, ERRORS)
    found = [
        measure(Session(START + timedelta(days=4 * n), (work,)), 75.0, ERRORS)["pull_up", None]
        for n, work in enumerate(sets)
    ]
    assert len(list(follower.through(found))) == len(found)
    return follower.scatter


def test_who_tells_steadily_is_believed_sooner():
    assert scatter_of([a_set(6, 8)] * 30) < 0.4
    assert scatter_of([a_set(6, 8), a_set(6, 8, one_rep_max_kg=125.0)] * 15) > 0.6


def test_the_wildest_is_believed_no_later_than_the_rules_have_it():
    assert scatter_of([a_set(6, 8), a_set(6, 8, one_rep_max_kg=150.0)] * 15) == 1.0
