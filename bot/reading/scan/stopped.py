"""So many sets, and then no more: "stopped after 2", "had to stop after the third set"."""

from __future__ import annotations

from bot.reading.facts import Fact
from bot.reading.little import little
from bot.reading.scan.scanner import Scanner
from bot.reading.scan.which_sets import MOST_NAMED


def stopped(s: Scanner, i: int) -> tuple[list[Fact], int] | None:
    """ "stopped after 2", "had to stop after the third set", "nach 2 aufgehört": so many sets were done."""
    item, j = s.at(i), i + 1
    note = {"only": True, "stopped": True}
    named = s.at(j + 1).name("scope") is not None or s.at(j + 1).has("sets")
    if s.at(j).value is None and s.at(j).name("scope") is None and not s.at(j).has("sets") and named:
        j += 1  # an article
    nth = "1" if s.at(j).name("scope") == "first" else s.at(j).name("scope")
    if s.at(j + 1).has("reps"):
        return None  # "stopped after the first rep of set 3"
    if item.has("plan", "reached") and not item.has("plan", "stopped"):
        # "got to set 4", "made it to the fourth set"; "got to 5" may be its reps
        last = nth is not None and (s.at(j).text.endswith(tuple(little("one_set"))) or s.at(j + 1).has("sets"))
        if not last and not (s.at(j).has("sets") and s.at(j + 1).value is not None):
            return None
    surely = not item.has("noise") or any(s.at(k).has("plan", "quit", "skipped") for k in range(j, j + 4))
    if nth is not None and nth.isdigit() and surely:
        return [Fact("count", item.start, s.at(j).end, int(nth), note)], j + 1
    if s.at(j).has("sets") and s.at(j + 1).value is not None:
        return [Fact("count", item.start, s.at(j + 1).end, int(s.at(j + 1).value or 0), note)], j + 2
    value = s.at(j).value
    if value is None or value != int(value):
        return None
    if s.at(j + 1).has("sets"):
        return [Fact("count", item.start, s.at(j + 1).end, int(value), note)], j + 2
    after = s.at(j + 1)
    ends = after.kind in ("nl", "claim") or (after.kind == "sym" and not after.text.isascii())
    ends = ends or after.text in (".", ",", "!", ";", ")") or after.has("plan", "quit")
    if surely and ends and value <= MOST_NAMED:
        return [Fact("count", item.start, s.at(j).end, int(value), {**note, "bare": True})], j + 1
    return None
