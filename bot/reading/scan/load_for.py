"""A load and what was done with it: "25 for a triple", "20 kg for 5", "22.5 for 3x4", "20/4 20/4 22.5/3"."""

from __future__ import annotations

from bot.reading.facts import Entry, Fact
from bot.reading.little import little
from bot.reading.scan.scanner import Scanner
from bot.reading.scan.schemes import chain

LEAST_LOAD = 15  # a whole number below it, without a unit, may be reps: "12 for 3"
PLATES = (1.25, 2.5, 5.0, 10.0, 15.0, 20.0, 25.0, 35.0, 45.0)  # what one plate weighs, in either unit
MOST_REPS = 12  # so many reps with a load that is told first
LEAST_BRACKETS, MOST_EFFORT = 2, 10


def load_for(s: Scanner, i: int) -> tuple[list[Fact], int] | None:
    """The load, and the set or sets told behind "for"; None where the words tell something else."""
    risen = _from_to(s, i)
    if risen is not None:
        return risen
    first = i + 1 if s.at(i).has("load", "plus", "at", "sign") else i
    number = s.at(first)
    if number.kind != "num" or number.value is None or (number.spelled and number.value < LEAST_LOAD):
        return None
    unit = s.unit_at(first + 1)
    j = first + (2 if unit in ("kg", "lb") else 1)
    if unit not in (None, "kg", "lb"):
        return None
    if s.at(j).kind == "num" and s.at(j).space:
        return _times(s, i, first, j)
    if s.at(j).text not in little("load_for"):
        return None
    small = unit is None and number.value < LEAST_LOAD and number.value == int(number.value)
    if small and first == i and not s.at(i - 1).has("link", "drop"):
        return None
    j += 1
    while (s.at(j).text in little("a") or s.at(j).spelled) and s.at(j + 1).has("count"):
        j += 1
    told = _work(s, j, number.value)
    if told is None:
        return None
    load = Fact("load", s.at(i).start, s.at(first).end, s.kg(number.value, unit), {"how": "plus"})
    return [load, *told[0]], told[1]


def _from_to(s: Scanner, i: int) -> tuple[list[Fact], int] | None:
    """ "Went from 15 to 17.5 on pull-ups": the load now."""
    old, new = s.at(i + 1), s.at(i + 3)
    words = (s.at(i).text, s.at(i + 2).text)
    if words[0] == words[1] or not set(words) <= set(little("from_to")):
        return None
    if old.kind != "num" or new.kind != "num" or old.value is None or new.value is None or s.at(i - 1).kind == "num":
        return None
    unit, end = s.unit_at(i + 4), i + 4
    if unit in ("kg", "lb"):
        end += 1
    elif unit is not None or s.at(end).has("reps") or s.at(end).has("sets") or max(old.value, new.value) < LEAST_LOAD:
        return None
    return [Fact("load", s.at(i).start, s.at(end - 1).end, s.kg(new.value, unit), {"how": "plus"})], end


def _times(s: Scanner, i: int, first: int, j: int) -> tuple[list[Fact], int] | None:
    """ "22.5 3x", "25 kg 2x": a load, and so many times."""
    load, reps, x = s.at(first).value or 0.0, s.at(j), s.at(j + 1)
    glued = x.has("times", "x") and not x.space and s.at(j + 2).kind != "num"
    if not glued or reps.value is None or reps.value != int(reps.value) or not 0 < reps.value <= min(MOST_REPS, load):
        return None
    kg = Fact("load", s.at(i).start, s.at(j - 1).end, s.kg(load, s.unit_at(first + 1)), {"how": "plus"})
    return [kg, Fact("rows", reps.start, x.end, [Entry(int(reps.value))], {"reps": True})], j + 2


def _work(s: Scanner, j: int, load: float) -> tuple[list[Fact], int] | None:
    item = s.at(j)
    row = chain(s, j)
    if row is not None:
        return row if all(fact.kind == "rows" for fact in row[0]) else None
    many = int(item.value or 0) if item.kind == "num" and item.value in range(2, MOST_REPS) else 0
    if many and s.at(j + 1).has("count"):  # "37.5 for 2 doubles"
        rows = [Entry(int(s.at(j + 1).name("count") or 1)) for _ in range(many)]
        return [Fact("rows", item.start, s.at(j + 1).end, rows, {})], j + 2
    if item.has("count"):
        reps, end = int(item.name("count") or 1), j + 1
    elif item.kind == "num" and item.value is not None and item.value == int(item.value):
        reps, end = int(item.value), j + 1 + s.at(j + 1).has("reps")
    else:
        return None
    after = s.at(end)
    other = after.has("unit") or after.has("sets") or after.has("times") or after.text in ("/", "-", "%")
    if other or not 0 < reps <= min(MOST_REPS, load):
        return None
    return [Fact("rows", item.start, s.at(end - 1).end, [Entry(reps)], {"reps": True})], end


