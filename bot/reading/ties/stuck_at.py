"""Reps that a set came to where it got stuck: "im letzten Satz bei 3 hängen geblieben"; no load, and no hang."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.facts import Fact
from bot.reading.little import little
from bot.reading.message import Message

MOST = 30  # more are kilograms sooner than reps


def stuck_at(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts, with the reps in place of the load "at 3" right before a word for being stuck."""
    out = list(facts)
    for at, fact in enumerate(facts):
        after = message.tokens[fact.end].text if fact.end < len(message.tokens) else ""
        if fact.kind not in ("load", "bare") or not fact.value or after not in little("stuck_end"):
            continue
        led = message.tokens[fact.start].text if fact.kind == "load" else message.tokens[fact.start - 1].text
        if led not in little("at_score") or fact.note.get("unit") or not 0 < fact.value == int(fact.value) <= MOST:
            continue
        out[at] = Fact("bare", fact.end - 1, fact.end, float(fact.value), {"kg": fact.value})
        if at + 1 < len(out) and out[at + 1].kind == "fail":
            out[at + 1] = Fact("word", out[at + 1].start, out[at + 1].end, None, {"noise": True})
    return out
