"""The items of a message, as the forms of the set grammar look at them."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.items import END, Item
from bot.reading.little import little
from planner.units import KG_PER_LB

SENTENCE_ENDS = frozenset({".", "!", "?", ";"})


def _steps(item: Item) -> bool:
    """Whether an item may tell that the load changes from set to set."""
    text = item.text
    return text in little("each_step") or text in little("per_step") or text in little("step_jumps")


def _rest_paused(items: Sequence[Item]) -> frozenset[int]:
    """The places of the sentences that speak of rest-pause, and of those behind them that name no exercise."""
    if not any(item.has("link", "rest_pause") for item in items):
        return frozenset()
    found: set[int] = set()
    start, open_ = 0, False
    for at in range(len(items) + 1):
        if at < len(items) and items[at].kind != "nl" and items[at].text not in SENTENCE_ENDS:
            continue
        sentence = range(start, at)
        said = any(items[n].has("link", "rest_pause") for n in sentence)
        open_ = said or (open_ and not any(items[n].kind == "move" for n in sentence))
        found.update(sentence if open_ else ())
        start = at + 1
    return frozenset(found)


class Scanner:
    """The items of a message, and what every form asks of them."""

    def __init__(self, items: Sequence[Item], unit: str, bodyweight_kg: float | None, *, planned: bool = False) -> None:
        self.items = items
        self.unit = unit
        self.bodyweight_kg = bodyweight_kg
        self._rest_paused = _rest_paused(items)
        self.planned = planned  # the day has a plan: "4 de 5" may be so many of its sets
        self.one_sided = any(item.has("side", "left") for item in items)  # then "5r" is the right arm's
        self.steps = any(_steps(item) for item in items)  # "2.5 more each set"
        self.has_tempo = any(item.has("noise", "tempo") for item in items)

    def rest_paused(self, i: int) -> bool:
        """Whether what stands at `i` is told of a rest-pause set."""
        return i in self._rest_paused

    def at(self, i: int) -> Item:
        return self.items[i] if 0 <= i < len(self.items) else END

    def kg(self, value: float, unit: str | None = None) -> float:
        return value * KG_PER_LB if (unit or self.unit) == "lb" else value

    def whole(self, value: float) -> bool:
        return value == int(value) and value <= 1000

    def unit_at(self, i: int) -> str | None:
        return self.at(i).name("unit")
