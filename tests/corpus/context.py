"""From a corpus line to what the reader takes, and the lines of a file."""

from __future__ import annotations

import json
from datetime import datetime
from pathlib import Path
from typing import Any
from zoneinfo import ZoneInfo

from bot.reading.reading import Context
from planner.facts import PlannedSet

SET_FIELDS = "movement part reps side hold_s load_kg assist_kg rpe rom eccentric rung".split()


def context_of(message: dict[str, Any]) -> Context:
    """The context of a line's `in`."""
    today = message["today"]
    return Context(
        sent_at=datetime.fromisoformat(message["sent_at"]),
        timezone=ZoneInfo(message["timezone"]),
        unit=message["unit"],
        language=message["language"],
        bodyweight_kg=message["bodyweight_kg"],
        today=None if today is None else tuple(planned_set(s) for s in today),
    )


def planned_set(s: dict[str, Any]) -> PlannedSet:
    return PlannedSet(**{f: s[f] for f in SET_FIELDS}, pauses=tuple(s["pauses"]))


def corpus(path: Path) -> list[dict[str, Any]]:
    """The lines of a corpus file."""
    return [json.loads(raw) for raw in path.read_text(encoding="utf-8").splitlines() if raw.strip()]
