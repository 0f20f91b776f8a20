import pytest

from planner.survival import Stay, still_there, weeks_until


def test_nobody_left_is_no_step():
    assert still_there([Stay(5, False), Stay(9, False)]) == ()


def test_those_still_there_count_until_they_are_last_known():
    steps = still_there([Stay(4, True), Stay(6, False), Stay(8, True)])

    # two of three stay at 4; of the one still known at 8, none
    assert [(step.weeks, step.at_risk) for step in steps] == [(4, 3), (8, 1)]
    assert steps[0].share == pytest.approx(2 / 3)
    assert steps[1].share == 0.0


def test_the_median_is_where_half_have_left_or_unknown():
    assert weeks_until(still_there([Stay(4, True), Stay(6, True), Stay(8, False)]), 0.5) == 6
    assert weeks_until(still_there([Stay(4, True), Stay(6, False), Stay(8, False)]), 0.5) is None
