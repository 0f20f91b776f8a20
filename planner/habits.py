"""An athlete's own ways: how many reps "two left" means for them, and how fast their reps fall with load.

Both are neutral until the record itself shows otherwise: they can only be told apart from strength where one athlete
has trained at different efforts and rep counts, so each is a ridge regression of the trend's surprises on how far a
session differed from the sessions before it. With no difference nothing is learned, and the mean stays where it was.

A told effort is noisy, and a regression on a noisy number learns the noise: how far a session was from failure is
therefore taken from its load and reps against the trend, not from the effort as told.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from planner.evidence import Measurement
from planner.repetitions import expected_reps_to_failure, one_rep_max_factor
from planner.trend import Surprise

# Before any evidence, two athletes in three are within these of neutral. Habits outside the limits are more likely
# bad notes than bad judges. Common practice, no source.
STEEPNESS_SD, STEEPNESS_LIMITS = 0.2, (0.6, 1.2)
RESERVE_SD, RESERVE_LIMITS = 0.3, (-0.3, 0.6)
LEAST_SURPRISES = 12
_MEMORY = 0.25  # weight of the newest session in "the sessions before"
_FARTHEST = 3.0  # a surprise further off, in standard deviations, is a slip of the pen


@dataclass(frozen=True, slots=True)
class Habits:
    """`steepness`: exponent on 1RM over load; below 1 reps fall faster with load than the equations say.
    `reserve_bias`: further reps left for every rep said to be left."""

    steepness: float = 1.0
    reserve_bias: float = 0.0

    @property
    def neutral(self) -> bool:
        return self.steepness == 1.0 and self.reserve_bias == 0.0

    def corrected(self, found: Iterable[Measurement]) -> list[Measurement]:
        """Measurements as this athlete's sets are to be understood. Floors are what was done and stay near it."""
        steepness, bias = self.steepness, self.reserve_bias
        return [
            Measurement(
                on,
                kind,
                log_load + steepness * math.log(one_rep_max_factor(min(n + bias * reserve, 30.0))),
                variance,
                n,
                reserve,
                log_load,
            )
            for on, kind, _, variance, n, reserve, log_load in found
        ]


NEUTRAL = Habits()


class Learner:
    """Habits under way: the surprises of a trend that took every set at its word, in order of day."""

    __slots__ = ("_a11", "_a12", "_a22", "_b1", "_b2", "_count", "_usual")

    def __init__(self) -> None:
        self._a11, self._a12, self._a22 = 1.0 / STEEPNESS_SD**2, 0.0, 1.0 / RESERVE_SD**2
        self._b1 = self._b2 = 0.0
        self._usual: tuple[float, float] | None = None
        self._count = 0

    def copy(self) -> Learner:
        made = Learner()
        for name in Learner.__slots__:
            setattr(made, name, getattr(self, name))
        return made

    def take(self, surprises: Sequence[Surprise]) -> None:
        """Learn from the surprises that came next."""
        for one, difference, variance in surprises:
            self._count += 1
            reps = one.n - one.reserve
            expected = one.log_e1rm - difference - one.log_load
            n = min(max(expected_reps_to_failure(math.exp(expected), 1.0), reps), 14.0)
            curve, left = math.log(one_rep_max_factor(n)), (n - reps) / (37.0 - n)
            usual = self._usual or (curve, left)
            if difference * difference <= _FARTHEST**2 * variance:
                x1, x2 = curve - usual[0], left - usual[1]
                self._a11 += x1 * x1 / variance
                self._a12 += x1 * x2 / variance
                self._a22 += x2 * x2 / variance
                self._b1 -= x1 * difference / variance
                self._b2 -= x2 * difference / variance
            self._usual = (usual[0] + _MEMORY * (curve - usual[0]), usual[1] + _MEMORY * (left - usual[1]))

    def habits(self) -> Habits:
        """What has been learned so far: nothing from a few."""
        if self._count <= LEAST_SURPRISES:
            return NEUTRAL
        determinant = self._a11 * self._a22 - self._a12 * self._a12
        steepness = 1.0 + (self._a22 * self._b1 - self._a12 * self._b2) / determinant
        bias = (self._a11 * self._b2 - self._a12 * self._b1) / determinant
        return Habits(_within(steepness, STEEPNESS_LIMITS), _within(bias, RESERVE_LIMITS))


def learn(surprises: Sequence[Surprise]) -> Habits:
    """Habits from the surprises of a trend that took every set at its word, in order of day."""
    learner = Learner()
    learner.take(surprises)
    return learner.habits()


def _within(value: float, limits: tuple[float, float]) -> float:
    return round(min(max(value, limits[0]), limits[1]), 4)
