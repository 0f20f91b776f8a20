"""A number of sets in front of the sets themselves: "2 sets: 12 (RPE 7), 12 (RPE 8)"."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.facts import Fact
from bot.reading.message import Message

LEAST = 2


def told_one_by_one(_: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts without such a number, where as many sets follow, each with what is said of it."""
    for at in range(len(facts) - 1):
        count, mark = facts[at : at + 2]
        if count.kind != "count" or mark.note.get("mark") != ":" or count.value < LEAST:
            continue
        end = next((n for n in range(at + 2, len(facts)) if _closes(facts[n])), len(facts))
        parts = _parts(facts[at + 2 : end])
        if len(parts) == count.value and all(map(_one_set, parts)):
            return [*facts[:at], *facts[at + 2 :]]
    return facts


def _closes(fact: Fact) -> bool:
    return fact.kind == "move" or (fact.kind == "sep" and fact.value == 3)


def _parts(facts: Sequence[Fact]) -> list[list[Fact]]:
    """The facts between commas, those in brackets with what stands before them."""
    parts: list[list[Fact]] = [[]]
    for fact in facts:
        if fact.kind == "sep" and (fact.value == 2 or fact.note.get("mark") in (",", "and")):
            parts.append([])
        else:
            parts[-1].append(fact)
    return [part for part in parts if part]


def _one_set(part: Sequence[Fact]) -> bool:
    """Whether a part is one number of reps with an effort."""
    kinds = [fact.kind for fact in part if fact.kind not in ("word", "sep")]
    return kinds in (["bare", "effort"], ["bare", "effort", "effort"])
