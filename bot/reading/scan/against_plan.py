"""Words about the day's plan, and values told against it."""

from __future__ import annotations

from bot.reading.facts import Entry, Fact
from bot.reading.items import Item
from bot.reading.little import little
from bot.reading.scan.beginning import begins_with
from bot.reading.scan.figured_sets import figured_sets
from bot.reading.scan.scanner import Scanner
from bot.reading.scan.schemes import chain

BETWEEN = ("word", "known", "claim", "move")  # what may stand between a value and "instead of"
MOST_RANGE = 12  # the highest number of a set
MOST_NAMED = 6  # so many sets are named by their number: "the last two"
REACH = 6  # so far from "after the second set" stands what changed
MOST_CHANGE = 10  # more than this is no change of a load but a load
MOST_MORE = 30  # nobody adds more to a load at once
WHOLE_MESSAGE = 3  # items of "3 of 5"
SWAP = 9  # items: "the 15 kg band for the 10 kg"
LEAD_IN = 3  # items: "de la de 15"
VERBS = 4  # items between an old value and the verb of the new one
LEFT_OUT = 7  # how far "out" may stand from "left": "left the dips out"


def against_plan(s: Scanner, i: int) -> tuple[list[Fact], int] | None:
    """Words about the day's plan, and values told against it: "50 instead of 45", "2.5 less", "one more rep"."""
    item = s.at(i)
    told = _which(s, i) or _onwards(s, i)
    if told is not None:
        return told
    if s.planned and item.text in little("not_got_to") and s.at(i - 1).kind == "move" and _closes(s, i + 1):
        return [Fact("plan", item.start, item.end, "skipped", {"names": ["skipped"]})], i + 1
    first = i + 1 if item.has("load", "at") and s.at(i + 1).value is not None else i
    value = s.at(first).value
    if value is not None:
        told = _valued(s, first, value)
        if told is not None and first > i and not _can_lead(told[0][-1]):
            told = None
        if told is not None:
            return told
    if item.has("plan", "instead") and s.at(i + 1).value is not None and not item.has("fail"):
        turned = _old_first(s, i)
        if turned is not None:
            return turned
        row = chain(s, i + 1)
        if row is not None:
            return [Fact("word", item.start, s.at(row[1] - 1).end, None, {"noise": True})], row[1]
    if item.has("plan", "swap"):
        return _swapped(s, i)
    if item.has("plan", "more_reps", "less_reps"):
        sign = 1 if item.has("plan", "more_reps") else -1
        return [Fact("delta", item.start, item.end, (1.0, "reps", sign))], i + 1
    if item.has("plan", "extra_set"):
        return _one_more(s, i, i + 1)
    if item.has("side", "left") and item.text in little("left"):
        out = next((j for j in range(i + 2, i + LEFT_OUT) if s.at(j).has("plan", "out")), None)
        if out is not None and all(s.at(j).value is None and s.at(j).kind != "sym" for j in range(i + 1, out)):
            return [Fact("plan", item.start, item.end, "skipped", {"names": ["skipped"]})], i + 1
    if item.text == "+" and s.at(i + 1).value is not None and _more_sets(s, i + 1):
        return [Fact("sep", item.start, item.end, 1, {"mark": "and"})], i + 1  # "did everything + 1 extra set"
    if (item.has("plan", "by") or item.text == "+") and s.at(i + 1).value is not None:
        told = _shifted(s, i)
        if told is not None:
            return told
    return _stopped(s, i) if item.has("plan", "stopped") else None


def _swapped(s: Scanner, i: int) -> tuple[list[Fact], int] | None:
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


