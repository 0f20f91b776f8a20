"""A load and the miss told of it, joined by little words: "then 37.5 kg and it didn't go"."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.bounds import SENTENCE
from bot.reading.facts import Fact
from bot.reading.little import little

NEAR = 4  # facts from a load to the miss that is told of it
JOINS = frozenset({"and", "but", ","})


def miss_behind(facts: Sequence[Fact], at: int) -> Fact | None:
    """The miss told from this place on: "… failed", "… and it did not go"."""
    fact = facts[at] if at < len(facts) else None
    if fact is None or fact.kind == "fail":
        return fact
    joined = fact.kind == "sep" and fact.note.get("mark") in JOINS
    said = (one for one in facts[at + 1 : at + NEAR] if one.kind != "word" or str(one.value) not in little("it_alone"))
    missed = next(said, None) if joined else None
    told = missed is not None and missed.kind == "fail" and missed.value is None
    return missed if told and missed is not None and not missed.note.get("weak") else None


def load_missed(before: Sequence[Fact]) -> Fact | None:
    """The load told right before a miss, of the facts before that: "with 45 failed", "then 37.5 kg and it"."""
    at = len(before) - 1
    while at > 0 and before[at].kind in ("sep", "word") and before[at].value != SENTENCE:
        if before[at].kind == "word" and str(before[at].value) not in little("it_alone"):
            return None
        at -= 1
    led = before[at] if at >= 0 and before[at].kind == "load" and before[at].value else None
    if led is None or at == len(before) - 1:
        return led
    begun = at > 0 and before[at - 1].kind == "sep" and before[at - 1].note.get("mark") != "("
    return led if begun else None
