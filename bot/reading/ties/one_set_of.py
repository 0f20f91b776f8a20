"""A set told by "one" behind counted ones: "zwei Sätze zu fünf und einer zu vier"."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.facts import Entry, Fact
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.ties.unsure import one_word

MOST_REPS = 30


def one_set_of(_: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The word is the set, and the number behind "zu" or "à" its reps; it is no single."""
    for at in range(1, len(facts) - 2):
        one, of, reps = facts[at : at + 3]
        if not one_word(one) or of.kind != "word" or of.value not in little("reps_each") or reps.kind != "bare":
            continue
        before = next((fact for fact in reversed(facts[:at]) if fact.kind != "sep"), None)
        counted = before is not None and before.kind == "rows" and len(before.value) > 1
        if counted and reps.value == int(reps.value) and 0 < reps.value <= MOST_REPS:
            told = Fact("rows", one.start, reps.end, [Entry(int(reps.value))], {"one": True, "reps": True})
            return [*facts[:at], told, *facts[at + 3 :]]
    return facts
