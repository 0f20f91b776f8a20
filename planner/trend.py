"""The trend of one movement and side: strength followed from session to session, and read on any later day."""

from __future__ import annotations

import math
from collections import deque
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from datetime import date
from statistics import NormalDist
from typing import NamedTuple

from planner.evidence import Errors, Measurement
from planner.habits import RESERVE_LIMITS, STEEPNESS_LIMITS, Habits, believable
from planner.repetitions import log_factor, reps_of_factor
from planner.state_space import (
    DAYS_A_WEEK,
    Floats,
    Model,
    State,
    advance,
    advanced,
    ahead_by,
    cut,
    spread,
    updated,
)

NEWEST = 6  # estimates that tell the rep counts a load may be made from: about three weeks
_LEAST_STEEP, _MOST_STEEP = STEEPNESS_LIMITS
_LEAST_BIAS, _MOST_BIAS = RESERVE_LIMITS
_MOST_REPS = 14.0  # to failure: what is expected further off is all the same
# A set that should leave more than this is no estimate: the lower half of the scale is hardly used (Zourdos 2016 counts
# no reps below an effort of 5), so that light days would pass for a habit of telling too much effort.
FAR_RESERVE = 4.0
SURPRISE = 1.0  # reps fewer told to be left than that: then it is heard all the same
# The rules tell how far anyone's sets scatter. Who turns out steadier is believed sooner; nobody is believed later, for
# a run of sets too hard must tell at once.
RULES_WORTH = 5.0  # measurements
LEAST_SCATTER = 0.2  # of the rules' variance; common practice


class Prior(NamedTuple):
    """What is known of an athlete's habits before a movement's first measurement."""

    steepness: float
    reserve_bias: float
    var_steepness: float
    var_bias: float


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

    @property
    def habits(self) -> Habits:
        return believable(self.state.steepness, self.state.reserve_bias)

    def state_on(self, on: date) -> State:
        """The state on a day at or after the last measurement."""
        return advance(self.state, max(0, (on - self.on).days) / DAYS_A_WEEK, self.model)

    def at(self, on: date) -> Estimate:
        """The estimate for a day at or after the last measurement.

        How far it may be off is told for loads of about as many reps as it came from: they are what it is for.
        """
        state = self.state_on(on)
        by_steepness = -log_factor(sum(self.n_range) / 2.0)
        return Estimate(math.exp(state.level), math.sqrt(spread(state, by_steepness, 0.0)), state.slope)


class Follower:
    """A trend under way: what `follow` has learned so far, and can go on from. Copies go on by themselves.

    `patient`: two doubted in a row on the same side are believed; else each is doubted for itself alone.
    """

    __slots__ = ("doubted_side", "doubtful", "errors", "estimated_on", "judged", "last", "measured", "model", "newest",
                 "patient", "prior", "squares", "state")  # fmt: skip

    def __init__(
        self, model: Model, errors: Errors | None = None, prior: Prior | None = None, *, patient: bool = True
    ) -> None:
        self.model = model
        self.errors = errors
        self.patient = patient
        self.prior = prior or Prior(1.0, 0.0, model.steepness_variance, model.reserve_bias_variance)
        self.state: State | None = None
        self.last: date | None = None
        self.measured = 0
        self.estimated_on: date | None = None
        self.newest: deque[float] = deque(maxlen=NEWEST)
        self.doubtful: list[date] = []
        self.doubted_side = 0.0
        self.judged, self.squares = 0, 0.0  # estimates, and the sum of their squared distances in standard deviations

    @property
    def scatter(self) -> float:
        """The variance of the athlete's estimates about what was expected, over what the rules say of anyone's."""
        found = (RULES_WORTH + self.squares) / (RULES_WORTH + self.judged)
        return min(1.0, max(LEAST_SCATTER, found))

    def copy(self) -> Follower:
        made = Follower(self.model, self.errors, self.prior, patient=self.patient)
        made.state, made.last = self.state, self.last
        made.measured, made.estimated_on = self.measured, self.estimated_on
        made.judged, made.squares = self.judged, self.squares
        made.newest, made.doubtful, made.doubted_side = self.newest.copy(), self.doubtful.copy(), self.doubted_side
        return made

    def through(self, measurements: Iterable[Measurement]) -> Iterator[Floats]:
        """Go on through measurements in order of day, none before those that were taken: the state after each.

        To be asked to the end: only then can it go on from there.
        """
        state: Floats | None = self.state
        errors, last, doubt, ahead = self.errors, self.last, self.model.doubt, ahead_by(self.model)
        for one in measurements:
            on, kind, log_e1rm, variance, n, reserve, log_load = one
            self.measured += 1
            if kind == "estimate":
                self.estimated_on = on
            if state is None or last is None:
                state, last = _first(one, self.model, None if errors is None else self.prior), on
                self.newest.append(n)
                yield state
                continue
            if days := (on - last).days:
                state, last = advanced(state, ahead[days]), on
            if errors is None:
                difference, by_steepness, by_bias = log_e1rm - state[0], 0.0, 0.0
            elif kind == "estimate":
                difference, variance, by_steepness, by_bias, left = _seen(state, n, reserve, log_load, errors)
                if left > FAR_RESERVE and reserve > FAR_RESERVE - SURPRISE:
                    yield state
                    continue
            else:
                difference, by_steepness, by_bias = *_bound(state, n, reserve, log_load), 0.0
            # A bound that is as expected says a little, and never that a measurement is doubtful.
            if kind == "estimate" or (difference <= 0.0) != (kind == "floor"):
                known = spread(state, by_steepness, by_bias)
                distance = abs(difference) / math.sqrt(known + variance)
                if kind == "estimate" and errors is not None:
                    variance *= self.scatter
                    self.judged += 1
                    self.squares += min(distance, doubt) ** 2
                if distance <= doubt:
                    self.doubted_side = 0.0
                    self.newest.append(n)
                elif self.patient and math.copysign(1.0, difference) == self.doubted_side:
                    state = (*state[:2], state[2] + difference * difference / 4.0, *state[3:])
                    self.doubted_side = 0.0
                else:
                    excess = (distance / doubt) ** 2
                    variance = variance * excess + known * (excess - 1.0)
                    self.doubtful.append(on)
                    self.doubted_side = math.copysign(1.0, difference)
            if kind == "estimate":
                state = updated(state, difference, variance, by_steepness, by_bias)
            else:
                state = cut(state, difference, variance, kind, by_steepness)
            yield state
        self.state, self.last = None if state is None else State(*state), last

    def trend(self) -> Trend | None:
        """The trend as of the last measurement; None where there was none."""
        if self.state is None or self.last is None:
            return None
        n_range = (min(self.newest), max(self.newest)) if self.newest else (1.0, 1.0)
        return Trend(self.last, self.state, self.model, n_range, self.measured, self.estimated_on, tuple(self.doubtful))


