"""The items of a message, as the forms of the set grammar look at them."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from bot.reading.items import END, Item
from bot.reading.little import little
from bot.reading.scan.compared import uncompared
from bot.reading.scan.tidied import tidied
from bot.reading.scan.unsigned import signed
from planner.units import KG_PER_LB

MOST_OF_OR = 4  # words of "or was it"
MOST_OF_OR_LOAD = 6  # words of "or maybe it was with"
SENTENCE_ENDS = frozenset({".", "!", "?", ";"})


def _rest_paused(items: Sequence[Item]) -> frozenset[int]:
    """The places of the sentences that speak of rest-pause, and of those behind them that name no exercise."""
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


class _Places(dict[int, Item]):
    """Items by their place, with an end wherever there is none."""

    def __missing__(self, at: int) -> Item:
        return END


class Scanner:
    """The items of a message, and what every form asks of them."""

    def __init__(self, items: Sequence[Item], unit: str, bodyweight_kg: float | None, *, planned: bool = False) -> None:
        self.items = items = tidied(signed(items) if planned else uncompared(items))
        # the item at a place; asked so often that a call of Python's own is worth it
        self.at: Callable[[int], Item] = _Places(enumerate(items)).__getitem__
        self.unit = unit
        self.bodyweight_kg = bodyweight_kg
        labels = {label for item in items for label in item.labels}
        self._rest_paused = _rest_paused(items) if ("link", "rest_pause") in labels else frozenset[int]()
        self.planned = planned  # the day has a plan: "4 de 5" may be so many of its sets
        self.one_sided = ("side", "left") in labels  # then "5r" is the right arm's
        texts = {item.text for item in items}
        told = ("each_step", "per_step", "step_jumps")  # "2.5 more each set"
        self.steps = not all(little(name).isdisjoint(texts) for name in told)
        self.has_tempo = ("noise", "tempo") in labels
        self.has_ladder = ("scheme", "ladder") in labels

    def rest_paused(self, i: int) -> bool:
        """Whether what stands at `i` is told of a rest-pause set."""
        return i in self._rest_paused

    def kg(self, value: float, unit: str | None = None) -> float:
        return value * KG_PER_LB if (unit or self.unit) == "lb" else value

    def whole(self, value: float) -> bool:
        return value == int(value) and value <= 1000

    def or_other(self, i: int) -> int | None:
        """Where the other number of "7 or 8", "7 or maybe 8", "7 maybe 8" stands; its "or" is at `i`. None: no such."""
        said = self.at(i).has("sep", "or")
        if not said and self.at(i).text not in little("hedge"):
            return None
        j = i + said
        while j < i + MOST_OF_OR and self.at(j).text in little("or_other"):
            j += 1
        return j if j > i and self.at(j).kind == "num" else None

    def or_other_load(self, i: int) -> int | None:
        """Where the other load of "18 or 20", "8 bis 10", "at 18, or was it with 20" stands; its "or" is at `i`."""
        i += self.at(i).text == ","
        said = self.at(i).has("sep", "or") or (self.at(i).text.isalpha() and self.at(i).text in little("until"))
        if not said and self.at(i).text not in little("hedge"):
            return None
        j = i + said
        silent = little("or_other", "might_be")
        while j < i + MOST_OF_OR_LOAD and (self.at(j).text in silent or self.at(j).has("load", "plus", "at")):
            j += 1
        return j if j > i and self.at(j).kind == "num" else None

    def unit_at(self, i: int) -> str | None:
        return self.at(i).name("unit")