def _old_first(s: Scanner, i: int) -> tuple[list[Fact], int] | None:
    """ "Instead of 20 I used 22.5", "en lugar de 5 hice 4 series": the old value told before the new one."""
    j = i + 2
    old_unit = s.unit_at(j) if s.unit_at(j) in ("kg", "lb", "sec") else "reps" if s.at(j).has("reps") else None
    j += old_unit is not None
    told = [
        at for at in range(j, j + VERBS) if s.at(at).has("scheme", "got") or s.at(at).has("plan", "took", "turned_to")
    ]
    if not told or s.at(told[0] + 1).kind != "num" or s.at(told[0] + 2).has("times", "x"):
        return None
    new, after = s.at(told[0] + 1), told[0] + 2
    if s.at(after).has("sets", "sets"):
        return [Fact("word", s.at(i).start, s.at(told[0]).end, None, {"noise": True})], told[0] + 1
    unit = s.unit_at(after) if s.unit_at(after) in ("kg", "lb", "sec") else "reps" if s.at(after).has("reps") else None
    after += unit is not None
    value = (new.value, s.at(i + 1).value, unit or old_unit)
    return [Fact("instead", s.at(i).start, s.at(after - 1).end, value)], after


def _more_sets(s: Scanner, i: int) -> bool:
    """Whether a number counts further sets."""
    return s.at(i).has("plan", "extra_set") or s.at(i + 1).has("plan", "extra_set") or s.at(i + 1).has("sets", "more")


def _closes(s: Scanner, i: int) -> bool:
    """Whether a clause ends here."""
    item = s.at(i)
    return item.kind in ("nl", "end", "claim") or item.text in (",", ".", ";", "!", "?", ")") or item.has("sep")


def _can_lead(fact: Fact) -> bool:
    """Whether "with" may stand before it: "with 2 reps less", "with 12 instead of 10"; "with 10 extra" is a load."""
    return fact.kind == "instead" or (fact.kind == "delta" and (fact.value[1] == "reps" or fact.value[2] < 0))


def _one_more(s: Scanner, i: int, end: int) -> tuple[list[Fact], int]:
    """ "One more set of 2": a set like the one before, with the reps that stand beside it."""
    told: list[Fact] = [Fact("plan", s.at(i).start, s.at(end - 1).end, "extra_set")]
    of, number = s.at(end), s.at(end + 1)
    reps = number.value if of.has("times", "of") and not of.has("load", "at") and number.kind == "num" else None
    if reps is None or reps != int(reps) or s.unit_at(end + 2) is not None or s.at(end + 2).has("times", "x"):
        return told, end
    return [*told, Fact("rows", number.start, number.end, [Entry(int(reps))], {"reps": True})], end + 2


def _shifted(s: Scanner, i: int) -> tuple[list[Fact], int] | None:
    """ "added 2.5 kg to every set", "plus one rep", "took 2.5 kg off every set": more or less than the plan."""
    item, j = s.at(i), i + 2
    value = s.at(i + 1).value or 0
    unit = s.unit_at(j) if s.unit_at(j) in ("kg", "lb", "sec") else "reps" if s.at(j).has("reps") else None
    surely = item.text in little("went_by") or (item.has("plan", "sure") and value != int(value))  # "added 2.5 to them"
    if unit is None and s.planned and surely and value <= MOST_CHANGE:
        sign = -1 if item.has("plan", "minus") else 1
        return [Fact("delta", item.start, s.at(i + 1).end, (s.kg(value), "load", sign))], j  # "went up 2.5 on the dips"
    if unit is None:
        return None
    j += 1
    away = s.at(j).has("plan", "off")
    j += away
    if not item.has("plan", "sure"):
        # "+20 kg" is a load, "as planned plus 2.5 kg on all" more than the plan; "took 15 kg off" is a counterweight
        of_all = any(s.at(k).has("scope", "all") or s.at(k).has("plan", "every", "all_lifts") for k in range(j, j + 3))
        told = away or unit == "reps" or s.at(i - 1).has("plan", "planned", "done", "same")
        if not of_all or not told or value > MOST_CHANGE:
            return None
    sign = -1 if away or item.has("plan", "minus") else 1
    kind = {"sec": "hold", "reps": "reps"}.get(unit, "load")
    if kind == "load" and value > MOST_CHANGE and (sign > 0 or item.has("plan", "turned_to")):
        return None  # "4x4, added 20 kg", "bajé 20 kilos": to, not by
    amount = s.kg(value, unit) if kind == "load" else value
    return [Fact("delta", item.start, s.at(j - 1).end, (amount, kind, sign))], j


