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
        while s.at(j).text in little("article", "the") or s.at(j).has("plan", "the"):
            j += 1
    said = s.at(j).has("sets", "sets")
    if len(which) < 2 or which != sorted(set(which)) or not (said or (s.planned and _value_next(s, j))):
        return None
    end = s.at(j).end if said else s.at(j - 1).end
    return [Fact("scope", s.at(i).start, end, ("these", tuple(which)), {"text": ""})], j + said


def _value_next(s: Scanner, i: int) -> bool:
    """Whether what they came to follows: "la 3ª y la 4ª con 15", "3rd and 4th: 3"."""
    item, after = s.at(i), s.at(i + 1)
    led = item.has("load", "at") or item.text in (":", "=") or item.has("plan", "only")
    return led and after.kind == "num"


def figured_set(s: Scanner, i: int) -> tuple[list[Fact], int] | None:
    """ "La 3ª con 15": one set, behind its article and with what it came to."""
    number, ending = s.at(i), s.at(i + 1)
    if not s.planned or number.kind != "num" or number.value not in range(1, MOST + 1) or ending.space:
        return None
    article = s.at(i - 1).has("plan", "the") or s.at(i - 1).text in little("article", "the")
    if ending.text not in little("ordinal_ending") or not article or not _value_next(s, i + 2):
        return None
    return [Fact("scope", number.start, ending.end, int(number.value or 0), {"numbered": True})], i + 2
