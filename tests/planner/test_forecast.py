import math
from datetime import date, timedelta

import pytest

from planner.evidence import Measurement
from planner.forecast import gate_interval, slowing
from planner.rules import default_rules
from planner.state_space import model_of
from planner.trend import follow
from tests.planner.athletes import athlete, live, with_tests

RULES = default_rules()
START = date(2027, 1, 4)


def climbing(share_a_week, weeks=20):
    found = []
    for n in range(weeks * 2):
        log_kg = math.log(100.0) + share_a_week * n / 2
        found.append(Measurement(START + timedelta(days=3.5 * n), "estimate", log_kg, 0.0009, 5.0, 2.0, log_kg - 0.12))
    return follow(found, model_of(RULES))


def test_a_gate_near_by_gets_an_interval_in_order():
    trend = climbing(0.008)
    now = trend.at(trend.on).e1rm_kg

    interval = gate_interval(trend, now * 1.012, trend.on, 100, RULES)

    assert interval is not None
    assert trend.on <= interval.earliest
    assert interval.latest is None or interval.earliest <= interval.latest <= trend.on + timedelta(weeks=12)


def test_a_gate_already_well_passed_is_today():
    trend = climbing(0.004)

    assert gate_interval(trend, 80.0, trend.on, 100, RULES).latest == trend.on


def test_a_gate_too_far_gets_no_date():
    trend = climbing(0.004)

    assert gate_interval(trend, trend.at(trend.on).e1rm_kg * 1.3, trend.on, 100, RULES) is None


def test_who_makes_no_gains_gets_no_date():
    trend = climbing(0.0)

    assert gate_interval(trend, 104.0, trend.on, 100, RULES) is None


def test_gains_slow_more_for_the_newer_athlete_and_further_ahead():
    assert slowing(10, 0) == 1.0
    assert slowing(10, 12) < slowing(200, 12) < 1.0
    assert slowing(10, 12) < slowing(10, 4)


def test_gains_slow_with_the_log_of_time():
    # Steele 2022, linear in ln(weeks): from week 53 to 313, ln(313 / 53) against a straight line's 260 / 53
    assert slowing(53, 260) * 260 / 53 == pytest.approx(math.log(313 / 53))


def test_a_pace_is_not_spoken_of_before_there_is_one():
    seen = [one for one, _ in live(athlete("weighted_pull_up"), 30, (with_tests(),))]
    first, last = (one.ladders[0].forecasts for one in (seen[1], seen[-1]))

    assert all(one.too_early for one in first if one.earliest is None)
    assert not any(one.too_early for one in last)
