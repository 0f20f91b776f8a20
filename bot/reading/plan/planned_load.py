"""A bare number behind the sets of a planned lift that is its planned load: "squat 3x5 80, dips 3x8 10"."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.facts import Fact
from bot.reading.fold.rows import Row
from bot.reading.plan.ground import members

SAME_KG = 0.01


def planned_load(facts: Sequence[Fact], rows: Sequence[Row]) -> list[Fact]:
    """The facts, with such a number as a load."""
    out: list[Fact] = []
    move: Fact | None = None
    for at, fact in enumerate(facts):
        move = fact if fact.kind == "move" else move
        before = out[-1] if out else None
        behind = before is not None and before.kind == "rows" and bool(before.note.get("plain"))
        closes = at + 1 == len(facts) or facts[at + 1].kind == "sep"
        if fact.kind == "bare" and behind and closes and move is not None:
            kg = float(fact.note.get("kg", fact.value))
            own = [row for row in rows if row.movement in members(move.value)]
            if own and all(row.load_kg and abs(row.load_kg - kg) < SAME_KG for row in own):
                fact = Fact("load", fact.start, fact.end, kg, {"how": "at"})
        out.append(fact)
    return out
