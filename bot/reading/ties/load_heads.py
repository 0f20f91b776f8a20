"""A bare number before a colon and a list, "lat pulldown 140: 8, 8, 7": the load of the sets."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from bot.reading.bounds import THEN
from bot.reading.facts import Fact
from bot.reading.message import Message
from bot.reading.plan.ground import plan_names
from bot.reading.ties.values import kgs_of

MOST_EFFORT = 10  # "+20: 6 @7, 6 @8" has efforts
LEAST_LOAD = 10  # as said; a lower number counts sets


def load_heads(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts, with such a number as a load; where it is the sum of the list too, it is asked.

    What is told to be the sum ("25 reps: 5, 5, 5, 5, 5") says nothing new.
    """
    out = list(facts)
    for at in range(len(facts) - 2):
        number, mark, rows = facts[at : at + 3]
        total = at > 0 and facts[at - 1].value == "total"
        summed = number.kind in ("bare", "rows") and (total or number.note.get("reps"))
        if mark.note.get("mark") == ":" and rows.kind == "rows" and summed:
            out[at] = _no_total(number, rows)
            continue
        heads = number.kind == "bare" and not number.note.get("spelled") and mark.note.get("mark") == ":"
        if not heads or rows.kind != "rows" or not rows.note.get("list") or "own_load" in rows.note:
            continue
        reps = [entry.reps for entry in rows.value if entry.reps is not None]
        if len(reps) != len(rows.value) or number.value <= max(reps) or number.value < LEAST_LOAD:
            continue
        used = at > 0 and bool(plan_names(facts[at - 1]) & {"took"})
        if number.value == sum(reps) and not used:
            out[at] = Fact("ask", number.start, number.end, "load_kg")
            continue
        out[at] = Fact("load", number.start, number.end, kgs_of(message, number)[0], {"how": "at"})
    return out


def _no_total(number: Fact, rows: Fact) -> Fact:
    """A number told of reps as it was, or without its meaning where it is no more than their sum."""
    said = number.value if number.kind == "bare" else number.value[0].reps if len(number.value) == 1 else None
    alike = said == sum(entry.reps or 0 for entry in rows.value) and len(rows.value) > 1
    return Fact("word", number.start, number.end, None, {"noise": True}) if alike else number


def titled_load(_: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "Worked up to 50: 5 at 20, 3 at 30, 1 at 50": a title, as each set that follows has its own load."""
    for at in range(len(facts) - 5):
        title = facts[at]
        if title.kind in ("rows", "bare", "count"):
            return facts  # no title stands behind sets
        if title.kind != "load" or not title.value:
            continue
        mark = at + 1
        while mark < len(facts) and facts[mark].kind in ("word", "move"):
            mark += 1
        if mark == len(facts) or facts[mark].kind != "sep" or facts[mark].value == THEN:
            continue
        pairs = [one for one in facts[mark + 1 : mark + 6] if one.kind != "sep"][:4]
        own = [_kg(one) for one in pairs[1::2]] if [one.kind for one in pairs[::2]] == ["bare", "bare"] else []
        low, high = (own[0], own[1]) if len(own) == 2 else (None, None)
        if low is None or high is None:
            continue
        if not title.note.get("turned") and not (high > MOST_EFFORT and low < high <= title.value):
            continue
        out = [*facts[:at], *facts[at + 1 :]]
        if pairs[1].kind == "at":
            first = next(n for n, one in enumerate(out) if one is pairs[1])
            out[first] = replace(pairs[1], kind="load", value=low, note={"how": "at"})
        return out
    return facts


def _kg(fact: Fact) -> float | None:
    """The kilograms of "at 20"; "at 10" may be them too where heavier ones follow."""
    if fact.kind == "load" and fact.value:
        return float(fact.value)
    return float(fact.value[1]) if fact.kind == "at" and not fact.note.get("range") else None
