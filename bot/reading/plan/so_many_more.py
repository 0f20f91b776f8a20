"""What a value comes to beside the plan, said once more: "3s on both sides, so one more than you wrote"."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.facts import Fact
from bot.reading.fold.rows import Row
from bot.reading.message import Message


def said_once_more(_: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> Sequence[Fact]:
    """The facts without "one more rep" behind reps that are just so many more than planned."""
    planned = {row.reps for row in rows}
    if len({row.movement for row in rows}) != 1 or len(planned) != 1 or None in planned:
        return facts
    out: list[Fact] = []
    for fact in facts:
        told = {entry.reps for one in out if one.kind == "rows" for entry in one.value}
        told |= {one.value for one in out if one.kind == "bare"}
        more = fact.kind == "delta" and fact.value[1] == "reps"
        if more and told == {(reps or 0) + fact.value[0] * fact.value[2] for reps in planned}:
            fact = Fact("plan", fact.start, fact.end, "done", {"names": ["done"]})
        out.append(fact)
    return out
