"""Numbers in a row, their unit told once behind the last: "two tries with 6 and 5 sec"."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.facts import Entry, Fact
from bot.reading.message import Message


def one_unit(_message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts, with such a row as what was held, or done, set by set; its count of tries is said with it."""
    for at, fact in enumerate(facts):
        if fact.kind != "load" or fact.note.get("how") != "at" or fact.note.get("unit"):
            continue
        row = _row(facts, at)
        tried = _tries(facts, at)
        if row is None or tried is None or facts[tried].value != len(row[0]):
            continue
        values, end = row
        held = facts[end - 1].value[0].hold_s is not None
        entries = [Entry(hold_s=one) if held else Entry(reps=int(one)) for one in values]
        rows = Fact("rows", fact.start, facts[end - 1].end, entries, {"list": True, "values": values})
        return [*facts[:tried], *facts[tried + 1 : at], rows, *facts[end:]]
    return facts


def _row(facts: Sequence[Fact], at: int) -> tuple[list[float], int] | None:
    """The numbers from a load on to the one that has the unit, and the place behind it."""
    values = [float(facts[at].value)]
    while at + 2 < len(facts) and facts[at + 1].kind == "sep" and facts[at + 1].note.get("mark") in (",", "and"):
        at += 2
        one = facts[at]
        if one.kind == "bare":
            values.append(float(one.value))
        elif one.kind == "rows" and len(one.value) == 1 and (one.note.get("unit") or one.note.get("reps")):
            entry = one.value[0]
            values.append(float(entry.hold_s if entry.hold_s is not None else entry.reps or 0))
            return values, at + 1
        else:
            return None
    return None


def _tries(facts: Sequence[Fact], at: int) -> int | None:
    """The place of the number that counts the tries of the clause."""
    for place in range(at - 1, -1, -1):
        if facts[place].kind == "sep":
            return None
        if facts[place].kind == "bare":
            tried = facts[place + 1]
            return place if tried.kind == "scheme" and tried.value == "attempt" else None
    return None
