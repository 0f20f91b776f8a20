"""The nearest day of a name, looking back or ahead."""

from __future__ import annotations

from datetime import date, timedelta


def weekday_back(today: date, weekday: int, before: bool = False) -> date:
    gap = (today.weekday() - weekday) % 7
    return today - timedelta(days=gap or (7 if before else 0))


def weekday_ahead(today: date, weekday: int, after: bool = False) -> date:
    gap = (weekday - today.weekday()) % 7
    return today + timedelta(days=gap or (7 if after else 0))


def day_of(year: int, month: int, day: int) -> date | None:
    try:
        return date(year, month, day)
    except ValueError:
        return None


def of_month(today: date, month: int, day: int, ahead: bool) -> date | None:
    """The nearest such day of the year, looking back or ahead; up to eight years for a 29 February."""
    for step in range(9):
        found = day_of(today.year + (step if ahead else -step), month, day)
        if found is not None and ((found >= today) if ahead else (found <= today)):
            return found
    return None


def day_of_month(today: date, day: int, ahead: bool) -> date | None:
    if not 1 <= day <= 31:
        return None
    month = today.replace(day=1)
    for _ in range(13):
        found = day_of(month.year, month.month, day)
        if found is not None and ((found >= today) if ahead else (found <= today)):
            return found
        month = (month + timedelta(days=32) if ahead else month - timedelta(days=1)).replace(day=1)
    return None
