import math
from datetime import date

import pytest
from hypothesis import given
from hypothesis import strategies as st

from planner.evidence import Measurement, errors_of, measure
from planner.facts import Session, WorkSet
from planner.repetitions import (
    expected_reps_to_failure,
    load_ratio,
    one_rep_max_factor,
    system_load_kg_for,
)
from planner.rules import default_rules


def _measured(system_load_kg: float, reps: int, rpe: float) -> Measurement:
    session = Session(date(2027, 1, 4), (WorkSet("pull_up", reps, rpe=rpe),))
    return measure(session, system_load_kg, errors_of(default_rules()))["pull_up", None]


def _e1rm_kg(system_load_kg: float, reps: int, rpe: float) -> float:
    return math.exp(_measured(system_load_kg, reps, rpe).log_e1rm)


def test_eight_clean_pull_ups_at_75_kg_prove_about_93_kg():
    # Brzycki 1993: 75 * 36 / (37 - 8)
    assert _e1rm_kg(75.0, reps=8, rpe=10) == pytest.approx(93.10, abs=0.005)


def test_reps_in_reserve_count_as_reps_to_failure():
    assert _e1rm_kg(100.0, reps=5, rpe=8) == pytest.approx(_e1rm_kg(100.0, reps=7, rpe=10))


def test_a_single_with_nothing_left_is_the_maximum_itself():
    assert _e1rm_kg(100.0, reps=1, rpe=10) == pytest.approx(100.0)


@pytest.mark.parametrize(("reps", "rpe"), [(13, 10), (10, 7)])
def test_too_far_from_a_maximum_proves_no_more_than_its_reps(reps, rpe):
    found = _measured(75.0, reps, rpe)

    assert found.kind == "floor"
    assert math.exp(found.log_e1rm) == pytest.approx(75.0 * one_rep_max_factor(min(reps, 12)))


def test_eight_clean_pull_ups_mean_six_with_two_and_a_half_kilograms_at_rpe_nine():
    # The trade's check at 75 kg, by the lower curve: 7 reps to failure are left at 77.5 kg.
    n = expected_reps_to_failure(_e1rm_kg(75.0, 8, 10), 77.5)

    assert n == pytest.approx(7.0, abs=0.1)


@given(st.floats(1, 12))
def test_expected_reps_turn_the_lower_curve_around(n):
    assert expected_reps_to_failure(80.0 * one_rep_max_factor(n), 80.0) == pytest.approx(n, abs=1e-9)


@given(st.floats(1, 12), st.floats(1, 16), st.floats(1, 16))
def test_more_reps_never_allow_more_load(evidence, one, other):
    fewer, more = sorted((one, other))

    assert load_ratio(evidence, fewer) >= load_ratio(evidence, more) - 1e-12


@given(st.floats(1, 12))
def test_the_same_reps_give_the_same_load_back(n):
    assert load_ratio(n, n) == pytest.approx(1.0)


def test_a_load_from_strength_goes_by_the_pair_of_rep_counts():
    # Ten clean reps at 75 kg: as a triple 1.212 times the load by Epley, not 1.259 by Brzycki.
    e1rm = 75.0 * one_rep_max_factor(10)

    assert system_load_kg_for(e1rm, 3, 10, n_evidence=10) == pytest.approx(75.0 * 1.1**-1 * (4 / 3))


def test_whose_reps_fall_faster_gets_less_for_fewer_reps():
    assert load_ratio(10, 3, steepness=0.7) < load_ratio(10, 3)
