"""What the planner is asked: the whole of an athlete on one day, or the plans of days. Pure functions of the record.

The fold (`view.py`) is imported when it is first asked for: who only reads messages starts without it.
"""

from __future__ import annotations

from datetime import date, timedelta
from typing import TYPE_CHECKING

from planner.facts import Record

if TYPE_CHECKING:
    from planner.plan import DayPlan, Review

DAY = timedelta(days=1)


def review(record: Record, on: date) -> Review:
    """The review of one athlete as known at the end of day `on`; `today` is the plan of `on`."""
    from planner.view import View

    return View(record, on).review()


def plan_for(record: Record, on: date, day: date) -> DayPlan:
    """The plan of `day` as seen on `on`."""
    from planner.view import View

    return View(record, on).plan(day)


def week_ahead(record: Record, on: date, days: int = 7) -> tuple[DayPlan, ...]:
    """The plans of `days` days from `on`, one for each day, as seen on `on`."""
    from planner.view import View

    view = View(record, on)
    return tuple(view.plan(on + ahead * DAY) for ahead in range(days))
