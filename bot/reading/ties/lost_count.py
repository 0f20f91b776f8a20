"""Where the count was lost is no set: "18 or maybe 20, lost count around 15"; told alone, the reps are asked."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.facts import Entry, Fact
from bot.reading.little import little
from bot.reading.message import Message

NEAR = 2  # words between the two


def lost_count(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts without the number at which the count was lost."""
    out = list(facts)
    for at, fact in enumerate(facts):
        if fact.kind != "vague" or not _lost(message, fact):
            continue
        place = _place(facts, at)
        if place is None:
            continue
        number = facts[place]
        told = any(one.kind in ("rows", "bare", "ask") for one in facts[: min(at, place)])
        span = min(fact.start, number.start), max(fact.end, number.end)
        asked = Fact("rows", *span, [Entry(ask="reps")], {"one": True, "bare": True})
        out[place] = Fact("word", number.start, number.end, None, {"noise": True}) if told else asked
    return out


def _place(facts: Sequence[Fact], at: int) -> int | None:
    """Where that number stands: "lost count around 15", "bei 15 verzählt"."""
    place = at + 1
    while place <= at + NEAR and place < len(facts) and facts[place].kind in ("word", "scope"):
        place += 1
    behind = facts[place] if place < len(facts) else None
    if behind is not None and (_number(behind, place == at + 1)):
        return place
    led = at > 1 and facts[at - 1].end == facts[at].start and facts[at - 2].kind in ("word", "scope")
    return at - 1 if led and _number(facts[at - 1], led=False) else None


def _number(fact: Fact, led: bool) -> bool:
    """A bare number, or one that its "at" makes look like a load."""
    bare = fact.kind == "bare" and not led
    return bare or (fact.kind == "load" and fact.note.get("how") == "at" and not fact.note.get("unit"))


def _lost(message: Message, fact: Fact) -> bool:
    return any(token.text in little("lost_count") for token in message.tokens[fact.start : fact.end])
