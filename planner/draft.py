"""A day's plan while it is made, and what acts on that day."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import date, timedelta
from typing import Literal

from planner.facts import PlannedSet, Side
from planner.history import History
from planner.movements import closest_possible, movement
from planner.pain import Pain
from planner.plan import Decision, Reason, Value
from planner.progress import Climb
from planner.timeline import Exposure, Slot, Timeline

DAY = timedelta(days=1)
DecisionKind = Literal["load", "dose", "rung", "deload", "stop", "start", "absence", "pain", "order", "grip"]


@dataclass
class Draft:
    """A day's plan while it is made."""

    day: date
    slot: Slot
    warm_up: list[PlannedSet] = field(default_factory=list)
    skill: list[PlannedSet] = field(default_factory=list)
    main: list[PlannedSet] = field(default_factory=list)
    accessories: list[PlannedSet] = field(default_factory=list)
    holds: list[str] = field(default_factory=list)
    decisions: list[Decision] = field(default_factory=list)
    most_kg: float | None = None  # added load that the rules allow the main lift; None: nothing is known that limits it

    def decide(self, kind: DecisionKind, about: str, code: str, values: Mapping[str, Value] | None = None) -> None:
        self.decisions.append(Decision(self.day, kind, about, (Reason(code, values or {}),)))

    def hold(self, *parts: object) -> None:
        name = ":".join(str(part) for part in parts if part is not None)
        if name not in self.holds:
            self.holds.append(name)

    @property
    def sets(self) -> tuple[PlannedSet, ...]:
        return (*self.warm_up, *self.skill, *self.main, *self.accessories)


@dataclass(frozen=True)
class Today:
    """What acts on one day, gathered once."""

    history: History
    timeline: Timeline
    climbs: tuple[Climb, ...]
    slot: Slot
    day: date
    pains: tuple[Pain, ...]
    planned_ahead: Mapping[date, Mapping[Side, int]]

    @property
    def equipment(self) -> frozenset[str]:
        return self.history.equipment(self.day)

    @property
    def excluded(self) -> frozenset[str]:
        return self.history.orders.excluded(self.day)

    def pain_of(self, name: str) -> Pain | None:
        """The worst pain that a movement loads."""
        found = movement(name)
        return next((one for one in self.pains if one.level != "fine" and found.loads_site(one.site)), None)

    def stopped(self, name: str) -> bool:
        pain = self.pain_of(name)
        return pain is not None and pain.level == "stop"

    def can_do(self, name: str) -> bool:
        """Whether there is the equipment for it, and the coach has not left it out."""
        return name not in self.excluded and movement(name).possible_with(self.equipment)

    def done_as(self, name: str) -> str | None:
        """The movement itself, what the coach swapped it for, or the closest that equipment and orders allow."""
        swap = self.history.orders.swapped(name, self.day)
        wanted = str(swap.value) if swap is not None and swap.value else name
        return closest_possible(wanted, self.equipment, self.excluded)


def pains_on(today: Today, name: str) -> list[Pain]:
    found = movement(name)
    return [one for one in today.pains if found.loads_site(one.site)]


def late_exposures(today: Today, days: int) -> list[Exposure]:
    since = today.day - days * DAY
    return [one for one in today.timeline.exposures if since <= one.on < today.day]


def cut_of(today: Today, name: str) -> float:
    """Share taken off the system load by absence and pain; the larger of the two."""
    pain = today.pain_of(name)
    for_pain = today.history.rules.number("pain.cut") if pain is not None and pain.level == "step_down" else 0.0
    for_absence = today.slot.comeback.cut if today.slot.comeback is not None else 0.0
    return max(for_pain, for_absence)
