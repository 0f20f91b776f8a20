"""How long athletes stay on a rung: Kaplan-Meier, so that those still on it count as far as they are known."""

from __future__ import annotations

import math
from collections.abc import Iterable
from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Stay:
    """Time on a rung; `left` False where the athlete is still there (censored)."""

    weeks: float
    left: bool


@dataclass(frozen=True, slots=True)
class Step:
    """The share still on the rung after `weeks`. `se`: Greenwood's standard error; `at_risk`: known to be there
    just before."""

    weeks: float
    share: float
    se: float
    at_risk: int


def still_there(stays: Iterable[Stay]) -> tuple[Step, ...]:
    """The Kaplan-Meier curve, a step at each time that somebody left. Kaplan & Meier 1958, Greenwood 1926."""
    ordered = sorted(stays, key=lambda stay: stay.weeks)
    share, hazard, steps = 1.0, 0.0, []
    at_risk, index = len(ordered), 0
    while index < len(ordered):
        weeks = ordered[index].weeks
        same = [stay for stay in ordered[index:] if stay.weeks == weeks]
        gone = sum(stay.left for stay in same)
        if gone:
            share *= 1.0 - gone / at_risk
            # The last ones leaving together leave no one to be unsure about.
            hazard += gone / (at_risk * (at_risk - gone)) if at_risk > gone else 0.0
            steps.append(Step(weeks, share, share * math.sqrt(hazard), at_risk))
        at_risk -= len(same)
        index += len(same)
    return tuple(steps)


def weeks_until(steps: Iterable[Step], gone: float) -> float | None:
    """The first time at which that share (0 to 1) or more has left; None while fewer have."""
    return next((step.weeks for step in steps if step.share <= 1.0 - gone + 1e-12), None)
