"""Ways to tell a load: a part of bodyweight, one for each set, one or the other, a number with its unit."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

from bot.reading.facts import Fact
from bot.reading.items import Item
from bot.reading.little import little
from bot.reading.scan.lists import listed
from bot.reading.scan.scanner import Scanner
from bot.reading.scan.steps import step
from bot.reading.scan.value import Found

LEAST_SHARE = 10  # a tenth of bodyweight is the least that anyone tells as a fraction
LEAST_LISTED = 3  # loads of a list that no unit names
LEAST_LISTED_LOAD = 10.0
LEAST_IN_A_ROW, LEAST_ROW = 10.0, 3  # kilograms, and how many of them, of a list of loads
MOST_MORE = 30  # kilograms; nobody adds more to a load at once
NO_LOAD = ("reps", "sets", "unit", "scope")  # behind a number that is none


def one_a_set(s: Scanner, i: int, j: int) -> Found | None:
    """ "4x5 with 20 22.5 25 25": a load for each set told before; "with 15/20 kg": one or the other, asked."""
    before = s.at(i - 1)
    kgs: list[float] = []
    marks: set[str] = set()
    k = j
    while s.at(k).kind == "num" and not s.at(k).spelled and s.at(k).value is not None:
        unit = s.unit_at(k + 1)
        kgs.append(s.kg(s.at(k).value or 0, unit if unit in ("kg", "lb") else None))
        k += 1 + (unit in ("kg", "lb"))
        if s.at(k).text in (",", "/") and s.at(k + 1).kind == "num":
            marks.add(s.at(k).text)
            k += 1
        elif s.at(k).has("sep", "and") and s.at(k + 1).kind == "num" and len(kgs) > 1:
            k += 1
        elif s.at(k).kind != "num" or s.at(k + 1).has("times", "x") or s.at(k + 1).has("sets"):
            break
    after = s.at(k)
    if (
        after.has("times", "x")
        or after.has("sets")
        or after.has("reps")
        or after.has("unit")
        or min(kgs, default=0) < LEAST_IN_A_ROW
    ):
        return None
    told = before.kind == "num" or before.has("reps") or before.has("sets")
    if len(kgs) == 2 and marks == {"/"} and kgs[0] != kgs[1] and not told:
        return [Fact("ask", s.at(j).start, s.at(k - 1).end, "load_kg")], k
    if len(kgs) < LEAST_ROW or not told or max(kgs) > 2 * min(kgs):
        return None
    return [Fact("loads", s.at(i).start, s.at(k - 1).end, kgs)], k


def part_of_bodyweight(s: Scanner, i: int, j: int) -> Found | None:
    """ "With 1/4 of bodyweight"; the number stands at j."""
    part, whole = s.at(j).value or 0.0, s.at(j + 2).value or 0.0
    if s.at(j + 1).text != "/" or not 0 < part < whole <= LEAST_SHARE:
        return None
    end = j + 3
    while s.at(end).text in little("of_bodyweight") and end < j + 5:
        end += 1
    if not s.at(end).has("load", "none"):
        return None
    if not s.bodyweight_kg:
        return [Fact("ask", s.at(i).start, s.at(end).end, "load_kg")], end + 1
    return [Fact("load", s.at(i).start, s.at(end).end, part / whole * s.bodyweight_kg)], end + 1


def several(s: Scanner, i: int, j: int, how: str | None) -> Found | None:
    """ "with 15/20/25 kg", "with 10, 15 and 20 kg", "Gewicht 10, 15, 20": a load of each set; "with 20/5" is asked."""
    item, mark = s.at(i), s.at(j + 1).text
    if not how or mark not in ("/", ","):
        return None
    if how == "sign" and s.unit_at(i - 1) in ("kg", "lb"):
        return None  # "20 kg @7, 25 kg @8": efforts
    if how == "plus":
        kgs, k = [s.kg(s.at(j).value or 0)], j + 1
        while s.at(k).text == mark and s.at(k + 1).text == "+" and s.at(k + 2).kind == "num":
            kgs.append(s.kg(s.at(k + 2).value or 0))
            k += 3
        other = s.at(k).has("times", "x") or s.at(k).has("sets") or s.unit_at(k) is not None
        if len(kgs) > 1 and not other:
            return [Fact("loads", item.start, s.at(k - 1).end, kgs)], k  # "3x8 (+10/+10/+12.5)"
    row = listed(s, j)
    if row is None:
        return None
    told, end = row[0][0], row[1]
    start = item.start
    if told.kind == "loads" and not told.note.get("unsure"):
        return [replace(told, start=start)], end
    values = told.note.get("values", [])
    named = s.at(j - 1).text.endswith(tuple(little("weight")))
    if how == "sign" or len(values) < LEAST_LISTED or (mark == "," and not named):
        return None
    if min(values) >= LEAST_LISTED_LOAD and values == sorted(values):
        return [Fact("loads", start, told.end, [s.kg(value) for value in values])], end
    return None


def percent(s: Scanner, i: int, j: int, value: float, how: str | None) -> Found | None:
    """ "with 10% of bodyweight"; the number stands at j."""
    item, number, end = s.at(i), s.at(j), j + 1
    end += 1
    while s.at(end).text in little("of_bodyweight") and end < j + 5:
        end += 1
    if s.at(end).has("load", "none"):
        stop = s.at(end).end
        end += 1
        if s.at(end).has("load", "word"):
            stop, end = s.at(end).end, end + 1
        if s.bodyweight_kg:
            return [Fact("load", item.start, stop, value * s.bodyweight_kg / 100)], end
        return [Fact("ask", item.start, stop, "load_kg")], end
    if how:
        return [Fact("ask", number.start, s.at(end - 1).end, "load_kg")], end
    return None


def _over_plan(s: Scanner, end: int) -> int:
    """The item behind "de más", "too much" beside a plan: so many kilograms above it; 0 where no such words stand."""
    for many in (1, 2) if s.planned else ():
        if " ".join(s.at(at).text for at in range(end, end + many)) in little("over_plan"):
            return end + many
    return 0


def in_doubt(s: Scanner, first: Item, i: int) -> Found | None:
    """ "20 kg or maybe 22.5", "at 18, or was it 20": one of two loads, the second after `i`, and which is not said."""
    other = s.or_other_load(i)
    value, second = first.value or 0, s.at(other or i).value or 0
    if other is None or s.at(other).spelled or not value / 2 <= second <= 2 * value:
        return None
    weighed = s.unit_at(other + 1) in ("kg", "lb")
    after = s.at(other + 1 + weighed)
    if not weighed and (after.kind == "move" or after.has("times", "x") or any(after.has(name) for name in NO_LOAD)):
        return None
    texts = " ".join(s.at(n).text for n in (other + 1 + weighed, other + 2 + weighed))
    if texts.startswith(tuple(little("another_time"))):
        return None  # "with 20, maybe 22.5 next time"
    return [Fact("ask", first.start, s.at(other + weighed).end, "load_kg")], other + 1 + weighed


def weight(s: Scanner, i: int, end: int, value: float, unit: str, how: str | None) -> Found | None:
    """A number with its unit, which stands at `end`: a load, several, or so much more or less than planned."""
    item = s.at(i)
    end += 1
    stop = s.at(end - 1).end
    note: dict[str, Any] = {"how": how, "unit": unit}
    over = _over_plan(s, end)
    if over:
        return [Fact("delta", item.start, s.at(over - 1).end, (s.kg(value, unit), "load", 1))], over
    while s.at(end).has("load", "word") or (s.at(end).has("times", "of") and s.at(end + 1).has("load", "word")):
        end += 1
        stop = s.at(end - 1).end
    of_one_thing = how == "at" and any(s.at(at).text in little("a") for at in range(i, end - 2))
    if of_one_thing and s.at(end).text in little("such_a_one"):
        end += 1  # "with a 35 lb one"
        stop = s.at(end - 1).end
    kg = s.kg(value, unit)
    up = s.at(end).has("plan", "more") and kg > MOST_MORE  # "got 52.5 kg up"
    if s.at(end).has("plan", "less", "more") and s.at(end + 1).kind != "num" and not up:
        sign = -1 if s.at(end).has("plan", "less") else 1
        return [Fact("delta", item.start, s.at(end).end, (kg, "load", sign))], end + 1
    number = next(s.at(at) for at in range(i, end) if s.at(at).kind == "num")
    doubted = in_doubt(s, number, end)
    if doubted is not None:
        return doubted
    loads = [kg]
    while s.at(end).text == "," or s.at(end).has("sep", "and"):
        j = end + 1
        more = s.at(j)
        if more.kind != "num" or more.value is None or s.unit_at(j + 1) not in ("kg", "lb"):
            break
        if s.at(j + 2).has("times", "x") or step(s, j) is not None:
            break
        loads.append(s.kg(more.value, s.unit_at(j + 1)))
        end = j + 2
    if len(loads) > 1:
        return [Fact("loads", item.start, s.at(end - 1).end, loads)], end
    if s.at(end).has("times", "x") and s.at(end + 1).kind == "num":
        return None
    return [Fact("load", item.start, stop, kg, note)], end
