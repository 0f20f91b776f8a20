"""A movement with its sets, and one that is only judged, without a comma between: "dips 8,8,7 ring rows as planned"."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.facts import Fact
from bot.reading.message import Message
from bot.reading.plan.ground import plan_names

JUDGED = frozenset({"done", "fine", "planned", "same", "skipped"})


def judged_beside(_: Message, facts: Sequence[Fact]) -> list[Fact]:
    """The sets are the first one's; a comma parts the two, as it would have been written with more care."""
    out: list[Fact] = []
    for at, fact in enumerate(facts):
        before, behind = facts[max(0, at - 2) : at], facts[at + 1 : at + 2]
        told = sorted(one.kind for one in before) == ["move", "rows"]
        judged = bool(behind) and behind[0].kind == "plan" and plan_names(behind[0]) & JUDGED
        if fact.kind == "move" and told and judged:
            out.append(Fact("sep", fact.start, fact.start, 1, {"mark": ","}))
        out.append(fact)
    return out
