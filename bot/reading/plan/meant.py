"""Which planned sets a clause means that names none."""

from __future__ import annotations

from bot.reading.facts import Fact
from bot.reading.fold.rows import Row
from bot.reading.little import little
from bot.reading.plan.choosing import best_rows, counted_rows, exact_rows, the_rows
from bot.reading.plan.in_mind import not_pointed_at
from bot.reading.plan.state import Said, Told
from bot.reading.plan.value import near_load
from bot.reading.reading import Ask
from planner.movements import movement


def meant(told: Told, said: Said, efforts_only: bool) -> list[int]:
    """The sets that a clause means which names none."""
    rows, values = told.rows, said.values
    whole = any(fact.value == "all" for fact in said.scoped) or "all_lifts" in said.names or "every" in said.names
    deltas = [f for f in values if f.kind in ("delta", "instead")]
    one_set = any(fact.value != "all" for fact in said.scoped)
    own = _of_load(told, deltas) if deltas and not one_set and not whole else None
    if own is not None:
        return own
    if deltas and not one_set and not whole and (own := _of_reps(rows, deltas[0])):
        return own
    if deltas and not one_set and (whole or told.everything or deltas[0].kind == "instead"):
        return [i for i, row in enumerate(rows) if row.part != "warm_up" or not told.several]
    touched = [i for i, row in enumerate(rows) if row.touched]
    rest = "rest" in said.names or any(f.kind == "scope" and f.value == "rest" for f in said.clause.facts)
    if rest and not touched and (others := not_pointed_at(told, said)):
        return others
    if touched and rest:
        first = rows[touched[0]].movement
        return [i for i, row in enumerate(rows) if row.movement == first and not row.touched]
    stated = [fact for fact in values if fact.kind == "rows"]
    unloaded = any(f.kind == "load" and f.note.get("none") for f in values) and not stated
    if not said.named and not one_set and unloaded:
        told.everything = told.everything or whole
        return [i for i, row in enumerate(rows) if row.load_kg and carried(row)]  # "as planned, but bodyweight only"
    if "all_lifts" in said.names and values[0].kind in ("bare", "load") and not one_set:
        own = [i for i, row in enumerate(rows) if row.part != "warm_up"]
        kg = values[0].note.get("kg", values[0].value)
        # "17.5 for everything" is no load of the light dumbbells
        return [i for i in own if kg and near_load(kg, [rows[i]])] or own
    if whole and efforts_only:
        return [i for i, row in enumerate(rows) if row.part != "warm_up"]
    counted = next((f for f in values if f.kind == "count" and f.note.get("of_plan")), None)
    own = counted_rows(rows, counted.note["of_plan"]) if counted else []
    exact = exact_rows(rows, stated[0]) if len(stated) == 1 else []
    return the_rows(rows, values) or own or exact or _singles(rows, stated) or best_rows(rows, stated)


def _of_reps(rows: list[Row], fact: Fact) -> list[int]:
    """ "Triples at 20 instead of fours": the sets that the plan has as fours."""
    if fact.kind != "instead" or fact.value[2] != "reps":
        return []
    return [at for at, row in enumerate(rows) if row.reps == fact.value[1] and row.part != "warm_up"]


def _singles(rows: list[Row], stated: list[Fact]) -> list[int]:
    """ "The first single on each side": the sets of one movement that the plan has as singles, where there are such."""
    if len(stated) != 1 or len(stated[0].value) != 1 or stated[0].value[0].reps != 1 or not stated[0].note.get("word"):
        return []
    own = [at for at, row in enumerate(rows) if row.reps == 1 and row.part != "warm_up"]
    return own if len({rows[at].movement for at in own}) == 1 else []


def _of_load(told: Told, deltas: list[Fact]) -> list[int] | None:
    """ "Same as planned, 2.5 more": the loads that can change by so much; None: it is no such change.

    Of several movements it is not said which: that is asked.
    """
    fact = deltas[0]
    if fact.kind != "delta" or fact.value[1] != "load" or not told.everything:
        return None
    rows = told.rows
    heavy = [i for i, row in enumerate(rows) if row.part != "warm_up" and (row.load_kg or row.assist_kg)]
    able = [at for at in heavy if carried(rows[at])] or heavy  # a plate's worth is no change of a light dumbbell
    said = any(token.text in little("all_of_it") for token in told.message.tokens)
    if len({rows[at].movement for at in able}) > 1 and not said:
        told.asks.append(Ask("load_kg", told.message.span(fact.start, fact.end)))
        for at in able:
            rows[at].load_kg, rows[at].load_open = None, True
    return able or None


def carried(row: Row) -> bool:
    """Whether the body is part of the load: "without weight" is said of such a movement."""
    return row.movement is None or movement(row.movement).bodyweight_share > 0
