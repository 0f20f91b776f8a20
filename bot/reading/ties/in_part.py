"""So much of the day's plan, and which of its sets is not said: "did about 80 % of it"."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.facts import Fact
from bot.reading.little import little
from bot.reading.message import Message

WHOLE = 100
WORK = frozenset({"rows", "count", "rounds", "loads"})


def in_part(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts with a share of the plan as the words that it is: "most of it"; all of it says nothing."""
    if not message.context.today or any(fact.kind in WORK for fact in facts):
        return facts
    out: list[Fact] = []
    for fact in facts:
        share = out[-1] if out else None
        sign = fact.kind == "word" and str(fact.value) in little("percent_sign")
        if share is not None and share.kind == "left" and sign:
            name = "most" if share.value < WHOLE else "done"
            out[-1] = Fact("plan", share.start, fact.end, name, {"names": [name]})
            continue
        out.append(fact)
    return out
