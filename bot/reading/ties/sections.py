"""The parts of a message that tell of different exercises: what one says of its sets says nothing of another's."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.facts import Fact

WORK = frozenset({"rows", "bare", "count", "loads", "repeat"})
ENDS = (2, 3)  # values of a `sep` that parts two clauses with a "then", or two sentences


def sections(facts: Sequence[Fact]) -> list[list[Fact]]:
    """The facts cut where a sentence, or a "then", has an exercise of its own and its work, behind another."""
    out: list[list[Fact]] = []
    for sentence in _sentences(facts):
        if out and _moves(out[-1]) and _has_own(sentence) and not _moves(out[-1]) & _moves(sentence):
            out.append(sentence)
        elif out:
            out[-1] += sentence
        else:
            out.append(sentence)
    return out


def _sentences(facts: Sequence[Fact]) -> list[list[Fact]]:
    """Each with the mark that ends it; "then" ends one too."""
    out: list[list[Fact]] = [[]]
    for fact in facts:
        out[-1].append(fact)
        if fact.kind == "sep" and fact.value in ENDS:
            out.append([])
    return [sentence for sentence in out if sentence]


def _moves(facts: Sequence[Fact]) -> set[str]:
    return {fact.value.movement for fact in facts if fact.kind == "move"}


def _has_own(facts: Sequence[Fact]) -> bool:
    return bool(_moves(facts)) and any(fact.kind in WORK for fact in facts)
