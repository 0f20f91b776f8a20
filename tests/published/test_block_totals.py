"""The shipped block's totals against the reps-per-intensity bands.

Source: Prilepin, from weightlifters (secondary pages, consistent).

Totals only: five reps a set at 83 % are outside its two to four, and common practice in pulling.
"""

import pytest

from planner.blocks import shipped
from planner.repetitions import one_rep_max_factor, reps_to_failure

BANDS = ((90, 4, 10), (80, 10, 20), (70, 12, 24), (0, 18, 30))  # from %, total reps from, to


def works():
    block = shipped()
    return [work for week in block.weeks for work in (week["heavy"], week["volume"])]


@pytest.mark.parametrize("work", works(), ids=str)
def test_total_reps_stay_in_the_band_of_their_load(work):
    percent = 100 / one_rep_max_factor(reps_to_failure(work.reps, work.rpe))
    fewest, most = next((fewest, most) for least, fewest, most in BANDS if percent >= least)

    assert fewest <= work.sets * work.reps <= most


def test_the_percentages_are_those_computed_from_the_equations():
    # 4x4@7 83.3, 5x3@8 88.9, 4x2@8.5 93.1: computed from the lower curve
    for reps, rpe, percent in ((4, 7, 83.3), (6, 7, 77.8), (3, 7.5, 87.5), (3, 8, 88.9), (2, 8.5, 93.1)):
        assert 100 / one_rep_max_factor(reps_to_failure(reps, rpe)) == pytest.approx(percent, abs=0.05)
