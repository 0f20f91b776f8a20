"""The whole way beside a part of it: "2x1 lower half, 1x1 full", "3 negatives, then 1 full rep"."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.facts import Fact
from bot.reading.little import little
from bot.reading.message import Message

PARTS = frozenset({"lower_half", "upper_half", "half", "eccentric"})
WORK = frozenset({"rows", "bare", "side"})


def full_range(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts with "full" beside sets as a flag of its own, where other sets went a part of the way, or only down."""
    if not any(fact.kind == "flag" and fact.value in PARTS for fact in facts):
        return facts
    out: list[Fact] = []
    for at, fact in enumerate(facts):
        before = next((one for one in reversed(facts[max(0, at - 2) : at]) if one.value != "the"), None)
        after = _beside(facts, at + 1)
        named = fact.kind in ("word", "plan") and message.tokens[fact.start].text in little("full_way")
        named = named and fact.end == fact.start + 1
        behind = before is not None and before.kind in WORK and (after is None or after.kind in ("sep", "side"))
        if named and (behind or (after is not None and after.kind in WORK)):
            out.append(Fact("flag", fact.start, fact.end, "full"))
            continue
        if out and out[-1].kind == "flag" and out[-1].value == "full" and _names_range(fact):
            continue
        out.append(fact)
    return out


def _beside(facts: Sequence[Fact], at: int) -> Fact | None:
    """The fact at a place, "range" or "reps" behind "full" passed over."""
    while at < len(facts) and _names_range(facts[at]):
        at += 1
    return facts[at] if at < len(facts) else None


def _names_range(fact: Fact) -> bool:
    return fact.kind == "word" and fact.value in little("of_the_way")
