"""Loads find their sets: before the first for all that follow, after a set for that set."""

from __future__ import annotations

from dataclasses import replace

from bot.reading.facts import Fact
from bot.reading.fold.efforts import on_effort, over_all_told
from bot.reading.fold.rows import change, shift
from bot.reading.fold.state import FoldState
from bot.reading.little import little

HELPED = frozenset({"one_arm_counterweight", "band_pull_up"})
MOST_EITHER = 12  # a whole number up to it can be reps as well as a load
LIST_OF_SETS = 3  # so many with one load at the end are a list


def on_load(fold: FoldState, fact: Fact) -> None:
    if fact.note.get("spent") or denied(fold, fact):
        return
    value = fact.value
    adds = (
        fold.prev is not None and fold.prev.kind == "load" and fact.note.get("how") == "plus" and fact.note.get("unit")
    )
    if adds and fold.prev is not None and fold.prev.note.get("unit") and fold.prev.value:
        total = fold.prev.value + value
        for row in fold.rows:
            if row.load_kg == fold.prev.value:
                row.load_kg = total
        fold.load = total if fold.load_said else fold.load
        return
    if fact.note.get("same"):
        known = [row.load_kg for row in fold.rows if row.load_kg is not None]
        if not known:
            if not fold.based and fold.block.loadable and fold.load is None:
                fold.ask("load_kg", fact)  # "4x5 with the same weight": as what was not told
                for row in fold.rows:
                    row.load_open = True
                fold.asked_load = fact
            return
        value = known[-1]
        for row in fold.last_group():
            if row.load_kg is None:
                row.load_kg = value
        fold.load, fold.load_said = value, True
        return
    further = fold.prev is not None and "more" in fold.prev.note.get("names", ()) and len(fold.last_group()) == 1
    if fact.note.get("none") and further and fold.group and not fold.based and fold.rows[-1].load_kg:
        fold.rows[-1].load_kg = 0.0  # "3x5 with 20, then 6 more bw"
        return
    right_behind = fold.prev is not None and fold.prev.kind in ("rows", "bare") and fold.prev.end == fact.start
    if fact.note.get("none") and right_behind and fold.group and fold.scope is None and not fold.based:
        for row in fold.last_group():
            row.load_kg = 0.0  # "with 20 kg 3x8, then one more of ten without weight"
        return
    if (
        fact.note.get("none")
        and fold.scope is None
        and fold.rows
        and all(r.load_kg is not None for r in fold.rows)
        and not fold.next_is("rows", "bare")
        and not (fold.next is not None and fold.next.note.get("mark") == ":")  # "15 kg: 5 5 5, bw: 10 8"
        and not (fold.next_is("effort") and fold.more_sets_follow(fact))
        and fold.link not in ("straight", "drop")
        and not (_told_after_break(fold, fact) and fold.more_sets_follow(fact))
    ):
        return
    helped = fold.assist is not None and fold.block.movement in HELPED and fact.note.get("unit")
    if helped and fold.rows and fold.next_is("sep") and fold.scope is None:
        for row in fold.rows:
            row.assist_kg = fold.assist if row.assist_kg is None else row.assist_kg
        fold.assist = value  # "10 kg of help: 2x1. 5 kg: 1"
        return
    if fold.mend and _mends_bare(fold, fact):
        fold.mend = False
        fold.rows.pop()
        fold.bares.pop()
        fold.group = fold.rows[-1].group
    if fold.mend:
        fold.mend = False
        for row in fold.rows:
            row.load_kg = value
        fold.load, fold.load_said = value, True
        return
    if fold.scope is not None and fold.rows:
        if fold.scope == "rest":
            for row in fold.rows:
                if not row.touched:
                    row.load_kg = value
            fold.scope = None
            return
        if _one_set_more(fold, fact):
            return
        rows = fold.scoped()
        if rows:
            for row in rows:
                row.load_kg = value
                row.touched = True
            fold.scope = None
            return
    if fold.based:
        if fold.next_is("rows") and not fact.note.get("none"):
            fold.load, fold.load_said = value, True
        for row in fold.rows:
            row.load_kg = value
        fold.load, fold.load_said = value, True
        return
    group = fold.last_group()
    if fold.prev is not None and fold.prev.kind == "rounds" and all(row.load_kg is None for row in fold.rows):
        for row in fold.rows:
            row.load_kg = value  # "3 every 90 seconds for 10 rounds at +15"
    if group and all(row.load_kg is None for row in group) and not fold.groups.get(fold.group):
        follows = fold.next is not None and fold.next.kind == "load" and not fold.next.note.get("none")
        if follows or fold.load_list:
            fold.load_list = [*fold.load_list, value]
            return
        open_rows = [
            row
            for row in fold.rows
            if row.load_kg is None and (row.group == fold.group or row.load_open or fold.same_list(row))
        ]
        if fold.plain_at is not None and _told_after_break(fold, fold.plain_at):
            open_rows = group  # "1 on the right, 0 on the left. Then 3x3 +30"
        listed = list_before(fold, fact) if len(open_rows) == len(group) else 0
        if _of_all_before(fold, fact):
            open_rows = [row for row in fold.rows if row.load_kg is None]
        if group[-1].linked and all(row.load_kg is None for row in fold.rows):
            open_rows = list(fold.rows)  # "5 5 4+1 at 25": a list, and what was done after a breath
        if listed >= LIST_OF_SETS or fold.by_ordinals:
            open_rows = [row for row in fold.rows if row.load_kg is None]
        elif listed == 2 and not fact.note.get("none") and fact.note.get("how") == "at":
            fold.ask("load_kg", fact)  # "a double and a single with 40": the single's, or both
            for row in fold.rows[-2:]:
                row.load_open = True
            return
        for row in open_rows:
            row.load_kg = value
            row.load_open = False
        return
    if fold.load_list:
        fold.load_list.append(value)
        return
    fold.load, fold.load_said = value, True
    # a second load and no sets for it
    if (
        group
        and not fold.more_follows(fact)
        and value not in (row.load_kg for row in group)
        and not fact.note.get("none")
    ):
        fold.second_load = fact


