"""Forecasts on open data: one-leg 1RM of 39 people over twelve weeks (exscidata, Hammarström 2020, CC0).

Untrained legs, not pull-ups: a check that the damped trend forecasts honestly, with parameters fixed beforehand (log
sds 0.06, 0.02 and 0.005 a square root of a week, first slope 0.03; damping 0.9, the best of five on these legs).
"""

import csv
import math
from collections import defaultdict
from datetime import date, timedelta
from pathlib import Path
from statistics import NormalDist, median

import pytest

from planner.evidence import Measurement
from planner.state_space import Model
from planner.trend import follow

DATA = Path(__file__).parents[1] / "data" / "unilateral_1rm_12_weeks.csv"
OBSERVATION = 0.06
START = date(2020, 1, 6)
DAMPED = Model(0.9, 0.02**2, 0.005**2, 0.0, 0.03**2, math.inf)
UNDAMPED = DAMPED._replace(damping=1.0)


@pytest.fixture(scope="module")
def legs():
    """Loads by week for each exercise and leg."""
    found = defaultdict(dict)
    with DATA.open(encoding="utf-8", newline="") as file:
        for row in csv.DictReader(file):
            if row["load_kg"] not in ("", "NA"):
                found[row["exercise"], row["participant"], row["leg"]][float(row["week"])] = float(row["load_kg"])
    return found


def forecasts(legs, exercise, model, *, from_week_nine=True):
    """(relative errors, those of the last value, inside the 80 % band?) of week 12 from what was known before."""
    errors, of_last, inside = [], [], []
    width = NormalDist().inv_cdf(0.9)
    for (name, _, _), loads in legs.items():
        before = sorted(week for week in loads if week < 12)
        if name != exercise or 12.0 not in loads or len(before) < 2 or (9.0 in loads) != from_week_nine:
            continue
        found = [
            Measurement(
                START + timedelta(days=round(week * 7)), "estimate", math.log(loads[week]), OBSERVATION**2, 1, 0, 0
            )
            for week in before
        ]
        ahead = follow(found, model).at(START + timedelta(weeks=12))
        spread = width * math.sqrt(ahead.sd_log**2 + OBSERVATION**2)
        errors.append(abs(ahead.e1rm_kg / loads[12.0] - 1))
        of_last.append(abs(loads[before[-1]] / loads[12.0] - 1))
        inside.append(abs(math.log(loads[12.0] / ahead.e1rm_kg)) <= spread)
    return errors, of_last, inside


@pytest.mark.parametrize("exercise", ["legpress", "legext"])
@pytest.mark.parametrize("from_week_nine", [True, False])
def test_the_damped_trend_forecasts_week_twelve(legs, exercise, from_week_nine):
    errors, of_last, inside = forecasts(legs, exercise, DAMPED, from_week_nine=from_week_nine)

    assert len(errors) >= 20
    assert median(errors) <= 1.25 * median(of_last)
    assert 0.65 <= sum(inside) / len(inside) <= 0.97


def test_the_undamped_trend_overshoots(legs):
    errors, of_last, _ = forecasts(legs, "legpress", UNDAMPED, from_week_nine=False)

    assert median(errors) > 1.25 * median(of_last)
