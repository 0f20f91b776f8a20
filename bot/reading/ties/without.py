"""A load put aside by a bare "without": "with a 5 kg vest: 8, 7, 6. Then without: 9", "2 sets with 20, 2 without"."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.facts import Fact
from bot.reading.little import little
from bot.reading.message import Message

WORK = frozenset({"rows", "bare", "count", "plan", "scheme"})


def without(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts, with the word as no load where it names nothing and sets with a load stand before it."""
    loaded = False
    out = list(facts)
    for at, fact in enumerate(facts):
        loaded = loaded or (fact.kind in ("load", "at") and bool(fact.value))
        if not loaded or fact.kind not in ("plan", "word") or fact.end != fact.start + 1:
            continue
        if message.tokens[fact.start].text not in little("without"):
            continue
        after = facts[at + 1] if at + 1 < len(facts) else None
        if after is None or after.kind in ("sep", "bare", "rows", "count"):
            out[at] = Fact("load", fact.start, fact.end, 0.0, {"none": True})
    return out