def _which(s: Scanner, i: int) -> tuple[list[Fact], int] | None:
    """ "the last two sets", "third and fourth set", "set 3 and 4", "las tres últimas": which sets are meant."""
    item, j = s.at(i), i + 1
    name = item.name("scope")
    nxt = s.at(j)
    if item.has("plan", "all_lifts") and nxt.has("sets", "sets"):
        return [Fact("scope", item.start, nxt.end, "all", {"text": item.text})], j + 1  # "3/3 both sets"
    many = nxt.spelled and (nxt.value or 0) in range(2, MOST_NAMED + 1) and item.text.split()[-1] not in little("with")
    if name == "all" and many and not any(s.at(j + 1).has(kind) for kind in ("reps", "sets", "unit")):
        return [Fact("scope", item.start, nxt.end, "all", {"text": item.text})], j + 1  # "bei allen vier"
    if name in ("first", "last") and not begins_with(s, i):
        two = nxt.has("plan", "pair")
        n = 2 if two else nxt.value
        whole = item.text.endswith(tuple(little("one_set"))) and not s.at(j + 1).has("sets", "sets")  # "first set five"
        if n is not None and 2 <= n <= MOST_NAMED and n == int(n) and not whole:
            sets = s.at(j + 1).has("sets", "sets")
            the = s.at(i - 1).has("plan", "the") or item.text.split()[0] in little("article")
            led = the and s.at(j + 1).has("load", "at")  # "die ersten 3 mit 22,5"
            alone = item.text.startswith(tuple(little("of_one_set")))  # "im letzten sechs"
            rated = n > 1 and s.at(j + 1).has("effort", "rpe") and not alone  # "last 2 rpe 8"
            if sets or two or (nxt.spelled and not alone) or led or rated or _of_so_many(s, i, j + 1):
                end = j + 1 + sets
                if not s.at(end).has("unit"):
                    return [Fact("scope", item.start, s.at(end - 1).end, (name, int(n)), {"text": item.text})], end
    if (
        name == "rest"
        and nxt.kind == "num"
        and (nxt.value or 0) in range(2, MOST_NAMED + 1)
        and (
            s.at(j + 1).has("plan", "fine", "done", "planned", "same")
            or s.at(j + 1).has("sets", "sets")
            or s.at(i - 1).text in little("load_for")  # "17,5 für die restlichen 4"
        )
    ):
        end = j + 1 + s.at(j + 1).has("sets", "sets")  # "the other 3 fine"
        return [Fact("scope", item.start, s.at(end - 1).end, "rest", {"text": item.text})], end
    led = s.at(i - 1).has("plan", "the") or s.at(i - 1).text in little("article")
    named = item.spelled or (led and nxt.text.endswith(tuple(little("plural"))))  # "las 2 últimas"
    if item.value is not None and 2 <= item.value <= MOST_NAMED and named and nxt.has("scope", "first", "last"):
        end = j + 1 + s.at(j + 1).has("sets", "sets")
        way = nxt.name("scope")
        return [Fact("scope", item.start, s.at(end - 1).end, (way, int(item.value)), {"text": nxt.text})], end
    if name == "first" and nxt.has("sep", "and"):
        name = "1"  # "first and third set with 22.5"
    if name is not None and name.isdigit() and nxt.has("sep", "and"):
        k = j + 1
        while s.at(k).has("plan", "the") or s.at(k).text in little("article") | little("before_number"):
            k += 1
        other = s.at(k).name("scope")
        if other is not None and (other.isdigit() or other == "last") and other != name:
            end = k + 1 + s.at(k + 1).has("sets", "sets")
            which = ("these", (int(name), -1 if other == "last" else int(other)))
            return [Fact("scope", item.start, s.at(end - 1).end, which, {"text": item.text})], end
    if (
        item.has("sets", "sets")
        and s.at(i - 1).value is None
        and nxt.kind == "num"
        and s.at(j + 1).has("sep", "and")
        and s.at(j + 2).kind == "num"
        and 0 < (nxt.value or 0) < (s.at(j + 2).value or 0) <= 20
        and not s.at(j + 3).has("reps")
        and not s.at(j + 3).has("times", "x")
    ):
        which = ("these", (int(nxt.value or 0), int(s.at(j + 2).value or 0)))
        return [Fact("scope", item.start, s.at(j + 2).end, which)], j + 3
    told = _range_of_sets(s, i) or figured_sets(s, i)
    if told is not None:
        return told
    if (
        item.has("sets", "sets")
        and s.at(i - 1).value is None
        and nxt.spelled
        and 1 <= (nxt.value or 0) <= 20
        and not s.at(j + 1).has("reps")
        and not s.at(j + 1).has("sets")
    ):
        return [Fact("scope", item.start, nxt.end, int(nxt.value or 0), {"numbered": True})], j + 1
    return None


