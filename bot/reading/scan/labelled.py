"""Sets told as on a form: "sets: 5 reps: 3", "weight 12.5 sets 5 reps 4", "set 1 5 set 2 4", "reps 5 5 4 kilos 20"."""

from __future__ import annotations

from bot.reading.facts import Entry, Fact
from bot.reading.little import little
from bot.reading.scan.scanner import Scanner

MOST_SETS = 20
LEAST_NUMBERED = 2
LEAST_ORDERED = 2
NUMBERING = (".", ")")
MOST_REPS = 60
MARKS = (":", "=", "-")
BETWEEN = (",", ";", "/", "|")


def labelled(s: Scanner, i: int) -> tuple[list[Fact], int] | None:
    """Rows, where a word for sets and one for reps each stand before their number; None where they do not."""
    form = _numbered(s, i) or _ordered(s, i) or _listed(s, i)
    if form is not None:
        return form
    first = _field(s, i)
    before = s.at(i - 1).value
    if first is None or (before is not None and before == int(before) and not s.at(i - 2).has("load")):
        return None
    j = first[2]
    if s.at(j).text in BETWEEN or s.at(j).kind == "nl" or (s.at(j).text == "." and _marked(s, i) and s.at(j + 1).space):
        j += 1  # "Sets: 5. Reps: 3."
    second = _field(s, j)
    if second is None or second[0] == first[0] or s.at(second[2]).has("reps") or s.at(second[2]).has("sets"):
        return None
    each = _each_set(s, second[2] - 1, first[1]) if second[0] == "reps" else None
    if each is not None:
        return each
    told = {first[0]: first[1], second[0]: second[1]}
    if not 0 < told["sets"] <= MOST_SETS or not 0 < told["reps"] <= MOST_REPS:
        return None
    rows = [Entry(told["reps"]) for _ in range(told["sets"])]
    return [Fact("rows", s.at(i).start, s.at(second[2] - 1).end, rows, {})], second[2]


def _numbered(s: Scanner, i: int) -> tuple[list[Fact], int] | None:
    """ "Set 1 5 set 2 5 set 3 4", "S1 5 S2 5 S3 4": which set, and its reps, from the first on."""
    reps: list[int] = []
    j = i
    while s.at(j).has("sets", "sets") or s.at(j).text in little("set_letter"):
        which, done = s.at(j + 1), s.at(j + 2)
        glued = s.at(j).has("sets") or not which.space
        if which.kind != "num" or done.kind != "num" or which.value != len(reps) + 1 or not glued:
            break
        if done.value is None or done.value != int(done.value) or not 0 < done.value <= MOST_REPS:
            break
        reps.append(int(done.value))
        j += 3 + (s.at(j + 3).text in BETWEEN and len(reps) > 0)
    if len(reps) < LEAST_NUMBERED:
        return None
    j -= s.at(j - 1).text in BETWEEN
    return [Fact("rows", s.at(i).start, s.at(j - 1).end, [Entry(n) for n in reps], {"list": True, "mark": ","})], j


def _ordered(s: Scanner, i: int) -> tuple[list[Fact], int] | None:
    """ "1. 8 2. 8 3. 7", "1) 8, 2) 7": the sets numbered on one line, from the first on."""
    reps: list[int] = []
    j = i
    while s.at(j).kind == "num" and s.at(j).value == len(reps) + 1 and s.at(j + 1).text in NUMBERING:
        done, after = s.at(j + 2), s.at(j + 3)
        if done.kind != "num" or not done.space or done.comma or not s.whole(done.value or 0.5):
            break
        if after.has("times", "x") or after.text in ("x", "+", "@") or s.unit_at(j + 3) is not None:
            break  # "1. 3x5"
        reps.append(int(done.value or 0))
        j += 3 + (after.text in BETWEEN)
    if len(reps) < LEAST_ORDERED or max(reps) > MOST_REPS:
        return None
    j -= s.at(j - 1).text in BETWEEN
    return [Fact("rows", s.at(i).start, s.at(j - 1).end, [Entry(n) for n in reps], {"list": True, "mark": ","})], j


