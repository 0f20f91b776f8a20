"""The trend of one movement and side: a local linear trend with a damped slope, in log system load.

A Kalman filter over irregular days in plain floats: five years of an athlete must fold in milliseconds. Level is log
kg, slope log kg a week. Sources: Durbin & Koopman (local linear trend); the damping, `rules.toml`.
"""

from __future__ import annotations

import math
from collections import deque
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date
from statistics import NormalDist
from typing import Literal, NamedTuple

from planner.evidence import Measurement
from planner.rules import Rules

DAYS_A_WEEK = 7.0
_FAR = 5.0  # standard deviations beyond which a bound says nothing (or all)
_DENSITY = 1.0 / math.sqrt(2.0 * math.pi)
_HALF_ROOT = math.sqrt(0.5)
NEWEST = 6  # estimates that tell the rep counts a load may be made from: about three weeks


class Model(NamedTuple):
    """The trend's own numbers: the `trend.` rules, squared. `doubt` in standard deviations."""

    damping: float
    level_variance: float
    slope_variance: float
    first_level_variance: float
    first_slope_variance: float
    doubt: float


class State(NamedTuple):
    """Level and slope with their covariance."""

    level: float
    slope: float
    var_level: float
    cov: float
    var_slope: float


_Five = tuple[float, float, float, float, float]  # a State without its names: a trend of years is a loop of these


class Surprise(NamedTuple):
    """A measurement against what was expected of it: difference (log) and its variance."""

    measurement: Measurement
    difference: float
    variance: float


def model_of(rules: Rules) -> Model:
    return Model(
        damping=rules.number("trend.slope_damping"),
        level_variance=rules.number("trend.level_sd") ** 2,
        slope_variance=rules.number("trend.slope_sd") ** 2,
        first_level_variance=rules.number("trend.first_level_sd") ** 2,
        first_slope_variance=rules.number("trend.first_slope_sd") ** 2,
        doubt=rules.number("trend.doubtful_sds"),
    )


def advance(state: State, weeks: float, model: Model) -> State:
    """The state `weeks` later with nothing seen between: the level drifts along the fading slope, doubt grows.

    Whole weeks are taken one by one, so that it agrees with the weekly model; part of a week at the end in proportion.
    """
    return State(*_advanced(state, weeks, model))


def _advanced(state: _Five, weeks: float, model: Model) -> _Five:
    level, slope, p11, p12, p22 = state
    damping, level_variance, slope_variance = model.damping, model.level_variance, model.slope_variance
    while weeks > 1e-9:
        step = 1.0 if weeks >= 1.0 else weeks
        kept = damping if step == 1.0 else damping**step
        reach = step if damping == 1.0 else (1.0 - kept) / (1.0 - damping)
        level += reach * slope
        slope *= kept
        p11 += reach * (2.0 * p12 + reach * p22) + step * level_variance
        p12 = kept * (p12 + reach * p22)
        p22 = kept * kept * p22 + step * slope_variance
        weeks -= step
    return level, slope, p11, p12, p22


def update(state: State, value: float, variance: float) -> State:
    """The state after a measurement `value` (log) with `variance`."""
    return State(*_updated(state, value, variance))


def _updated(state: _Five, value: float, variance: float) -> _Five:
    level, slope, p11, p12, p22 = state
    total = p11 + variance
    gain_level, gain_slope = p11 / total, p12 / total
    difference = value - level
    return (
        level + gain_level * difference,
        slope + gain_slope * difference,
        p11 * variance / total,
        p12 * variance / total,
        p22 - gain_slope * p12,
    )


def bounded(state: State, bound: float, variance: float, kind: Literal["floor", "ceiling"]) -> State:
    """The state after learning only that a noisy look would have been above a floor (or below a ceiling).

    The normal distribution is cut at the bound and its mean and variance kept. A floor raises the level, a ceiling
    lowers it: by next to nothing where the bound is far on the expected side.
    """
    return State(*_bounded(state, bound, variance, kind))


def _bounded(state: _Five, bound: float, variance: float, kind: Literal["floor", "ceiling"]) -> _Five:
    level, slope, p11, p12, p22 = state
    sd = math.sqrt(p11 + variance)
    sign = 1.0 if kind == "floor" else -1.0
    apart = sign * (level - bound) / sd
    if apart > _FAR:
        return state
    hazard = _hazard(apart)
    pull = sign * hazard / sd
    narrowing = hazard * (hazard + apart) / (sd * sd)
    return (
        level + p11 * pull,
        slope + p12 * pull,
        p11 - p11 * p11 * narrowing,
        p12 - p11 * p12 * narrowing,
        p22 - p12 * p12 * narrowing,
    )


def _hazard(apart: float) -> float:
    """Density over probability of the normal distribution at `apart`; far below zero it is -apart."""
    if apart < -_FAR:
        return -apart
    return math.exp(-0.5 * apart * apart) * _DENSITY / (0.5 * math.erfc(-apart * _HALF_ROOT))


@dataclass(frozen=True, slots=True)
class Estimate:
    """Strength on one day. `sd_log`: standard deviation of the log 1RM; `slope_log` a week."""

    e1rm_kg: float
    sd_log: float
    slope_log: float

    def percentile_kg(self, percent: float) -> float:
        """The 1RM [kg] that the true one is below with `percent` % probability, 0 < percent < 100."""
        return self.e1rm_kg * math.exp(NormalDist().inv_cdf(percent / 100.0) * self.sd_log)


