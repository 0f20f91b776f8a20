"""A number with what hangs on it: "5", "3-5", "5/5", "20kg", "10s", "3 sets"."""

from __future__ import annotations

from dataclasses import dataclass

from bot.reading.items import Item
from bot.reading.little import little
from bot.reading.scan.scanner import Scanner

MOST_RANGE, MOST_OF_RANGE = 4, 20  # reps that a range told by a word spans, and reaches


@dataclass
class Factor:
    value: float
    end: int  # item index after it
    role: str | None = None  # load, sets, reps, hold
    high: float | None = None  # upper end of a range
    kg: float | None = None
    pair: float | None = None  # 5/5
    comma: bool = False
    spelled: bool = False
    unloaded: bool = False  # "two bodyweight sets"


def _near(low: float, high: Item) -> bool:
    """Whether a number is the upper end of a range of reps that begins at `low`."""
    return high.kind == "num" and high.value is not None and low < high.value <= min(low + MOST_RANGE, MOST_OF_RANGE)


def factor(s: Scanner, i: int) -> Factor | None:
    plus = False
    item = s.at(i)
    if item.has("load", "plus") and item.kind in ("known", "sym"):
        plus, i, item = True, i + 1, s.at(i + 1)
    if item.kind != "num" or item.value is None:
        if item.kind == "known" and item.value is not None and item.spelled and s.at(i + 1).has("sets"):
            pass
        else:
            return None
    value = item.value
    assert value is not None
    made = Factor(value, i + 1, comma=item.comma, spelled=item.spelled)
    after = s.at(i + 1)
    if after.text in ("-",) and s.at(i + 2).kind == "num" and s.at(i + 3).text != "-":
        high = s.at(i + 2)
        if high.value is not None and high.value > value and not high.space:
            made.high, made.end = high.value, i + 3
            after = s.at(made.end)
    elif after.kind in ("word", "known") and after.text in little("range") and _near(value, s.at(i + 2)):
        beyond = s.at(i + 3)
        if s.unit_at(i + 3) is None and not beyond.has("times", "x") and beyond.text not in ("-", "/", ","):
            made.high, made.end = s.at(i + 2).value, i + 3  # "3 series de 6 a 8"
            after = s.at(made.end)
    if after.text == "/" and s.at(made.end + 1).kind == "num" and s.at(made.end + 2).text != "/":
        right = s.at(made.end + 1)
        tight = not right.space and not after.space
        alike = right.space and after.space and right.value == value and s.at(i - 1).has("times", "x")  # "4 x 8 / 8"
        if right.value is not None and (tight or alike):
            made.pair, made.end = right.value, made.end + 2
            after = s.at(made.end)
    unit = after.name("unit")
    if unit == "lb" and after.text == "#" and after.space and s.at(made.end + 1).kind == "num":
        unit = None  # "5x3 #25": the sign belongs to what follows
    if unit in ("kg", "lb"):
        made.role, made.kg, made.end = "load", s.kg(value, unit), made.end + 1
    elif unit == "sec":
        made.role, made.end = "hold", made.end + 1
    elif unit == "min" and value <= 10:
        made.value, made.role, made.end = value * 60, "hold", made.end + 1
    elif after.has("sets") and not (after.has("sets", "rounds")) and value == int(value):
        made.role, made.end, made.unloaded = "sets", made.end + 1, after.has("load", "none")
    elif after.has("plan", "holds") and s.at(made.end + 1).has("times") and s.unit_at(made.end + 3) == "sec":
        made.role, made.end = "sets", made.end + 1  # "4 holds of 8 sec"
    elif after.has("reps") or (after.text in little("reps_glued") and not after.space and not s.one_sided):
        made.role, made.end = "reps", made.end + 1
    elif plus:
        made.role, made.kg = "load", s.kg(value)
    if made.role == "hold" and s.at(made.end).has("pause") and s.at(made.end).text in little("hold"):
        made.end += 1
    return made
