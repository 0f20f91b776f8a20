"""Words behind a place of the body are of it: "5x3 at 20 - elbows fine" says nothing of the sets."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.facts import Fact
from bot.reading.message import Message


def of_the_body(_: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts without a "fine" right behind a pain."""
    out: list[Fact] = []
    for fact in facts:
        before = out[-1] if out else None
        pain = before is not None and before.kind == "claim" and getattr(before.value, "kind", "") == "pain"
        if pain and fact.kind == "plan" and fact.note.get("names") == ["fine"]:
            fact = Fact("word", fact.start, fact.end, None, {"noise": True})
        out.append(fact)
    return out
