"""What was done in place of what was planned: "50 instead of 45", "20 kg became 17.5 kg", one band for another."""

from __future__ import annotations

from bot.reading.facts import Fact
from bot.reading.items import Item
from bot.reading.little import little
from bot.reading.scan.scanner import Scanner
from bot.reading.scan.value import Found, Value
from bot.reading.scan.which_sets import MOST_NAMED

BETWEEN = ("word", "known", "claim", "move")  # what may stand between a value and "instead of"
SWAP = 9  # items: "the 15 kg band for the 10 kg"
REACH = 6  # items: "35 lb plate on the dips instead of the 45"
MOST_TURN = 2  # times the old load
CLOSING = frozenset({",", ".", ";", "\n", ")"})
LEAD_IN = 3  # items: "de la de 15"


def from_to(told: Value) -> Found | None:
    """ "From five sets to three", "von 20 kg auf 17,5": what was planned, and done."""
    s, j, unit, before = told.s, told.behind, told.unit, told.s.at(told.i - 1)
    if not s.planned or before.text not in little("changed_from"):
        return None
    j += s.at(j).has("plan", "less", "more")  # "down to"
    new, end = s.at(j + 1), j + 2
    if s.at(j).text not in little("changed_into") or new.kind != "num" or new.value is None:
        return None
    if s.at(end).has("sets", "sets") or s.at(end).has("reps"):
        unit, end = ("sets" if s.at(end).has("sets", "sets") else "reps"), end + 1
    elif s.unit_at(end) in ("kg", "lb"):
        unit, end = s.unit_at(end), end + 1
    if unit == "sets" and s.whole(new.value) and new.value <= MOST_NAMED:
        note = {"of_plan": int(told.value)} if new.value <= told.value else {"only": True}
        return [Fact("count", before.start, s.at(end - 1).end, int(new.value), {**note, "changed": True})], end
    plain = unit is None and min(told.value, new.value) > MOST_NAMED and new.value <= MOST_TURN * told.value
    plain = plain and s.at(end).text in CLOSING | little("turned", "turned_beside")
    if unit not in ("kg", "lb", "reps") and not plain:
        return None  # "from 5 to 6": o'clock, sets or reps
    value = (new.value, told.value, unit)
    return [Fact("instead", before.start, s.at(end - 1).end, value, {"changed": True})], end


def up_from(told: Value) -> Found | None:
    """ "Up to 12.5 from the 10 you gave me", "subí a 22,5 desde 20": what was done, and what was planned."""
    s, before = told.s, told.s.at(told.i - 1)
    origin = told.behind + (told.mark.text in little("turned", "turned_beside"))  # "auf 22,5 hoch von 20"
    k = _lead_in(s, origin)
    unit, old, end = told.unit, s.at(k + 1), k + 2
    if not s.planned or s.at(origin).text not in little("changed_from") or unit in ("sec", "sets"):
        return None
    led = before.has("plan", "turned_to") or before.text.split(" ")[-1] in little("changed_into")
    if not led or old.kind != "num" or old.value is None or s.at(end).has("times", "x"):
        return None
    if s.unit_at(end) in ("kg", "lb"):
        unit, end = unit or s.unit_at(end), end + 1
    elif s.at(end).has("reps"):
        unit, end = unit or "reps", end + 1
    return [Fact("instead", told.item.start, s.at(end - 1).end, (told.value, old.value, unit))], end


def became(told: Value) -> Found | None:
    """ "Four sets turned into three", "20 kg became 17.5 kg": what was planned, and done."""
    s, i, j, unit = told.s, told.i, told.behind, told.unit
    if not s.planned or not s.at(j).has("plan", "became") or unit == "sec":
        return None
    new, old, end = s.at(j + 1), s.at(i), j + 2
    if new.kind != "num" or new.value is None or old.value is None or s.at(end).has("times", "x"):
        return None
    if s.at(end).has("sets", "sets") or s.at(end).has("reps"):
        unit, end = ("sets" if s.at(end).has("sets", "sets") else "reps"), end + 1
    elif s.unit_at(end) in ("kg", "lb"):
        unit, end = s.unit_at(end), end + 1
    if unit is None:
        return None
    if unit == "sets":
        if not s.whole(new.value) or new.value > MOST_NAMED:
            return None
        note = {"of_plan": int(old.value)} if new.value <= old.value else {"only": True}
        return [Fact("count", old.start, s.at(end - 1).end, int(new.value), note)], end
    return [Fact("instead", old.start, s.at(end - 1).end, (new.value, old.value, unit))], end


