"""A number with its unit, as it is told against the plan."""

from __future__ import annotations

from dataclasses import dataclass

from bot.reading.facts import Fact
from bot.reading.items import Item
from bot.reading.scan.scanner import Scanner

Found = tuple[list[Fact], int]  # the facts, and the item behind them


@dataclass(frozen=True)
class Value:
    """The number at item `i`; `behind` stands what follows it and its unit: kg, lb, sec, reps, sets or none."""

    s: Scanner
    i: int
    value: float
    unit: str | None
    behind: int

    @property
    def item(self) -> Item:
        return self.s.at(self.i)

    @property
    def mark(self) -> Item:
        return self.s.at(self.behind)

    def count(self, end: int, note: dict[str, object], behind: int | None = None) -> Found:
        """So many sets, told up to the item before `end`."""
        fact = Fact("count", self.item.start, self.s.at(end - 1).end, int(self.value), note)
        return [fact], end if behind is None else behind


def value_at(s: Scanner, i: int, value: float) -> Value:
    j = i + 1
    if s.unit_at(j) in ("kg", "lb", "sec"):
        return Value(s, i, value, s.unit_at(j), j + 1)
    unit = "reps" if s.at(j).has("reps") else "sets" if s.at(j).has("sets") else None
    return Value(s, i, value, unit, j + (unit is not None))
