"""A value told against the plan's: "50 instead of 45", "2.5 less", "one more rep", "3 of the 5"."""

from __future__ import annotations

from bot.reading.facts import Fact
from bot.reading.items import Item
from bot.reading.little import little
from bot.reading.scan.scanner import Scanner
from bot.reading.scan.shifts import one_more
from bot.reading.scan.which_sets import MOST_NAMED, MOST_RANGE

BETWEEN = ("word", "known", "claim", "move")  # what may stand between a value and "instead of"
SWAP = 9  # items: "the 15 kg band for the 10 kg"
LEAD_IN = 3  # items: "de la de 15"
MOST_MORE = 30  # nobody adds more to a load at once
WHOLE_MESSAGE = 3  # items of "3 of 5"


def _of_reps(s: Scanner, i: int) -> bool:
    """Whether "of 10" stands here, with nothing behind it that makes it a load."""
    of, number = s.at(i), s.at(i + 1)
    return of.has("times", "of") and not of.has("load", "at") and number.kind == "num" and s.unit_at(i + 2) is None


def _of_the(s: Scanner, j: int) -> int | None:
    """Where the number of "of the 5" stands."""
    of, the, number = s.at(j), s.at(j + 1), s.at(j + 2)
    if of.text in little("of_the"):
        return j + 1 if the.value is not None and s.at(j + 2).has("sets") else None  # "3 der 5 Sätze"
    if not (of.has("times", "of") or of.text in little("out_of")) or of.has("load", "at"):
        return None
    article = the.has("plan", "the") or the.text in little("the")
    return j + 2 if article and number.value is not None and s.unit_at(j + 3) is None else None


def _lead_in(s: Scanner, k: int) -> int:
    """Where the words end that lead the old value in: "statt mit 22,5", "instead of the 15", "en vez de la de 15"."""
    for end in range(k + 1, k + 1 + LEAD_IN):
        item = s.at(end)
        if item.value is not None and item.kind == "num":
            return end - 1
        if not (item.has("load", "at") or item.has("plan", "the") or item.text in little("article_or_of")):
            break
    return k


def _became(s: Scanner, i: int, j: int, unit: str | None) -> tuple[list[Fact], int] | None:
    """ "Four sets turned into three", "20 kg became 17.5 kg": what was planned, and done.

    The words for it stand at `j`.
    """
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


