"""A pause told as a stop: "stopped at the bottom every rep", "each rep stopped at the top"."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import takewhile

from bot.reading.facts import Fact
from bot.reading.message import Message

PLACES = frozenset({"pause_top", "pause_middle", "pause_bottom"})
STOPS = frozenset({"quit", "stopped"})
NEAR = 4  # facts


def stopped_at(_message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts, with a stop at a place of every rep as a pause; a stop by itself ends the work."""
    out = list(facts)
    for at, stop in enumerate(facts):
        if stop.kind != "plan" or not STOPS.intersection(stop.note.get("names", ())):
            continue
        behind = at + 1 + (at + 1 < len(facts) and facts[at + 1].value == "the")
        place = facts[behind] if behind < len(facts) else None
        if place is None or place.kind != "flag" or place.value not in PLACES:
            continue
        after = takewhile(lambda one: one.kind != "sep", facts[behind + 1 : behind + 1 + NEAR])
        if any(map(_each, [*facts[max(0, at - 1) : at], *after])):
            out[at] = Fact("flag", stop.start, stop.end, "pause_pause")
    return out


def _each(fact: Fact) -> bool:
    """Whether it says "every rep"."""
    names = fact.note.get("names", ())
    return "every" in names or (fact.kind, fact.value) in (("scope", "all"), ("scheme", "every"))
