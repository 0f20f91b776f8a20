"""Seconds of the other side told without their unit: "left died at 22 s, right went to 30" is no load of 30."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.facts import Entry, Fact
from bot.reading.message import Message

SIDES = ("left", "right")


def held_by_side(_: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts, with a number that a side "went to" as seconds, where the other side has some and no load is told."""
    if any(fact.kind in ("load", "loads", "at") and not fact.note.get("turned") for fact in facts):
        return facts
    out = list(facts)
    for at in range(1, len(facts)):
        side, load = facts[at - 1 : at + 1]
        turned = load.kind == "load" and load.note.get("turned") and not load.note.get("unit")
        if not turned or side.kind != "side" or side.value not in SIDES or side.end != load.start:
            continue
        held = [one for one in facts[: at - 1] if one.kind == "rows" and one.note.get("unit") == "sec"]
        others = [one for one in facts[: at - 1] if one.kind == "side" and one.value in SIDES]
        if held and others and others[-1].value != side.value:
            rows = [Entry(hold_s=float(load.value))]
            out[at] = Fact("rows", load.start, load.end, rows, {"one": True, "unit": "sec"})
    return out
