"""Sets of one side told in one word, those of the other in a list: "left: 3 3 2, right all 3s"."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.facts import Entry, Fact
from bot.reading.message import Message

SIDES = ("left", "right")


def all_on_a_side(_: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts, with a list as long as the other side's in place of "all 3s"."""
    for at in range(len(facts) - 2):
        side, whole, value = facts[at : at + 3]
        if side.kind != "side" or side.value not in SIDES or (whole.kind, whole.value) != ("scope", "all"):
            continue
        reps = _reps(value)
        other = next((fact for fact in facts if fact.kind == "side" and fact.value in SIDES), side)
        lists = [fact for fact in facts if fact.kind == "rows" and fact.note.get("list")]
        if reps is None or other.value == side.value or len(lists) != 1 or lists[0].start < other.start:
            continue
        if any(entry.reps is None for entry in lists[0].value):
            continue
        note = {"list": True, "mark": " ", "values": [float(reps)] * len(lists[0].value)}
        row = Fact("rows", whole.start, value.end, [Entry(reps) for _ in lists[0].value], note)
        return [*facts[: at + 1], row, *facts[at + 3 :]]
    return facts


def _reps(fact: Fact) -> int | None:
    """The reps that "3", "3s" or "3 reps" tells."""
    if fact.kind == "bare" and fact.value == int(fact.value):
        return int(fact.value)
    if fact.kind == "rows" and len(fact.value) == 1 and fact.note.get("one"):
        held = fact.value[0].hold_s
        return fact.value[0].reps if held is None else int(held) if fact.end - fact.start > 1 else None
    return None
