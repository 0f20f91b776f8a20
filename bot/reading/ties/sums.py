"""What the sets come to, told behind them: "3 sets of 7, that's 21", "8 7 6 5, makes 26"."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.facts import Fact
from bot.reading.little import little
from bot.reading.message import Message

REACH = 3  # words from "that's" to the sum: "that's a total of 21"
LEAST = 2  # sets


def sums(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts, without a number that is the sum of the sets of one movement told before it, and is led as one."""
    out = list(facts)
    total, sets = 0, 0
    for at, fact in enumerate(facts):
        if fact.kind == "move":
            total, sets = (total, sets) if sets == 0 else (0, 0)
        elif fact.kind == "rows" and all(entry.reps for entry in fact.value):
            total, sets = total + sum(entry.reps or 0 for entry in fact.value), sets + len(fact.value)
        number = fact.kind == "bare" or (fact.kind == "rows" and len(fact.value) == 1 and bool(fact.note.get("reps")))
        value = fact.value if fact.kind == "bare" else fact.value[0].reps if number else None
        before = total - (value or 0) if fact.kind == "rows" else total
        several = sets - (fact.kind == "rows") >= LEAST
        led = {token.text for token in message.tokens[max(0, fact.start - REACH) : fact.start]}
        if number and several and value == before and led & little("comes_to"):
            out[at] = Fact("word", fact.start, fact.end, None, {"noise": True})
    return out