def _first(one: Measurement, model: Model, prior: Prior | None) -> Floats:
    """The state after the first measurement; without a prior, habits are known to be neutral."""
    variance, slope_variance = one.variance + model.first_level_variance, model.first_slope_variance
    if prior is None:
        return State(one.log_e1rm, 0.0, variance, 0.0, slope_variance)
    steepness, bias, var_steepness, var_bias = prior
    n = one.n + bias * one.reserve
    curve = log_factor(n)
    left = steepness * one.reserve / (37.0 - n)
    return State(
        level=one.log_load + steepness * curve,
        slope=0.0,
        var_level=variance + curve * curve * var_steepness + left * left * var_bias,
        cov=0.0,
        var_slope=slope_variance,
        steepness=steepness,
        reserve_bias=bias,
        cov_level_steepness=curve * var_steepness,
        cov_level_bias=left * var_bias,
        var_steepness=var_steepness,
        var_bias=var_bias,
    )


def _seen(
    state: Floats, n: float, reserve: float, log_load: float, errors: Errors
) -> tuple[float, float, float, float, float]:
    """An estimate against the state: (difference, variance, by steepness, by bias), for `updated`, and the reps that
    should be told as left.

    How far a set was from failure, and with it how far its effort can be trusted, is taken from its load and reps, not
    from the effort as told: a told effort is noisy, and who is weighed by their own noise is taken for weaker than they
    are, because sets called harder than they were would count the most.
    """
    level = state[0]
    steepness, bias = _habits(state)
    difference = log_load + steepness * log_factor(n + bias * reserve) - level
    reps = n - reserve
    expected = reps_of_factor(math.exp((level - log_load) / steepness))
    if expected < reps or expected > _MOST_REPS:
        expected = reps if expected < reps else max(reps, _MOST_REPS)
    told = (expected - reps) / (1.0 + bias)
    by_steepness = -log_factor(expected) if expected > 1.0 else 0.0
    return difference, errors.variance(expected, told), by_steepness, -steepness * told / (37.0 - expected), told


def _bound(state: Floats, n: float, reserve: float, log_load: float) -> tuple[float, float]:
    """A floor or ceiling against the state: (difference, by steepness), for `cut`."""
    steepness, bias = _habits(state)
    curve = log_factor(n + bias * reserve)
    return log_load + steepness * curve - state[0], -curve


def _habits(state: Floats) -> tuple[float, float]:
    steepness, bias = state[5], state[6]
    if _LEAST_STEEP <= steepness <= _MOST_STEEP and _LEAST_BIAS <= bias <= _MOST_BIAS:
        return steepness, bias
    habits = believable(steepness, bias)
    return habits.steepness, habits.reserve_bias


def follow(measurements: Iterable[Measurement], model: Model, errors: Errors | None = None) -> Trend | None:
    """The trend through measurements in order of day; None where there is none.

    A floor only ever raises the level, a ceiling only lowers it. A measurement more than `model.doubt` standard
    deviations away is doubted: its weight falls with the square of the distance. Two doubted in a row on the same side
    are no slip any more, and the level moves over.

    Args:
        errors: How far sets can be trusted; the athlete's habits are followed too. Without, every measurement is taken
            at its word and its own variance.
    """
    follower = Follower(model, errors)
    deque(follower.through(measurements), maxlen=0)
    return follower.trend()
