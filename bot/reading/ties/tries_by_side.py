"""One try on each side and what came of it: "ein Versuch pro Arm: links geklappt, rechts nicht"."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.bounds import clause_end
from bot.reading.facts import Entry, Fact
from bot.reading.little import little
from bot.reading.message import Message

TRY = 4  # facts of "one try each arm"
NUMBERS = frozenset({"rows", "bare", "load", "loads", "at", "count"})
SIDES = ("left", "right")


def tries_by_side(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts, with one set for each side that is told to have gone up or not, and none for the try itself."""
    for at, fact in enumerate(facts):
        if fact.kind != "scheme" or fact.value != "attempt":
            continue
        low, high = _one_each(facts, at)
        if high is None:
            continue
        told, end = _outcomes(message, facts, high)
        if {one.value for one in told if one.kind == "side"} == set(SIDES):
            loads = [one.value for one in facts[low:high] if one.kind == "load" and one.value]
            return [*facts[:low], *(_with(told, loads[0]) if loads else told), *facts[end:]]
    return facts


def _one_each(facts: Sequence[Fact], at: int) -> tuple[int, int | None]:
    """From where to where "one try each side" is told around the word for the try; None where it is not."""
    low = high = at
    while low > max(0, at - TRY) and _of_the_try(facts[low - 1]):
        low -= 1
    while high + 1 < min(len(facts), at + TRY) and _of_the_try(facts[high + 1]):
        high += 1
    around = facts[low : high + 1]
    once = [fact for fact in around if _once(fact)]
    each = [fact for fact in around if fact.kind == "side" and fact.value == "each"]
    parted = high + 1 < len(facts) and facts[high + 1].kind == "sep"
    return (low, high + 1) if once and each and parted else (low, None)


def _of_the_try(fact: Fact) -> bool:
    return _once(fact) or (fact.kind == "side" and fact.value == "each") or fact.kind == "load"


def _once(fact: Fact) -> bool:
    return _is_one(fact) or (fact.kind == "repeat" and fact.value == 1)


def _with(told: Sequence[Fact], load: float) -> list[Fact]:
    """The outcomes, each of a try with that load."""
    out: list[Fact] = []
    for fact in told:
        if fact.kind in ("rows", "fail"):
            went = fact.kind == "rows"
            entry = Entry(1 if went else 0, load_kg=load)
            out.append(Fact("rows", fact.start, fact.end, [entry], {"one": True, "reps": True, "own_load": load}))
        if fact.kind != "rows":
            out.append(fact)
    return out


def _outcomes(message: Message, facts: Sequence[Fact], start: int) -> tuple[list[Fact], int]:
    """The clauses from `start` on that begin with a side and say how its try went, each as a set."""
    told: list[Fact] = []
    at = end = start
    while at < len(facts):
        while at < len(facts) and facts[at].kind == "sep":
            at += 1
        stop = clause_end(facts, at)
        clause = facts[at:stop]
        sides = [fact for fact in clause if fact.kind == "side"]
        if len(sides) != 1 or sides[0].value not in SIDES:
            break
        outcome = _outcome(message, clause)
        if outcome is None:
            break
        told += [Fact("sep", facts[at - 1].start, facts[at - 1].end, 1, {"mark": ","}), sides[0], outcome]
        at = end = stop
    return told, end


def _outcome(message: Message, clause: Sequence[Fact]) -> Fact | None:
    """What came of a try: one repetition, a miss, or None where that is not said plainly."""
    if any(fact.kind in NUMBERS and not _is_one(fact) for fact in clause):
        return None
    first, last = clause[0].start, clause[-1].end
    said = {token.text for token in message.tokens[first:last]}
    yes = any(fact.note.get("name") == "yes" for fact in clause) or said & little("try_went")
    names = {name for fact in clause for name in fact.note.get("names", ())}
    missed = any(fact.kind == "fail" and fact.note.get("name") != "yes" for fact in clause)
    if missed or names & {"not_this", "skipped"} or said & little("try_did_not"):
        return Fact("fail", first + 1, last)
    got = any(fact.kind == "scheme" and fact.value == "got" for fact in clause) or any(map(_is_one, clause))
    if yes or got or names & {"done", "by", "fine"}:
        return Fact("rows", first + 1, last, [Entry(1)], {"one": True, "reps": True})
    return None


def _is_one(fact: Fact) -> bool:
    return (fact.kind == "bare" and fact.value == 1) or (fact.kind == "rows" and fact.value == [Entry(1)])
