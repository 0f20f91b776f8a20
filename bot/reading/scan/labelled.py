"""Sets told as on a form: "sets: 5 reps: 3", "reps 3, sets 5", "weight 12.5 sets 5 reps 4"."""

from __future__ import annotations

from bot.reading.facts import Entry, Fact
from bot.reading.scan.scanner import Scanner

MOST_SETS = 20
MOST_REPS = 60
MARKS = (":", "=")
BETWEEN = (",", ";", "/", "|")


def labelled(s: Scanner, i: int) -> tuple[list[Fact], int] | None:
    """Rows, where a word for sets and one for reps each stand before their number; None where they do not."""
    first = _field(s, i)
    before = s.at(i - 1).value
    if first is None or (before is not None and before == int(before) and not s.at(i - 2).has("load")):
        return None
    j = first[2]
    if s.at(j).text in BETWEEN or s.at(j).kind == "nl":
        j += 1
    second = _field(s, j)
    if second is None or second[0] == first[0] or s.at(second[2]).has("reps") or s.at(second[2]).has("sets"):
        return None
    told = {first[0]: first[1], second[0]: second[1]}
    if not 0 < told["sets"] <= MOST_SETS or not 0 < told["reps"] <= MOST_REPS:
        return None
    rows = [Entry(told["reps"]) for _ in range(told["sets"])]
    return [Fact("rows", s.at(i).start, s.at(second[2] - 1).end, rows, {})], second[2]


def _field(s: Scanner, i: int) -> tuple[str, int, int] | None:
    """What a word names, its number, and the place after it."""
    name = "sets" if s.at(i).has("sets", "sets") else "reps" if s.at(i).has("reps") else None
    if name is None or s.at(i).value is not None:
        return None
    j = i + 1 + (s.at(i + 1).text in MARKS)
    number = s.at(j)
    if number.kind != "num" or number.value is None or number.value != int(number.value) or number.comma:
        return None
    return name, int(number.value), j + 1
