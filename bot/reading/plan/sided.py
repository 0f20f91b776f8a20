"""Numbers by side without a movement, "L 2 2 1 R 2 2 2": of the plan's one-sided movement."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.facts import Fact
from bot.reading.fold.rows import Row
from bot.reading.message import Message
from bot.reading.movements.mention import Mention
from bot.reading.plan.ground import planned
from bot.reading.reading import Ask

OTHER = frozenset({"move", "load", "loads", "at", "count", "plan", "scope", "delta", "instead", "fail"})


def of_sides(message: Message, facts: Sequence[Fact]) -> Fact | Ask | None:
    """The movement that such numbers are of; what is asked where one pair is told of several planned."""
    rows = [row for row in planned(message) if row.side in ("left", "right")]
    if len({row.movement for row in rows}) != 1 or any(fact.kind in OTHER for fact in facts):
        return None
    work = [fact for fact in facts if fact.kind in ("rows", "bare")]
    if not work or not _by_side(facts, work):
        return None
    if all(_one(fact) for fact in work) and len(rows) > 2:
        return Ask("sets", message.span(facts[0].start, work[-1].end))
    return _named(rows, facts)


def _by_side(facts: Sequence[Fact], work: Sequence[Fact]) -> bool:
    """Whether each number is told of a side."""
    sides = [fact.value for fact in facts if fact.kind == "side"]
    return set(sides) <= {"left", "right"} and len(sides) == len(work)


def _one(fact: Fact) -> bool:
    return fact.kind == "bare" or len(fact.value) == 1


def _named(rows: Sequence[Row], facts: Sequence[Fact]) -> Fact:
    start = facts[0].start
    return Fact("move", start, start, Mention(str(rows[0].movement), [(start, start)]))
