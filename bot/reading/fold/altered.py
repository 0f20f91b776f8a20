"""Sets as they came out instead: "20 instead of 22.5", "one rep less"."""

from __future__ import annotations

from dataclasses import replace

from bot.reading.facts import Fact
from bot.reading.fold.rows import change, shift
from bot.reading.fold.state import FoldState
from bot.reading.little import little

MOST_EITHER = 12  # a whole number up to it can be reps as well as a load


def on_instead(fold: FoldState, fact: Fact) -> None:
    new, old, unit = fact.value
    if not fold.rows:
        if unit in ("kg", "lb") or (unit is None and (new != int(new) or max(new, old) > MOST_EITHER)):
            fold.load, fold.load_said = fold.to_kg(new, unit), True
        return
    rows = (fold.scoped() if fold.scope is not None else fold.rows) or fold.rows
    before = [replace(row) for row in rows]
    change(rows, new, old, unit, fold.to_kg)
    if rows == before and not fold.based and all(row.load_kg is None and row.hold_s is None for row in rows):
        if unit is None and new == int(new) and max(new, old) <= MOST_EITHER:
            fold.ask("reps", fact)
        else:
            for row in rows:
                row.load_kg = fold.to_kg(new, unit)  # "4x4 with 22.5, not 20"
    fold.scope = None


def on_delta(fold: FoldState, fact: Fact) -> None:
    amount, kind, sign = fact.value
    if not fold.based and fold.scope is None and kind == "load" and any(row.load_kg for row in fold.rows):
        return  # "5x4 at 17.5, which is 2.5 more than last week"
    rows = (fold.scoped() if fold.scope is not None else fold.rows) or fold.rows
    relative = sign < 0 or not little("more").isdisjoint(fold.span(fact.start, fact.end).lower().split())
    if kind == "load" and relative and not fold.based and fold.block.loadable:
        unknown = [row for row in rows if row.load_kg is None and not row.assist_kg]
        if unknown:
            fold.ask("load_kg", fact)  # "4x4, 5 kg less", "mit 5 kg mehr": than what is not said
        for row in unknown:
            row.load_open = True
        rows = [row for row in rows if row not in unknown]
    if kind == "reps" and not fold.based and fold.scope is None and len({row.group for row in rows}) == 1 < len(rows):
        fold.ask("reps", fact)  # "4x5, one more": of which set, or more than what
        for row in rows:
            row.reps = None
        return
    for row in rows:
        if kind == "load" and sign > 0 and row.load_kg is None and not row.assist_kg and not fold.based:
            row.load_kg = amount  # "4x4, added 5 kg"
        else:
            shift(row, amount, kind, sign)
