"""How heavy days and weeks were, by the session's effort times its minutes.

Arithmetic for a chart and a coach's eye. No injury probability and no ratio zones are made from it: the evidence does
not carry them (Impellizzeri 2020).
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from statistics import fmean, stdev

from planner.facts import Session


@dataclass(frozen=True, slots=True)
class WeekLoad:
    """Seven days of load. `monotony` is None where every day was the same (sd 0), and `strain` with it."""

    total: float
    mean: float
    monotony: float | None
    strain: float | None


def session_load(session_rpe: float, duration_min: float) -> float:
    """Load of a session in arbitrary units: effort (0-10) times minutes. Foster 1998."""
    return session_rpe * duration_min


def daily_loads(sessions: Iterable[Session], first: date, days: int = 7) -> list[float]:
    """Load of each of `days` days from `first`, rest days 0; sessions without effort or minutes count 0."""
    by_day: Mapping[date, float] = _by_day(sessions)
    return [by_day.get(first + timedelta(days=index), 0.0) for index in range(days)]


def week_load(loads: Sequence[float]) -> WeekLoad:
    """Total, mean, monotony (mean over the sample standard deviation) and strain (total times monotony).

    The sample sd: what was read of Foster does not fix which; the smaller figure claims less.

    Raises:
        ValueError: Not seven days.
    """
    if len(loads) != 7:
        raise ValueError(f"a week has seven days, not {len(loads)}")
    total, mean, spread = sum(loads), fmean(loads), stdev(loads)
    if spread == 0.0:
        return WeekLoad(total, mean, None, None)
    monotony = mean / spread
    return WeekLoad(total, mean, monotony, total * monotony)


def smoothed(loads: Iterable[float], days: int, start: float | None = None) -> list[float]:
    """Exponentially weighted mean of daily loads with decay 2 / (days + 1), one value a day.

    `start`: the value before the first day; without it the first day's load. Source: Williams 2017.
    """
    share = 2.0 / (days + 1.0)
    mean, result = start, []
    for load in loads:
        mean = load if mean is None else share * load + (1.0 - share) * mean
        result.append(mean)
    return result


def _by_day(sessions: Iterable[Session]) -> dict[date, float]:
    by_day: dict[date, float] = {}
    for session in sessions:
        if session.session_rpe is not None and session.duration_min is not None:
            load = session_load(session.session_rpe, session.duration_min)
            by_day[session.on] = by_day.get(session.on, 0.0) + load
    return by_day