def load_in_brackets(s: Scanner, i: int) -> tuple[list[Fact], int] | None:
    """ "6 (10), 4 (15), 2 (20)": reps and their loads, which no effort is, as one of them goes beyond ten."""
    pairs: list[tuple[int, float]] = []
    j = last = i
    while s.at(j).kind == "num" and s.at(j + 1).text == "(" and s.at(j + 2).kind == "num":
        reps, load = s.at(j).value or 0.0, s.at(j + 2).value or 0.0
        after = j + 3 + (s.unit_at(j + 3) in ("kg", "lb"))
        if s.at(after).text != ")" or reps != int(reps) or not 0 < reps <= MOST_REPS:
            return None
        pairs.append((int(reps), s.kg(load)))
        j = last = after + 1
        j += s.at(j).text == ","
    loads = [load for _, load in pairs]
    if len(pairs) < LEAST_BRACKETS or max(loads) <= MOST_EFFORT or max(loads) <= max(reps for reps, _ in pairs):
        return None
    rows = [
        Fact("rows", s.at(i).start, s.at(last - 1).end, [Entry(reps)], {"own_load": load, "plain": True})
        for reps, load in pairs
    ]
    return rows, last


def load_by_reps(s: Scanner, i: int) -> tuple[list[Fact], int] | None:
    """ "20/4 20/4 22.5/3", "20kg 5 reps, 22.5 4 reps": pairs that are far too uneven for two sides; "5(20) 4(22.5)"."""
    pairs: list[tuple[float, int]] = []
    j = i
    last = i
    while s.at(j).kind == "num":
        first, j = s.at(j).value or 0.0, j + 1
        j += s.unit_at(j) in ("kg", "lb")
        mark = s.at(j).text
        if s.at(j).kind == "num" and s.at(j + 1).has("reps"):
            mark, j = " ", j - 1  # "20kg 5 reps, 22.5 5 reps"
        second = s.at(j + 1)
        if mark not in ("/", "(", " ") or second.kind != "num":
            break
        j += 2
        j += s.unit_at(j) in ("kg", "lb") or s.at(j).has("reps")
        if mark == "(" and s.at(j).text != ")":
            return None
        j += mark == "("
        load, reps = first, second.value or 0.0
        if mark == "(" and load < reps:
            load, reps = reps, load
        if load < LEAST_LOAD or not 0 < reps <= min(MOST_REPS, load / 2) or reps != int(reps):
            return None
        pairs.append((load, int(reps)))
        last = j
        j += s.at(j).text == ","
    if len(pairs) < 2 or s.at(j).text == "/":
        return None
    j = last
    end = s.at(j - 1).end
    return [
        Fact("rows", s.at(i).start, end, [Entry(reps)], {"own_load": s.kg(load), "plain": True}) for load, reps in pairs
    ], j


def plates(s: Scanner, i: int) -> tuple[list[Fact], int] | None:
    """ "Two 5 kg plates", "with two plates of 5", "zwei 5er Scheiben": ten kilograms; "2 x 10 kg plates": twenty."""
    first = i + 1 if s.at(i).has("load", "at", "plus") else i
    many, j = s.at(first), first + 1 + s.at(first + 1).has("times", "x")
    each = s.at(j)
    if many.value not in range(2, 5):
        return None
    if each.has("load", "plate") and s.at(j + 1).has("times", "of") and s.at(j + 2).kind == "num":
        each, end = s.at(j + 2), j + 3
        unit = s.unit_at(end) if s.unit_at(end) in ("kg", "lb") else None
        end += unit is not None
        if not unit and (s.at(end).has("times", "x") or each.value not in PLATES):
            return None
    elif each.kind == "num" and s.at(j + 2).has("load", "plate") and s.unit_at(j + 1) in ("kg", "lb"):
        unit, end = s.unit_at(j + 1), j + 3
    elif each.kind == "num" and s.at(j + 2).has("load", "plate") and s.at(j + 1).text in little("plate_ending"):
        unit, end = None, j + 3
    else:
        return None
    kg = s.kg(each.value or 0, unit) * (many.value or 0)
    return [Fact("load", s.at(i).start, s.at(end - 1).end, kg, {"how": "at", "unit": unit or s.unit})], end
