"""The load that "with that" points back to: "the gym only had a 45 free, so I did 3 sets of 4 with that"."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.facts import Fact
from bot.reading.fold.block import to_kg
from bot.reading.little import little
from bot.reading.message import Message

LED = 2  # words: "with that"


def with_that(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts, with the load in place of "with that" behind sets: what the gym had, else it is asked.

    A load told as such is the sets' own already.
    """
    for at in range(len(facts) - LED):
        rows, *words = facts[at : at + 1 + LED]
        if rows.kind != "rows" or [one.kind for one in words] != ["word", "word"]:
            continue
        led, what = (" ".join(token.text for token in message.tokens[one.start : one.end]) for one in words)
        closes = at + 1 + LED >= len(facts) or facts[at + 1 + LED].kind == "sep"
        if led not in little("with") or what not in little("that_one") or not closes:
            continue
        if any(one.kind in ("load", "at", "loads", "thing", "assist") for one in facts[:at]):
            return facts
        had = [token.value for one in facts[:at] if _talk(one) for token in message.tokens[one.start : one.end]]
        numbers = [value for value in had if value is not None]
        kg = to_kg(numbers[0], message.context.unit) if len(numbers) == 1 else None
        told = Fact("load", words[0].start, words[1].end, kg, {"how": "at"})
        return [*facts[: at + 1], told, *facts[at + 1 + LED :]] if numbers else facts
    return facts


def _talk(fact: Fact) -> bool:
    """Whether a fact is talk that has been set aside: "the gym only had a 45"."""
    return fact.kind == "claim" and fact.value is not None and fact.value.kind == "noise"
