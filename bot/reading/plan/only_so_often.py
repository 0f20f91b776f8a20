"""How often a planned lift was done: "front lever only 4 times" of five planned holds."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.bounds import clause_end, clause_start
from bot.reading.facts import Fact
from bot.reading.fold.rows import Row
from bot.reading.message import Message
from bot.reading.plan.ground import members, plan_names

WORK = frozenset({"rows", "bare", "count", "scope", "loads"})


def only_so_often(_message: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> list[Fact]:
    """The facts, with so many sets in place of "only so often"; of a lift told in reps, sets or reps are asked."""
    out: list[Fact] = []
    for at, fact in enumerate(facts):
        low = clause_start(facts, at)
        high = clause_end(facts, at)
        told = fact.kind == "repeat" and at > low and "only" in plan_names(facts[at - 1])
        moves = [one.value for one in facts[low:high] if one.kind == "move"] if told else []
        if len(moves) == 1 and not any(one.kind in WORK for one in facts[low:high]):
            own = [row for row in rows if row.movement in members(moves[0])]
            sets = len(own) // (2 if own and own[0].side is not None else 1)
            if fact.value < sets:
                held = all(row.hold_s is not None for row in own)
                out.append(
                    Fact("count", fact.start, fact.end, int(fact.value), {"of_plan": sets})
                    if held
                    else Fact("ask", fact.start, fact.end, "sets")
                )
                continue
        out.append(fact)
    return out
