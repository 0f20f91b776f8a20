"""One set told twice: "worked up to a single at 45: 5@20, 3@30, 1@45", "… 1 at 30. The last single was a 9"."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from bot.reading.facts import Fact
from bot.reading.message import Message

LEAST_STEPS = 2  # sets on the way up to the one announced
LOADS = frozenset({"load", "at"})
CLOSED = (".", ":", "nl", ";")


def announced(_: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts without the top set announced, where the ladder that leads to it is told right behind."""
    first = next((n for n, fact in enumerate(facts) if _reps(fact)), None)
    if first is None:
        return facts
    end = next((n for n in range(first + 1, len(facts)) if facts[n].kind == "sep"), len(facts))
    told = facts[first:end]
    top = _pairs(told)
    marked = end < len(facts) and facts[end].note.get("mark") in (*CLOSED, ",")
    if len(top) != 1 or not marked:
        return facts
    ladder = _pairs(facts[end:])
    rises = all(one[1] < other[1] for one, other in pairwise(ladder))
    if len(ladder) <= LEAST_STEPS or ladder[-1] != top[0] or not rises:
        return facts
    kept = [fact for fact in told if not _reps(fact) and fact.kind not in LOADS]
    return [*facts[:first], *kept, *facts[end:]]


def _reps(fact: Fact) -> int:
    """The reps of the one set that a fact tells; 0: of none."""
    if fact.kind == "bare":
        return int(fact.value) if fact.value == int(fact.value) else 0
    return int(fact.value[0].reps or 0) if fact.kind == "rows" and len(fact.value) == 1 else 0


def _pairs(facts: Sequence[Fact]) -> list[tuple[int, float]]:
    """Reps and kilograms of the sets told one by one with their loads; none where something else is told of sets."""
    found: list[tuple[int, float]] = []
    reps = 0
    for fact in facts:
        if fact.kind in LOADS and reps and fact.value is not None:
            found.append((reps, round(fact.value[1] if fact.kind == "at" else fact.value, 2)))
            reps = 0
        elif _reps(fact) and "own_load" in fact.note:
            found.append((_reps(fact), round(fact.note["own_load"], 2)))
        elif _reps(fact) and not reps:
            reps = _reps(fact)
        elif fact.kind in ("rows", "bare", "loads", "count", "load"):
            return []
        elif fact.kind == "sep" and fact.note.get("mark") in (".", "nl") and found and not reps:
            break
    return [] if reps else found
