"""A load that heads the sets behind it, not those before it: "pull-ups 3x5, then with 10 kg 4x3"."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from bot.reading.bounds import is_strong
from bot.reading.facts import Entry, Fact
from bot.reading.message import Message

LEAST = 2  # numbers of a row
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
        listed = _one_by_one(facts, place) if heads else None
        if listed is not None:  # "then with 10 kg another 3 and 3"
            facts = [*facts[: at + 1], *listed]
            place = at + 1
        rows = facts[place] if heads and place < len(facts) else None
        if rows is not None and rows.kind == "rows" and _whole(rows) and _told_plainly(facts, place):
            out.append(replace(rows, start=fact.start, note={**rows.note, "own_load": float(fact.value)}))
            at = place + 1
            continue
        out.append(fact)
        at += 1
    return out


def _one_by_one(facts: Sequence[Fact], at: int) -> list[Fact] | None:
    """The facts from a place on, where numbers joined by "and" stand there, as one row; None where there are none."""
    while at < len(facts) and facts[at].kind == "word":
        at += 1
    end, told = at, []
    while end < len(facts) and facts[end].kind == "bare" and facts[end].value == int(facts[end].value) > 0:
        told.append(facts[end])
        joined = facts[end + 1] if end + 1 < len(facts) else None
        if joined is None or joined.note.get("mark") not in ("and", ","):
            end += 1
            break
        end += 2
    if len(told) < LEAST or (end < len(facts) and facts[end].kind != "sep" and facts[end - 1].kind != "sep"):
        return None
    values = [Entry(int(one.value)) for one in told]
    row = Fact("rows", told[0].start, told[-1].end, values, {"list": True, "mark": ","})
    return [row, *facts[end - (facts[end - 1].kind == "sep") :]]


def _breaks(fact: Fact) -> bool:
    return is_strong(fact) or (fact.kind == "sep" and fact.note.get("mark") in BREAKS)


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
