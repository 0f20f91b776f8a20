"""Strength as a state: log 1RM and its pace, and with them the athlete's two habits of telling and of fatigue.

A Kalman filter over irregular days in plain floats: five years of an athlete must fold in milliseconds. The level is
log kg, the slope log kg a week and damped. The habits (`habits.py`) stand in the same state, because no set tells
strength and habit apart: what a set at another load, rep count or effort adds is shared out by how sure each of the
four is. Sources: Durbin & Koopman (local linear trend, linearised about what is expected); the damping, `rules.toml`.
"""

from __future__ import annotations

import math
from functools import lru_cache
from typing import Literal, NamedTuple

from planner.rules import Rules

DAYS_A_WEEK = 7.0
_FAR = 5.0  # standard deviations beyond which a bound says nothing (or all)
_DENSITY = 1.0 / math.sqrt(2.0 * math.pi)
_HALF_ROOT = math.sqrt(0.5)


class Model(NamedTuple):
    """The trend's own numbers: the `trend.` rules, squared. `doubt` in standard deviations."""

    damping: float
    level_variance: float
    slope_variance: float
    first_level_variance: float
    first_slope_variance: float
    doubt: float
    steepness_variance: float = 0.0
    reserve_bias_variance: float = 0.0


class State(NamedTuple):
    """Level, slope and the two habits with their covariances; habits are taken as known where nothing is said of them.

    `steepness` and `reserve_bias`: see `habits.Habits`. `cov` is of level and slope.
    """

    level: float
    slope: float
    var_level: float
    cov: float
    var_slope: float
    steepness: float = 1.0
    reserve_bias: float = 0.0
    cov_level_steepness: float = 0.0
    cov_level_bias: float = 0.0
    cov_slope_steepness: float = 0.0
    cov_slope_bias: float = 0.0
    var_steepness: float = 0.0
    cov_habits: float = 0.0
    var_bias: float = 0.0


# A State without its names: a trend of years is a loop of these.
Floats = tuple[float, float, float, float, float, float, float, float, float, float, float, float, float, float]


def model_of(rules: Rules) -> Model:
    return Model(
        damping=rules.number("trend.slope_damping"),
        level_variance=rules.number("trend.level_sd") ** 2,
        slope_variance=rules.number("trend.slope_sd") ** 2,
        first_level_variance=rules.number("trend.first_level_sd") ** 2,
        first_slope_variance=rules.number("trend.first_slope_sd") ** 2,
        doubt=rules.number("trend.doubtful_sds"),
        steepness_variance=rules.number("trend.steepness_sd") ** 2,
        reserve_bias_variance=rules.number("trend.reserve_bias_sd") ** 2,
    )


def advance(state: State, weeks: float, model: Model) -> State:
    """The state `weeks` later with nothing seen between: the level drifts along the fading slope, doubt grows.

    Whole weeks are taken one by one, so that it agrees with the weekly model; part of a week at the end in proportion.
    """
    return State(*advanced(state, _steps(weeks, model)))


class Step(NamedTuple):
    """A week or a part of one: how much of its slope the level gains, what the slope keeps, by how much doubt grows."""

    reach: float
    kept: float
    kept_squared: float
    level_variance: float
    slope_variance: float


class Ahead(dict[int, tuple[Step, ...]]):
    """The steps of so many days, by a model; worked out when first asked for: people train every few days."""

    def __init__(self, model: Model) -> None:
        self._model = model

    def __missing__(self, days: int) -> tuple[Step, ...]:
        self[days] = steps = _steps(days / DAYS_A_WEEK, self._model)
        return steps


@lru_cache(maxsize=64)
def ahead_by(model: Model) -> Ahead:
    return Ahead(model)


def _steps(weeks: float, model: Model) -> tuple[Step, ...]:
    whole = int(weeks)
    part = weeks - whole
    return (_step(1.0, model),) * whole + ((_step(part, model),) if part > 1e-9 else ())


def _step(weeks: float, model: Model) -> Step:
    damping = model.damping
    kept = damping if weeks == 1.0 else damping**weeks
    reach = weeks if damping == 1.0 else (1.0 - kept) / (1.0 - damping)
    return Step(reach, kept, kept * kept, weeks * model.level_variance, weeks * model.slope_variance)


