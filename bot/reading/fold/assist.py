"""Help by a band or a pulley finds its sets."""

from __future__ import annotations

from bot.reading.facts import Fact
from bot.reading.fold.state import FoldState


def on_assist(fold: FoldState, fact: Fact) -> None:
    if fact.value is None:
        if fact.note.get("suffix") and fold.prev is not None and fold.prev.kind == "load":
            for row in fold.rows:
                if row.assist_kg is None:
                    row.assist_kg = fold.assist  # told before the sets that it was for
            fold.assist = fold.prev.value
            for row in fold.rows:
                row.load_kg = None
            fold.load, fold.load_said = None, False
        return
    if fold.rows and not fold.based and fold.scope not in (None, "all") and (rows := fold.scoped()):
        for row in rows:
            row.assist_kg, row.touched = fact.value, True  # "12 kg off the first set, 10 off the other two"
        fold.scope = None
        return
    heads = fold.prev is not None and fold.prev.kind == "sep" and fold.assist is not None
    if fold.rows and heads and fold.more_sets_follow(fact) and not fold.based:
        for row in fold.rows:
            row.assist_kg = fold.assist if row.assist_kg is None else row.assist_kg
        fold.assist = fact.value  # "15 off x 3, 12.5 off x 2"
        return
    if fold.rows and not fold.based and _of_what_follows(fold, fact):
        for row in fold.rows:
            row.assist_kg = 0.0 if row.assist_kg is None else row.assist_kg
        fold.assist = fact.value
        return
    group = fold.last_group()
    if fold.assist is not None and len(group) < len(fold.rows) and not fold.based:
        for row in fold.rows:  # "with 15 off 3x2, then a single with 10 off": of the sets right before
            row.assist_kg = row.assist_kg if row.assist_kg is not None else fold.assist
        for row in group:
            row.assist_kg = fact.value
        return
    if fold.rows and not fold.based:
        # "3x8 with the red band, 2x8 with the one that takes 10 kg off"
        own = fold.prev is not None and fold.prev.kind == "rows" and not any(row.side for row in fold.rows)
        for row in fold.last_group() if own else fold.rows:
            if row.assist_kg is None:
                row.assist_kg = fact.value
        return
    fold.assist = fact.value


def _of_what_follows(fold: FoldState, fact: Fact) -> bool:
    """ "Red band 4x6 and with the one that takes 18 kg off 2x4": the help of the sets behind it."""
    facts, at = fold.block.facts, fold.place(fact)
    lead = next((one for one in reversed(facts[:at]) if one.kind != "word"), None)
    joined = lead is not None and lead.kind == "sep" and fold.assist is None
    return joined and fold.next is not None and fold.next.kind == "rows" and fold.next.start == fact.end
