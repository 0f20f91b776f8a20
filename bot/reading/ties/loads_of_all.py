"""Loads set by set, and the reps of all sets told apart: "7 reps on all. Weights: 20, 20, 15 kg"."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from bot.reading.facts import Entry, Fact
from bot.reading.message import Message

LEAST_SETS = 2


def loads_of_all(_message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts, with as many sets as loads in place of both, where nothing else is told of their reps."""
    loads = [at for at, fact in enumerate(facts) if fact.kind == "loads"]
    told = [at for at, fact in enumerate(facts) if fact.kind in ("rows", "bare", "count", "load")]
    if len(loads) != 1 or len(told) != 1 or len(facts[loads[0]].value) < LEAST_SETS:
        return facts
    reps = _reps(facts[told[0]])
    beside = {id(one) for pair in pairwise(_spoken(facts)) for one in pair if facts[told[0]] in pair}
    all_of_them = any(fact.kind == "scope" and fact.value == "all" and id(fact) in beside for fact in facts)
    if not reps or not all_of_them or any(fact.kind == "move" for fact in _between(facts, loads[0], told[0])):
        return facts
    entries = [Entry(reps, load_kg=kg) for kg in facts[loads[0]].value]
    made = Fact("rows", facts[loads[0]].start, facts[loads[0]].end, entries, {"list": True})
    whole = {id(fact) for fact in facts if fact.kind == "scope" and id(fact) in beside}
    return [
        made if at == loads[0] else fact for at, fact in enumerate(facts) if at != told[0] and id(fact) not in whole
    ]


def _reps(fact: Fact) -> int:
    """How many reps each set had; 0: the fact tells no reps of one set."""
    if fact.kind == "rows" and len(fact.value) == 1 and fact.note.get("reps") and fact.value[0].reps:
        return int(fact.value[0].reps)
    return int(fact.value) if fact.kind == "bare" and fact.value == int(fact.value) and fact.value > 0 else 0


def _spoken(facts: Sequence[Fact]) -> list[Fact]:
    return [fact for fact in facts if fact.kind != "word"]


def _between(facts: Sequence[Fact], one: int, other: int) -> Sequence[Fact]:
    return facts[min(one, other) : max(one, other)]