def _of_so_many(s: Scanner, i: int, end: int) -> bool:
    """ "22.5 for the first 3, then 20": so many sets, where a clause ends and a value stands before."""
    k = i - 1
    while s.at(k).has("plan", "the") or s.at(k).text in little("article"):
        k -= 1
    told = s.at(k).text in little("load_for") and (s.at(k - 1).value is not None or s.unit_at(k - 1) is not None)
    after = s.at(end)
    return told and (after.kind in ("nl", "claim") or after.text in (",", ".", ";") or after.has("sep"))


def _range_of_sets(s: Scanner, i: int) -> tuple[list[Fact], int] | None:
    """ "Sets 1-3", "set 1 to 3": those sets."""
    first, mark, last = s.at(i + 1), s.at(i + 2), s.at(i + 3)
    if not s.at(i).has("sets", "sets") or s.at(i - 1).value is not None or first.kind != "num" or last.kind != "num":
        return None
    low, high = first.value or 0, last.value or 0
    if not 0 < low < high <= MOST_RANGE or low != int(low) or high != int(high) or s.unit_at(i + 4) is not None:
        return None
    if mark.text not in little("range") or s.at(i + 4).has("reps") or s.at(i + 4).has("times", "x"):
        return None
    which = ("these", tuple(range(int(low), int(high) + 1)))
    return [Fact("scope", s.at(i).start, last.end, which)], i + 4


def _onwards(s: Scanner, i: int) -> tuple[list[Fact], int] | None:
    """ "From the third set on 12.5", "after the second set down to 7.5": that set and those that follow."""
    item = s.at(i)
    ordinal, far = item.name("scope"), i + 1 + (s.at(i + 1).text in little("before_onwards"))
    if ordinal is not None and (ordinal.isdigit() or ordinal == "first") and s.at(far).text in little("and_onwards"):
        begin = int(ordinal) if ordinal.isdigit() else 1
        return [Fact("scope", item.start, s.at(far).end, ("from", begin), {"text": item.text})], far + 1
    later = item.text in little("after_set")
    if not later and item.text not in little("from_set"):
        return None
    j = i + 1
    while j < i + 4 and s.at(j).value is None and s.at(j).name("scope") is None and not s.at(j).has("sets", "sets"):
        if s.at(j).has("scheme", "got"):
            return None  # "after that I did three sets"
        j += 1  # "a partir de la", "from the"
    nth, end = s.at(j).name("scope"), j + 1
    first = int(nth) if nth is not None and nth.isdigit() else None
    if later and nth == "first" and s.at(j).text not in little("at_first"):
        first = 1  # "took 20 after the first set"
    if first is None and s.at(j).has("sets", "sets") and s.at(j + 1).kind == "num":
        first, end = int(s.at(j + 1).value or 0), j + 2
    elif first is None and later and s.at(j).kind == "num" and s.at(j + 1).has("sets", "sets"):
        first, end = int(s.at(j).value or 0), j + 2
    if not first or first > MOST_NAMED or (later and not _changes(s, i, end)):
        return None
    return [Fact("scope", item.start, s.at(end - 1).end, ("from", first + later), {"text": item.text})], end


def _changes(s: Scanner, i: int, end: int) -> bool:
    """Whether a new value is told beside "after the second set", in the same clause: not that something hurt."""
    for step, at in ((-1, i - 1), (1, end)):
        for _ in range(REACH):
            one = s.at(at)
            if one.kind in ("nl", "end") or one.text in (",", ".", ";", "!", "?"):
                break
            if one.kind == "num" and not s.at(at + 1).has("unit", "min") and s.unit_at(at + 1) not in ("sec", "min"):
                return True
            at += step
    return False


