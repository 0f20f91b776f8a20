"""Feats told without a number: "one-arm pull-up: right done, left not", "got the muscle-up today!"."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.bounds import clause_end, clause_start
from bot.reading.facts import Entry, Fact
from bot.reading.little import little
from bot.reading.message import Message

ONE_ARM_FEATS = frozenset({"one_arm_pull_up", "one_arm_chin_up"})
FEATS = frozenset({"muscle_up", "ring_muscle_up"})
NUMBERS = ("rows", "bare", "count", "repeat", "ask", "load", "loads", "rounds", "at")
SAID = ("scope", "side", "fail", "mend")
BETWEEN = 2  # facts between "got" and the feat: "me salió, por fin, el"


def feats_told(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts, with one repetition, or none, of a feat that is told to have gone up or not."""
    return _then_another(message, _at_all(_by_side(facts)))


def _then_another(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "First clean muscle-up! Then another": the one told before a further one."""
    moves = [at for at, fact in enumerate(facts) if fact.kind == "move"]
    if len(moves) != 1 or facts[moves[0]].value.movement not in FEATS:
        return facts
    at = moves[0]
    low = clause_start(facts, at)
    end = clause_end(facts, at + 1)
    told = [fact for fact in facts[:end] if not _is_one(fact)]
    went = any(map(_went_up, told)) or any(fact.kind == "scope" and fact.value == "first" for fact in facts[low:at])
    if not went or any(fact.kind in NUMBERS or fact.kind == "fail" for fact in told):
        return facts
    first = next((n for n in range(end, len(facts)) if facts[n].kind in NUMBERS), None)
    if first is None or not _one_more(message, facts, first):
        return facts
    one = Fact("rows", facts[at].start, facts[at].end, [Entry(1)], {"one": True, "reps": True})
    kept = [fact for fact in facts[:end] if fact.kind != "scope"]
    return [*kept, one, *facts[end:]]


def _one_more(message: Message, facts: Sequence[Fact], at: int) -> bool:
    """Whether one repetition stands here, and "another" before it, or so many "more"."""
    fact = facts[at]
    if fact.kind == "rows" and fact.note.get("more") and all(one == Entry(1) for one in fact.value):
        return True
    single = fact.kind == "rows" and fact.value == [Entry(1)]
    return (single or _is_one(fact)) and fact.start > 0 and message.tokens[fact.start - 1].text in little("another")


def _at_all(facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "Por fin me salió el muscle up!", "got the muscle-up today": one of them."""
    moves = [at for at, fact in enumerate(facts) if fact.kind == "move"]
    if len(moves) != 1 or facts[moves[0]].value.movement not in FEATS or any(map(_tells_more, facts)):
        return facts
    at = moves[0]
    low = at
    while low > max(0, at - BETWEEN) and facts[low - 1].kind in ("word", "plan", "scheme"):
        low -= 1
    if not any(map(_went_up, [*facts[low:at], *facts[at + 1 : at + 2]])):
        return facts
    one = Fact("rows", facts[at].start, facts[at].end, [Entry(1)], {"one": True, "reps": True})
    kept = [fact for fact in facts if not _is_one(fact)]
    place = kept.index(facts[at]) + 1
    return [*kept[:place], one, *kept[place:]]


def _tells_more(fact: Fact) -> bool:
    """Whether a number, a set or a question is told besides."""
    asks = fact.kind == "sep" and fact.note.get("mark") == "?"
    return asks or fact.kind in SAID or (fact.kind in NUMBERS and not _is_one(fact))


def _is_one(fact: Fact) -> bool:
    return fact.kind == "bare" and fact.value == 1


def _went_up(fact: Fact) -> bool:
    return (fact.kind == "scheme" and fact.value == "got") or "done" in fact.note.get("names", ())


def _by_side(facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "One-arm pull-up: right done, left not": one repetition, or none, where no number is told."""
    if any(fact.kind in ("rows", "bare", "count", "repeat", "ask") for fact in facts):
        return facts
    if not any(fact.kind == "move" and fact.value.movement in ONE_ARM_FEATS for fact in facts):
        return facts
    out: list[Fact] = []
    for at, fact in enumerate(facts):
        before = facts[at - 1] if at else None
        if before is not None and before.kind == "word" and before.value in little("went_me") and at > 1:
            before = facts[at - 2]  # "la derecha me salió"
        if before is not None and before.kind == "side" and before.value in ("left", "right"):
            names = fact.note.get("names", ())
            if "not_this" in names or fact.note.get("name") == "no":
                fact = Fact("fail", fact.start, fact.end)
            elif (fact.kind == "scheme" and fact.value == "got") or {"done", "by"} & set(names):
                out.append(Fact("rows", fact.start, fact.end, [Entry(1)], {"one": True, "reps": True}))
        out.append(fact)
    return out
