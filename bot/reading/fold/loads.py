"""Loads find their sets: before the first for all that follow, after a set for that set.

A load is met by rules in their order (`RULES`); the first that it fits says whose it is.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import replace

from bot.reading.bounds import is_comma, is_strong
from bot.reading.facts import Fact
from bot.reading.fold.efforts import on_effort, over_all_told
from bot.reading.fold.rows import Row
from bot.reading.fold.state import FoldState
from bot.reading.little import little

HELPED = frozenset({"one_arm_counterweight", "band_pull_up"})
LIST_OF_SETS = 3  # so many with one load at the end are a list


def on_load(fold: FoldState, fact: Fact) -> None:
    if fact.note.get("spent") or denied(fold, fact):
        return
    for fits in RULES:
        if fits(fold, fact):
            return


def _added_up(fold: FoldState, fact: Fact) -> bool:
    """ "3x5 with 20 kg +2.5 kg": both are on the belt."""
    first = fold.prev
    adds = first is not None and first.kind == "load" and fact.note.get("how") == "plus" and fact.note.get("unit")
    if not adds or first is None or not first.note.get("unit") or not first.value:
        return False
    total = first.value + fact.value
    for row in fold.rows:
        if row.load_kg == first.value:
            row.load_kg = total
    fold.load = total if fold.load_said else fold.load
    return True


def _same_again(fold: FoldState, fact: Fact) -> bool:
    """ "5x3 with 20, then 4 with the same": as the newest load; where none is told, it is asked."""
    if not fact.note.get("same"):
        return False
    known = [row.load_kg for row in fold.rows if row.load_kg is not None]
    if known:
        for row in fold.last_group():
            row.load_kg = known[-1] if row.load_kg is None else row.load_kg
        fold.load, fold.load_said = known[-1], True
    elif not fold.based and fold.block.loadable and fold.load is None:
        fold.ask("load_kg", fact)  # "4x5 with the same weight": as what was not told
        for row in fold.rows:
            row.load_open = True
        fold.asked_load = fact
    return True


def _none_for_the_newest(fold: FoldState, fact: Fact) -> bool:
    """ "3x5 with 20, then 6 more bw", "with 20 kg 3x8, then one more of ten without weight"."""
    if not fact.note.get("none") or not fold.group or fold.based or fold.prev is None:
        return False
    group = fold.last_group()
    further = "more" in fold.prev.note.get("names", ()) and len(group) == 1 and bool(fold.rows[-1].load_kg)
    right_behind = fold.prev.kind in ("rows", "bare") and fold.prev.end == fact.start and fold.scope is None
    for row in fold.rows[-1:] if further else group if right_behind else ():
        row.load_kg = 0.0
    return further or right_behind


def _none_of_all(fold: FoldState, fact: Fact) -> bool:
    """No weight, said behind sets that all have theirs and of none that follow: of something else."""
    if not fact.note.get("none") or fold.scope is not None or not fold.rows or fold.link in ("straight", "drop"):
        return False
    if any(row.load_kg is None for row in fold.rows) or fold.next_is("rows", "bare"):
        return False
    if fold.next is not None and fold.next.note.get("mark") == ":":
        return False  # "15 kg: 5 5 5, bw: 10 8"
    heads = fold.next_is("effort") or _told_after_break(fold, fact)
    return not (heads and fold.more_sets_follow(fact))


def _other_help(fold: FoldState, fact: Fact) -> bool:
    """ "10 kg of help: 2x1. 5 kg: 1"."""
    helped = fold.assist is not None and fold.block.movement in HELPED and fact.note.get("unit")
    if not helped or not fold.rows or not fold.next_is("sep") or fold.scope is not None:
        return False
    for row in fold.rows:
        row.assist_kg = fold.assist if row.assist_kg is None else row.assist_kg
    fold.assist = fact.value
    return True


def _mended(fold: FoldState, fact: Fact) -> bool:
    """ "5x3 with 20, no, 22.5"."""
    if not fold.mend:
        return False
    fold.mend = False
    if _mends_bare(fold, fact):
        fold.rows.pop()
        fold.bares.pop()
        fold.group = fold.rows[-1].group
        return False
    for row in fold.rows:
        row.load_kg = fact.value
    fold.load, fold.load_said = fact.value, True
    return True


def _of_the_rest(fold: FoldState, fact: Fact) -> bool:
    """ "The first with 20, the rest with 15"."""
    if fold.scope != "rest" or not fold.rows:
        return False
    for row in fold.rows:
        if not row.touched:
            row.load_kg = fact.value
    fold.scope = None
    return True


def _of_sets_named(fold: FoldState, fact: Fact) -> bool:
    """ "The last two with 15"."""
    rows = fold.scoped()
    for row in rows:
        row.load_kg, row.touched = fact.value, True
    if rows:
        fold.scope = None
    return bool(rows)


def _of_what_was_planned(fold: FoldState, fact: Fact) -> bool:
    """ "As planned but with 15"."""
    if not fold.based:
        return False
    for row in fold.rows:
        row.load_kg = fact.value
    fold.load, fold.load_said = fact.value, True
    return True


def _of_the_sets_before(fold: FoldState, fact: Fact) -> bool:
    """ "5x3 with 20": of the sets told last, where they have no load; of the whole list that it closes."""
    group = fold.last_group()
    if fold.prev is not None and fold.prev.kind == "rounds" and all(row.load_kg is None for row in fold.rows):
        for row in fold.rows:
            row.load_kg = fact.value  # "3 every 90 seconds for 10 rounds at +15"
    if not group or any(row.load_kg is not None for row in group) or fold.groups.get(fold.group):
        return False
    follows = fold.next is not None and fold.next.kind == "load" and not fold.next.note.get("none")
    if follows or fold.load_list:
        fold.load_list = [*fold.load_list, fact.value]
        return True
    rows = _without_load(fold, group)
    listed = list_before(fold, fact) if len(rows) == len(group) else 0
    all_open = [row for row in fold.rows if row.load_kg is None]
    if listed == 2 and not fold.by_ordinals and not fact.note.get("none") and fact.note.get("how") == "at":
        fold.ask("load_kg", fact)  # "a double and a single with 40": the single's, or both
        for row in fold.rows[-2:]:
            row.load_open = True
        return True
    breath = group[-1].linked and len(all_open) == len(fold.rows)  # "5 5 4+1 at 25": a list, and a breath in it
    for row in all_open if listed >= LIST_OF_SETS or fold.by_ordinals or breath or _of_all_before(fold, fact) else rows:
        row.load_kg, row.load_open = fact.value, False
    return True


def _without_load(fold: FoldState, group: Sequence[Row]) -> Sequence[Row]:
    """The sets told last, and those whose load was asked or that stand in one list with them."""
    if fold.plain_at is not None and _told_after_break(fold, fold.plain_at):
        return group  # "1 on the right, 0 on the left. Then 3x3 +30"
    return [
        row
        for row in fold.rows
        if row.load_kg is None and (row.group == fold.group or row.load_open or fold.same_list(row))
    ]


def _one_more_of_loads(fold: FoldState, fact: Fact) -> bool:
    """ "5x3 with 20, 22.5 and 25"."""
    if not fold.load_list:
        return False
    fold.load_list.append(fact.value)
    return True


def _of_what_is_told_next(fold: FoldState, fact: Fact) -> bool:
    group = fold.last_group()
    fold.load, fold.load_said = fact.value, True
    other = fact.value not in (row.load_kg for row in group)
    if group and not fold.more_follows(fact) and other and not fact.note.get("none"):
        fold.second_load = fact  # a second load and no sets for it
    return True


def _one_set_more(fold: FoldState, fact: Fact) -> bool:
    """ "3x5 at 20, felt good so added a fourth set at 22.5": as many reps again; else how many is asked."""
    group = fold.last_group()
    if fold.based or not fold.rows or fold.scope != len(fold.rows) + 1 or len(group) < 2 or fold.more_follows(fact):
        return False
    reps = {row.reps for row in group}
    added = any(one.kind == "plan" and "sure" in one.note.get("names", ()) for one in fold.block.facts)
    most = max((row.reps or 0 for row in group), default=0)
    if fact.note.get("how") == "at" and not fact.note.get("unit") and fact.value in range(1, most + 1):
        many = int(fact.value)  # "5 5 4, plus a fourth set with 3": nobody tells such a load and no reps
        fold.rows.append(replace(group[-1], reps=many, rpe=None, group=fold.group + 1))
        fold.group, fold.scope = fold.group + 1, None
        return True
    fold.rows.append(replace(group[-1], load_kg=fact.value, rpe=None, group=fold.group + 1))
    fold.group, fold.scope = fold.group + 1, None
    if not added or len(reps) > 1:
        fold.ask("reps", fold.scope_fact or fact)
        fold.rows[-1].reps = None
    return True


def _told_after_break(fold: FoldState, sets: Fact) -> bool:
    """Whether a "then" or a new sentence parts these sets from those before."""
    before = [one for one in fold.block.facts[: fold.place(sets)] if one.kind != "word"]
    return bool(before) and is_strong(before[-1])


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
    told = [one for one in facts if not is_comma(one)]
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


def _of_other_sets(fold: FoldState, load: Fact, fact: Fact) -> bool:
    """ "2 sets of 5 at 10, three sets of 3 +15": the load stands right behind sets told after that number."""
    at = fold.place(load)
    before = fold.block.facts[at - 1] if at else None
    sign = fold.span(fact.start, fact.end).startswith("@")
    return before is not None and before.kind == "rows" and before.start >= fact.end and not sign


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
    planned = kg is not None and kg in fold.block.planned_kg and not fold.span(fact.start, fact.end).startswith("@")
    if planned and not fold.rows and not has_load and kg:
        on_load(fold, Fact("load", fact.start, fact.end, kg))  # "dips at 10: 8 8 7" of dips planned with 10
        return
    if has_load or hold or free or fact.note.get("range"):
        on_effort(fold, Fact("effort", fact.start, fact.end, number))
        return
    added = len(fold.big_loads) == 1 and fold.big_loads[0].note.get("how") == "plus"
    added = added and not _of_other_sets(fold, fold.big_loads[0], fact)
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


RULES: tuple[Callable[[FoldState, Fact], bool], ...] = (
    _added_up,
    _same_again,
    _none_for_the_newest,
    _none_of_all,
    _other_help,
    _mended,
    _of_the_rest,
    _one_set_more,
    _of_sets_named,
    _of_what_was_planned,
    _of_the_sets_before,
    _one_more_of_loads,
    _of_what_is_told_next,
)
