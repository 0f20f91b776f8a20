""" "3x5 instead of 5x3", "5x3 at 20 was planned, not 3x5 at 15": what was done is told against what was meant."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from bot.reading.bounds import ends_sentence
from bot.reading.facts import Entry, Fact
from bot.reading.message import Message


def meant_otherwise(_: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts, with the sets done sure to be told as they were, and without the load of those that were meant."""
    if not any("meant" in fact.note for fact in facts):
        return facts
    out = list(facts)
    for at, fact in enumerate(facts):
        meant = fact.note.get("meant") if fact.kind == "word" else None
        if not meant:
            continue
        low, high = _sentence(facts, at)
        for n in range(low, high):
            if facts[n].kind == "rows" and _turned(facts[n].value, meant):
                out[n] = replace(facts[n], note={**facts[n].note, "as_told": True})
        behind = facts[at + 1] if at + 1 < high else None
        if behind is not None and behind.kind in ("load", "at") and _loaded(facts[low:at]):
            out[at + 1] = Fact("word", behind.start, behind.end, None, {"noise": True})
    return out


def _sentence(facts: Sequence[Fact], at: int) -> tuple[int, int]:
    """The bounds of the sentence around a fact."""
    ends = [n for n, fact in enumerate(facts) if ends_sentence(fact)]
    return max((n + 1 for n in ends if n < at), default=0), min((n for n in ends if n > at), default=len(facts))


def _turned(done: Sequence[Entry], meant: Sequence[Entry]) -> bool:
    """Whether one is the other with sets and reps exchanged."""
    return done[0].reps == len(meant) and meant[0].reps == len(done)


def _loaded(facts: Sequence[Fact]) -> bool:
    """Whether the sets told have a load of their own: "3x5 at 15"."""
    rows = next((n for n, fact in enumerate(facts) if fact.kind == "rows"), len(facts))
    return any(fact.kind in ("load", "at", "bare") for fact in facts[rows + 1 :])
