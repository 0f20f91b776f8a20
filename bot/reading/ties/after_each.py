"""What was done after each set of something else: "dips 4x8, after each set 10 push-ups"."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.facts import Entry, Fact
from bot.reading.little import little
from bot.reading.message import Message

MOST_REPS = 30
REACH = 3  # facts of "after each set"


def after_each(_: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts, with such a set done as often as the sets before it."""
    for at in range(1, len(facts)):
        if facts[at].kind != "move":
            continue
        number = facts[at - 1]
        before = facts[max(0, at - 1 - REACH) : at - 1]
        each = _each_set(before) or _each_set(facts[at + 1 : at + 1 + REACH])
        rows = next((fact for fact in reversed(facts[: at - 1]) if fact.kind == "rows"), None)
        if not each or rows is None or len(rows.value) < 2 or not _of_reps(number):
            continue
        many = Fact("rows", number.start, number.end, [Entry(int(number.value))] * len(rows.value), {"plain": True})
        spent = {id(fact) for fact in (*each, number, facts[at])}
        kept = [fact for fact in facts[:at] if id(fact) not in spent]
        return [*kept, facts[at], many, *(fact for fact in facts[at:] if id(fact) not in spent)]
    return facts


def _each_set(facts: Sequence[Fact]) -> list[Fact]:
    """The facts of "after each set" among a few."""
    for at in range(len(facts) - 1):
        after, each = facts[at : at + 2]
        named = after.kind == "word" and str(after.value) in little("after")
        if named and each.kind == "scope" and each.value == "all" and "every" in each.note.get("names", ()):
            return [after, each]
    return []


def _of_reps(fact: Fact) -> bool:
    """Whether a number may be reps: bare, or "with 10" without a unit."""
    bare = fact.kind == "bare" or (fact.kind == "load" and fact.note.get("how") == "at" and not fact.note.get("unit"))
    return bool(bare and fact.value and fact.value == int(fact.value) <= MOST_REPS)
