"""A load that what follows is done with: "then dropped back to 20 and did 3x5", "up to 25 for a triple"."""

from __future__ import annotations

from dataclasses import replace

from bot.reading.facts import Fact
from bot.reading.items import Item
from bot.reading.little import little
from bot.reading.scan.load_for import load_for
from bot.reading.scan.scanner import Scanner
from bot.reading.scan.schemes import chain

MOST_REPS = 12  # a whole number up to it, with no unit, may be reps
MOST_WORDS = 6  # "dropped it right back down to"
TURNED_TO = {"names": ["turned_to"]}
TO_WORK = 4  # so far behind the load stand the sets done with it


def turned(s: Scanner, i: int) -> tuple[list[Fact], int] | None:
    """The load that it was changed to; None where the number is of reps, or nothing was changed."""
    if little("turned").isdisjoint(s.at(i).text.split()) or not _turns(s.at(i)):
        return None
    j, to = i, False
    while j < i + MOST_WORDS and _turns(s.at(j)):
        to = s.at(j).text.split()[-1] in little("turned_to_word")
        j += 1
    number, unit = s.at(j), s.unit_at(j + 1)
    if not to or number.kind != "num" or number.value is None or unit not in (None, "kg", "lb"):
        return None
    end = j + 1 + (unit is not None)
    after = s.at(end)
    if after.has("reps") or after.has("sets") or after.kind == "move" or after.text in ("-", "/", "%"):
        return None
    if after.has("times", "x") and s.at(end + 1).kind == "num":
        return None  # "up to 30 x 2"
    small = unit is None and number.value == int(number.value) and number.value <= MOST_REPS
    if (small or s.planned) and not _work_follows(s, end):
        # "bumped it up to 16 for the last three" of a plan: its reps, or its load
        back = any(word in little("turned_back") for at in range(i, j) for word in s.at(at).text.split())
        if back or not s.planned:
            return None
        return [Fact("plan", s.at(i).start, s.at(j - 1).end, "turned_to", TURNED_TO)], j
    parted = [Fact("sep", s.at(i).start, s.at(i).end, 2)] if s.at(i).has("scheme", "down") else []
    done = load_for(s, j)
    if done is not None:  # "worked up to 35 for a single"
        return [*parted, replace(done[0][0], start=s.at(i).start), *done[0][1:]], done[1]
    if any(item.has("scheme", "ladder") for item in s.items):
        return None
    note = {"how": "at", "turned": True, "unit": unit}
    load = Fact("load", s.at(i).start, s.at(end - 1).end, s.kg(number.value, unit), note)
    return [*parted, load], end


def _turns(item: Item) -> bool:
    """Whether an item is of the words for a change: "dropped", "it", "back", "down", "to"."""
    words = item.text.split()
    own = (little("turned"), little("turned_beside"), little("turned_to_word"))
    return bool(words) and item.kind != "num" and all(any(word in table for table in own) for word in words)


def _work_follows(s: Scanner, i: int) -> bool:
    """Whether whole sets are told right behind: "10 and did 3x5", "10 for two sets of 5"."""
    for j in range(i, i + TO_WORK):
        if s.at(j).kind == "num":
            row = chain(s, j)
            return row is not None and all(fact.kind == "rows" for fact in row[0])
        if s.at(j).kind in ("nl", "move") or s.at(j).text in (".", ";"):
            return False
    return False
