"""A load changed by so much: "dropped by 5 on the last", "beim letzten 5 kg runter", "bajé 5 kg"."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from itertools import pairwise

from bot.reading.bounds import clause_end, clause_start
from bot.reading.facts import Fact
from bot.reading.fold.rows import Row
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.plan.ground import plan_names
from bot.reading.plan.value import SMALL_PART, near_load

VALUED = frozenset({"bare", "load"})


def by_so_much(message: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> list[Fact]:
    """The facts, with the change where a number tells one: led by "by", or too small a weight to be what hung there."""
    rows = [replace(row, load_kg=row.assist_kg) if row.assist_kg else row for row in rows]  # help changes as loads do
    out: list[Fact] = []
    said: int | None = None  # by the clause
    for at, fact in enumerate(facts):
        if fact.kind == "sep":
            said = None
        came_to = at > 0 and facts[at - 1].kind == "scheme" and facts[at - 1].end == fact.start  # "me quedé en dos"
        if fact.kind in VALUED and said is None:
            said = _sign(message, facts, at)
        sign = said if fact.kind in VALUED and fact.value and not came_to else 0
        kg = fact.note.get("kg", fact.value)
        if sign and _amount(message, fact, sign, rows) and any(row.load_kg and row.load_kg > kg for row in rows):
            fact = Fact("delta", fact.start, fact.end, (kg, "load", sign), {"open": False})
        out.append(fact)
    return out


def _amount(message: Message, fact: Fact, sign: int, rows: Sequence[Row]) -> bool:
    """Whether a number is how much, and not what it came to."""
    led = {message.tokens[at].text for at in range(max(0, fact.start - 1), fact.start + 1)}
    if led & little("by_so_much"):
        return True
    if fact.start and message.tokens[fact.start - 1].text in little("changed_to"):
        return False  # "dropped to 10 kg"
    named = fact.kind == "load" and fact.note.get("unit") and not fact.note.get("how")
    if named and sign > 0 and fact.end < len(message.tokens) and _put_on(message, fact):
        return True  # "5 kg draufgelegt"
    small = fact.value <= SMALL_PART * max((row.load_kg or 0.0 for row in rows), default=0.0)
    return bool(named) and (sign < 0 or small) and not near_load(fact.value, rows)


def _sign(message: Message, facts: Sequence[Fact], at: int) -> int:
    """Whether the clause of a number says more or less; 0: neither, or both."""
    low = clause_start(facts, at)
    high = clause_end(facts, at + 1)
    leaves = (
        range(fact.start, fact.end)
        for fact, after in pairwise(facts[low:high])
        if after.kind == "scope" and "except" in plan_names(fact)  # "completo, menos la última en 6"
    )
    apart = {place for places in leaves for place in places}
    span = range(facts[low].start, facts[high - 1].end)
    words = {message.tokens[place].text for place in span if place not in apart}
    more, less = bool(words & little("step_up")), bool(words & little("step_down"))
    return more - less


def _put_on(message: Message, fact: Fact) -> bool:
    """Whether the word right behind a load says that it was put on top of what hung there."""
    text = message.tokens[fact.end].text
    return text in little("put_on") and text in little("step_up")
