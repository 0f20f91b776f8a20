"""What "all with 8" is of, where the sets have a load already, or no number of reps."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.facts import Fact
from bot.reading.message import Message

LEAST_RATED, MOST_RATED = 5, 10
MOST_REPS = 12  # of so few more likely are so many reps than kilograms


def all_with(_: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "3x6 +20, all with 8": an effort, or other kilograms; "3 sets, all with 6": so many reps."""
    loaded = counted = rows = False
    out: list[Fact] = []
    for fact in facts:
        before = out[-1] if out else None
        told = before is not None and (before.kind, before.value) == ("scope", "all")
        plain = fact.kind == "load" and fact.note.get("how") == "at" and not fact.note.get("unit")
        if told and plain and fact.value:
            effort = loaded and LEAST_RATED <= fact.value <= MOST_RATED
            reps = counted and not rows and fact.value == int(fact.value) <= MOST_REPS
            if effort or reps:
                out.append(Fact("bare", fact.start, fact.end, float(fact.value), {"kg": fact.value}))
                continue
        loaded = loaded or (fact.kind == "load" and bool(fact.value))
        counted, rows = counted or fact.kind == "count", rows or fact.kind in ("rows", "bare", "loads")
        out.append(fact)
    return out
