"""Where a clause and a sentence begin and end among facts.

A `sep` is a mark or a word that parts what stands around it, and its value says how strongly.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Sequence

    from bot.reading.facts import Fact

COMMA, THEN, SENTENCE = 1, 2, 3  # the values of a `sep`


def is_comma(fact: Fact) -> bool:
    """Whether this parts no more than a comma or an "and" does."""
    return fact.kind == "sep" and fact.value == COMMA


def is_then(fact: Fact) -> bool:
    """Whether something new follows in the same sentence."""
    return fact.kind == "sep" and fact.value == THEN


def ends_sentence(fact: Fact) -> bool:
    """Whether a sentence or a line ends here."""
    return fact.kind == "sep" and fact.value == SENTENCE


def is_strong(fact: Fact) -> bool:
    """Whether more than a comma parts what stands around: a "then" or the end of a sentence."""
    return fact.kind == "sep" and fact.value > COMMA


def within_sentence(fact: Fact) -> bool:
    """Whether this parts, and the sentence goes on."""
    return fact.kind == "sep" and fact.value < SENTENCE


def clause_start(facts: Sequence[Fact], at: int) -> int:
    """The place behind the last `sep` before place `at`; 0 where there is none."""
    while at > 0 and facts[at - 1].kind != "sep":
        at -= 1
    return max(at, 0)


def clause_end(facts: Sequence[Fact], at: int = 0) -> int:
    """The place of the first `sep` at place `at` or behind it; the end of the facts where there is none."""
    count = len(facts)
    while at < count and facts[at].kind != "sep":
        at += 1
    return min(at, count)


def sentence_end(facts: Sequence[Fact], at: int = 0) -> int:
    """The place of the first end of a sentence at place `at` or behind it; the end of the facts where there is none."""
    count = len(facts)
    while at < count and not ends_sentence(facts[at]):
        at += 1
    return min(at, count)
