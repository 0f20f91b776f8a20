"""Which rep of which set was missed: "on the third I missed the fifth", "en la última la cuarta no subió"."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from bot.reading.facts import Fact
from bot.reading.fold.rows import Row
from bot.reading.message import Message


def rep_of_a_set(_message: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> list[Fact]:
    """The facts, where of two ordinals beside a miss one is the set, the other the rep."""
    most = max((row.reps or 0 for row in rows), default=0)
    out: list[Fact] = []
    piece: list[Fact] = []
    for fact in facts:
        piece.append(fact)
        if fact.kind == "sep":
            out += _told(piece, most)
            piece = []
    return out + _told(piece, most)


def _told(piece: list[Fact], most: int) -> list[Fact]:
    fails = [fact for fact in piece if fact.kind == "fail" and not fact.note.get("weak")]
    scopes = [fact for fact in piece if fact.kind == "scope" and (isinstance(fact.value, int) or fact.value == "last")]
    if len(fails) != 1 or any(fact.kind in ("rows", "bare", "count") for fact in piece):
        return piece
    missed = fails[0]
    if len(scopes) == 1 and isinstance(missed.value, int) and 0 < missed.value <= most:
        # the set stands before or behind: "missed the fifth on the last set"
        return [replace(f, note={**f.note, "rep": True}) if f is missed else f for f in piece]
    led = len(scopes) == 2 and missed.value is None and missed.start >= scopes[1].end
    nth = scopes[1].value if led else None
    if not isinstance(nth, int) or nth > most:
        return piece
    told = replace(missed, value=nth, note={**missed.note, "rep": True})
    return [told if f is missed else f for f in piece if f is not scopes[1]]
