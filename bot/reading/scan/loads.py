"""Loads and assistance: "+20", "with 10 kg", "15% of bodyweight", "20 kg off"."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

from bot.reading.facts import Fact
from bot.reading.items import Item
from bot.reading.little import little
from bot.reading.scan.labelled import labelled
from bot.reading.scan.lists import listed
from bot.reading.scan.scanner import Scanner
from bot.reading.scan.schemes import chain
from bot.reading.scan.steps import step

LEAST_SHARE = 10  # a tenth of bodyweight is the least that anyone tells as a fraction
LEAST_LISTED = 3  # loads of a list that no unit names
LEAST_LISTED_LOAD = 10.0
PLATES = (5.0, 7.5, 10.0, 12.5, 15.0, 20.0, 25.0, 35.0, 45.0)  # what one plate weighs, in either unit

LEAST_BY_TIMES = 15  # "with 35 x 3" tells kilograms
LEAST_IN_A_ROW, LEAST_ROW = 10.0, 3  # kilograms, and how many of them, of a list of loads
MOST_MORE = 30  # kilograms; nobody adds more to a load at once
NO_LOAD = ("reps", "sets", "unit", "scope")  # behind a number that is none
MOST_LINES = 9  # exercises that are numbered "A1" to "A9"


def load(s: Scanner, i: int) -> tuple[list[Fact], int] | None:
    item = s.at(i)
    if item.text == "#" and s.at(i - 1).kind == "word" and s.at(i + 1).kind == "num":
        return [Fact("word", item.start, s.at(i + 1).end, None, {"noise": True})], i + 2  # "workout #45"
    if item.text == "#" and item.space and s.at(i + 1).kind == "num" and not s.at(i + 1).space:
        pounds = s.kg(s.at(i + 1).value or 0, "lb")
        return [Fact("load", item.start, s.at(i + 1).end, pounds, {"how": "plus", "unit": "lb"})], i + 2
    if len(item.text) == 1 and item.text.isalpha() and _numbers_a_line(s, i):
        return [Fact("word", item.start, s.at(i + 1).end, None, {"noise": True})], i + 2  # "A2 fondos 4x8"
    if item.has("load", "none"):
        follow = s.at(i + 1)
        if follow.has("load", "plus") and s.at(i + 2).kind == "num":
            return load(s, i + 1)
        if i and s.at(i - 1).kind == "num" and 0 < (s.at(i - 1).value or 0) < 1.5:
            return [], i + 1
        return [Fact("load", item.start, item.end, 0.0, {"none": True})], i + 1
    if item.has("load", "same"):
        return [Fact("load", item.start, item.end, None, {"same": True})], i + 1
    worn = _worn(s, i)
    if worn is not None:
        return worn
    j = i
    how = None
    while s.at(j).has("load", "at", "plus", "sign") and j < i + 3:
        name = s.at(j).name("load")
        how = "plus" if name == "plus" or how == "plus" else "sign" if name == "sign" else how or "at"
        j += 1
    while s.at(j).text in little("before_number") and how:
        j += 1
    number = s.at(j)
    if number.kind != "num" or number.value is None or (number.spelled and number.value == 1):
        return None
    value, end = number.value, j + 1
    if how == "plus" and s.at(end).has("link", "drop"):
        return None  # "+ 1 drop set": one more
    if how == "at" and s.at(end).has("load", "none") and s.whole(value):
        return None  # "warmed up with 5 bw"
    part = _part_of_bodyweight(s, i, j)
    if part is not None:
        return part
    if how == "at" and s.at(i - 1).text in little("by_the_clock") and s.unit_at(end) is None:
        return [Fact("word", item.start, number.end, None, {"noise": True})], end  # "the hall closes at 9"
    if how and number.spelled and s.at(end).kind == "num" and s.at(end + 1).text in little("plate_ending"):
        return [Fact("ask", item.start, s.at(end + 1).end, "load_kg")], end + 2  # "with two 45s"
    several = _several(s, i, j, how)
    if several is not None:
        return several
    unit = s.unit_at(end)
    told = end + 1 if unit in ("kg", "lb") else end
    if s.at(end).has("times", "of") and s.at(end + 1).has("plan", "the") and s.at(end + 2).value is not None:
        return None  # "solo pude con 3 de las 5 series"
    if s.at(told).has("plan", "instead") and s.at(told + 1).value is not None:
        return None  # "with 12.5 instead of 15": told against the plan
    after = s.at(told + 1)
    if s.at(told).kind == "word" and after.has("plan", "instead") and after.end - after.start > 1:
        return None  # "with 7.5 off instead of 10"
    if (
        unit is None
        and s.at(told).has("plan", "less", "more")
        and not s.at(told).has("load", "word")
        and s.at(told + 1).kind != "num"
    ):
        return None
    if how and s.at(end).text == "-" and s.at(end + 1).kind == "num" and unit is None:
        high = s.at(end + 1).value or 0
        if how == "sign" and value < high <= 10:
            return [Fact("at", item.start, s.at(end + 1).end, ((value + high) / 2, None), {"range": True})], end + 2
        if high > value:
            return [Fact("ask", item.start, s.at(end + 1).end, "load_kg")], end + 2
    old = told + 1
    if how and s.at(told).has("plan", "instead"):
        while s.at(old).has("load", "plus", "at") and old < told + 3:
            old += 1
        if s.at(old).kind == "num" and old > told + 1:
            old += 2 if s.unit_at(old + 1) in ("kg", "lb") else 1
            return [Fact("load", item.start, s.at(old - 1).end, s.kg(value, unit), {"how": how})], old
    told_each = _one_a_set(s, i, j) if how in ("at", "plus") and unit != "percent" else None
    if told_each is not None:
        return told_each
    if unit == "percent":
        return _percent(s, i, j, value, how)
    if unit in ("kg", "lb"):
        return _weight(s, i, end, value, unit, how)
    if s.at(end).text == "k" and s.at(end + 1).has("load", "plate"):
        return [Fact("load", item.start, s.at(end + 1).end, s.kg(value), {"how": how or "at"})], end + 2  # "10k plate"
    if unit is not None:
        return None
    if s.at(end).has("times", "x") and how == "at" and value >= LEAST_BY_TIMES and s.at(end + 1).kind == "num":
        worded = any(s.at(at).has("count") for at in (i - 1, i - 2))
        if worded and (s.at(end + 1).value or 0) in range(2, MOST_LINES):
            kg = Fact("load", item.start, number.end, s.kg(value), {"how": how})  # "doubles with 35 x 3"
            return [kg, Fact("count", s.at(end + 1).start, s.at(end + 1).end, int(s.at(end + 1).value or 0))], end + 2
    form = s.at(end).has("sets") and s.at(j - 1).text in little("weight") and labelled(s, end) is not None
    if s.at(end).has("times", "x") or (s.at(end).has("sets") and value == int(value) and not form):
        return None
    led = s.at(i - 1).value is None and not any(s.at(i - 1).has(name) for name in ("reps", "sets", "count"))
    if how == "at" and led and s.at(end).kind == "move" and s.whole(value) and chain(s, end + 1) is None:
        return None  # "started with 10 pull-ups"
    named = s.at(j - 1).text.endswith(tuple(little("weight")))
    if named and (s.at(end).has("load", "sign") or s.at(end).text == "/") and s.at(end + 1).kind == "num":
        return None  # "with weight 3@15", "with weight 5/4/4": reps, of loaded work
    if s.at(end).has("reps"):
        return None
    if s.at(end).has("effort", "rir", "after") and s.at(end + 1).kind != "num":
        return None
    if s.at(end).text in little("plate_ending") and not s.at(end).space:
        tool = s.at(end + 1)
        if tool.has("load", "tool") or (how and tool.has("load", "plate")):
            # "24er Kettlebell am Fuß", "with a 20s plate"
            return [Fact("load", item.start, tool.end, s.kg(value), {"how": how or "at", "unit": s.unit})], end + 2
        if how == "plus" and value in PLATES and s.at(i - 1).has("load", "plate"):
            # "mit der 20er Scheibe plus 5er"
            return [Fact("load", item.start, s.at(end).end, s.kg(value), {"how": how, "unit": s.unit})], end + 1
    if s.at(end).has("load", "plate") and value in PLATES and s.at(end).text in little("one_plate"):
        return [Fact("load", item.start, s.at(end).end, s.kg(value), {"how": how or "at"})], end + 1
    if s.at(end).has("load", "plate"):
        return [Fact("ask", number.start, s.at(end).end, "load_kg")], end + 1
    doubted = _in_doubt(s, number, end) if how else None
    if doubted is not None:
        return doubted
    if how is None:
        if s.at(end).has("load", "word"):
            stop = s.at(end).end
            return [Fact("load", item.start, stop, s.kg(value))], end + 1
        return None
    while s.at(end).has("load", "word"):
        end += 1
    stop = s.at(end - 1).end
    if how in ("sign", "at") and 6 <= value <= 10 and how == "sign":
        return [Fact("at", item.start, stop, (value, s.kg(value)))], end
    implied = s.planned or s.at(i - 1).has("scope") or s.at(end).has("scope")
    rated = s.at(i).text in little("at") or (s.at(i).text in little("rated_at") and implied)
    if how == "at" and rated and 6 <= value <= 10:  # "the last at 9", "la última a 9", "a 9 la última"
        return [Fact("at", item.start, stop, (value, s.kg(value)))], end
    return [Fact("load", item.start, stop, s.kg(value), {"how": how, "comma": number.comma})], end


def _one_a_set(s: Scanner, i: int, j: int) -> tuple[list[Fact], int] | None:
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


def _worn(s: Scanner, i: int) -> tuple[list[Fact], int] | None:
    """ "Had 45 on", "llevaba 20 encima": what hung on the belt."""
    number, j = s.at(i + 1), i + 2
    if s.at(i).text.split(" ")[-1] not in little("had_it") or number.kind != "num" or number.spelled:
        return None
    unit = s.unit_at(j) if s.unit_at(j) in ("kg", "lb") else None
    j += unit is not None
    after = s.at(j + 1)
    closes = after.kind in ("nl", "end", "claim") or after.text in (",", ".", ";", "!", ")") or after.has("scope")
    if s.at(j).text not in little("hung_on") or not (closes or after.has("sep")):
        return None
    if after.text == "," and s.at(j + 2).has("plan", "instead"):
        return None  # "had 45 on, not 40": told against the plan
    note = {"how": "at", "unit": unit or s.unit}
    return [Fact("load", s.at(i).start, s.at(j).end, s.kg(number.value or 0, unit), note)], j + 1


def _numbers_a_line(s: Scanner, i: int) -> bool:
    """Whether a letter with a figure heads a line, before a movement or its mark."""
    number, after = s.at(i + 1), s.at(i + 2)
    heads = s.at(i - 1).kind == "nl" and number.kind == "num" and not number.space
    return heads and (number.value or 0) <= MOST_LINES and (after.kind == "move" or after.text in (":", ")", "-", "."))


def _part_of_bodyweight(s: Scanner, i: int, j: int) -> tuple[list[Fact], int] | None:
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


def _several(s: Scanner, i: int, j: int, how: str | None) -> tuple[list[Fact], int] | None:
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


def _percent(s: Scanner, i: int, j: int, value: float, how: str | None) -> tuple[list[Fact], int] | None:
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


def _in_doubt(s: Scanner, first: Item, i: int) -> tuple[list[Fact], int] | None:
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


def _weight(s: Scanner, i: int, end: int, value: float, unit: str, how: str | None) -> tuple[list[Fact], int] | None:
    """A number with its unit, which stands at `end`: a load, several, or so much more or less than planned."""
    item = s.at(i)
    end += 1
    stop = s.at(end - 1).end
    note: dict[str, Any] = {"how": how, "unit": unit}
    while s.at(end).has("load", "word") or (s.at(end).has("times", "of") and s.at(end + 1).has("load", "word")):
        end += 1
        stop = s.at(end - 1).end
    if s.at(end).has("unit", "half") and value == int(value):
        value, end = value + 0.5, end + 1
        stop = s.at(end - 1).end
    kg = s.kg(value, unit)
    up = s.at(end).has("plan", "more") and kg > MOST_MORE  # "got 52.5 kg up"
    if s.at(end).has("plan", "less", "more") and s.at(end + 1).kind != "num" and not up:
        sign = -1 if s.at(end).has("plan", "less") else 1
        return [Fact("delta", item.start, s.at(end).end, (kg, "load", sign))], end + 1
    number = next(s.at(at) for at in range(i, end) if s.at(at).kind == "num")
    doubted = _in_doubt(s, number, end)
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


def assist(s: Scanner, i: int) -> tuple[list[Fact], int] | None:
    item = s.at(i)
    if item.has("assist", "off") and s.unit_at(i - 1) in ("kg", "lb"):
        return [Fact("assist", item.start, item.end, None, {"suffix": True})], i + 1  # "7.5 kg assistance 2 each side"
    if item.has("assist", "off"):
        j = i + 1
        while s.at(j).text in little("before_assist"):
            j += 1
        if s.at(j).kind == "num" and s.at(j + 1).has("times", "x"):
            return [Fact("word", item.start, item.end)], i + 1  # "with a finger's help 2x2"
        if s.at(j).kind == "num" and s.at(j).value is not None:
            unit = s.unit_at(j + 1)
            end = j + 2 if unit in ("kg", "lb") else j + 1
            return [Fact("assist", item.start, s.at(end - 1).end, s.kg(s.at(j).value or 0, unit))], end
        return [Fact("assist", item.start, item.end, None, {"suffix": True})], i + 1
    if (
        item.has("assist", "minus")
        and s.at(i + 1).kind == "num"
        and not s.at(i + 1).space
        and s.at(i - 1).kind != "num"
    ):
        unit = s.unit_at(i + 2)
        if unit in ("kg", "lb"):
            value = s.at(i + 1).value or 0
            return [Fact("assist", item.start, s.at(i + 2).end, s.kg(value, unit))], i + 3
        if unit == "other":
            return [Fact("word", item.start, s.at(i + 2).end, None, {"noise": True})], i + 3
    return None
