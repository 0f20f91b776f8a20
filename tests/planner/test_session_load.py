from datetime import date, timedelta

import pytest

from planner.facts import Session
from planner.session_load import daily_loads, smoothed, week_load

MONDAY = date(2027, 1, 4)


def test_rest_days_count_zero_and_two_sessions_of_a_day_add_up():
    sessions = [
        Session(MONDAY, (), session_rpe=7, duration_min=60),
        Session(MONDAY, (), session_rpe=4, duration_min=30),
        Session(MONDAY + timedelta(days=2), (), session_rpe=6),
    ]

    assert daily_loads(sessions, MONDAY) == [540.0, 0, 0, 0, 0, 0, 0]


def test_a_week_of_equal_days_has_no_monotony():
    week = week_load([400.0] * 7)

    assert (week.monotony, week.strain) == (None, None)


def test_a_week_has_seven_days():
    with pytest.raises(ValueError, match="seven"):
        week_load([1.0] * 6)


def test_smoothing_starts_where_it_is_told():
    assert smoothed([0.0], 7, start=100.0) == [75.0]
    assert smoothed([], 7) == []
