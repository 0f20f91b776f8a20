import math
from datetime import date, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.stats import truncnorm

from planner.evidence import Measurement
from planner.rules import default_rules
from planner.state_space import State, advance, bounded, model_of
from planner.trend import follow

MODEL = model_of(default_rules())
START = date(2027, 1, 4)
SD = 0.04


def at(day, kg, kind="estimate"):
    return Measurement(START + timedelta(days=day), kind, math.log(kg), SD**2, 5.0, 2.0, math.log(kg) - 0.12)


def kg(trend, day=None):
    return trend.at(trend.on if day is None else START + timedelta(days=day)).e1rm_kg


def steady(count=12, kg_each=100.0):
    return [at(3.5 * n // 1, kg_each) for n in range(count)]


def test_no_measurement_is_no_trend():
    assert follow([], MODEL) is None


def test_the_cautious_side_is_below_the_middle_and_wider_with_silence():
    trend = follow(steady(), MODEL)
    now, later = trend.at(trend.on), trend.at(trend.on + timedelta(days=60))

    assert now.percentile_kg(30) < now.percentile_kg(50) == pytest.approx(now.e1rm_kg)
    assert later.percentile_kg(30) < now.percentile_kg(30)
    assert later.sd_log > now.sd_log


def test_one_slip_of_the_pen_counts_little_and_is_named():
    # 200 for 100: an added load with a digit too many
    trend = follow([*steady(), at(50, 200.0)], MODEL)

    assert kg(trend) == pytest.approx(100.0, rel=0.02)
    assert trend.doubtful == (START + timedelta(days=50),)


def test_one_bad_day_counts_little():
    trend = follow([*steady(), at(50, 80.0)], MODEL)

    assert kg(trend) > 97.0  # 20 kg down on one day


def test_two_in_a_row_on_the_same_side_are_no_slip():
    trend = follow([*steady(), at(50, 80.0), at(54, 80.0)], MODEL)

    assert kg(trend) < 88.0


@given(st.floats(60, 140))
def test_a_floor_pulls_up_and_never_down(floor_kg):
    calm = follow(steady(), MODEL)
    told = follow([*steady(), at(50, floor_kg, "floor")], MODEL)

    assert kg(told, 50) >= kg(calm, 50) * (1 - 1e-9)
    if floor_kg > 103:
        assert kg(told, 50) > kg(calm, 50) * 1.002


@given(st.floats(60, 140))
def test_a_ceiling_pulls_down_and_never_up(ceiling_kg):
    calm = follow(steady(), MODEL)
    told = follow([*steady(), at(50, ceiling_kg, "ceiling")], MODEL)

    assert kg(told, 50) <= kg(calm, 50) * (1 + 1e-9)


def test_sets_without_effort_that_go_well_make_the_estimate_surer_but_not_much_higher():
    told = [at(0, 100.0), *(at(4 * n, 91.0, "floor") for n in range(1, 30))]
    trend = follow(told, MODEL)
    silent = follow(told[:1], MODEL)

    assert trend.at(trend.on).sd_log < silent.at(trend.on).sd_log
    assert 1.0 < kg(trend) / 100.0 < 1.05


def test_a_bound_cuts_a_normal_distribution_as_scipy_does():
    state = State(4.6, 0.001, 0.0004, 1e-5, 1e-6)
    spread = math.sqrt(0.0004 + 0.0009)
    cut = truncnorm((4.59 - 4.6) / spread, math.inf, loc=4.6, scale=spread)

    after = bounded(state, 4.59, 0.0009, "floor")

    gain = 0.0004 / spread**2
    assert after.level == pytest.approx(4.6 + gain * (cut.mean() - 4.6))
    assert after.var_level == pytest.approx(0.0004 - gain**2 * (spread**2 - cut.var()))


def test_a_gain_fades_ahead_instead_of_going_on_for_ever():
    trend = follow([at(7 * n, 100.0 * 1.01**n) for n in range(16)], MODEL)
    first = math.log(kg(trend, 112) / kg(trend, 105))
    tenth = math.log(kg(trend, 182) / kg(trend, 175))

    assert 0.0 < tenth < 0.5 * first


def test_two_sessions_on_one_day_are_both_counted():
    assert follow([at(0, 100.0), at(0, 104.0)], MODEL).measured == 2


@given(st.lists(st.tuples(st.integers(0, 400), st.floats(20, 300)), min_size=1, max_size=40))
def test_any_history_gives_finite_strength_and_a_true_covariance(history):
    trend = follow([at(day, kg_each) for day, kg_each in sorted(history)], MODEL)
    state = trend.state

    assert math.isfinite(state.level)
    assert state.var_level > 0
    assert state.var_level * state.var_slope - state.cov**2 >= -1e-12


@given(st.floats(0.1, 30), st.floats(0.1, 30))
def test_silence_only_ever_widens(first, second):
    state = follow(steady(), MODEL).state
    one = advance(state, first, MODEL)

    assert advance(one, second, MODEL).var_level >= one.var_level >= state.var_level
