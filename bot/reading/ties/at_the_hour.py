"""The hour of a session: "done yesterday evening at 9, forgot to write" rates nothing and weighs nothing."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.facts import Fact
from bot.reading.little import little
from bot.reading.message import Message

HOURS = 24
MORNING = 12  # its last hour
WORK = frozenset({"rows", "bare", "count", "loads", "load"})


def at_the_hour(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts, where "at 9" right behind an evening is the hour; behind a day too, where no sets are told
    or their load is.
    """
    out = list(facts)
    for at, fact in enumerate(facts):
        if fact.kind not in ("at", "load") or fact.note.get("unit") or fact.note.get("how") == "plus":
            continue
        value = fact.value[0] if fact.kind == "at" else fact.value
        word = message.tokens[fact.start].text
        if value is None or word not in little("at") or value != int(value) or not 0 < value <= HOURS or not fact.start:
            continue
        part = message.tokens[fact.start - 1].text
        of_day = part in little("part_of_day") and (value <= MORNING or part not in little("weighing_day"))
        before = facts[at - 1] if at else None
        dated = before is not None and before.kind == "claim" and getattr(before.value, "kind", "") == "day"
        told = {one.kind for one in facts if one is not fact} & WORK
        alone = dated and value <= MORNING and (not told or "load" in told)
        if of_day or alone:
            out[at] = Fact("word", fact.start, fact.end, None, {"noise": True})
    return out
