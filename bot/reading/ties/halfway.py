"""A repetition that ended on its way: "the third died halfway", "auf halber Höhe stecken geblieben"."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.facts import Fact
from bot.reading.little import little
from bot.reading.message import Message

MIDDLE = "pause_middle"  # what "halfway" is where somebody stops there on purpose
BESIDE = 2  # facts from "halfway" to the word for its end


def ended_halfway(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts, with a miss in place of "halfway" and the word beside it, where one rep or set is named before."""
    for at, fact in enumerate(facts):
        if fact.kind != "flag" or fact.value != MIDDLE:
            continue
        low = next((n + 1 for n in range(at, -1, -1) if facts[n].kind == "sep"), 0)
        if not any(one.kind == "scope" and one.value != "all" for one in facts[low:at]):
            continue
        ends = [n for n in range(max(low, at - BESIDE), min(at + BESIDE + 1, len(facts))) if _ends(message, facts[n])]
        if ends:
            first, last = min(at, *ends), max(at, *ends)
            missed = Fact("fail", facts[first].start, facts[last].end)
            return [*facts[:first], missed, *facts[last + 1 :]]
    return facts


def _ends(message: Message, fact: Fact) -> bool:
    words = {token.text for token in message.tokens[fact.start : fact.end]}
    return fact.kind == "word" and not words.isdisjoint(little("gave_out"))
