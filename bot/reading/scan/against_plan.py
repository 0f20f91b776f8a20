"""Words about the day's plan, and values told against it."""

from __future__ import annotations

from bot.reading.facts import Fact
from bot.reading.little import little
from bot.reading.scan.in_place import swapped
from bot.reading.scan.plan_values import valued
from bot.reading.scan.scanner import Scanner
from bot.reading.scan.schemes import chain
from bot.reading.scan.shifts import more_sets, one_more, shifted
from bot.reading.scan.stopped import stopped
from bot.reading.scan.which_sets import onwards, which_sets

VERBS = 4  # items between an old value and the verb of the new one
MOST_BACK_OFFS = range(1, 9)
LEFT_OUT = 7  # how far "out" may stand from "left": "left the dips out"


def against_plan(s: Scanner, i: int) -> tuple[list[Fact], int] | None:
    """Words about the day's plan, and values told against it: "50 instead of 45", "2.5 less", "one more rep"."""
    item = s.at(i)
    told = which_sets(s, i) or onwards(s, i)
    if told is not None:
        return told
    if s.planned and item.text in little("not_got_to") and s.at(i - 1).kind == "move" and _closes(s, i + 1):
        return [Fact("plan", item.start, item.end, "skipped", {"names": ["skipped"]})], i + 1
    if s.planned and item.text in little("forgot"):
        j = i + 1
        while s.at(j).has("plan", "the") or s.at(j).text in little("the", "article"):
            j += 1
        numbered = s.at(j).has("sets") and s.at(j + 1).kind == "num"
        if s.at(j).kind == "move" or s.at(j).has("scope") or numbered:  # "forgot the last dip set", "forgot set 3"
            return [Fact("plan", item.start, item.end, "skipped", {"names": ["skipped"]})], i + 1
    if item.has("plan", "spot_on"):
        if s.planned and i and _closes(s, i + 1):  # "pull-ups bang on", and not "dead on my feet", "a sore spot on …"
            return [Fact("plan", item.start, item.end, "planned", {"names": ["planned"]})], i + 1
        return [Fact("word", item.start, item.end, item.text)], i + 1
    back_offs = _so_many_back_offs(s, i)
    if back_offs is not None:
        return back_offs
    first = i + 1 if item.has("load", "at") and s.at(i + 1).value is not None else i
    value = s.at(first).value
    if value is not None:
        told = valued(s, first, value)
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
            return _meant(s, i, row)
    the = s.at(i + 1).has("plan", "the") or s.at(i + 1).text in little("the")
    if item.has("plan", "instead") and the and s.at(i + 2).value is not None:
        row = chain(s, i + 2)
        if row is not None and not item.has("fail"):
            return _meant(s, i, row)
    if item.has("plan", "swap"):
        return swapped(s, i)
    if item.has("plan", "more_reps", "less_reps"):
        sign = 1 if item.has("plan", "more_reps") else -1
        return [Fact("delta", item.start, item.end, (1.0, "reps", sign))], i + 1
    if item.has("plan", "extra_set"):
        return one_more(s, i, i + 1)
    if s.planned and item.value == 1 and s.at(i + 1).has("plan", "extra_set"):
        return one_more(s, i + 1, i + 2)  # "1 serie extra"
    if item.has("side", "left") and item.text in little("left"):
        out = next((j for j in range(i + 2, i + LEFT_OUT) if s.at(j).has("plan", "out")), None)
        if out is not None and all(s.at(j).value is None and s.at(j).kind != "sym" for j in range(i + 1, out)):
            return [Fact("plan", item.start, item.end, "skipped", {"names": ["skipped"]})], i + 1
        the = s.at(i + 1).has("plan", "the") or s.at(i + 1).text in little("mine")
        if (
            s.planned
            and the
            and s.at(i + 2).kind == "move"
            and (_closes(s, i + 3) or s.at(i + 3).text in little("left_for"))
        ):
            return [Fact("plan", item.start, item.end, "skipped", {"names": ["skipped"]})], i + 1  # "left the dips"
    if item.text == "+" and s.at(i + 1).value is not None and more_sets(s, i + 1):
        return [Fact("sep", item.start, item.end, 1, {"mark": "and"})], i + 1  # "did everything + 1 extra set"
    if (item.has("plan", "by") or item.text in ("+", "-")) and s.at(i + 1).value is not None:
        told = shifted(s, i)
        if told is not None:
            return told
    return stopped(s, i) if item.has("plan", "stopped", "reached") else None


