"""The planned load, and the one used: "22.5 felt heavy so I did 20"."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.bounds import is_then
from bot.reading.facts import Fact
from bot.reading.fold.rows import Row
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.plan.ground import plan_names
from bot.reading.plan.value import SAME_KG, near_load, near_reps


def too_heavy(_message: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> Sequence[Fact]:
    """ "22.5 felt heavy so I did 20": the planned load, and the one that was used."""
    told = [at for at, fact in enumerate(facts) if fact.kind in ("bare", "load", "rows", "count", "scope")]
    told = [at for at in told if not (facts[at].kind == "scope" and facts[at].value == "all" and at > told[0])]
    moves = [at for at, fact in enumerate(facts) if fact.kind == "move"]
    if len(moves) > 1 or (moves and told and moves[0] > told[0]):
        return facts
    if len(told) != 2 or any(facts[at].kind not in ("bare", "load") for at in told):
        return facts
    first, second = (facts[at].note.get("kg", facts[at].value) for at in told)
    planned = [row.load_kg for row in rows if row.load_kg and first and abs(row.load_kg - first) < SAME_KG]
    between = facts[told[0] + 1 : told[1]]
    used = any((f.kind == "scheme" and f.value == "got") or plan_names(f) & {"took", "only"} for f in between[-2:])
    spoken = any(fact.kind == "word" for fact in between)
    so = bool(between) and (str(between[-1].value) in little("so_then") or is_then(between[-1]))
    used = used or (spoken and so)
    if not planned or not second or not used or not spoken or not near_load(second, rows) or near_reps(second, rows):
        return facts
    took = Fact("plan", facts[told[1]].start, facts[told[1]].start, "took", {"names": ["took"], "outcome": True})
    return [*facts[: told[0]], *between, took, *facts[told[1] :]]
