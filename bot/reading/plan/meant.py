"""Which planned sets a clause means that names none."""

from __future__ import annotations

from bot.reading.plan.choosing import counted_rows, main_rows, the_rows
from bot.reading.plan.state import Said, Told


def meant(told: Told, said: Said, efforts_only: bool) -> list[int]:
    """The sets that a clause means which names none."""
    rows, values = told.rows, said.values
    whole = any(fact.value == "all" for fact in said.scoped) or "all_lifts" in said.names or "every" in said.names
    deltas = [f for f in values if f.kind in ("delta", "instead")]
    one_set = any(fact.value != "all" for fact in said.scoped)
    if deltas and not one_set and (whole or told.everything or deltas[0].kind == "instead"):
        return [i for i, row in enumerate(rows) if row.part != "warm_up" or not told.several]
    touched = [i for i, row in enumerate(rows) if row.touched]
    if touched and any(f.kind == "scope" and f.value == "rest" for f in said.clause.facts):
        first = rows[touched[0]].movement
        return [i for i, row in enumerate(rows) if row.movement == first and not row.touched]
    if not said.named and any(f.kind == "load" and f.note.get("none") for f in values) and told.everything:
        return [i for i, row in enumerate(rows) if row.load_kg]  # "as planned, but bodyweight only"
    if "all_lifts" in said.names and values[0].kind in ("bare", "load"):
        return [i for i, row in enumerate(rows) if row.part != "warm_up"]
    if whole and efforts_only:
        return [i for i, row in enumerate(rows) if row.part != "warm_up"]
    counted = next((f for f in values if f.kind == "count" and f.note.get("of_plan")), None)
    own = counted_rows(rows, counted.note["of_plan"]) if counted else []
    return the_rows(rows, values) or own or main_rows(rows)
