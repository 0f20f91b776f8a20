"""Planned sets as one clause changes them."""

from __future__ import annotations

from bot.reading.fold.block import fold_block
from bot.reading.fold.rows import Row
from bot.reading.message import Message
from bot.reading.plan.clauses import Clause
from bot.reading.plan.fitting import fill, fit
from bot.reading.plan.ground import GLOBAL
from bot.reading.reading import Ask


def change(message: Message, rows: list[Row], targets: list[int], clause: Clause, asks: list[Ask]) -> list[Row] | None:
    """The target rows as the clause changes them."""
    base = [rows[at] for at in targets]
    facts = clause.facts
    scoped = [f for f in facts if f.kind == "scope"]
    movement = base[0].movement if base else None
    stated = [f for f in facts if f.kind == "rows" and not f.note.get("the")]
    bare = [f for f in facts if f.kind == "bare"]
    move = next((f for f in facts if f.kind == "move"), None)
    if stated and (not [f for f in scoped if f.value != "all"] or len(stated[0].value) > 1):
        side = next((f.value for f in facts if f.kind == "side" and f.value in ("left", "right")), None)
        if len(stated) == 1 and len(stated[0].value) == 1 and stated[0].note.get("one"):
            whole = clause.names & {"every"} or any(f.value == "all" for f in scoped)
            if whole or side is not None:
                for row in base:
                    if side is None or row.side == side:
                        row.reps = stated[0].value[0].reps
                return base
        if (
            len(stated[0].value) == 1
            and stated[0].note.get("one")
            and clause.names & GLOBAL
            and len(base) > 1
            and len(stated) == 1
        ):
            asks.append(Ask("sets", message.span(stated[0].start, stated[0].end)))
            return base
        folded = fold_block(message, movement, facts, move)
        asks += folded.asks
        return fit(folded.rows, base, stated) if folded.rows else None
    order = {"scope": 0, "side": 1}
    facts = sorted(facts, key=lambda fact: order.get(fact.kind, 2))
    facts = [f for f in facts if not (f.kind == "rows" and f.note.get("the"))]
    if len([f for f in facts if f.kind == "side"]) > 2 and len(bare) > 2:
        folded = fold_block(message, movement, clause.facts, move)
        asks += folded.asks
        for at, row in enumerate(folded.rows):
            fill(row, base[min(at, len(base) - 1)])
        return folded.rows
    by_side = next((f.value for f in facts if f.kind == "side" and f.value in ("left", "right")), None)
    if by_side is not None and not [f for f in scoped if f.value != "all"]:
        counted = next((f.value for f in facts if f.kind == "count"), None)
        if counted is not None:
            own = [row for row in base if row.side == by_side][:counted]
            return [row for row in base if row.side != by_side or any(row is one for one in own)]
        if bare or any(f.kind == "instead" for f in facts):
            own = [row for row in base if row.side == by_side]
            rest = [f for f in facts if f.kind not in ("side", "scope")]
            if bare:
                for row in own:
                    row.reps = int(bare[-1].value) if row.reps is not None else row.reps
                return base
            folded = fold_block(message, movement, rest, None, None, own)
            for old, new in zip(own, folded.rows, strict=False):
                old.reps, old.load_kg, old.hold_s = new.reps, new.load_kg, new.hold_s
            return base
    folded = fold_block(message, movement, facts, None, None, base)
    asks += folded.asks
    return folded.rows
