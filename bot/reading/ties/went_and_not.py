"""One load went up, the next did not: "47.5 kg went up, 50 did not", "single with 40 good, with 42.5 it didn't"."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.facts import Entry, Fact
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.plan.ground import plan_names

NUMBERS = frozenset({"rows", "bare", "load", "loads", "at", "count", "rounds"})
DENIAL = 3  # tokens of "it did not"


def went_and_not(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts, with a single that went up and one that did not, where one of the two numbers is a load for sure."""
    bounds = [-1, *(at for at, fact in enumerate(facts) if fact.kind == "sep"), len(facts)]
    for low, cut, high in zip(bounds, bounds[1:], bounds[2:], strict=False):
        went, missed = list(facts[low + 1 : cut]), list(facts[cut + 1 : high])
        if not missed or facts[cut].value == 3 or not _denied(message, missed) or not _went(message, went):
            continue
        ends = high == len(facts) or facts[high].value == 3
        if not ends and any(fact.kind in NUMBERS for fact in facts[high + 1 :]):
            continue  # "+45 yes, +50 no, +47.5 yes": a row of tries
        first, second = _load(went), _load(missed)
        sure = any(fact.kind in ("load", "rows") for fact in (*went, *missed))
        if first is None or second is None or not sure or second <= first:
            continue
        singles = [_single(went, first, 1), _single(missed, second, 0)]
        kept = [[fact for fact in one if fact.kind in ("move", "side", "claim")] for one in (went, missed)]
        return [*facts[: low + 1], *kept[0], singles[0], facts[cut], *kept[1], singles[1], *facts[high:]]
    return facts


def _denied(message: Message, clause: Sequence[Fact]) -> bool:
    """Whether a clause ends in "did not", "nicht"."""
    last = message.tokens[max(clause[0].start, clause[-1].end - DENIAL) : clause[-1].end]
    texts = [token.text for token in last]
    if not texts or (texts[-1] not in little("did_not") and "not_this" not in plan_names(clause[-1])):
        return False
    return not any(fact.kind == "fail" and not fact.note.get("weak") for fact in clause)


def _went(message: Message, clause: Sequence[Fact]) -> bool:
    """Whether a clause says that a weight went up."""
    said = {token.text for fact in clause for token in message.tokens[fact.start : fact.end]}
    names = set().union(*(plan_names(fact) for fact in clause)) if clause else set()
    return bool(said & (little("try_went", "went_up", "it_went")) or names & {"done", "by", "fine"})


def _load(clause: Sequence[Fact]) -> float | None:
    """The one load of a clause, with a single or without; None where other numbers are told."""
    told = [fact for fact in clause if fact.kind in NUMBERS]
    singles = [fact for fact in told if _one(fact)]
    loads = [fact for fact in told if fact.kind in ("load", "bare") and fact.value and fact not in singles]
    if len(loads) != 1 or len(loads) + len(singles) != len(told) or len(singles) > 1:
        return None
    return float(loads[0].note.get("kg", loads[0].value) if loads[0].kind == "bare" else loads[0].value)


def _one(fact: Fact) -> bool:
    """ "A single", "una"."""
    if fact.kind == "bare":
        return bool(fact.note.get("spelled")) and fact.value == 1
    return fact.kind == "rows" and len(fact.value) == 1 and fact.value[0].reps == 1


def _single(clause: Sequence[Fact], load: float, reps: int) -> Fact:
    told = [fact for fact in clause if fact.kind in NUMBERS]
    note = {"one": True, "reps": True, "own_load": load}
    return Fact("rows", told[0].start, told[-1].end, [Entry(reps, load_kg=load)], note)