@dataclass(frozen=True)
class Trend:
    """A followed trend, as of its last measurement on `on`.

    `n_range`: the fewest and most reps to failure that the newest estimates came from. `estimated_on`: the last day
    with a true estimate, None with floors alone. `doubtful`: days whose measurement was far off and counted little.
    """

    on: date
    state: State
    model: Model
    n_range: tuple[float, float]
    measured: int
    estimated_on: date | None
    doubtful: tuple[date, ...]

    def state_on(self, on: date) -> State:
        """The state on a day at or after the last measurement."""
        return advance(self.state, max(0, (on - self.on).days) / DAYS_A_WEEK, self.model)

    def at(self, on: date) -> Estimate:
        """The estimate for a day at or after the last measurement."""
        state = self.state_on(on)
        return Estimate(math.exp(state.level), math.sqrt(state.var_level), state.slope)


class Follower:
    """A trend under way: what `follow` has learned so far, and can go on from. Copies go on by themselves."""

    __slots__ = ("doubted_side", "doubtful", "estimated_on", "last", "measured", "model", "newest", "state")

    def __init__(self, model: Model, start: State | None = None) -> None:
        self.model = model
        self.state: State | None = start
        self.last: date | None = None
        self.measured = 0
        self.estimated_on: date | None = None
        self.newest: deque[float] = deque(maxlen=NEWEST)
        self.doubtful: list[date] = []
        self.doubted_side = 0.0

    def copy(self) -> Follower:
        made = Follower(self.model, self.state)
        made.last, made.measured, made.estimated_on = self.last, self.measured, self.estimated_on
        made.newest, made.doubtful, made.doubted_side = self.newest.copy(), self.doubtful.copy(), self.doubted_side
        return made

    def take(self, measurements: Iterable[Measurement], surprises: list[Surprise] | None = None) -> None:
        """Go on through measurements in order of day, none before those that were taken."""
        model, last, doubted_side = self.model, self.last, self.doubted_side
        state: _Five | None = self.state
        newest, doubtful = self.newest, self.doubtful
        for one in measurements:
            on, kind, value, variance, n, _, _ = one
            self.measured += 1
            if state is None:
                first_variance = variance + model.first_level_variance
                state = (value, 0.0, first_variance, 0.0, model.first_slope_variance)
                last = on
                newest.append(n)
                self.estimated_on = on if kind == "estimate" else None
                continue
            if last is not None and on > last:
                state = _advanced(state, (on - last).days / DAYS_A_WEEK, model)
            last = on
            level, slope, var_level, cov, var_slope = state
            difference = value - level
            distance = abs(difference) / math.sqrt(var_level + variance)
            if kind == "estimate":
                self.estimated_on = on
                if surprises is not None:
                    surprises.append(Surprise(one, difference, var_level + variance))
            elif (difference <= 0.0) == (kind == "floor"):
                # As expected: the bound says a little, and never that a measurement is doubtful.
                state = _bounded(state, value, variance, kind)
                continue
            if distance <= model.doubt:
                doubted_side = 0.0
                newest.append(n)
            elif math.copysign(1.0, difference) == doubted_side:
                state = (level, slope, var_level + difference * difference / 4.0, cov, var_slope)
                doubted_side = 0.0
            else:
                excess = (distance / model.doubt) ** 2
                variance = variance * excess + var_level * (excess - 1.0)
                doubtful.append(on)
                doubted_side = math.copysign(1.0, difference)
            state = _updated(state, value, variance) if kind == "estimate" else _bounded(state, value, variance, kind)
        self.state, self.last, self.doubted_side = None if state is None else State(*state), last, doubted_side

    def trend(self) -> Trend | None:
        """The trend as of the last measurement; None where there was none."""
        if self.state is None or self.last is None:
            return None
        n_range = (min(self.newest), max(self.newest)) if self.newest else (1.0, 1.0)
        return Trend(self.last, self.state, self.model, n_range, self.measured, self.estimated_on, tuple(self.doubtful))


def follow(
    measurements: Iterable[Measurement],
    model: Model,
    surprises: list[Surprise] | None = None,
    start: State | None = None,
) -> Trend | None:
    """The trend through measurements in order of day; None where there is none.

    A floor only ever raises the level, a ceiling only lowers it. A measurement more than `model.doubt` standard
    deviations away is doubted: its weight falls with the square of the distance. Two doubted in a row on the same side
    are no slip any more, and the level moves over.

    Args:
        surprises: Filled with each estimate against what was expected of it.
        start: The state on the first day before its measurement; without it that measurement starts the trend.
    """
    follower = Follower(model, start)
    follower.take(measurements, surprises)
    return follower.trend()


def theil_sen(days: Sequence[float], values: Sequence[float]) -> tuple[float, float]:
    """Slope and intercept by the median of all pairs' slopes: for charts, where one bad day must not tilt a line.

    Raises:
        ValueError: Fewer than two different days.

    Source: Theil 1950, Sen 1968.
    """
    slopes = sorted(
        (values[j] - values[i]) / (days[j] - days[i])
        for i in range(len(days))
        for j in range(i + 1, len(days))
        if days[j] != days[i]
    )
    if not slopes:
        raise ValueError("a slope needs two different days")
    slope = _median(slopes)
    return slope, _median(sorted(values)) - slope * _median(sorted(days))


def _median(ordered: Sequence[float]) -> float:
    middle = len(ordered) // 2
    return ordered[middle] if len(ordered) % 2 else (ordered[middle - 1] + ordered[middle]) / 2.0