def valued(s: Scanner, i: int, value: float) -> tuple[list[Fact], int] | None:
    """A value told against the plan: "50 instead of 45", "2.5 less", "one more rep", "3 of the 5"."""
    item = s.at(i)
    j = i + 1
    unit = None
    if s.unit_at(j) in ("kg", "lb", "sec"):
        unit, j = s.unit_at(j), j + 1
    elif s.at(j).has("reps"):
        unit, j = "reps", j + 1
    elif s.at(j).has("sets"):
        unit, j = "sets", j + 1
    became = _became(s, i, j, unit)
    if became is not None:
        return became
    if s.at(j).text in little("hung_on") and unit in (None, "kg", "lb"):
        turned = j + 1 + (s.at(j + 1).text == ",")
        if s.at(turned).has("plan", "instead") and s.at(turned + 1).kind == "num":
            unit, j = unit or s.unit, turned  # "had 45 on, not 40"
    mark = s.at(j)
    k = j
    if (mark.text == "," or mark.has("sep", "and")) and s.at(j + 1).has("plan", "instead"):
        k, mark = j + 1, s.at(j + 1)
    elif (
        mark.value is None
        and mark.kind in BETWEEN
        and (not mark.has("plan") or mark.has("plan", "off", "took", "done"))
    ):
        # "22.5 on the bar instead of 20", "15 kg off instead of 10"
        for ahead in range(j + 1, j + 4):
            between = s.at(ahead)
            if between.has("plan", "instead") and not between.has("plan", "not_this"):
                k, mark = ahead, between
                break
            if between.value is not None or between.kind not in BETWEEN:
                break
    k = _lead_in(s, k) if mark.has("plan", "instead") else k
    if mark.has("plan", "instead") and s.at(k + 1).value is not None and not s.at(k + 2).has("times", "x"):
        end = k + 2
        if s.unit_at(end) in ("kg", "lb", "sec"):
            unit, end = unit or s.unit_at(end), end + 1
        elif s.at(end).has("reps"):
            unit, end = unit or "reps", end + 1
        if unit is None and s.at(end).has("sets", "sets"):
            unit, end = "sets", end + 1
        end += s.at(end).text in little("such_a_one")  # "instead of the 15 one"
        moves = [s.at(at) for at in range(j, k) if s.at(at).kind == "move"]
        named = [Fact("move", one.start, one.end, one.mention) for one in moves]
        old = s.at(k + 1).value or 0
        if unit is None and s.at(j).has("count") and s.planned and 0 < value < old <= MOST_NAMED:
            note = {"of_plan": int(old)}  # "4 singles per arm instead of 5"
            return [*named, Fact("count", item.start, s.at(end - 1).end, int(value), note)], end
        if unit == "sets" and value == int(value):
            return [*named, Fact("count", item.start, s.at(end - 1).end, int(value), {"only": True})], end
        named += [_scope_of(s.at(at)) for at in range(j, k) if s.at(at).name("scope")]
        return [*named, Fact("instead", item.start, s.at(end - 1).end, (value, s.at(k + 1).value, unit))], end
    of_so_many = s.at(i + 2)
    parted = s.at(i + 1).text == "/" and of_so_many.kind == "num" and s.at(i + 3).has("sets", "sets")
    if parted and value <= (of_so_many.value or 0):
        note = {"of_plan": int(of_so_many.value or 0)}  # "4/5 sets"
        return [Fact("count", item.start, s.at(i + 3).end, int(value), note)], i + 4
    if unit == "sets" and mark.has("plan", "out_of") and (s.at(j + 1).value or 0) >= value:
        end = j + 2 + s.at(j + 2).has("sets")
        note = {"of_plan": int(s.at(j + 1).value or 0)}  # "3 sets out of 4"
        return [Fact("count", item.start, s.at(end - 1).end, int(value), note)], end
    of_the = _of_the(s, j) if unit in (None, "sets") else None
    if of_the is not None and (s.at(of_the).value or 0) >= value:
        end = of_the + 1 + s.at(of_the + 1).has("sets")
        note = {"of_plan": int(s.at(of_the).value or 0)}  # "2 of the 5", "2 sets of the 5"
        return [Fact("count", item.start, s.at(of_the).end, int(value), note)], end
    if mark.has("plan", "more_reps", "less_reps") and unit in (None, "reps") and value <= 10:
        sign = 1 if mark.has("plan", "more_reps") else -1
        return [Fact("delta", item.start, mark.end, (value, "reps", sign))], j + 1
    behind = s.at(j + 1)
    excepts = mark.has("plan", "except") or mark.text in little("except_or_less")
    left = behind.has("scope") and not behind.has("scope", "all")  # "2 segundos menos en todas"
    if excepts and (left or behind.has("plan", "the") or behind.text in little("article")):
        return None  # "todas de 3 menos la última"
    if mark.has("plan", "less", "more") and not mark.has("effort", "rir") and s.at(j + 1).kind != "num":
        sign = -1 if mark.has("plan", "less") else 1
        if unit is None and (s.at(j + 1).has("reps") or s.at(j + 1).has("sets")):
            unit, j = ("reps" if s.at(j + 1).has("reps") else "sets"), j + 1
        if unit is None and item.spelled and value == 1 and _of_reps(s, j + 1):
            return one_more(s, i, j + 1)  # "y una más de diez"
        if unit == "sets":
            one = item.spelled and value == 1
            fewer = mark.has("plan", "less") and value in range(1, MOST_NAMED)
            return ([Fact("count", item.start, s.at(i + 1).end, int(value))], i + 2) if one or fewer else None
        if unit is None and s.unit_at(j + 1) in ("kg", "lb"):
            unit, j = s.unit_at(j + 1), j + 1
        if unit is None and item.spelled and value == 1:
            if s.at(j + 1).has("load", "at", "plus", "sign") and s.at(j + 2).kind == "num":
                return one_more(s, i, j + 1)  # "one more with 10 kg x 5"
            unit = "reps"
        before = s.at(i - 1)
        tied = (
            before.has("load", "at")
            or s.at(j + 1).has("plan", "all_lifts")
            or s.at(j + 1).text in little("after_change")
        )
        if unit is None and not tied and value == int(value) and mark.text in little("more"):
            return None
        kind = {"sec": "hold", "reps": "reps"}.get(unit or "", "load")
        amount = s.kg(value, unit) if kind == "load" else value
        if kind == "load" and value > MOST_MORE and sign > 0:
            return None  # "got 52.5 kg up"
        note = {
            "open": kind == "reps" and not any(s.at(k).has("reps") for k in range(i, j + 1))
        }  # "one extra": of what
        return [Fact("delta", item.start, s.at(j).end, (amount, kind, sign), note)], j + 1
    slash = s.at(i + 1).text == "/" and s.at(i + 2).kind == "num" and s.at(i + 3).has("sets", "sets")
    if slash and 0 < value <= (s.at(i + 2).value or 0) <= MOST_RANGE:
        note = {"of_plan": int(s.at(i + 2).value or 0)}  # "4/5 sets"
        return [Fact("count", item.start, s.at(i + 3).end, int(value), note)], i + 4
    of = s.at(i + 1).has("times", "of") and not s.at(i + 1).has("load", "at")
    if s.at(i + 1).has("plan", "out_of") and s.at(i + 2).value is not None and (s.at(i + 2).value or 0) >= value:
        end = i + 3 + s.at(i + 3).has("sets")
        note = {"of_plan": int(s.at(i + 2).value or 0)}
        return [Fact("count", item.start, s.at(i + 2).end, int(value), note)], end
    if (
        of
        and not s.at(i + 1).has("times", "x")  # "hice tres por ocho"
        and (s.planned or s.at(i + 1).text not in little("sets_of_reps"))
        and (
            s.at(i - 1).has("plan", "only")
            or s.at(i - 1).has("scheme", "got")
            or s.at(i + 3).has("sets")
            or (s.planned and len(s.items) == WHOLE_MESSAGE)  # "3 de 5"
        )
        and s.at(i + 2).kind == "num"
        and (s.at(i + 2).value or 0) >= value
        and not s.at(i + 3).has("move")
        and s.unit_at(i + 3) not in ("sec", "min")  # "3 of 8 seconds"
    ):
        whole = int(s.at(i + 2).value or 0)
        return [Fact("count", item.start, s.at(i + 2).end, int(value), {"of_plan": whole})], i + 3 + s.at(i + 3).has(
            "sets"
        )
    if s.at(i + 1).text in little("out_of") and s.at(i + 2).text in little("those"):
        return [Fact("count", item.start, s.at(i + 2).end, int(value), {"those": True})], i + 3
    if not s.planned and s.at(i + 1).text in little("out_of") and s.at(i + 2).text in little("of_those_sets"):
        return [Fact("count", item.start, s.at(i + 2).end, int(value), {"those": True})], i + 3  # "2 de ellas"
    if not s.planned and value in range(1, MOST_NAMED + 1) and _of_those(s, i):
        end = i + 1 + (s.at(i + 1).text in little("of_those_sets"))
        return [Fact("count", item.start, s.at(end - 1).end, int(value), {"those": True})], end
    return None


def _of_those(s: Scanner, i: int) -> bool:
    """ "2 davon mit 10", "davon zwei mit 10": so many of the sets, where nothing else makes them reps or a load."""
    behind = s.at(i + 1).text in little("of_those_sets")
    after = s.at(i + 1 + behind)
    counts = after.kind == "num" or any(after.has(table) for table in ("unit", "reps", "times")) or after.kind == "move"
    led = s.at(i - 1).text in little("of_those_sets") and not after.has("load", "plus")
    return (behind or led) and (not counts or after.has("load", "at"))


def _scope_of(item: Item) -> Fact:
    """The set that stands between a value and "instead of": "got 4 on the first set instead of 3"."""
    name = item.name("scope") or ""
    return Fact("scope", item.start, item.end, int(name) if name.isdigit() else name, {"text": item.text})