def _so_many_back_offs(s: Scanner, i: int) -> tuple[list[Fact], int] | None:
    """ "Top set done, two back-offs": how many of the planned back-offs, and nothing of their reps or loads."""
    item = s.at(i)
    named = s.at(i + 1).has("scope", "back") or s.at(i + 1).text in little("back_off_sets")
    if not s.planned or not named or item.value is None or item.value not in MOST_BACK_OFFS:
        return None
    end = i + 2 + s.at(i + 2).has("sets", "sets")
    after = s.at(end)
    if not (_closes(s, end) or after.has("plan", "only", "done", "skipped", "planned")):
        row = chain(s, i)
        if row is None and s.at(i + 1).has("scope", "back") and after.has("load", "at", "plus"):
            return [Fact("count", item.start, item.end, int(item.value), {"back_offs": True})], i + 1  # "2 at 25"
        if row is None or row[0][0].kind != "rows":
            return None
        return [Fact("scope", item.start, item.start, "back", {"text": ""}), *row[0]], row[1]  # "2 back-offs of 5"
    return [Fact("count", item.start, s.at(end - 1).end, int(item.value), {"back_offs": True})], end


def _old_first(s: Scanner, i: int) -> tuple[list[Fact], int] | None:
    """ "Instead of 20 I used 22.5", "en lugar de 5 hice 4 series": the old value told before the new one."""
    j = i + 2
    old_unit = s.unit_at(j) if s.unit_at(j) in ("kg", "lb", "sec") else "reps" if s.at(j).has("reps") else None
    j += old_unit is not None
    told = [
        at for at in range(j, j + VERBS) if s.at(at).has("scheme", "got") or s.at(at).has("plan", "took", "turned_to")
    ]
    if told and any(s.at(at).has("side") for at in range(j, told[0])):
        return None  # "instead of five, left leg stayed at five"
    if not told or s.at(told[0] + 1).kind != "num" or s.at(told[0] + 2).has("times", "x"):
        return None
    new, after = s.at(told[0] + 1), told[0] + 2
    if s.at(after).has("sets", "sets"):
        return [Fact("word", s.at(i).start, s.at(told[0]).end, None, {"noise": True})], told[0] + 1
    unit = s.unit_at(after) if s.unit_at(after) in ("kg", "lb", "sec") else "reps" if s.at(after).has("reps") else None
    after += unit is not None
    value = (new.value, s.at(i + 1).value, unit or old_unit)
    return [Fact("instead", s.at(i).start, s.at(after - 1).end, value)], after


def _meant(s: Scanner, i: int, row: tuple[list[Fact], int]) -> tuple[list[Fact], int]:
    """ "Instead of 5x3": no sets of anybody's; what they were is kept for those that were done."""
    meant = row[0][0].value if row[0][0].kind == "rows" else None
    return [Fact("word", s.at(i).start, s.at(row[1] - 1).end, None, {"noise": True, "meant": meant})], row[1]


def _closes(s: Scanner, i: int) -> bool:
    """Whether a clause ends here."""
    item = s.at(i)
    return item.kind in ("nl", "end", "claim") or item.text in (",", ".", ";", "!", "?", ")") or item.has("sep")


def _can_lead(fact: Fact) -> bool:
    """Whether "with" may stand before it: "with 2 reps less", "with 12 instead of 10"; "with 10 extra" is a load."""
    return fact.kind == "instead" or (fact.kind == "delta" and (fact.value[1] == "reps" or fact.value[2] < 0))
