"""A load that grows or falls from set to set: "added 2.5 each set starting at 15", "up 5 kg each time from 10"."""

from __future__ import annotations

from bot.reading.facts import Fact
from bot.reading.items import Item
from bot.reading.little import little
from bot.reading.scan.scanner import Scanner

MOST_STEP_KG = 15.0  # nobody adds more from one set to the next
MOST_WORDS = 5  # "kept adding on another 2.5 kg"
REACH = 8  # so far back stands the load that grows, where nothing else says that it does


def step(s: Scanner, i: int) -> tuple[list[Fact], int] | None:
    """By how much the load changes; the load that it starts from. `ramps` makes the load of each set of the two."""
    if not s.steps:
        return None
    return _start(s, i) or _step(s, i)


def _start(s: Scanner, i: int) -> tuple[list[Fact], int] | None:
    """ "Starting at 15", "from 10", "angefangen mit 15": the load of the first set."""
    if s.at(i).text not in little("step_start"):
        return None
    j = i + 1
    while s.at(j).text in little("step_start_at") and j < i + 3:
        j += 1
    if j == i + 1 and s.at(i).text in little("the"):
        return None  # the "los" of "los dos primeros", not of "los mit 15"
    number, unit = s.at(j), s.unit_at(j + 1)
    if number.kind != "num" or number.value is None or unit not in (None, "kg", "lb"):
        return None
    end = j + 1 + (unit is not None)
    if s.at(end).has("reps") or s.at(end).has("sets") or s.at(end).has("times", "x") or s.at(end).kind == "move":
        return None
    note = {"how": "at", "start": True}
    return [Fact("load", s.at(i).start, s.at(end - 1).end, s.kg(number.value, unit), note)], end


def _step(s: Scanner, i: int) -> tuple[list[Fact], int] | None:
    j = _each(s, i)  # "each set 2.5 more"
    led = j > i
    sign, j = _way(s, j)
    number, unit = s.at(j), s.unit_at(j + 1)
    if number.kind != "num" or number.value is None or (number.spelled and number.value == 1):
        return None
    if unit not in (None, "kg", "lb"):
        return None
    j += 1 + (unit is not None)
    after, end = _way(s, j)
    jumps = any(s.at(at).text in little("step_jumps") for at in range(j, end))
    each = _each(s, end)
    if not led and each == end and not jumps:
        return None
    kg = s.kg(number.value, unit)
    way = sign or after
    sure = way is not None or jumps
    if not sure or not 0 < kg <= MOST_STEP_KG or s.at(each).has("reps") or not _of_loads(s, i, each, sign):
        return None
    return [Fact("step", s.at(i).start, s.at(each - 1).end, kg * (way or 1))], each


def _each(s: Scanner, i: int) -> int:
    """The place after "each set", "per set", "every time"; `i` where none stands."""
    if s.at(i).text in little("each_step"):
        return i + 1 + s.at(i + 1).has("sets", "sets")
    if s.at(i).text in little("per_step") and s.at(i + 1).has("sets", "sets") and s.at(i + 1).value is None:
        return i + 2
    return i


def _way(s: Scanner, i: int) -> tuple[int | None, int]:
    """Up or down, told in words from `i` on, and the place after them."""
    sign = None
    j = i
    while j < i + MOST_WORDS and (own := _direction(s.at(j))) is not None:
        sign = own or sign
        j += 1
    return sign, j


def _direction(item: Item) -> int | None:
    """1 for "adding", -1 for "dropping", 0 for a word that goes with them; None for any other."""
    words = item.text.split()
    ups, downs, beside = little("step_up"), little("step_down"), little("step_beside")
    if not words or item.kind == "num" or not all(word in ups or word in downs or word in beside for word in words):
        return None
    return 1 if any(word in ups for word in words) else -1 if any(word in downs for word in words) else 0


def _of_loads(s: Scanner, i: int, end: int, sign: int | None) -> bool:
    """Whether a load to start from is told: "+5 each set" alone is the load of every set."""
    for j in range(end, end + REACH):
        if s.at(j).kind == "nl" or s.at(j).kind == "move":
            break
        if s.at(j).text in little("step_start"):
            return True
    told = False
    for j in range(i - 1, max(-1, i - 2 * REACH), -1):
        item = s.at(j)
        if item.kind == "nl":
            break
        if item.text in little("step_start"):
            return True
        told = told or s.unit_at(j) in ("kg", "lb") or (item.has("load", "at", "sign") and s.at(j + 1).kind == "num")
        told = told or (item.has("scope", "first") and s.at(j + 1).kind == "num")
        told = told or (item.has("load", "plus") and s.at(j + 1).kind == "num")
    verb = s.at(i).text not in ("+", "plus") and not s.planned
    return told or (sign is not None and verb)
