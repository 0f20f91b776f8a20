"""What a fact's numbers are: reps, or loads as they were said and in kilograms."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.facts import Fact
from bot.reading.fold.block import to_kg
from bot.reading.message import Message


def reps_of(fact: Fact) -> int | None:
    """The reps of one set: "7", "7 reps", "a triple"; None for anything else."""
    if fact.kind == "bare":
        return int(fact.value) if fact.value == int(fact.value) else None
    one = fact.kind == "rows" and len(fact.value) == 1 and fact.value[0].load_kg is None
    return fact.value[0].reps if one and "own_load" not in fact.note else None


def whole_number(message: Message, fact: Fact) -> int | None:
    """The one whole number of a fact as it was said, whatever unit it was taken for: the 2 of "plus 2 hangs"."""
    told = [token.value for token in message.tokens[fact.start : fact.end] if token.value is not None]
    return int(told[0]) if len(told) == 1 and told[0] == int(told[0]) else None


def listed(message: Message, fact: Fact) -> list[float]:
    """The numbers of a list that may be loads, as they were said, in the athlete's unit."""
    if fact.kind == "loads":
        return [float(kg) / to_kg(1.0, message.context.unit) for kg in fact.value]
    return [float(value) for value in fact.note.get("values", ())] if fact.kind == "rows" else []


def kgs_of(message: Message, fact: Fact) -> list[float]:
    """The kilograms that a number, or a list of them, is where it is of loads."""
    if fact.kind == "bare" and not fact.note.get("spelled"):
        return [float(fact.note.get("kg", fact.value))]
    if fact.kind == "load" and fact.value:
        return [float(fact.value)]
    return in_kg(message, listed(message, fact))


def in_kg(message: Message, said: Sequence[float]) -> list[float]:
    """Loads as they were said, in kilograms."""
    return [to_kg(value, message.context.unit) for value in said]
