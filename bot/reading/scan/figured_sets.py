"""Sets named by figures with the ending of an order: "im 4. und 5. Satz", "the 4th and 5th set"."""

from __future__ import annotations

from bot.reading.facts import Fact
from bot.reading.little import little
from bot.reading.scan.scanner import Scanner

MOST = 12  # the highest number of a set


def set_of_lift(s: Scanner, i: int) -> bool:
    """ "4th dip set", "4th lever hold" of a day with a plan; "the 5th dip" is a repetition."""
    item = s.at(i)
    if not s.planned or item.kind != "move":
        return False
    return s.at(i + 1).has("sets", "sets") or item.text.split(" ")[-1] in little("hold_word")


def figured_sets(s: Scanner, i: int) -> tuple[list[Fact], int] | None:
    """ "beim 3., 4. und 5. Satz": those sets; a word for sets closes them."""
    which: list[int] = []
    j = i
    while s.at(j).kind == "num" and s.at(j).value in range(1, MOST + 1):
        ending = s.at(j + 1)
        if ending.space or ending.text not in little("ordinal_ending"):
            break
        which.append(int(s.at(j).value or 0))
        j += 2
        joined = s.at(j).text in (",", "&", "+") or s.at(j).has("sep", "and")
        if not joined:
            break
        j += 1
        while s.at(j).text in little("article"):
            j += 1
    if len(which) < 2 or which != sorted(set(which)) or not s.at(j).has("sets", "sets"):
        return None
    return [Fact("scope", s.at(i).start, s.at(j).end, ("these", tuple(which)), {"text": ""})], j + 1
