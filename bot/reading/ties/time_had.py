"""Minutes that somebody had: "only had 15 min so just the pull-ups"; no hold, and not how long it took."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.facts import Fact
from bot.reading.little import little
from bot.reading.message import Message

LEAST_S = 300.0  # nobody holds anything for so long
NEAR = 2  # words between


def time_had(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts without minutes behind a word for having them."""
    out = list(facts)
    for at, fact in enumerate(facts):
        if fact.kind != "rows" or fact.note.get("unit") != "min" or len(fact.value) != 1:
            continue
        led = {token.text for token in message.tokens[max(0, fact.start - NEAR) : fact.start]}
        if (fact.value[0].hold_s or 0) >= LEAST_S and not led.isdisjoint(little("had_time")):
            out[at] = Fact("word", fact.start, fact.end, None, {"noise": True})
    return out
