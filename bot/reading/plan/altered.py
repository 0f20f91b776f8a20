"""Planned sets as a clause alters them, and sets told anew that a later clause alters again."""

from __future__ import annotations

from dataclasses import replace

from bot.reading.plan.adding import one_beyond
from bot.reading.plan.change import change
from bot.reading.plan.clauses import Clause
from bot.reading.plan.state import Told
from bot.reading.plan.value import near_load, near_reps

OF_ONE_MORE = {"the", "more", "extra_set", "by", "fine"}  # beside the load of a set that no word names


def alter(told: Told, clause: Clause, targets: list[int]) -> None:
    """The planned sets as the clause changes them; those told anew before, as it changes these."""
    rows = told.rows
    carried = [fact.value for fact in clause.facts if fact.kind == "load" and fact.value]
    if told.anew.get(targets[0]) and _loaded_again(told, clause, targets):
        told.ask("load_kg", clause)  # "3 sets with 15 and another with 10": of which set is not said
        return
    if told.anew.get(targets[0]) and not any(f.kind in ("rows", "count", "bare") for f in clause.facts):
        again = told.anew[targets[0]]
        changed = change(told.message, again, list(range(len(again))), clause, told.asks)
        if changed is not None:
            told.anew[targets[0]] = changed
        return
    changed = change(told.message, rows, targets, clause, told.asks)
    if changed is None:
        return
    listed = any(f.kind == "rows" for f in clause.facts)
    if listed and told.anew.get(targets[0]) and any(f.kind == "mend" for f in clause.facts):
        for at in targets:
            told.anew.pop(at, None)  # "8, 8, wait no 8, 7, 6": the list once more
    elif targets[0] in told.listed and _another_list(clause):
        told.anew[targets[0]] = [*(told.anew.get(targets[0]) or (rows[at] for at in targets)), *changed]
        for at in targets[1:]:
            told.anew[at] = []  # "8 8 7, then 10 10"
        return
    if listed and _another_list(clause, named=True):
        told.listed.add(targets[0])
    if len(changed) == len(targets) and all(
        new.movement in (None, rows[at].movement) for new, at in zip(changed, targets, strict=True)
    ):
        for new, at in zip(changed, targets, strict=True):
            rows[at] = replace(new, movement=rows[at].movement, part=rows[at].part)
        one_beyond(told, clause, targets)
        return
    told_before = bool(told.anew.get(targets[0])) and not clause.targets
    if told_before and listed and all(f.kind not in ("scope", "side", "count") for f in clause.facts):
        told.anew[targets[0]] += changed  # "2 sets of 3 and 3 sets of 2"
        return
    if listed and len(changed) < len(targets) and not told.up_to.isdisjoint(targets):
        told.ask("sets", clause)  # "fine up to set 4, there 2, 2 on set 5": not all that was done
    told.anew[targets[0]] = changed
    if len(carried) == 1:
        told.loads[targets[0]] = carried[0]
    for at in targets[1:]:
        told.anew[at] = []


def _another_list(clause: Clause, *, named: bool = False) -> bool:
    """Whether a clause is a list of sets, and nothing that says which of them."""
    lists = [fact for fact in clause.facts if fact.kind == "rows"]
    whole = len(lists) == 1 and lists[0].note.get("list") and not any(entry.side for entry in lists[0].value)
    other = any(fact.kind in ("scope", "side", "count", "mend", "instead", "bare", "fail") for fact in clause.facts)
    return bool(whole) and not other and (named or not (clause.targets or clause.names - {"the"}))


def _loaded_again(told: Told, clause: Clause, targets: list[int]) -> bool:
    """Whether sets told with one load get another, and no words say which of them."""
    valued = [fact for fact in clause.facts if fact.kind in ("load", "bare") and fact.value]
    if len(valued) != 1 or any(fact.kind in ("scope", "instead", "rows", "count") for fact in clause.facts):
        return False
    rows = [told.rows[at] for at in targets]
    kg = valued[0].note.get("kg", valued[0].value)
    if valued[0].kind == "bare" and (near_reps(valued[0].value, rows) or not near_load(kg, rows)):
        return False
    before = told.loads.get(targets[0])
    return before is not None and before != kg and clause.names <= OF_ONE_MORE and not clause.targets
