"""The parts of a message that tell of different exercises: what one says of its sets says nothing of another's."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.facts import Fact

WORK = frozenset({"rows", "bare", "count", "loads", "repeat"})
ENDS = (2, 3)  # values of a `sep` that parts two clauses with a "then", or two sentences


def sections(facts: Sequence[Fact]) -> list[list[Fact]]:
    """The facts cut where a sentence, or a "then", has an exercise of its own and its work, behind another."""
    out: list[list[Fact]] = []
    named: set[str] = set()  # the exercises of the last one
    for sentence in _sentences(facts):
        own = _moves(sentence)
        if not out or (named and own and named.isdisjoint(own) and any(fact.kind in WORK for fact in sentence)):
            out.append(sentence)
            named = own
        else:
            out[-1] += sentence
            named |= own
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
