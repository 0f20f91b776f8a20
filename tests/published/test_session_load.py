"""Session load against its published definitions.

Sources: Foster 1998/2001 (secondary), figures computed from the definition with the sample standard deviation;
Williams 2017 for the exponentially weighted mean.
"""

import pytest

from planner.session_load import smoothed, week_load


def test_fosters_load_monotony_and_strain():
    week = week_load([0, 480, 0, 360, 0, 540, 0])

    assert week.total == 1380
    assert week.mean == pytest.approx(197.143, abs=0.0005)
    assert week.monotony == pytest.approx(0.7838, abs=0.00005)
    assert week.strain == pytest.approx(1081.70, abs=0.005)


def test_the_exponentially_weighted_mean():
    days = [400.0] * 21 + [600.0] * 7

    assert smoothed(days, 7)[-1] == pytest.approx(573.3032, abs=0.00005)
    assert smoothed(days, 28)[-1] == pytest.approx(478.7197, abs=0.00005)
