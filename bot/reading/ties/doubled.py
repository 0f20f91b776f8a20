"""Twice as many as planned: "did double the dips, so 6 sets"; no doubles."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.facts import Fact
from bot.reading.message import Message
from bot.reading.plan.ground import plan_names


def doubled(_: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts without "double" before "the dips"; where no sets are counted, how many there were is asked."""
    out = list(facts)
    for at in range(len(facts) - 2):
        double, the, move = facts[at : at + 3]
        two = double.kind == "rows" and double.note.get("each_of") and double.note.get("word")
        if not two or len(double.value) != 1 or double.value[0].reps != DOUBLE:
            continue
        if plan_names(the) != {"the"} or move.kind != "move" or double.end != the.start:
            continue
        counted = any(fact.kind in ("count", "rows") and fact is not double for fact in facts)
        if counted:
            out[at] = Fact("word", double.start, double.end, None, {"noise": True})
        else:
            out[at] = Fact("ask", double.start, move.end, "sets")
    return out


DOUBLE = 2
