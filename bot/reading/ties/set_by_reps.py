"""A set named by its reps, to say how hard it was: "7/6/5. En la de 5 ya no quedaba nada"."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from bot.reading.facts import Fact
from bot.reading.little import little
from bot.reading.message import Message


def set_by_reps(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts, with a scope in place of a number that only one set of the list before has."""
    out = list(facts)
    rows: Fact | None = None
    for at, fact in enumerate(facts):
        if fact.kind == "move":
            rows = None
        elif fact.kind == "rows" and len(fact.value) > 1:
            rows = fact
        elif rows is not None and _names_one(message, fact) and _rated(facts[at + 1 :]):
            those = [n for n, entry in enumerate(rows.value) if entry.reps == _reps(fact)]
            if len(those) == 1:
                which = "last" if those[0] + 1 == len(rows.value) else those[0] + 1
                out[at] = replace(fact, kind="scope", value=which, note={"text": ""})
    return out


def _reps(fact: Fact) -> float | None:
    return float(fact.value) if fact.kind == "bare" else fact.value[0].reps


def _names_one(message: Message, fact: Fact) -> bool:
    """ "La de 5", "the set of 5", "beim Fünfer"."""
    if fact.kind == "rows":
        return len(fact.value) == 1 and fact.start > 0 and message.tokens[fact.start - 1].text in little("by_reps_led")
    if fact.kind != "bare" or fact.start < 2:
        return False
    led = [token.text for token in message.tokens[fact.start - 2 : fact.start]]
    return f"{led[0]} {led[1]}" in little("by_reps")


def _rated(after: Sequence[Fact]) -> bool:
    """Whether an effort, and nothing else, is told behind it in its clause."""
    for fact in after:
        if fact.kind == "effort":
            return True
        if fact.kind not in ("word", "plan", "scheme"):
            return False
    return False
