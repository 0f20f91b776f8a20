"""Contexts and plans for the reader's tests."""

from __future__ import annotations

from datetime import datetime
from typing import Any
from zoneinfo import ZoneInfo

from bot.reading.reading import Context
from planner.facts import PlannedSet


def context(**changes: Any) -> Context:
    """A plain Wednesday evening in London, unless a test says otherwise."""
    plain: dict[str, Any] = {
        "sent_at": datetime.fromisoformat("2027-03-10T19:00:00+00:00"),
        "timezone": ZoneInfo("Europe/London"),
        "language": "en",
        "bodyweight_kg": 71.5,
    }
    return Context(**(plain | changes))


def planned(movement: str, *reps: int, part: str = "main", **more: Any) -> tuple[PlannedSet, ...]:
    """The sets of one movement in a day's plan."""
    return tuple(PlannedSet(movement=movement, part=part, reps=n, **more) for n in reps)  # type: ignore[arg-type]
