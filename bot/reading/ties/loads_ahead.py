"""A load that heads the sets behind it, not those before it: "pull-ups 3x5, then with 10 kg 4x3"."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from bot.reading.facts import Fact
from bot.reading.message import Message

BREAKS = frozenset({",", ".", ";", "and", "nl"})


def loads_ahead(_: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts, with such a load as the own load of the sets that it heads.

    Only where the sets before it have none: where each has its load behind it, so have they all.
    """
    out: list[Fact] = []
    at = 0
    while at < len(facts):
        fact = facts[at]
        heads = fact.kind == "load" and fact.value is not None and out and _breaks(out[-1]) and _bare_sets(out)
        place = at + 1
        if heads and place < len(facts) and facts[place].note.get("mark") == ":":
            place += 1
        rows = facts[place] if heads and place < len(facts) else None
        if rows is not None and rows.kind == "rows" and _whole(rows) and _told_plainly(facts, place):
            out.append(replace(rows, start=fact.start, note={**rows.note, "own_load": float(fact.value)}))
            at = place + 1
            continue
        out.append(fact)
        at += 1
    return out


def _breaks(fact: Fact) -> bool:
    return fact.kind == "sep" and (fact.value >= 2 or fact.note.get("mark") in BREAKS)


def _whole(rows: Fact) -> bool:
    """Whether a fact tells several sets, with no load yet."""
    return len(rows.value) > 1 and "own_load" not in rows.note and not rows.note.get("the")


def _bare_sets(before: Sequence[Fact]) -> bool:
    """Whether the last sets told stand without a load of their own."""
    for n in range(len(before) - 1, -1, -1):
        fact = before[n]
        if fact.kind == "move":
            return False
        if fact.kind in ("load", "loads", "at", "assist", "mend") or "own_load" in fact.note:
            return False
        if fact.kind == "rows" and len(fact.value) > 1:
            led = before[n - 1] if n else None
            return not (led is not None and led.kind in ("load", "loads"))
    return False


def _told_plainly(facts: Sequence[Fact], at: int) -> bool:
    """Whether no load stands behind the sets too: "3x5, 10 kg 4x3 15 kg" has each load behind."""
    after = facts[at + 1] if at + 1 < len(facts) else None
    return after is None or after.kind not in ("load", "loads", "at", "assist")
