""" "Last set 3 instead of 4, otherwise pull-ups 5x4": what departs from the sets is told before them."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.bounds import clause_end
from bot.reading.facts import Fact
from bot.reading.message import Message

SETS = frozenset({"rows", "bare", "loads", "load", "count"})


def instead_ahead(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts, with which set it was and what it had instead behind the sets that it is one of."""
    at = next((n for n, fact in enumerate(facts) if fact.kind == "instead"), None)
    if at is None or message.context.today or any(fact.kind in SETS for fact in facts[:at]):
        return facts
    scope = next((n for n in range(at - 1, -1, -1) if facts[n].kind == "scope"), None)
    rows = next((n for n in range(at + 1, len(facts)) if facts[n].kind in SETS), None)
    if scope is None or rows is None or facts[rows].kind != "rows" or not facts[rows].note.get("plain"):
        return facts
    if any(fact.kind == "sep" for fact in facts[scope:at]):
        return facts
    end = clause_end(facts, rows)
    moved = [Fact("sep", facts[end - 1].end, facts[end - 1].end, 1, {"mark": ","}), facts[scope], facts[at]]
    kept = [fact for n, fact in enumerate(facts[:end]) if n not in (scope, at)]
    return [*kept, *moved, *facts[end:]]
