"""A weight that was wanted and another that there was: "wanted to use 22.5, only had 20"."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from bot.reading.facts import Fact
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.plan.ground import plan_names

LEAST = 5  # kg
FAR_OFF = 2  # so many times as heavy as the other, neither stands for it
WISHED = frozenset({"wanted", "ahead", "planned"})
NUMBERS = frozenset({"rows", "bare", "load", "loads", "count", "at", "effort", "efforts", "scope", "left"})


def made_do(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts, the weight that there was as the load of the sets told."""
    if message.context.today or not any(fact.kind == "rows" and len(fact.value) > 1 for fact in facts):
        return facts
    loads = [fact for fact in facts if fact.kind == "load"]
    bounds = [-1, *(at for at, fact in enumerate(facts) if fact.kind == "sep" or _turns(fact)), len(facts)]
    clauses = [(cut, facts[low + 1 : cut]) for low, cut in pairwise(bounds)]
    numbered = [clause for clause in clauses if any(fact.kind in NUMBERS for fact in clause[1])]
    for (cut, wish), (_, had) in pairwise(numbered):
        wanted, there = _weight(wish), _weight(had)
        if wanted is None or there is None or not _wished(message, wish) or not _to_be_had(message, facts[cut], had):
            continue
        if any(one not in (wanted, there) for one in loads):
            continue
        light, heavy = sorted((_kg(wanted), _kg(there)))
        if light < LEAST or heavy > FAR_OFF * light:
            continue
        load = Fact("load", there.start, there.end, _kg(there), {"how": "at", "unit": "kg"})
        return [load if one is there else one for one in facts]
    return facts


def _turns(fact: Fact) -> bool:
    """The "but only" between two clauses."""
    got = fact.kind == "scheme" and fact.value == "got"
    return fact.end - fact.start > 1 and (got or (fact.kind == "plan" and "only" in plan_names(fact)))


def _kg(fact: Fact) -> float:
    return float(fact.note.get("kg", fact.value))


def _weight(clause: Sequence[Fact]) -> Fact | None:
    """The one number of a clause, where it can be a weight."""
    told = [one for one in clause if one.kind in NUMBERS]
    return told[0] if len(told) == 1 and told[0].kind in ("bare", "load") and told[0].value else None


def _wished(message: Message, clause: Sequence[Fact]) -> bool:
    """Whether a clause speaks of what was wanted."""
    start, end = clause[0].start, clause[-1].end
    grammar = message.beginning("grammar")[start:end]
    return any(hit.table == "unreal" and hit.name in WISHED for found in grammar for hit in found)


def _to_be_had(message: Message, turn: Fact, clause: Sequence[Fact]) -> bool:
    """Whether a clause says that only so much was there."""
    words = {token.text for token in message.tokens[clause[0].start : clause[-1].end]}
    only = _turns(turn) or any("only" in plan_names(one) for one in clause if one.kind == "plan")
    return only and bool(words & little("to_be_had"))
