"""One session of the plan: its day, its kind, its place in the block."""

from __future__ import annotations

from datetime import date, timedelta
from typing import Literal, NamedTuple

from planner import blocks
from planner.absence import Return
from planner.plan import BlockPosition, Reason

SlotKind = Literal["heavy", "volume", "light", "support", "deload", "test", "retest"]
AS_IF_TEST: frozenset[str] = frozenset({"test", "retest"})


class Slot(NamedTuple):
    """One session of the plan. `on` None: dropped. `why`: how it came to another day or was dropped."""

    planned_for: date
    on: date | None
    kind: SlotKind
    block: int
    week: int
    loading_weeks: int
    week_start: date
    block_start: date
    pulling: bool
    main: str
    early: bool = False
    comeback: Return | None = None
    why: Reason | None = None

    @property
    def is_deload(self) -> bool:
        return self.week > self.loading_weeks

    @property
    def position(self) -> BlockPosition:
        """Ends are as the plan stands now."""
        length_days = (self.week_start - self.block_start).days // max(1, self.week - 1) if self.week > 1 else 7
        weeks_left = max(0, self.loading_weeks + 1 - self.week)
        ends = self.week_start + timedelta(days=length_days * (weeks_left + 1) - 1)
        return BlockPosition(
            self.block, self.week, self.loading_weeks, self.block_start, ends, self.week > self.loading_weeks
        )


def ceiling_of(slot: Slot) -> float:
    """The effort ceiling of a slot's main lift by the block."""
    table = blocks.shipped()
    if slot.kind in AS_IF_TEST:
        return table.test.rpe
    if slot.kind == "deload":
        return table.deload.rpe
    if slot.kind == "support":
        return 10.0
    return table.work(slot.kind, slot.week, slot.loading_weeks).rpe