def advanced(state: Floats, steps: tuple[Step, ...]) -> Floats:
    level, slope, p11, p12, p22, steepness, bias, p13, p14, p23, p24, p33, p34, p44 = state
    for reach, kept, kept_squared, level_variance, slope_variance in steps:
        level += reach * slope
        slope *= kept
        p11 += reach * (2.0 * p12 + reach * p22) + level_variance
        p12 = kept * (p12 + reach * p22)
        p22 = kept_squared * p22 + slope_variance
        p13 += reach * p23
        p14 += reach * p24
        p23 *= kept
        p24 *= kept
    return level, slope, p11, p12, p22, steepness, bias, p13, p14, p23, p24, p33, p34, p44


def update(state: State, value: float, variance: float) -> State:
    """The state after a measurement `value` (log) of the level with `variance`."""
    return State(*updated(state, value - state.level, variance, 0.0, 0.0))


def updated(state: Floats, difference: float, variance: float, by_steepness: float, by_bias: float) -> Floats:
    """The state after a measurement that was `difference` (log) above what was expected.

    `by_steepness`, `by_bias`: by how much it would be expected higher for each of the habits, were they higher by one.
    """
    _, _, p11, p12, _, _, _, p13, p14, p23, p24, p33, p34, p44 = state
    v1 = p11 + by_steepness * p13 + by_bias * p14
    v2 = p12 + by_steepness * p23 + by_bias * p24
    v3 = p13 + by_steepness * p33 + by_bias * p34
    v4 = p14 + by_steepness * p34 + by_bias * p44
    total = v1 + by_steepness * v3 + by_bias * v4 + variance
    return _moved(state, v1, v2, v3, v4, difference / total, 1.0 / total)


def spread(state: Floats, by_steepness: float, by_bias: float) -> float:
    """The variance of what is expected of a measurement, its own error left out."""
    _, _, p11, _, _, _, _, p13, p14, _, _, p33, p34, p44 = state
    return (
        p11
        + by_steepness * (2.0 * p13 + by_steepness * p33 + 2.0 * by_bias * p34)
        + by_bias * (2.0 * p14 + by_bias * p44)
    )


def _moved(state: Floats, v1: float, v2: float, v3: float, v4: float, pull: float, narrowing: float) -> Floats:
    """The state moved by `pull` along a column of covariances, its own narrowed by `narrowing` times their products."""
    level, slope, p11, p12, p22, steepness, bias, p13, p14, p23, p24, p33, p34, p44 = state
    n1, n2 = narrowing * v1, narrowing * v2
    if v3 == 0.0 == v4:
        return (
            level + v1 * pull, slope + v2 * pull, p11 - n1 * v1, p12 - n1 * v2, p22 - n2 * v2,
            steepness, bias, p13, p14, p23, p24, p33, p34, p44,
        )  # fmt: skip
    n3, n4 = narrowing * v3, narrowing * v4
    return (
        level + v1 * pull, slope + v2 * pull, p11 - n1 * v1, p12 - n1 * v2, p22 - n2 * v2,
        steepness + v3 * pull, bias + v4 * pull,
        p13 - n1 * v3, p14 - n1 * v4, p23 - n2 * v3, p24 - n2 * v4, p33 - n3 * v3, p34 - n3 * v4, p44 - n4 * v4,
    )  # fmt: skip


def bounded(state: State, bound: float, variance: float, kind: Literal["floor", "ceiling"]) -> State:
    """The state after learning only that a noisy look would have been above a floor (or below a ceiling).

    The normal distribution is cut at the bound and its mean and variance kept. A floor raises the level, a ceiling
    lowers it: by next to nothing where the bound is far on the expected side.
    """
    return State(*cut(state, bound - state.level, variance, kind, 0.0))


def cut(
    state: Floats, difference: float, variance: float, kind: Literal["floor", "ceiling"], by_steepness: float
) -> Floats:
    """`bounded` for a bound that lies `difference` above the level, and that much higher for each of steepness."""
    _, _, p11, p12, _, _, _, p13, p14, p23, _, p33, p34, _ = state
    v1, v3 = p11 + by_steepness * p13, p13 + by_steepness * p33
    sd = math.sqrt(v1 + by_steepness * v3 + variance)
    sign = 1.0 if kind == "floor" else -1.0
    apart = -sign * difference / sd
    if apart > _FAR:
        return state
    hazard = _hazard(apart)
    v2, v4 = p12 + by_steepness * p23, p14 + by_steepness * p34
    return _moved(state, v1, v2, v3, v4, sign * hazard / sd, hazard * (hazard + apart) / (sd * sd))


def _hazard(apart: float) -> float:
    """Density over probability of the normal distribution at `apart`; far below zero it is -apart."""
    if apart < -_FAR:
        return -apart
    return math.exp(-0.5 * apart * apart) * _DENSITY / (0.5 * math.erfc(-apart * _HALF_ROOT))
