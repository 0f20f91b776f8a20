"""Circuits whose rounds are told once, the reps behind each name: "3 sets each: pull-ups 6, dips 8, leg raises 10"."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.facts import Entry, Fact
from bot.reading.message import Message

LEAST = 2  # movements of a circuit


def reps_of_circuit(_: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts with the number behind each name as its reps, where so many sets or rounds of all are told before."""
    led = [at for at, fact in enumerate(facts) if fact.kind in ("count", "rounds")][:1]
    if not led or any(fact.kind in ("move", "rows", "bare", "load") for fact in facts[: led[0]]):
        return facts
    start = led[0] + 1
    if start < len(facts) and facts[start].note.get("plain") and facts[start].kind == "side":
        start += 1
    colon = start < len(facts) and facts[start].note.get("mark") == ":"
    each = [fact for fact in facts[start + 1 :] if fact.kind in ("move", "bare", "rows", "load", "count")]
    kinds = [fact.kind for fact in each]
    many = len(each) // 2
    if not colon or many < LEAST or kinds != ["move", "bare"] * many:
        return facts
    reps = {id(fact) for fact in each if fact.kind == "bare" and fact.value == int(fact.value)}
    made = [
        Fact("rows", one.start, one.end, [Entry(int(one.value))], {"one": True, "reps": True})
        if id(one) in reps
        else one
        for one in facts
    ]
    return [*made[: led[0] + 1], *made[start:]]
