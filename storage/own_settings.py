"""What athletes set for themselves by a message and can take back: unit, hour of the plan, being left alone."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import time
from typing import Any

from sqlmodel import Session

from storage.persons import Athlete, update_athlete

MOST_STEPS = 20  # that can be taken back
Step = tuple[int, str, Any, Any]  # the message, the setting, what it was before, and what the message made of it


def set_own(tx: Session, athlete: Athlete, changes: Mapping[str, Any], cause: int | None) -> None:
    """Change settings by column name. `cause`: the message that says so, by which it can be taken back."""
    assert athlete.id is not None
    changed = {name: value for name, value in changes.items() if getattr(athlete, name) != value}
    steps = [list(step) for step in athlete.own_before or ()]
    if cause is not None:
        steps += [[cause, name, _kept(getattr(athlete, name)), _kept(value)] for name, value in changed.items()]
    update_athlete(tx, athlete.id, {**changed, "own_before": steps[-MOST_STEPS:] or None})


def last_cause_of_own(athlete: Athlete) -> int | None:
    """The newest message that changed a setting, where that can still be taken back."""
    return max((step[0] for step in athlete.own_before or ()), default=None)


def take_back_own(tx: Session, athlete: Athlete, cause: int) -> dict[str, Any]:
    """The settings as they are again, by name: what a message changed, where nothing was changed over it since."""
    assert athlete.id is not None
    steps = athlete.own_before or []
    back = {
        name: _value(name, before)
        for by, name, before, after in steps
        if by == cause and _kept(getattr(athlete, name)) == after
    }
    left = [step for step in steps if step[0] != cause]
    update_athlete(tx, athlete.id, {**back, "own_before": left or None})
    return back


def _kept(value: Any) -> Any:
    return value.isoformat() if isinstance(value, time) else value


def _value(name: str, kept: Any) -> Any:
    return time.fromisoformat(kept) if name == "plan_at" else kept
