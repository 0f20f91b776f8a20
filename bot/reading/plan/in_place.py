"""What was done in place of what was planned: "5 singles instead of the triples", "12s on every set instead of 10"."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.facts import Entry, Fact
from bot.reading.fold.rows import Row
from bot.reading.message import Message
from bot.reading.plan.ground import plan_names

VALUES = ("bare", "rows", "load")
CLOSE = 0.05  # kg
BETWEEN = 9  # facts from a load to the old one: "the 15 kg plate on the pull-ups instead of the 20"


def parted_instead(_message: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> list[Fact]:
    """ "12s on every set instead of 10", "8 kg help, not 10": what it is of stands between new and old."""
    out: list[Fact] = []
    for fact in facts:
        last = [one for one in out[-4:] if one.note.get("mark") != ","][-3:]
        load = _load_before_instead(out, fact, rows) if fact.kind == "bare" else None
        if load is not None:
            kept = [one for one in out if one is not load and not (one.start > load.start and _turns(one))]
            new, was = (one.note.get("kg", one.value) for one in (load, fact))
            told = Fact("instead", load.start, fact.end, (new, was, "kg"))
            out = [*kept, told]
            continue  # "back-offs with 20 instead of 22.5", "the 15 kg plate on the dips instead of the 20"
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


def old_first(_message: Message, facts: Sequence[Fact], _rows: Sequence[Row]) -> list[Fact]:
    """ "Statt 22,5 nur 20 draufgehabt", "instead of five only four reps": the new value behind the old one."""
    out: list[Fact] = []
    led: int | None = None  # where "instead" stands
    old: Fact | None = None
    often: Fact | None = None  # "instead of six I did four times five"
    for fact in facts:
        one = fact.kind in ("bare", "load") and bool(fact.value)
        one = one or (fact.kind == "rows" and len(fact.value) == 1 and bool(fact.note.keys() & {"reps", "the"}))
        if _only_instead(fact) and not plan_names(fact) & {"not_this"}:
            led, old, often = len(out), None, None
        elif led is not None and old is None and (one or fact.kind == "count"):
            old = fact
        elif led is not None and old is not None and old.kind == "count" and fact.kind in ("rows", "count"):
            out[led:] = [Fact("word", out[led].start, old.end, None, {"noise": True}), fact]
            led = None  # "instead of the planned four sets I did three of four"
            continue
        elif led is not None and old is not None and fact.kind == "count" and often is None:
            often = fact
        elif led is not None and old is not None and old.kind != "count" and one:
            unit = "kg" if "load" in (old.kind, fact.kind) else "reps" if fact.note.get("reps") else None
            if often is not None and unit != "kg":
                entries = [Entry(int(_figure(fact, unit))) for _ in range(int(often.value))]
                out[led:] = [Fact("rows", often.start, fact.end, entries, {"plain": True})]
            else:
                value = (_figure(fact, unit), _figure(old, unit), unit)
                out[led:] = [Fact("instead", out[led].start, fact.end, value)]
            led = None
            continue
        elif not _between(fact):
            led = None
        out.append(fact)
    return out


def _between(fact: Fact) -> bool:
    """Whether this may stand between the old value and the new one: "statt 22,5 hab ich nur …"."""
    if fact.kind == "scheme":
        return bool(fact.value == "got") and not plan_names(fact)
    return fact.kind == "word" or (fact.kind == "plan" and plan_names(fact) <= {"the", "only"})


def ended_as(_message: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> list[Fact]:
    """ "The last triple turned into a double": the old reps ahead, those that were done behind."""
    out: list[Fact] = []
    for fact in facts:
        was, turn = out[-2:] if len(out) > 1 else (None, None)
        if was is not None and turn is not None and "became" in plan_names(turn) and _a_set(was):
            planned = any(row.reps == was.value[0].reps for row in rows)
            done = fact.value[0].reps if _a_set(fact) else fact.value if fact.kind == "bare" else None
            if planned and done:
                value = (float(done), float(was.value[0].reps), "reps")
                out[-2:] = [Fact("instead", was.start, fact.end, value)]
                continue
        out.append(fact)
    return out


def _a_set(fact: Fact) -> bool:
    """Whether a fact is one set told by its reps alone: "triple", "a double", "6 reps"."""
    return fact.kind == "rows" and len(fact.value) == 1 and bool(fact.value[0].reps)


def _figure(fact: Fact, unit: str | None) -> float:
    if fact.kind == "rows":
        return float(fact.value[0].reps)
    return float(fact.note.get("kg", fact.value) if unit == "kg" else fact.value)


def _only_instead(fact: Fact) -> bool:
    return fact.kind == "plan" and bool(plan_names(fact) & {"instead"})


def _turns(fact: Fact) -> bool:
    return _only_instead(fact) or plan_names(fact) == {"skipped"}


def _load_before_instead(facts: Sequence[Fact], old: Fact, rows: Sequence[Row]) -> Fact | None:
    """The load that "instead of" right before is said of: what it hung on, and of what lift, may stand between."""
    near = list(facts[-BETWEEN:])
    while near and (near[-1].kind == "word" or plan_names(near[-1]) == {"the"}):
        near.pop()  # "instead of the", "statt der"
    turn = near.pop() if near else None
    denied = turn is not None and plan_names(turn) == {"skipped"}  # "25 for the pull-ups, not the 20"
    if turn is None or not (denied or _only_instead(turn)):
        return None
    if near and near[-1].kind == "sep" and near[-1].note.get("mark") == ",":
        near.pop()
    while near and (near[-1].kind in ("word", "move") or plan_names(near[-1]) in ({"the"}, {"took"})):
        near.pop()
    if not near or near[-1].kind not in ("load", "bare") or not near[-1].value:
        return None
    kg = old.note.get("kg", old.value)
    planned = any(abs((row.load_kg or row.assist_kg or 0.0) - kg) < CLOSE for row in rows) and all(
        row.reps != old.value for row in rows
    )
    return near[-1] if planned or (near[-1].kind == "load" and not denied) else None  # "22.5 for pull-ups, not 20"


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
