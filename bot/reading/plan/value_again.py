"""The one value of a planned lift told again and called fine: "hangs 20 sec each arm all good" are all of them."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.bounds import clause_end
from bot.reading.facts import Fact
from bot.reading.fold.rows import Row
from bot.reading.message import Message
from bot.reading.plan.ground import members, plan_names

FINE = frozenset({"fine", "done", "planned"})
BESIDE = frozenset({"move", "rows", "side", "word", "plan"})


def value_again(_message: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> Sequence[Fact]:
    """The facts, with "as planned" in place of a value that repeats the plan's for every set of the lift named."""
    out = list(facts)
    starts = [0, *(at + 1 for at, fact in enumerate(facts) if fact.kind == "sep")]
    for start in reversed(starts):
        end = clause_end(facts, start)
        told = next((at for at in range(start, end) if facts[at].kind == "rows"), None)
        if told is None or not _repeats(facts[start:end], facts[told], rows):
            continue
        behind = facts[end + 1 :]
        closes = clause_end(behind)
        if any(plan_names(fact) & FINE for fact in facts[start:end]) or _only_fine(behind[:closes]):
            out[told] = Fact("plan", facts[told].start, facts[told].end, "planned", {"names": ["planned"]})
    return out


def _only_fine(clause: Sequence[Fact]) -> bool:
    return len(clause) == 1 and bool(plan_names(clause[0])) and plan_names(clause[0]) <= FINE


def _repeats(clause: Sequence[Fact], told: Fact, rows: Sequence[Row]) -> bool:
    """Whether a clause names one lift and a single value, with its unit, that all its planned sets have."""
    moves = [fact for fact in clause if fact.kind == "move"]
    if len(moves) != 1 or len(told.value) != 1 or sum(fact.kind == "rows" for fact in clause) > 1:
        return False
    if any(fact.kind not in BESIDE or (fact.kind == "side" and fact.value != "each") for fact in clause):
        return False
    if any(plan_names(fact) - FINE - {"the"} for fact in clause) or told.note.get("one") is None:
        return False
    own = [row for row in rows if row.movement in members(moves[0].value)]
    entry = told.value[0]
    plain = entry.load_kg is None and entry.ask is None and entry.side is None
    return plain and len(own) > 1 and all((row.reps, row.hold_s) == (entry.reps, entry.hold_s) for row in own)
