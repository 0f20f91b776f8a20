"""The Kalman filter against statsmodels and against figures computed with it.

Sources: Nile (statsmodels data; Durbin & Koopman's example, variances 15099 and 1469.1); the small local linear trend
is ours to compute, statsmodels 0.15.0, `UnobservedComponents('lltrend', use_exact_diffuse=True)`.
"""

import math

import numpy as np
import pytest
import statsmodels.api as sm

from planner.state_space import Model, State, advance, update
from planner.trend import Estimate

IRREGULAR, LEVEL, SLOPE = 4e-4, 1e-5, 1e-6
LOADS = [90, 91, 90.5, 92, 93.5, 92.5, 94, 95]
UNDAMPED = Model(1.0, LEVEL, SLOPE, 0.0, 0.0, math.inf)


def filtered(logs):
    """The state after the last of weekly logs (None: nothing seen), from an exact diffuse start.

    Two values fix level and slope; their covariance follows from y1 = l - s and y2 = l with all noises in between.
    """
    first, second = logs[:2]
    state = State(second, second - first, IRREGULAR, IRREGULAR, 2 * IRREGULAR + LEVEL + SLOPE)
    for value in logs[2:]:
        state = advance(state, 1.0, UNDAMPED)
        if value is not None:
            state = update(state, value, IRREGULAR)
    return state


def test_a_small_local_linear_trend_matches_to_the_sixth_digit():
    state = filtered([math.log(kg) for kg in LOADS])

    assert state.level == pytest.approx(4.5510333435, abs=1e-9)
    assert state.slope == pytest.approx(0.0074331470, abs=1e-9)
    assert state.var_level == pytest.approx(1.744845e-4, abs=1e-9)
    assert state.var_slope == pytest.approx(1.405513e-5, abs=1e-10)
    assert state.cov == pytest.approx(3.569422e-5, abs=1e-10)


def test_its_forecasts_match():
    state, forecasts, sds = filtered([math.log(kg) for kg in LOADS]), [], []
    for _ in range(4):
        state = advance(state, 1.0, UNDAMPED)
        forecasts.append(math.exp(state.level))
        sds.append(math.sqrt(state.var_level + IRREGULAR))

    assert forecasts == pytest.approx([95.4370, 96.1491, 96.8664, 97.5891], abs=5e-5)
    assert (sds[0], sds[-1]) == pytest.approx((0.0258830, 0.0337479), abs=5e-8)


def test_a_missing_week_matches():
    logs = [math.log(kg) for kg in LOADS]
    state = filtered([*logs[:4], None, *logs[5:]])

    assert state.level == pytest.approx(4.5493742519, abs=1e-9)
    assert state.slope == pytest.approx(0.0073443794, abs=1e-9)


def test_the_thirtieth_percentile_matches():
    state = filtered([math.log(kg) for kg in LOADS])
    now = Estimate(math.exp(state.level), math.sqrt(state.var_level), state.slope)

    assert now.e1rm_kg == pytest.approx(94.730, abs=5e-4)
    assert now.percentile_kg(30) == pytest.approx(94.076, abs=5e-4)


@pytest.mark.parametrize("seed", range(5))
def test_any_weekly_series_ends_where_statsmodels_ends(seed):
    logs = np.log(80) + np.cumsum(np.random.default_rng(seed).normal(0.003, 0.02, 30))
    model = sm.tsa.UnobservedComponents(logs, "lltrend", use_exact_diffuse=True)
    result = model.filter([IRREGULAR, LEVEL, SLOPE])

    state = filtered(list(logs))
    assert (state.level, state.slope) == pytest.approx(result.filtered_state[:, -1], abs=1e-9)
    assert state.var_level == pytest.approx(result.filtered_state_cov[0, 0, -1], abs=1e-9)


def test_the_nile_ends_where_the_published_example_ends():
    values = sm.datasets.nile.load_pandas().data["volume"]
    model = Model(1.0, 1469.1, 0.0, 0.0, 0.0, math.inf)
    state = State(float(values.iloc[0]), 0.0, 15099.0, 0.0, 0.0)
    for value in values.iloc[1:]:
        state = update(advance(state, 1.0, model), float(value), 15099.0)

    assert state.level == pytest.approx(798.3703, abs=1e-3)
    assert state.var_level == pytest.approx(4032.158, abs=1e-3)
    assert advance(state, 1.0, model).var_level == pytest.approx(5501.258, abs=1e-3)
    assert advance(state, 1.0, model).var_level + 15099 == pytest.approx(20600.258, abs=1e-3)
    assert advance(state, 10.0, model).var_level + 15099 == pytest.approx(33822.158, abs=1e-3)
