"""Planned sets as one clause changes them."""

from __future__ import annotations

from dataclasses import replace

from bot.reading.facts import Fact
from bot.reading.fold.block import fold_block
from bot.reading.fold.rows import Row
from bot.reading.message import Message
from bot.reading.plan.choosing import addressed
from bot.reading.plan.clauses import Clause
from bot.reading.plan.fitting import fill, fit
from bot.reading.plan.ground import GLOBAL
from bot.reading.plan.value import apply
from bot.reading.reading import Ask

PLAIN = frozenset({"bare", "load", "instead", "delta"})
STRUCTURE = frozenset("loads count fail assist percent at efforts effort_range link scheme".split())
NO_SCHEME = ("got",)  # "did", "were": they say nothing of how the sets were done


def change(message: Message, rows: list[Row], targets: list[int], clause: Clause, asks: list[Ask]) -> list[Row] | None:
    """The target rows as the clause changes them."""
    base = [rows[at] for at in targets]
    facts = [f for f in clause.facts if not (f.kind == "rows" and f.note.get("the"))]
    scoped = [f for f in facts if f.kind == "scope" and f.value != "all"]
    whole = bool(clause.names & {"every", "all_lifts"}) or any(f.kind == "scope" and f.value == "all" for f in facts)
    side = next((f.value for f in facts if f.kind == "side" and f.value in ("left", "right")), None)
    sides = [f for f in facts if f.kind == "side"]
    stated = [f for f in facts if f.kind == "rows"]
    if side is not None and len(sides) == 1 and not scoped:
        told = _one_side(base, side, facts)
        if told is not None:
            return told
    single = [f for f in facts if f.kind in PLAIN or (f.kind == "rows" and len(f.value) == 1 and not f.note.get("top"))]
    others = [f for f in facts if f.kind in STRUCTURE and f.value not in NO_SCHEME and f not in single]
    others += [f for f in stated if f not in single]
    drop = [f for f in others if f.kind == "link" and f.value == "drop"]
    if len(single) == 1 and not [f for f in others if f not in drop] and len(sides) < 2 and base:
        where = addressed(base, scoped[-1].value if scoped else None, side)
        if not where:
            asks.append(Ask("sets", message.span(scoped[-1].start, scoped[-1].end)) if scoped else _all_of_it(message))
            return base
        verb = bool(drop) or "turned_to" in clause.names
        sure = bool(scoped) or whole or (side is not None)
        if apply(message, single[0], where, clause, asks, verb=verb, sure=sure):
            left = [f for f in facts if f is not single[0]]
            if any(f.kind == "effort" for f in left):
                return fold_block(message, base[0].movement, left, None, None, base).rows
            return base
    move = next((f for f in clause.facts if f.kind == "move"), None)
    movement = base[0].movement if base else None
    if stated and (not scoped or len(stated[0].value) > 1):
        one = len(stated) == 1 and len(stated[0].value) == 1 and stated[0].note.get("one")
        if one and clause.names & GLOBAL and len(base) > 1:
            asks.append(Ask("sets", message.span(stated[0].start, stated[0].end)))
            return base
        folded = fold_block(message, movement, clause.facts, move)
        asks += folded.asks
        return fit(folded.rows, base, stated) if folded.rows else None
    if len(sides) > 2 and len([f for f in facts if f.kind == "bare"]) > 2:
        folded = fold_block(message, movement, clause.facts, move)
        asks += folded.asks
        for at, row in enumerate(folded.rows):
            fill(row, base[min(at, len(base) - 1)])
        return folded.rows
    order = {"scope": 0, "side": 1}
    folded = fold_block(message, movement, sorted(facts, key=lambda f: order.get(f.kind, 2)), None, None, base)
    asks += folded.asks
    return folded.rows


def _all_of_it(message: Message) -> Ask:
    return Ask("sets", message.text.strip()[:80])


def _one_side(base: list[Row], side: str, facts: list[Fact]) -> list[Row] | None:
    """ "right 2 2 1", "only two sets on the left": the sets of one side; None where the clause says something else."""
    own = [row for row in base if row.side == side]
    counted = next((f.value for f in facts if f.kind == "count"), None)
    if counted is not None:
        kept = own[:counted]
        return [row for row in base if row.side != side or any(row is one for one in kept)]
    lists = [f for f in facts if f.kind == "rows" and len(f.value) > 1]
    if (
        len(lists) != 1
        or len(lists[0].value) > len(own)
        or any(f.kind in STRUCTURE | {"bare", "load"} and f.value not in NO_SCHEME for f in facts)
    ):
        return None
    told = {id(row): entry for row, entry in zip(own, lists[0].value, strict=False)}
    out = []
    for row in base:
        if row.side != side:
            out.append(row)
        elif id(row) in told:
            entry = told[id(row)]
            out.append(replace(row, reps=entry.reps, hold_s=entry.hold_s, failed=entry.reps == 0))
    return out
