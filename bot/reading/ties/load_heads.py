"""A bare number before a colon and a list, "lat pulldown 140: 8, 8, 7": the load of the sets."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.facts import Fact
from bot.reading.message import Message
from bot.reading.plan.ground import plan_names
from bot.reading.ties.values import kgs_of

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
