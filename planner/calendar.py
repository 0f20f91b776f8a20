"""Days: which are training days, which of them are pulling days, and where a missed or moved session goes."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import date, timedelta
from functools import lru_cache
from itertools import combinations

from planner.facts import Cycle, Move, Weekly

DAY = timedelta(days=1)


def week_length(schedule: Weekly | Cycle) -> int:
    """Days of one microcycle: the calendar's week, or the athlete's own cycle."""
    return schedule.length if isinstance(schedule, Cycle) else 7


def is_training_day(schedule: Weekly | Cycle, day: date) -> bool:
    if isinstance(schedule, Cycle):
        return (day - schedule.since).days % schedule.length + 1 in schedule.train
    return day.weekday() in schedule.days


def next_training_day(schedule: Weekly | Cycle, day: date) -> date | None:
    """`day` itself or the first training day after it; None where the schedule has none."""
    for ahead in range(week_length(schedule)):
        if is_training_day(schedule, day + timedelta(ahead)):
            return day + timedelta(ahead)
    return None


@lru_cache(maxsize=512)
def pulling_offsets(offsets: tuple[int, ...], length: int, count: int, gap_days: int) -> tuple[int, ...]:
    """Which training days of a week are for pulling: up to `count`, at least `gap_days` apart (also from the last to
    the next week's first), as evenly spread as can be, the earliest such. `offsets` are days from the week's start."""
    for wanted in range(min(count, len(offsets)), 1, -1):
        best = max(combinations(offsets, wanted), key=lambda days: (_least_gap(days, length), [-day for day in days]))
        if _least_gap(best, length) >= gap_days:
            return best
    return offsets[:1]


def _least_gap(days: tuple[int, ...], length: int) -> int:
    following = (*days[1:], days[0] + length)
    return min(after - day for day, after in zip(days, following, strict=True))


def offsets(
    schedule: Weekly | Cycle, start: date, count: int, gap_days: int
) -> tuple[tuple[timedelta, ...], tuple[timedelta, ...]]:
    """How far the training days and the pulling days of the microcycle that starts on `start` are from it: the same
    for every microcycle that follows it without a break."""
    return _offsets_apart(schedule, _phase(schedule, start), count, gap_days)


@lru_cache(maxsize=256)
def _offsets_apart(
    schedule: Weekly | Cycle, phase: int, count: int, gap_days: int
) -> tuple[tuple[timedelta, ...], tuple[timedelta, ...]]:
    found = _offsets(schedule, phase)
    pulling = pulling_offsets(found, week_length(schedule), count, gap_days)
    return tuple(timedelta(days) for days in found), tuple(timedelta(days) for days in pulling)


def _phase(schedule: Weekly | Cycle, start: date) -> int:
    """The day of the week or cycle, from 0, that `start` is."""
    return (start - schedule.since).days % schedule.length if isinstance(schedule, Cycle) else start.weekday()


@lru_cache(maxsize=256)
def _offsets(schedule: Weekly | Cycle, phase: int) -> tuple[int, ...]:
    length = week_length(schedule)
    trains = {day - 1 for day in schedule.train} if isinstance(schedule, Cycle) else schedule.days
    return tuple(ahead for ahead in range(length) if (phase + ahead) % length in trains)


def where_moved(moves: Iterable[Move]) -> dict[date, date]:
    """Where the session of each day is that is no longer there, moves followed in the order in which they were said.

    A later word of the day it was planned for, or of the day where it was by then, is about the same session: moved to
    Friday and back, it stays where it was.
    """
    told, found = tuple(moves), dict[date, date]()
    for planned in {move.moved_from for move in told}:
        day = planned
        for move in told:
            if move.moved_from in (planned, day):
                day = move.moved_to
        if day != planned:
            found[planned] = day
    return found


def slide(start: date, not_before: date, next_on: date, gap_days: int, taken: frozenset[date]) -> date | None:
    """The first free day from `start` that leaves `gap_days` to the session before (`not_before` is the first day that
    does) and to the next one on `next_on`; None where none fits: the session is dropped, never doubled."""
    day = max(start, not_before)
    while (next_on - day).days >= gap_days:
        if day not in taken:
            return day
        day += DAY
    return None