def instead(told: Value) -> Found | None:
    """ "50 instead of 45", "4 singles per arm instead of 5", "22.5 on the bar instead of 20"."""
    s, j, unit = told.s, told.behind, told.unit
    if told.mark.text in little("hung_on") and unit in (None, "kg", "lb"):
        turned = j + 1 + (s.at(j + 1).text == ",")
        if s.at(turned).has("plan", "instead") and s.at(turned + 1).kind == "num":
            unit, j = unit or s.unit, turned  # "had 45 on, not 40"
    word = _instead_of(s, j)
    k = j if word is None else _lead_in(s, word)
    old, end = s.at(k + 1), k + 2
    if s.at(told.i - 1).has("plan", "the") and s.at(told.i - 2).text in little("of"):
        return None  # "20 s en cada una de las tres, en lugar de 15"
    if word is None or old.value is None or s.at(end).has("times", "x"):
        return None
    if s.unit_at(end) in ("kg", "lb", "sec"):
        unit, end = unit or s.unit_at(end), end + 1
    elif s.at(end).has("reps"):
        unit, end = unit or "reps", end + 1
    if unit is None and s.at(end).has("sets", "sets"):
        unit, end = "sets", end + 1
    end += s.at(end).text in little("such_a_one")  # "instead of the 15 one"
    between = [s.at(at) for at in range(j, k)]
    named = [Fact("move", one.start, one.end, one.mention) for one in between if one.kind == "move"]
    if unit is None and s.at(j).has("count") and s.planned and 0 < told.value < old.value <= MOST_NAMED:
        counted, _ = told.count(end, {"of_plan": int(old.value)})  # "4 singles per arm instead of 5"
        return [*named, *counted], end
    if unit == "sets" and told.value == int(told.value):
        counted, _ = told.count(end, {"only": True, "was": int(old.value)})
        return [*named, *counted], end
    named += [_scope_of(one) for one in between if one.name("scope")]
    return [*named, Fact("instead", told.item.start, s.at(end - 1).end, (told.value, old.value, unit))], end


def _instead_of(s: Scanner, j: int) -> int | None:
    """Where "instead of" stands that belongs to the value before item `j`."""
    mark = s.at(j)
    if mark.has("plan", "instead"):
        return j
    if (mark.text == "," or mark.has("sep", "and")) and s.at(j + 1).has("plan", "instead"):
        return j + 1
    if mark.has("plan", "every") and s.at(j + 1).has("plan", "instead"):
        return j + 1  # "25 s each time and not 20"
    if mark.value is not None or mark.kind not in BETWEEN:
        return None
    if mark.has("plan") and not mark.has("plan", "off", "took", "done", "every"):
        return None
    for ahead in range(j + 1, j + REACH):  # "22.5 on the bar instead of 20", "15 kg off instead of 10"
        between = s.at(ahead)
        if between.has("plan", "instead") and not between.has("plan", "not_this"):
            return ahead
        if between.value is not None or between.kind not in BETWEEN:
            return None
    return None


def _lead_in(s: Scanner, k: int) -> int:
    """Where the words end that lead the old value in: "statt mit 22,5", "instead of the 15", "en vez de la de 15"."""
    for end in range(k + 1, k + 1 + LEAD_IN):
        item = s.at(end)
        if item.value is not None and item.kind == "num":
            return end - 1
        if not (item.has("load", "at") or item.has("plan", "the", "planned") or item.text in little("article_or_of")):
            break
    return k


def _scope_of(item: Item) -> Fact:
    """The set that stands between a value and "instead of": "got 4 on the first set instead of 3"."""
    name = item.name("scope") or ""
    return Fact("scope", item.start, item.end, int(name) if name.isdigit() else name, {"text": item.text})


def swapped(s: Scanner, i: int) -> tuple[list[Fact], int] | None:
    """ "Swapped the 15 kg band for the 10 kg one": the old value, what it was of, and the new one."""
    values: list[tuple[float, str | None]] = []
    j, parted = i + 1, False
    while j < i + 1 + SWAP and len(values) < 2:
        item = s.at(j)
        if item.kind == "num" and item.value is not None and (parted or not values):
            unit = s.unit_at(j + 1) if s.unit_at(j + 1) in ("kg", "lb", "sec") else None
            values.append((item.value, unit))
            j += unit is not None
        elif item.text in little("swapped_for"):
            parted = bool(values)
        elif item.kind not in ("word", "known") or item.has("sep"):
            return None
        j += 1
    if len(values) < 2 or s.at(j).has("times", "x") or s.at(j).has("sets") or s.at(j).kind == "num":
        return None
    j += s.at(j).text in little("such_a_one")
    value = (values[1][0], values[0][0], values[1][1] or values[0][1])
    return [Fact("instead", s.at(i).start, s.at(j - 1).end, value)], j