def _one_set_more(fold: FoldState, fact: Fact) -> bool:
    """ "3x5 at 20, felt good so added a fourth set at 22.5": as many reps again; else how many is asked."""
    group = fold.last_group()
    if fold.based or fold.scope != len(fold.rows) + 1 or len(group) < 2 or fold.more_follows(fact):
        return False
    reps = {row.reps for row in group}
    added = any(one.kind == "plan" and "sure" in one.note.get("names", ()) for one in fold.block.facts)
    fold.rows.append(replace(group[-1], load_kg=fact.value, rpe=None, group=fold.group + 1))
    fold.group, fold.scope = fold.group + 1, None
    if not added or len(reps) > 1:
        fold.ask("reps", fold.scope_fact or fact)
        fold.rows[-1].reps = None
    return True


def _told_after_break(fold: FoldState, sets: Fact) -> bool:
    """Whether a "then" or a new sentence parts these sets from those before."""
    before = [one for one in fold.block.facts[: fold.place(sets)] if one.kind != "word"]
    return bool(before) and before[-1].kind == "sep" and before[-1].value >= 2


def _mends_bare(fold: FoldState, fact: Fact) -> bool:
    """ "The belt had thirty, no, thirty two point five kilos on it": the number before was a load too."""
    before = [one for one in fold.block.facts[: fold.place(fact)] if one.kind != "sep"][-2:]
    told = bool(fold.bares) and len(fold.rows) > 1 and fold.bares[-1][1] is fold.rows[-1]
    return told and len(before) == 2 and before[1].kind == "mend" and before[0] is fold.bares[-1][0]


