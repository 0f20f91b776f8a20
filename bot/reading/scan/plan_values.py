"""A value told against the plan's: "50 instead of 45", "2.5 less", "one more rep", "3 of the 5"."""

from __future__ import annotations

from collections.abc import Callable

from bot.reading.facts import Fact
from bot.reading.little import little
from bot.reading.scan.in_place import became, from_to, instead, up_from
from bot.reading.scan.scanner import Scanner
from bot.reading.scan.shifts import one_more
from bot.reading.scan.value import Found, Value, value_at
from bot.reading.scan.which_sets import MOST_NAMED

MOST_EXTRA = 4  # reps of a set beyond the plan's
MOST_FEWER = 3  # reps of "dos menos en la última"
MOST_MORE = 30  # nobody adds more to a load at once
MOST_REPS_MORE = 10
WHOLE_MESSAGE = 3  # items of "3 of 5"


def valued(s: Scanner, i: int, value: float) -> Found | None:
    """A value told against the plan: "50 instead of 45", "2.5 less", "one more rep", "3 of the 5"."""
    told = value_at(s, i, value)
    return next((found for found in (rule(told) for rule in RULES) if found is not None), None)


def _of_all_sets(told: Value) -> Found | None:
    """ "4/5 sets"."""
    s, i = told.s, told.i
    whole = s.at(i + 2)
    parted = s.at(i + 1).text == "/" and whole.kind == "num" and s.at(i + 3).has("sets", "sets")
    if not parted or told.value > (whole.value or 0):
        return None
    return told.count(i + 4, {"of_plan": int(whole.value or 0)})


def _out_of_sets(told: Value) -> Found | None:
    """ "3 sets out of 4"."""
    whole = told.s.at(told.behind + 1).value or 0
    if told.unit != "sets" or not told.mark.has("plan", "out_of") or whole < told.value:
        return None
    end = told.behind + 2
    return told.count(end + told.s.at(end).has("sets"), {"of_plan": int(whole)})


def _of_the_sets(told: Value) -> Found | None:
    """ "2 of the 5", "2 sets of the 5"."""
    place = _of_the(told.s, told.behind) if told.unit in (None, "sets") else None
    whole = 0 if place is None else told.s.at(place).value or 0
    if place is None or whole < told.value:
        return None
    return told.count(place + 1, {"of_plan": int(whole)}, place + 1 + told.s.at(place + 1).has("sets"))


def _of_the(s: Scanner, j: int) -> int | None:
    """Where the number of "of the 5" stands."""
    of, the, number = s.at(j), s.at(j + 1), s.at(j + 2)
    if of.text in little("of_the"):
        return j + 1 if the.value is not None and s.at(j + 2).has("sets") else None  # "3 der 5 Sätze"
    if not (of.has("times", "of") or of.text in little("out_of")) or of.has("load", "at"):
        return None
    article = the.has("plan", "the") or the.text in little("the")
    return j + 2 if article and number.value is not None and s.unit_at(j + 3) is None else None


def _reps_more_or_less(told: Value) -> Found | None:
    """ "One rep more"."""
    mark = told.mark
    if not mark.has("plan", "more_reps", "less_reps") or told.unit not in (None, "reps") or told.value > MOST_REPS_MORE:
        return None
    sign = 1 if mark.has("plan", "more_reps") else -1
    return [Fact("delta", told.item.start, mark.end, (told.value, "reps", sign))], told.behind + 1


def _more_or_less(told: Value) -> Found | None:
    """ "2.5 less", "5 seconds more", "one set less"."""
    s, mark, unit, j = told.s, told.mark, told.unit, told.behind
    if not mark.has("plan", "less", "more") or mark.has("effort", "rir") or s.at(j + 1).kind == "num":
        return None
    if _excepts(told):
        return None
    sign, one = -1 if mark.has("plan", "less") else 1, told.item.spelled and told.value == 1
    if unit is None and (s.at(j + 1).has("reps") or s.at(j + 1).has("sets")):
        unit, j = ("reps" if s.at(j + 1).has("reps") else "sets"), j + 1
    if unit is None and one and _of_reps(s, j + 1):
        return one_more(s, told.i, j + 1)  # "y una más de diez"
    if unit == "sets":
        fewer = sign < 0 and told.value in range(1, MOST_NAMED)
        return told.count(told.i + 2, {}) if one or fewer else None
    if unit is None and s.unit_at(j + 1) in ("kg", "lb"):
        unit, j = s.unit_at(j + 1), j + 1
    if unit is None and one:
        if s.at(j + 1).has("load", "at", "plus", "sign") and s.at(j + 2).kind == "num":
            return one_more(s, told.i, j + 1)  # "one more with 10 kg x 5"
        unit = "reps"
    if unit is None and s.at(j + 1).kind == "move" and 1 < told.value == int(told.value) <= MOST_EXTRA:
        unit = "reps"  # "two extra dips in each set"
    either = _so_many(told) if unit is None else None
    unit = "reps" if either else unit
    if unit is None and told.value == int(told.value) and mark.text in little("more") and not _tied(told, j):
        return None
    kind = {"sec": "hold", "reps": "reps"}.get(unit or "", "load")
    if kind == "load" and told.value > MOST_MORE and sign > 0:
        return None  # "got 52.5 kg up"
    amount = s.kg(told.value, unit) if kind == "load" else told.value
    # "one extra": of what
    note = {"open": kind == "reps" and not any(s.at(k).has("reps") for k in range(told.i, j + 1)), "or_load": either}
    note["no_unit"] = unit is None and mark.text in little("so_many_more", "so_many_fewer")
    return [Fact("delta", told.item.start, s.at(j).end, (amount, kind, sign), note)], j + 1


