"""What is to come of the block as things stand: its deload, its test, its end."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date

from planner.facts import Record
from planner.plan import BlockPosition, DayPlan
from planner.slots import AS_IF_TEST
from planner.view import View

SIGHT_DAYS = 77  # a block of the longest kind, its deload, and three weeks away between


@dataclass(frozen=True)
class Ahead:
    """`block`: the one that stands on the day asked; `deload_on`: the first session of the deload that is under way or
    comes next; `test`: the plan of the next test day that is not done. None: not in sight."""

    block: BlockPosition | None
    deload_on: date | None
    test: DayPlan | None


def look_ahead(record: Record, on: date) -> Ahead:
    """Where the block goes from `on`, every day ahead trained as planned."""
    view = View(record, on, SIGHT_DAYS)
    placed = [(slot.on, slot) for slot in view.timeline.slots if slot.on is not None]
    at = view.timeline.slot_at(on)
    deloads = [day for day, slot in placed if slot.is_deload and slot.position.ends_on >= on]
    tests = [
        day for day, slot in placed if slot.kind in AS_IF_TEST and day >= on and day not in view.history.session_days
    ]
    return Ahead(
        block=at.position if at is not None else None,
        deload_on=min(deloads, default=None),
        test=view.plan(min(tests)) if tests else None,
    )
