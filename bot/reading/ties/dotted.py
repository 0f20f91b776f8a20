"""Sets told one a sentence: "chin ups: 8. 8. 7. 6." is a list, and "1. 8 2. 8" numbers its lines."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.facts import Entry, Fact
from bot.reading.message import Message

LEAST = 3  # numbers
MOST_REPS = 60


def dotted(_: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts, with numbers between full stops as the list that they are."""
    out: list[Fact] = []
    at = 0
    while at < len(facts):
        told = _row(facts, at)
        if len(told) < LEAST or told == sorted(set(told)):  # "1. 2. 3."
            out.append(facts[at])
            at += 1
            continue
        end = at + 2 * len(told) - 1
        note = {"list": True, "mark": ",", "values": [float(n) for n in told]}
        out.append(Fact("rows", facts[at].start, facts[end - 1].end, [Entry(n) for n in told], note))
        at = end
    return out


def _row(facts: Sequence[Fact], at: int) -> list[int]:
    """The whole numbers from here on that nothing but full stops part, and that a full stop or the end closes."""
    told: list[int] = []
    before = facts[at - 1] if at else None
    if before is None or (before.kind != "move" and before.note.get("mark") != ":"):
        return told
    while at < len(facts) and facts[at].kind == "bare" and not facts[at].note.get("comma"):
        value = facts[at].value
        if value != int(value) or not 0 < value <= MOST_REPS:
            return []
        told.append(int(value))
        if at + 1 == len(facts):
            return told
        if facts[at + 1].note.get("mark") != ".":
            return told[:-1] if facts[at + 1].kind != "sep" else told
        at += 2
    return told
