"""What was done in place of what was planned: "5 singles instead of the triples", "12s on every set instead of 10"."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.facts import Fact
from bot.reading.fold.rows import Row
from bot.reading.message import Message
from bot.reading.plan.ground import plan_names

VALUES = ("bare", "rows", "load")


def parted_instead(_message: Message, facts: Sequence[Fact], _rows: Sequence[Row]) -> list[Fact]:
    """ "12s on every set instead of 10", "8 kg help, not 10": what it is of stands between new and old."""
    out: list[Fact] = []
    for fact in facts:
        last = [one for one in out[-4:] if one.note.get("mark") != ","][-3:]
        beside = last[-2:]
        load = beside[0] if len(beside) == 2 and beside[1] is out[-1] else fact
        if load.kind == "load" and load.value and fact.kind == "bare" and plan_names(beside[1]) & {"instead"}:
            out[-2:] = [Fact("instead", load.start, fact.end, (load.value, fact.note.get("kg", fact.value), "kg"))]
            continue  # "back-offs with 20 instead of 22.5"
        parted = len(last) == 3 and _of_sets(last[1]) and last[0].kind in VALUES
        if fact.kind == "bare" and parted and "instead" in plan_names(last[2]):
            new = _value(last[0])
            if new is not None:
                value, unit = new
                told = Fact("instead", last[0].start, fact.end, (value, fact.value, unit))
                out = [one for one in out if all(one is not old for old in last)]
                out += [told, *(last[1:2] if last[1].kind != "assist" else ())]
                continue
        out.append(fact)
    return out


def rest_instead(message: Message, facts: Sequence[Fact], _rows: Sequence[Row]) -> list[Fact]:
    """ "Rested 5 min instead of 3": minutes of rest have no field, neither have those planned."""
    out: list[Fact] = []
    for fact in facts:
        last = out[-2:]
        led = len(last) == 2 and "instead" in plan_names(last[1]) and bool(last[0].note.get("noise"))
        if led and fact.kind == "bare":
            units = {h.name for at in range(last[0].start, last[0].end) for h in message.beginning("grammar")[at]}
            if units & {"min", "sec"}:
                out.pop()
                continue
        out.append(fact)
    return out


def _of_sets(fact: Fact) -> bool:
    """Whether a fact says of which sets, "on the last", "pro Satz", "each", or that a load helped."""
    return fact.kind in ("scope", "side", "assist") or bool(plan_names(fact) & {"every"})


def _value(fact: Fact) -> tuple[float, str | None] | None:
    """The one number of a fact and its unit."""
    if fact.kind != "rows":
        return (fact.value, "kg" if fact.kind == "load" else None) if fact.value else None
    if len(fact.value) != 1 or not (fact.note.get("one") or fact.note.get("unit")):
        return None
    entry = fact.value[0]
    if entry.hold_s is not None:
        return entry.hold_s, "sec"
    return (float(entry.reps), "reps") if entry.reps else None


def in_place_of(_message: Message, facts: Sequence[Fact], _rows: Sequence[Row]) -> list[Fact]:
    """ "5 singles instead of the triples": what stands behind is what was planned."""
    out: list[Fact] = []
    before: Fact | None = None
    told: int | None = None
    for fact in facts:
        if fact.kind == "rows" and told is not None and before is not None and plan_names(before) & {"instead"}:
            new, old = out[told].value[0].reps, fact.value[0].reps
            each = out[told].note.get("each_of") and fact.note.get("each_of") and len(out[told].value) == 1
            if each and new and old:
                out[told] = Fact("instead", out[told].start, fact.end, (float(new), float(old), "reps"))
                told = None  # what comes next is told anew
            continue  # "doubles instead of triples" changes each set
        out.append(fact)
        told = len(out) - 1 if told is None and fact.kind == "rows" else told
        before = fact if fact.kind != "word" and not plan_names(fact) & {"the"} else before
    return out
