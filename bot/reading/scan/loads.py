"""Loads: "+20", "with 10 kg", "15% of bodyweight", "the last at 9"."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import Literal

from bot.reading.facts import Fact, FactKind
from bot.reading.items import Item
from bot.reading.little import little
from bot.reading.scan.labelled import labelled
from bot.reading.scan.load_forms import in_doubt, one_a_set, part_of_bodyweight, percent, several, weight
from bot.reading.scan.scanner import Scanner
from bot.reading.scan.schemes import chain
from bot.reading.scan.value import Found

PLATES = (5.0, 7.5, 10.0, 12.5, 15.0, 20.0, 25.0, 35.0, 45.0)  # what one plate weighs, in either unit
LEAST_BY_TIMES = 15  # "with 35 x 3" tells kilograms
MOST_BETWEEN = 4  # words of "weight was only today …"
HEADS = frozenset("/ | ; . , +".split())  # "A1 dips 3x5 / A2 chins 3x5" in one line
LEAST_LISTED = 3  # numbers of a list of reps
MOST_LINES = 9  # exercises that are numbered "A1" to "A9"
LEAST_EFFORT, MOST_EFFORT = 6, 10  # a number behind "@" or "at" that may be an effort

Verdict = Found | Literal[False] | None  # False: it is no load, whatever the next rules say


@dataclass(frozen=True)
class Told:
    """A number at item `at` that may be a load, led by words from item `i` on. `how`: plus, sign, at or none."""

    s: Scanner
    i: int
    how: str | None
    at: int
    value: float

    @property
    def number(self) -> Item:
        return self.s.at(self.at)

    @property
    def end(self) -> int:
        """The item behind the number."""
        return self.at + 1

    @property
    def after(self) -> Item:
        return self.s.at(self.end)

    @property
    def unit(self) -> str | None:
        return self.s.unit_at(self.end)

    @property
    def behind(self) -> int:
        """The item behind the number and its unit of weight."""
        return self.end + (self.unit in ("kg", "lb"))

    def fact(self, kind: FactKind, end: int, value: object = None, note: dict[str, object] | None = None) -> Found:
        return [Fact(kind, self.s.at(self.i).start, self.s.at(end - 1).end, value, note or {})], end


def load(s: Scanner, i: int) -> Found | None:
    headed = _without_number(s, i)
    if headed is not None:
        return headed
    told = _number(s, i)
    if told is None:
        return None
    verdicts = (rule(told) for rule in RULES)
    return next((verdict for verdict in verdicts if verdict is not None), None) or None


def _without_number(s: Scanner, i: int) -> Found | None:
    """ "#45", "A2", "no weight", "the same", "had 45 on"."""
    item = s.at(i)
    if item.text == "#" and s.at(i + 1).kind == "num":
        if s.at(i - 1).kind == "word":
            return [Fact("word", item.start, s.at(i + 1).end, None, {"noise": True})], i + 2  # "workout #45"
        if item.space and not s.at(i + 1).space:
            pounds = s.kg(s.at(i + 1).value or 0, "lb")
            return [Fact("load", item.start, s.at(i + 1).end, pounds, {"how": "plus", "unit": "lb"})], i + 2
    if len(item.text) == 1 and item.text.isalpha() and _numbers_a_line(s, i):
        return [Fact("word", item.start, s.at(i + 1).end, None, {"noise": True})], i + 2  # "A2 fondos 4x8"
    if item.has("load", "none"):
        if s.at(i + 1).has("load", "plus") and s.at(i + 2).kind == "num":
            return load(s, i + 1)
        if i and s.at(i - 1).kind == "num" and 0 < (s.at(i - 1).value or 0) < 1.5:
            return [], i + 1
        return [Fact("load", item.start, item.end, 0.0, {"none": True})], i + 1
    if item.has("load", "same"):
        return [Fact("load", item.start, item.end, None, {"same": True})], i + 1
    return _worn(s, i)


def _worn(s: Scanner, i: int) -> Found | None:
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
    parted = s.at(i - 1).kind == "nl" or (s.at(i - 1).text in HEADS and after.kind == "move")
    heads = parted and number.kind == "num" and not number.space
    return heads and (number.value or 0) <= MOST_LINES and (after.kind == "move" or after.text in (":", ")", "-", "."))


def _number(s: Scanner, i: int) -> Told | None:
    j, how = i, None
    while s.at(j).has("load", "at", "plus", "sign") and j < i + 3:
        name = s.at(j).name("load")
        how = "plus" if name == "plus" or how == "plus" else "sign" if name == "sign" else how or "at"
        j += 1
    if (how is None and s.at(i).text in little("weight")) or (how and s.at(j - 1).text in little("weight")):
        j, how = _was(s, max(j, i + 1)), how or "at"
    while how and s.at(j).text in little("before_number", "load_as_planned"):
        j += 1  # "with the planned 10"
    number = s.at(j)
    if number.kind != "num" or number.value is None or (number.spelled and number.value == 1):
        return None
    return Told(s, i, how, j, number.value)


def _was(s: Scanner, j: int) -> int:
    """The item behind "was today" of "weight was today 17.5"; where no number follows, the place given."""
    k = j
    while k < j + MOST_BETWEEN and (s.at(k).text in little("weight_was") or _is_day(s.at(k))):
        k += 1
    return k if s.at(k).kind == "num" else j


def _is_day(item: Item) -> bool:
    return item.kind == "claim" and item.claim is not None and item.claim.kind in ("day", "noise")


def _of_sets(told: Told) -> Verdict:
    if told.how == "plus" and told.after.has("link", "drop"):
        return False  # "+ 1 drop set": one more
    if told.how == "plus" and told.unit is None and told.after.has("plan", "more_reps"):
        return False  # "+ 1 rep extra"
    if told.how == "at" and told.after.has("load", "none") and told.s.whole(told.value):
        return False  # "warmed up with 5 bw"
    return None


def _list_of_reps(told: Told) -> Verdict:
    """ "Pull-ups mit 6, 6, 5 und 4 Wdh": a list that ends as reps is none of loads."""
    s, j, many = told.s, told.end, 1
    if told.how != "at" or told.unit is not None or not s.whole(told.value):
        return None
    while (s.at(j).text == "," or s.at(j).has("sep", "and")) and s.at(j + 1).kind == "num":
        if not s.whole(s.at(j + 1).value or 0):
            return None
        j, many = j + 2, many + 1
    return False if many >= LEAST_LISTED and s.at(j).has("reps") else None


def _part(told: Told) -> Verdict:
    return part_of_bodyweight(told.s, told.i, told.at)


def _by_the_clock(told: Told) -> Verdict:
    """ "The hall closes at 9", "her recital was at six"."""
    s, i = told.s, told.i
    event = told.number.spelled and s.at(i - 1).text in little("was") and s.at(i - 2).kind == "word"
    event = event and s.at(i - 2).space and not s.at(i - 2).labels
    if told.how != "at" or told.unit is not None or not (event or s.at(i - 1).text in little("by_the_clock")):
        return None
    return told.fact("word", told.end, None, {"noise": True})


def _plates_counted(told: Told) -> Verdict:
    """ "With two 45s"."""
    plates = told.how and told.number.spelled and told.after.kind == "num"
    return told.fact("ask", told.end + 2, "load_kg") if plates and _ends_plate(told.s, told.end + 1) else None


def _ends_plate(s: Scanner, i: int) -> bool:
    return s.at(i).text in little("plate_ending")


def _several(told: Told) -> Verdict:
    return several(told.s, told.i, told.at, told.how)


def _against_the_plan(told: Told) -> Verdict:
    """ "Solo pude con 3 de las 5 series", "with 12.5 instead of 15", "with 7.5 off instead of 10", "with 5 less"."""
    s, behind = told.s, told.s.at(told.behind)
    if told.after.has("times", "of") and s.at(told.end + 1).has("plan", "the") and s.at(told.end + 2).value is not None:
        return False
    if behind.has("plan", "instead") and s.at(told.behind + 1).value is not None:
        return False
    then = s.at(told.behind + 1)
    if behind.kind == "word" and then.has("plan", "instead") and then.end - then.start > 1:
        return False
    changed = told.unit is None and behind.has("plan", "less", "more") and not behind.has("load", "word")
    return False if changed and then.kind != "num" else None


def _range(told: Told) -> Verdict:
    """ "@7-8", "with 20-22.5"."""
    s, end = told.s, told.end
    if not told.how or told.after.text != "-" or s.at(end + 1).kind != "num" or told.unit is not None:
        return None
    high = s.at(end + 1).value or 0
    if told.how == "sign" and told.value < high <= MOST_EFFORT:
        return told.fact("at", end + 2, ((told.value + high) / 2, None), {"range": True})
    return told.fact("ask", end + 2, "load_kg") if high > told.value else None


def _instead_of_a_load(told: Told) -> Verdict:
    """ "With 20, not with 15"."""
    s, old = told.s, told.behind + 1
    if not told.how or not s.at(told.behind).has("plan", "instead"):
        return None
    while s.at(old).has("load", "plus", "at") and old < told.behind + 3:
        old += 1
    if s.at(old).kind != "num" or old <= told.behind + 1:
        return None
    old += 2 if s.unit_at(old + 1) in ("kg", "lb") else 1
    return told.fact("load", old, s.kg(told.value, told.unit), {"how": told.how})


def _one_a_set(told: Told) -> Verdict:
    return one_a_set(told.s, told.i, told.at) if told.how in ("at", "plus") and told.unit != "percent" else None


def _with_unit(told: Told) -> Verdict:
    s = told.s
    if told.unit == "percent":
        return percent(s, told.i, told.at, told.value, told.how) or False
    if told.unit in ("kg", "lb"):
        return weight(s, told.i, told.end, told.value, told.unit, told.how) or False
    if told.after.text == "k" and s.at(told.end + 1).has("load", "plate"):
        return told.fact("load", told.end + 2, s.kg(told.value), {"how": told.how or "at"})  # "10k plate"
    return None if told.unit is None else False


def _by_times(told: Told) -> Verdict:
    """ "Doubles with 35 x 3"."""
    s, end, times = told.s, told.end, told.s.at(told.end + 1)
    if not told.after.has("times", "x") or told.how != "at" or told.value < LEAST_BY_TIMES or times.kind != "num":
        return None
    worded = any(s.at(at).has("count") for at in (told.i - 1, told.i - 2))
    if not worded or (times.value or 0) not in range(2, MOST_LINES):
        return None
    (kg,), _ = told.fact("load", end, s.kg(told.value), {"how": told.how})
    return [kg, Fact("count", times.start, times.end, int(times.value or 0))], end + 2


def _of_reps(told: Told) -> Verdict:
    """ "Started with 10 pull-ups", "with weight 3@15": a number of reps or of sets."""
    s, end, after, value = told.s, told.end, told.after, told.value
    form = after.has("sets") and s.at(told.at - 1).text in little("weight") and labelled(s, end) is not None
    if after.has("times", "x") or (after.has("sets") and value == int(value) and not form):
        return False
    before = s.at(told.i - 1)
    led = before.value is None and not any(before.has(name) for name in ("reps", "sets", "count"))
    if told.how == "at" and led and after.kind == "move" and s.whole(value) and chain(s, end + 1) is None:
        return False
    named = s.at(told.at - 1).text.endswith(tuple(little("weight")))
    if named and (after.has("load", "sign") or after.text == "/") and s.at(end + 1).kind == "num":
        return False  # "with weight 3@15", "with weight 5/4/4": reps, of loaded work
    effort = after.has("effort", "rir", "after") and s.at(end + 1).kind != "num"
    return False if after.has("reps") or effort else None


def _of_a_lift(told: Told) -> Verdict:
    """ "Did everything plus 10 push-ups", "whole plan, plus three muscle-up singles": no load."""
    s, end = told.s, told.end
    if told.how != "plus" or not s.planned or told.after.kind != "move" or not s.whole(told.value):
        return None
    tight = s.at(told.i).text == "+" and not told.number.space
    if told.unit is not None or tight or s.at(told.i - 1).kind == "move":
        return None
    counted = s.at(end + 1).has("count") or (chain(s, end + 1) is None and not s.at(end + 1).has("sets"))
    return False if counted else None


def _of_a_plate(told: Told) -> Verdict:
    """ "24er Kettlebell am Fuß", "with a 20s plate", "mit der 20er Scheibe plus 5er", "with a 20 plate"."""
    s, end, after = told.s, told.end, told.after
    kg, how = s.kg(told.value), told.how or "at"
    if _ends_plate(s, end) and not after.space:
        tool = s.at(end + 1)
        if tool.has("load", "tool") or (told.how and tool.has("load", "plate")):
            return told.fact("load", end + 2, kg, {"how": how, "unit": s.unit})
        if told.how == "plus" and told.value in PLATES and s.at(told.i - 1).has("load", "plate"):
            return told.fact("load", end + 1, kg, {"how": how, "unit": s.unit})
    if not after.has("load", "plate"):
        return None
    if told.value in PLATES and after.text in little("one_plate"):
        return told.fact("load", end + 1, kg, {"how": how})
    return [Fact("ask", told.number.start, after.end, "load_kg")], end + 1


def _in_doubt(told: Told) -> Verdict:
    return in_doubt(told.s, told.number, told.end) if told.how else None


def _plain(told: Told) -> Verdict:
    """ "+20", "with 20", "20 extra"; "@8" and "the last at 9" may be an effort as well."""
    s, end, how = told.s, told.end, told.how
    kg = s.kg(told.value)
    if how is None:
        return told.fact("load", end + 1, kg) if told.after.has("load", "word") else False
    while s.at(end).has("load", "word"):
        end += 1
    rated = how == "sign"
    if how == "at":
        led, implied = s.at(told.i), s.planned or s.at(told.i - 1).has("scope") or s.at(end).has("scope")
        rated = led.text in little("at") or (led.text in little("rated_at") and implied)
    if rated and LEAST_EFFORT <= told.value <= MOST_EFFORT:  # "the last at 9", "la última a 9", "a 9 la última"
        return told.fact("at", end, (told.value, kg))
    return told.fact("load", end, kg, {"how": how, "comma": told.number.comma})


RULES: tuple[Callable[[Told], Verdict], ...] = (
    _of_sets,
    _list_of_reps,
    _part,
    _by_the_clock,
    _plates_counted,
    _several,
    _against_the_plan,
    _range,
    _instead_of_a_load,
    _one_a_set,
    _with_unit,
    _by_times,
    _of_reps,
    _of_a_lift,
    _of_a_plate,
    _in_doubt,
    _plain,
)