def _so_many(told: Value) -> str | None:
    """ "2 less on the last", "three more on all sets": a figure that is of reps where no load could change by it.

    Whether it is said of "one" of the sets or of "all"; None where it is no such figure.
    """
    s, led, behind = told.s, told.s.at(told.i - 1), told.s.at(told.behind + 1)
    few = told.value == int(told.value) and 0 < told.value <= MOST_FEWER
    if not s.planned or not few or told.mark.text not in little("so_many_more", "so_many_fewer"):
        return None
    if led.has("load", "at") or led.has("times", "of") or _tied(told, told.behind):
        return None
    behind = s.at(told.behind + 2) if behind.text in little("before_scope") else behind
    which = led.name("scope") or behind.name("scope")
    return which and ("all" if which == "all" else "one")


def _tied(told: Value, j: int) -> bool:
    """Whether words say that a number is of the load: "with 5 more", "5 more on everything"."""
    behind = told.s.at(j + 1)
    led = told.s.at(told.i - 1).has("load", "at")
    return led or behind.has("plan", "all_lifts") or behind.text in little("after_change")


def _excepts(told: Value) -> bool:
    """ "Todas de 3 menos la última"; "2 segundos menos en todas" and "una menos en la última" do not."""
    behind, led = told.s.at(told.behind + 1), told.s.at(told.i - 1)
    if not told.mark.has("plan", "except") and told.mark.text not in little("except_or_less"):
        return False
    left = behind.has("scope") and not behind.has("scope", "all")
    within = behind.text.split(" ")[0] in little("before_scope") and told.value <= MOST_FEWER
    if left and within and not (led.has("times", "of") or led.has("load", "at")):
        return False
    return left or behind.has("plan", "the") or behind.text in little("article")


def _of_reps(s: Scanner, i: int) -> bool:
    """Whether "of 10" stands here, with nothing behind it that makes it a load."""
    of, number = s.at(i), s.at(i + 1)
    return of.has("times", "of") and not of.has("load", "at") and number.kind == "num" and s.unit_at(i + 2) is None


def _out_of(told: Value) -> Found | None:
    """ "3 out of 4"."""
    s, i = told.s, told.i
    whole = s.at(i + 2).value
    if not s.at(i + 1).has("plan", "out_of") or whole is None or whole < told.value:
        return None
    return told.count(i + 3, {"of_plan": int(whole)}, i + 3 + s.at(i + 3).has("sets"))


def _of_so_many(told: Value) -> Found | None:
    """ "Only 3 of 5", "got 3 of 5", "3 of 5 sets"."""
    s, i = told.s, told.i
    of, whole, behind = s.at(i + 1), s.at(i + 2), s.at(i + 3)
    if not of.has("times", "of") or of.has("load", "at") or of.has("times", "x"):  # "hice tres por ocho"
        return None
    if (
        whole.kind != "num"
        or (whole.value or 0) < told.value
        or not (s.planned or of.text not in little("sets_of_reps"))
    ):
        return None
    led = s.at(i - 1).has("plan", "only") or s.at(i - 1).has("scheme", "got")
    alone = s.planned and len(s.items) == WHOLE_MESSAGE  # "3 de 5"
    other = behind.has("move") or s.unit_at(i + 3) in ("sec", "min")  # "3 of 8 seconds"
    if other or not (led or alone or behind.has("sets")):
        return None
    return told.count(i + 3, {"of_plan": int(whole.value or 0)}, i + 3 + behind.has("sets"))


def _of_those(told: Value) -> Found | None:
    """ "3 of those", "2 de ellas", "2 davon mit 10", "davon zwei mit 10"."""
    s, i = told.s, told.i
    names = ("those",) if s.planned else ("those", "of_those_sets")
    if s.at(i + 1).text in little("out_of") and s.at(i + 2).text in little(*names):
        return told.count(i + 3, {"those": True})
    if s.planned or told.value not in range(1, MOST_NAMED + 1):
        return None
    behind = s.at(i + 1).text in little("of_those_sets")
    after = s.at(i + 1 + behind)
    counts = after.kind in ("num", "move") or any(after.has(table) for table in ("unit", "reps", "times"))
    led = s.at(i - 1).text in little("of_those_sets") and not after.has("load", "plus")
    # nothing behind makes them reps or a load
    some = (behind or led) and (not counts or after.has("load", "at"))
    return told.count(i + 1 + behind, {"those": True}) if some else None


RULES: tuple[Callable[[Value], Found | None], ...] = (
    became,
    from_to,
    up_from,
    instead,
    _of_all_sets,
    _out_of_sets,
    _of_the_sets,
    _reps_more_or_less,
    _more_or_less,
    _out_of,
    _of_so_many,
    _of_those,
)