def _stopped(s: Scanner, i: int) -> tuple[list[Fact], int] | None:
    """ "stopped after 2", "had to stop after the third set", "nach 2 aufgehört": so many sets were done."""
    item, j = s.at(i), i + 1
    note = {"only": True, "stopped": True}
    if s.at(j).value is None and s.at(j).name("scope") is None and s.at(j + 1).name("scope") is not None:
        j += 1  # an article
    nth = s.at(j).name("scope")
    surely = not item.has("noise") or any(s.at(k).has("plan", "quit") for k in range(j, j + 4))
    if nth is not None and nth.isdigit() and surely:
        return [Fact("count", item.start, s.at(j).end, int(nth), note)], j + 1
    if s.at(j).has("sets") and s.at(j + 1).value is not None:
        return [Fact("count", item.start, s.at(j + 1).end, int(s.at(j + 1).value or 0), note)], j + 2
    value = s.at(j).value
    if value is None or value != int(value):
        return None
    if s.at(j + 1).has("sets"):
        return [Fact("count", item.start, s.at(j + 1).end, int(value), note)], j + 2
    after = s.at(j + 1)
    ends = after.kind in ("nl", "claim") or (after.kind == "sym" and not after.text.isascii())
    ends = ends or after.text in (".", ",", "!", ";", ")") or after.has("plan", "quit")
    if surely and ends and value <= MOST_NAMED:
        return [Fact("count", item.start, s.at(j).end, int(value), {**note, "bare": True})], j + 1
    return None


def _of_reps(s: Scanner, i: int) -> bool:
    """Whether "of 10" stands here, with nothing behind it that makes it a load."""
    of, number = s.at(i), s.at(i + 1)
    return of.has("times", "of") and not of.has("load", "at") and number.kind == "num" and s.unit_at(i + 2) is None


def _lead_in(s: Scanner, k: int) -> int:
    """Where the words end that lead the old value in: "statt mit 22,5", "instead of the 15", "en vez de la de 15"."""
    for end in range(k + 1, k + 1 + LEAD_IN):
        item = s.at(end)
        if item.value is not None and item.kind == "num":
            return end - 1
        if not (item.has("load", "at") or item.has("plan", "the") or item.text in little("article_or_of")):
            break
    return k


def _valued(s: Scanner, i: int, value: float) -> tuple[list[Fact], int] | None:
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
    mark = s.at(j)
    k = j
    if mark.text == "," and s.at(j + 1).has("plan", "instead"):
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
            return _one_more(s, i, j + 1)  # "y una más de diez"
        if unit == "sets":
            one = item.spelled and value == 1
            fewer = mark.has("plan", "less") and value in range(1, MOST_NAMED)
            return ([Fact("count", item.start, s.at(i + 1).end, int(value))], i + 2) if one or fewer else None
        if unit is None and s.unit_at(j + 1) in ("kg", "lb"):
            unit, j = s.unit_at(j + 1), j + 1
        if unit is None and item.spelled and value == 1:
            if s.at(j + 1).has("load", "at", "plus", "sign") and s.at(j + 2).kind == "num":
                return _one_more(s, i, j + 1)  # "one more with 10 kg x 5"
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
    if of and s.at(i + 2).has("plan", "the") and s.at(i + 3).value is not None:
        return [
            Fact("count", item.start, s.at(i + 3).end, int(value), {"of_plan": int(s.at(i + 3).value or 0)})
        ], i + 4 + s.at(i + 4).has("sets")
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
    ):
        whole = int(s.at(i + 2).value or 0)
        return [Fact("count", item.start, s.at(i + 2).end, int(value), {"of_plan": whole})], i + 3 + s.at(i + 3).has(
            "sets"
        )
    if s.at(i + 1).text in little("out_of") and s.at(i + 2).text in little("those"):
        return [Fact("count", item.start, s.at(i + 2).end, int(value), {"those": True})], i + 3
    return None


def _scope_of(item: Item) -> Fact:
    """The set that stands between a value and "instead of": "got 4 on the first set instead of 3"."""
    name = item.name("scope") or ""
    return Fact("scope", item.start, item.end, int(name) if name.isdigit() else name, {"text": item.text})
