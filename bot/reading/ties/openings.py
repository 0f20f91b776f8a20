"""How a message begins says nothing of its sets: "sorry for being late, …", "just finished. …"."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.facts import Fact
from bot.reading.little import little
from bot.reading.message import Message

TOLD = frozenset(
    {"rows", "bare", "load", "loads", "count", "side", "scope", "effort", "at", "rounds", "repeat", "left"}
)


def openings(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts without a "sorry" that has nothing to mend, and without a "finished" in front of what was done."""
    out = list(facts)
    for at, fact in enumerate(facts):
        if fact.kind in TOLD:
            break
        sorry = fact.kind == "mend"
        over = fact.kind == "plan" and _just_over(message, fact) and _told(facts[at + 1 :])
        if sorry or over:
            out[at] = Fact("word", fact.start, fact.end, None, {"noise": True})
    return out


def _just_over(message: Message, fact: Fact) -> bool:
    """ "Just finished", "gerade fertig", "acabo de terminar"; not "done"."""
    said = {token.text for token in message.tokens[max(0, fact.start - 2) : fact.end]}
    return not said.isdisjoint(little("just_over")) and not said.isdisjoint(little("just_now"))


def _told(facts: Sequence[Fact]) -> bool:
    """Whether a sentence behind this one tells of sets, or names a lift."""
    ends = next((at for at, fact in enumerate(facts) if fact.kind == "sep" and fact.value == 3), len(facts))
    return any(fact.kind in TOLD or fact.kind == "move" for fact in facts[ends:])
