"""Work that the plan has not: another movement, or one in place of the planned one."""

from __future__ import annotations

from dataclasses import replace

from bot.reading.fold.block import fold_block
from bot.reading.plan.adding import change_added
from bot.reading.plan.choosing import main_rows
from bot.reading.plan.clauses import Clause
from bot.reading.plan.ground import GLOBAL
from bot.reading.plan.state import Said, Told
from bot.reading.reading import Ask
from planner.movements import movement

# Movements whose added load goes over to another of the same pattern.
LOADED = frozenset("pull_up chin_up neutral_grip_pull_up ring_pull_up dip ring_dip".split())


def other_work(told: Told, said: Said) -> bool:
    """Work that the plan has not: another movement, one more set; whether that is all that the clause says."""
    clause, names, rows = said.clause, said.names, told.rows
    if ("swap" in names or ("instead" in names and said.named)) and clause.outside and not said.values:
        put_in_place(told, clause.outside[0].value.movement, clause.targets or main_rows(rows))
        told.sticky, told.sticky_at = clause.targets, clause.sentence
        return True
    if "swap" in names and clause.outside and said.named:
        for at in clause.targets:
            told.keep[at] = False  # "swapped dips for push-ups 3x12"
    if "extra_set" in names:
        targets = clause.targets or main_rows(rows)
        told.added[targets[-1]] = [replace(rows[targets[-1]])]
        told.added_in = (targets[-1], clause.sentence)
        told.everything = told.everything or bool(names & {"done", "planned", "same", "fine"})
        if any(fact.kind != "bare" for fact in said.values):
            change_added(told, clause)
        return True
    if clause.outside and any(f.kind in ("rows", "bare") for f in clause.facts):
        move = clause.outside[0]
        folded = fold_block(told.message, move.value.movement, clause.facts, move)
        told.asks += folded.asks
        for row in folded.rows:
            row.movement = move.value.movement
        told.extra += folded.rows
        return True
    if clause.outside and not said.values and stands_for(told, clause):
        fact = clause.outside[0]
        told.asks.append(Ask("movement", told.message.span(fact.start, fact.end)))
        return True
    return False


def stands_for(told: Told, clause: Clause) -> bool:
    """ "As planned but did chin-ups": whether a movement that the plan has not may stand for one that it has."""
    spoken = any(one.sentence == clause.sentence and one.names & GLOBAL for one in told.clauses)
    new = clause.outside[0].value.movement
    patterns = {movement(row.movement).pattern for row in told.rows if row.movement and row.part != "warm_up"}
    return spoken and not new.startswith("?") and movement(new).pattern in patterns


def put_in_place(told: Told, new: str, where: list[int]) -> None:
    """Another movement in place of the planned one; its load goes over to one of the same pattern only."""
    for at in where:
        row = told.rows[at]
        if movement(new).pattern != movement(row.movement or new).pattern or not LOADED & {new, row.movement}:
            row.load_kg = 0.0
        row.movement = new
        told.keep[at] = True