def _listed(s: Scanner, i: int) -> tuple[list[Fact], int] | None:
    """ "Reps 5 5 4", perhaps with "kilos 20" before or behind: a set each, and their load."""
    led = _load_field(s, i)
    j = i if led is None else led[1]
    if not s.at(j).has("reps") or s.at(j).value is not None or (s.at(j - 1).kind == "num" and led is None):
        return None
    start = j
    j += 1 + (s.at(j + 1).text in MARKS)
    reps: list[int] = []
    while s.at(j).kind == "num" and not s.at(j).comma and s.whole(s.at(j).value or 0.5) and s.at(j + 1).text != "x":
        reps.append(int(s.at(j).value or 0))
        j += 1
    after = _load_field(s, j) if led is None else None
    if len(reps) < LEAST_NUMBERED or (s.unit_at(j) == "kg" and after is None) or max(reps) > MOST_REPS:
        return None
    rows = Fact("rows", s.at(start).start, s.at(j - 1).end, [Entry(n) for n in reps], {"list": True, "mark": ","})
    load = led or after
    if load is None:
        return [rows], j
    kg, end = load
    first, last = (i, end) if led is not None else (j, end)
    told = Fact("load", s.at(first).start, s.at(last - 1).end, kg, {"how": "at", "unit": True})
    return ([told, rows], j) if led is not None else ([rows, told], end)


def _load_field(s: Scanner, i: int) -> tuple[float, int] | None:
    """ "Weight 20", "kilos: 20", "peso 20 kg": kilograms, and the place after them."""
    named = s.at(i).text in little("weight") or (s.unit_at(i) in ("kg", "lb") and s.at(i).value is None)
    j = i + 1 + (s.at(i + 1).text in MARKS)
    number = s.at(j)
    if not named or number.kind != "num" or number.value is None:
        return None
    unit = s.unit_at(j + 1) or s.unit_at(i)
    return s.kg(number.value, unit if unit in ("kg", "lb") else None), j + 1 + (s.unit_at(j + 1) in ("kg", "lb"))


def _each_set(s: Scanner, i: int, sets: int) -> tuple[list[Fact], int] | None:
    """ "Sets: 3. Reps: 2, 2, 1": the reps of each set, from the number at `i` on."""
    reps: list[int] = []
    j = i
    while s.at(j).kind == "num" and s.whole(s.at(j).value or 0.5):
        reps.append(int(s.at(j).value or 0))
        j += 1
        if s.at(j).text not in BETWEEN or s.at(j + 1).kind != "num":
            break
        j += 1
    if len(reps) < LEAST_NUMBERED or len(reps) != sets or max(reps) > MOST_REPS:
        return None
    note = {"list": True, "mark": ",", "values": [float(n) for n in reps]}
    return [Fact("rows", s.at(i).start, s.at(j - 1).end, [Entry(n) for n in reps], note)], j


def _marked(s: Scanner, i: int) -> bool:
    """Whether a colon parts the word at `i` from its number, as on a form."""
    return s.at(i + 1).text in MARKS or s.at(i + 2).text in MARKS


def _field(s: Scanner, i: int) -> tuple[str, int, int] | None:
    """What a word names, its number, and the place after it."""
    name = "sets" if s.at(i).has("sets", "sets") else "reps" if s.at(i).has("reps") else None
    if name is None or s.at(i).value is not None:
        return None
    per_set = s.at(i + 1).has("scope", "all") or s.at(i + 1).has("plan", "every")
    j = i + 1 + (name == "reps" and per_set)  # "reps per set: 3"
    j += s.at(j).text in MARKS
    number = s.at(j)
    if number.kind != "num" or number.value is None or number.value != int(number.value) or number.comma:
        return None
    return name, int(number.value), j + 1
