"""The items of a message, as the forms of the set grammar look at them."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.items import END, Item
from bot.reading.little import little
from planner.units import KG_PER_LB


def _steps(item: Item) -> bool:
    """Whether an item may tell that the load changes from set to set."""
    text = item.text
    return text in little("each_step") or text in little("per_step") or text in little("step_jumps")


class Scanner:
    """The items of a message, and what every form asks of them."""

    def __init__(self, items: Sequence[Item], unit: str, bodyweight_kg: float | None, *, planned: bool = False) -> None:
        self.items = items
        self.unit = unit
        self.bodyweight_kg = bodyweight_kg
        self.has_rest_pause = any(item.has("link", "rest_pause") for item in items)
        self.planned = planned  # the day has a plan: "4 de 5" may be so many of its sets
        self.one_sided = any(item.has("side", "left") for item in items)  # then "5r" is the right arm's
        self.steps = any(_steps(item) for item in items)  # "2.5 more each set"
        self.has_tempo = any(item.has("noise", "tempo") for item in items)

    def at(self, i: int) -> Item:
        return self.items[i] if 0 <= i < len(self.items) else END

    def kg(self, value: float, unit: str | None = None) -> float:
        return value * KG_PER_LB if (unit or self.unit) == "lb" else value

    def whole(self, value: float) -> bool:
        return value == int(value) and value <= 1000

    def unit_at(self, i: int) -> str | None:
        return self.at(i).name("unit")
