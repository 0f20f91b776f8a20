"""When a gate of strength is likely met: an interval from the athlete's own trend, or nothing.

Gains slow with the log of time (Steele 2022: linear in ln(weeks) over six years), and single lines overshoot, so the
slope is damped and then shortened by the time already trained. No date beyond the horizon: a line carries no further.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from datetime import date, timedelta
from statistics import NormalDist

from planner.rules import Rules
from planner.state_space import DAYS_A_WEEK, advance
from planner.trend import Trend


@dataclass(frozen=True, slots=True)
class Interval:
    """Days between which a gate is likely met; `latest` None: perhaps not within the horizon."""

    earliest: date
    latest: date | None


def gate_interval(trend: Trend, wanted_e1rm_kg: float, on: date, trained_weeks: float, rules: Rules) -> Interval | None:
    """The interval in which the 1RM of the system load is likely to reach `wanted_e1rm_kg`, seen on day `on`.

    Both ends are of the level alone: the later end is where the cautious edge of the band arrives, the earlier where
    the hopeful one does. `trained_weeks`: weeks of training behind the athlete, at least 1.

    Returns None where it is not to be expected within `forecast.horizon_weeks`, or the middle of the trend does not
    get there by then: "not within 12 weeks at this pace".
    """
    horizon = rules.whole("forecast.horizon_weeks")
    spread = NormalDist().inv_cdf(0.5 + rules.number("forecast.band_percent") / 200.0)
    wanted = math.log(wanted_e1rm_kg)
    state = trend.state_on(on)
    earliest: date | None = None
    middle_arrives = False
    for week in range(horizon + 1):
        ahead = advance(state, float(week), trend.model)
        level = state.level + (ahead.level - state.level) * slowing(trained_weeks, week)
        sd = math.sqrt(ahead.var_level)
        day = on + timedelta(days=round(week * DAYS_A_WEEK))
        if earliest is None and level + spread * sd >= wanted:
            earliest = day
        middle_arrives = middle_arrives or level >= wanted
        if level - spread * sd >= wanted:
            return Interval(earliest or day, day)
    return Interval(earliest, None) if earliest is not None and middle_arrives else None


def slowing(trained_weeks: float, ahead_weeks: float) -> float:
    """The share of a straight line's gain that is left over the next weeks, when gains go with ln(weeks).

    ln(1 + h/w) over h/w: 1 at once, less the longer ahead and the newer the athlete. Source: Steele 2022.
    """
    if ahead_weeks <= 0:
        return 1.0
    ratio = ahead_weeks / max(trained_weeks, 1.0)
    return math.log1p(ratio) / ratio
