"""The last set told before those that it follows: "only 28s in the 4th set, the first three were 40"."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.bounds import clause_end, clause_start
from bot.reading.facts import Entry, Fact
from bot.reading.fold.block import is_hold
from bot.reading.message import Message

SILENT = frozenset({"word", "scheme", "plan", "move"})


def end_ahead(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts, with both clauses as one list in the order of the sets; beside a plan that tells of it."""
    if message.context.today:
        return facts
    for at, fact in enumerate(facts):
        if fact.kind != "sep" or fact.value == 3:
            continue
        start, end = clause_start(facts, at), clause_end(facts, at + 1)
        late, early = _told(facts[start:at]), _told(facts[at + 1 : end])
        if late is None or early is None or not _follows(late[0], early[0]):
            continue
        named = next((one.value.movement for one in reversed(facts[:end]) if one.kind == "move"), None)
        held = bool(late[1].hold_s or early[1].hold_s) and (named is None or is_hold(named))  # or "5s": fives
        entries = [*(_entry(early[1], held) for _ in range(early[0].value[1])), _entry(late[1], held)]
        moves = [one for one in facts[start:end] if one.kind == "move"]
        told = Fact("rows", facts[start].start, facts[end - 1].end, entries, {"list": True, "mark": ","})
        return [*facts[:start], *moves, told, *facts[end:]]
    return facts


def _follows(late: Fact, early: Fact) -> bool:
    """Whether one scope is of the set right behind the first ones of the other."""
    first = isinstance(early.value, tuple) and early.value[0] == "first" and early.value[1] > 1
    return first and late.value in ("last", ("last", 1), early.value[1] + 1)


def _told(clause: Sequence[Fact]) -> tuple[Fact, Entry] | None:
    """The scope of a clause and what each of its sets came to; None where it tells more, or less."""
    scopes = [fact for fact in clause if fact.kind == "scope" and fact.value != "all"]
    values = [fact for fact in clause if fact.kind not in SILENT | {"scope"}]
    if len(scopes) != 1 or len(values) != 1 or scopes[0].note.get("rep"):
        return None
    value = values[0]
    if value.kind == "rows" and len(value.value) == 1 and "own_load" not in value.note:
        return scopes[0], value.value[0]
    whole = value.kind == "bare" and 0 < value.value == int(value.value)
    return (scopes[0], Entry(int(value.value))) if whole else None


def _entry(told: Entry, held: bool) -> Entry:
    """One set, in seconds where either clause has them."""
    number = told.hold_s or told.reps or 0
    return Entry(hold_s=float(number)) if held else Entry(int(number))