def _of_all_before(fold: FoldState, load: Fact) -> bool:
    """ "3 sets of 5 and 2 sets of 4, pull-ups with 15", "left 8 8 8 right 8 8 7 with 14 kg": of all that was told.

    The movement, or both sides, stand between the sets and their one load.
    """
    if any(row.load_kg is not None for row in fold.rows) or load.note.get("none"):
        return False
    facts = fold.block.facts[: fold.place(load)]
    work = [at for at, one in enumerate(facts) if one.kind in ("rows", "bare")]
    move = next((at for at, one in enumerate(facts) if one.kind == "move"), None)
    between = facts[move:] if move is not None else []
    if move is not None and work and work[-1] < move and all(one.kind in ("move", "word", "sep") for one in between):
        return True
    singles = facts[work[0] :] if work else []
    listed = (
        len(work) > 1
        and len(fold.rows) >= LIST_OF_SETS
        and all(
            (one.kind == "rows" and bool(one.note.get("one") or one.note.get("list")))
            or (one.kind == "sep" and one.note.get("mark") == ",")
            for one in singles
        )
    )
    if listed:
        return True  # "5 reps, 5 reps, 4 reps +20"
    sides = [one.value for one in facts if one.kind == "side"]
    lists = [one for one in facts if one.kind == "rows" and (one.note.get("list") or one.note.get("plain"))]
    told = [one for one in facts if not (one.kind == "sep" and one.value == 1)]
    return sorted(sides) == ["left", "right"] and len(lists) == 2 and told[-1] is lists[-1]


def list_before(fold: FoldState, load: Fact) -> int:
    """How many single sets, joined by commas and a last "and", the load closes: "a double, a double and a single
    with 40" has three. 0: none."""
    before = fold.block.facts[: next((i for i, f in enumerate(fold.block.facts) if f.start >= load.start), 0)]
    marks = [fact.note.get("mark") if fact.kind == "sep" else None for fact in before[-2::-2]]
    singles = 0
    for fact in before[-1::-2]:
        if fact.kind != "rows" or len(fact.value) != 1 or "own_load" in fact.note:
            break
        singles += 1
    told = marks[: singles - 1]
    return singles if singles > 1 and told[0] == "and" and set(told[1:]) <= {","} else 0


def denied(fold: FoldState, fact: Fact) -> bool:
    """ "With the red band, not the 15 kg stack"; "5 5 5 instead of 4"."""
    at = fold.place(fact)
    before = [one for one in fold.block.facts[max(0, at - 2) : at] if one.value != "the"]
    last = before[-1] if before else None
    if last is None or last.kind != "plan" or fold.based:
        return False
    told = "instead" in last.note.get("names", ()) and bool(fold.rows)
    return told or not little("not").isdisjoint(fold.span(last.start, last.end).lower().split()[:1])


def on_loads(fold: FoldState, fact: Fact) -> None:
    loads = fact.value
    if fold.rows and len(loads) == len(fold.rows):
        for row, kg in zip(fold.rows, loads, strict=True):
            row.load_kg = kg
        return
    group = fold.last_group()
    if len(loads) == len(group) and all(row.load_kg is None for row in group):
        for row, kg in zip(group, loads, strict=True):
            row.load_kg = kg  # "5 and 3 to warm up, then 3x3 with 20, 22.5, 25"
        return
    if fold.rows:
        fold.ask("load_kg", fact)
        for row in fold.rows:
            row.load_open = True
        return
    fold.waiting, fold.waiting_fact = list(loads), fact  # "20, 22.5 and 25 kg for a triple each"


def on_at(fold: FoldState, fact: Fact) -> None:
    if fact.note.get("spent"):
        return
    number, kg = fact.value
    group = fold.last_group()
    has_load = (bool(group) and group[-1].load_kg is not None) or (fold.load_said and not group) or fold.based
    has_load = has_load or fold.assist is not None  # "on the pulley, 12.5 off, 3x2 all @7.5"
    hold = bool(group) and group[-1].hold_s is not None
    free = not fold.block.loadable
    if fact.note.get("range") and over_all_told(fold, fact):
        fold.ask("rpe", fact)
        return
    if has_load or hold or free or fact.note.get("range"):
        on_effort(fold, Fact("effort", fact.start, fact.end, number))
        return
    added = len(fold.big_loads) == 1 and fold.big_loads[0].note.get("how") == "plus"
    if added and all(v <= 10 for v in fold.ats):
        on_effort(fold, Fact("effort", fact.start, fact.end, number))  # "5 @7, 5 @8. Chin-ups +20"
        return
    ramp = any(v > 10 for v in fold.ats) or fold.big_loads
    if ramp and kg is not None:
        on_load(fold, Fact("load", fact.start, fact.end, kg))
        return
    fold.ask("load_kg", fact)
    for row in group:
        row.load_open = True
    if not group:
        fold.asked_load = fact


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
