"""How far a set is trusted, against what was measured of people's judgement.

Sources: Zourdos et al. 2021 (difference 2.05 +- 1.73 reps at RPE 9, 3.65 +- 2.46 at 7, 5.15 +- 2.92 at 5), Halperin et
al. 2022 (0.95 reps more in reserve than said), Helms 2017 (RPE at a true 1RM 9.6 to 9.7), Coyne et al. 2015.
"""

import math
from datetime import date

import pytest

from planner.evidence import errors_of, measure
from planner.facts import Session, WorkSet
from planner.rules import default_rules

ERRORS = errors_of(default_rules())


def test_variance_grows_as_rpe_falls():
    variances = [ERRORS.variance(5.0, 10.0 - rpe) for rpe in (10, 9, 8, 7, 6, 5)]

    assert variances == sorted(variances)
    assert len(set(variances)) == len(variances)


def test_five_reps_to_failure_at_rpe_nine_are_known_to_three_percent_at_best():
    assert math.sqrt(ERRORS.variance(5.0, 1.0)) >= 0.03


def test_the_error_of_a_reserve_grows_no_faster_than_was_measured():
    # The published sds are of sets of 16; ours are of at most 12, and must stay below.
    for rpe, sd in ((9, 1.73), (7, 2.46), (5, 2.92)):
        assert ERRORS.reserve_sd + ERRORS.reserve_sd_per_rep * (10 - rpe) <= sd


def test_evidence_gets_wider_and_is_not_shifted():
    found = measure(Session(date(2027, 1, 4), (WorkSet("pull_up", 5, load_kg=20, rpe=7),)), 75.0, ERRORS)

    assert math.exp(found["pull_up", None].log_e1rm) == pytest.approx(95 * 36 / 29)  # Brzycki 1993 at 8


def test_a_single_at_nine_and_a_half_is_accepted_as_a_maximum():
    found = measure(Session(date(2027, 1, 4), (WorkSet("pull_up", 1, load_kg=40, rpe=9.5),)), 75.0, ERRORS)
    one = found["pull_up", None]

    assert one.kind == "estimate"
    assert math.exp(one.log_e1rm) == pytest.approx(115.0, rel=0.02)


def test_one_test_two_percent_up_is_no_progress():
    # Coyne et al. 2015: the smallest worthwhile change is 0.03 body masses (0.2 x 0.15), 2.1 % of the mean 1.43.
    rules = default_rules()
    assert rules.number("strength.smallest_progress") == pytest.approx(0.2 * 0.15)
    assert rules.number("strength.smallest_progress") > 0.02 * 1.43
