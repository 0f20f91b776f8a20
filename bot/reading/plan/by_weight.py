"""The top set and the back-offs of a plan that has both are parts of it: "top single missed, back-offs all there"."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.facts import Fact
from bot.reading.fold.rows import Row
from bot.reading.plan.choosing import main_rows, pick

BY_WEIGHT = {"part_top": "top", "part_back": "back"}  # plan words and the scopes that they stand for
NAMES = {scope: name for name, scope in BY_WEIGHT.items()}


def parts_by_weight(facts: Sequence[Fact], rows: Sequence[Row]) -> list[Fact]:
    """The facts with plan words in place of those scopes; "the top single" of a planned single tells no reps."""
    if not any(fact.kind == "scope" and fact.value in NAMES for fact in facts):
        return list(facts)
    top = pick(rows, main_rows(rows), "top")
    if not top or not pick(rows, main_rows(rows), "back"):
        return list(facts)
    out: list[Fact] = []
    for fact in facts:
        if fact.kind == "scope" and fact.value in NAMES:
            name = NAMES[fact.value]
            fact = Fact("plan", fact.start, fact.end, name, {"names": [name]})
        elif fact.note.get("top") and out and out[-1].value == NAMES["top"] and _planned(fact, rows[top[0]]):
            continue
        out.append(fact)
    return out


def _planned(fact: Fact, row: Row) -> bool:
    return [entry.reps for entry in fact.value] == [row.reps]


def of_weight(rows: Sequence[Row], names: set[str]) -> list[int]:
    """The planned sets that those plan words name."""
    own = main_rows(rows)
    return sorted(at for name, scope in BY_WEIGHT.items() if name in names for at in pick(rows, own, scope))
