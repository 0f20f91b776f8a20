"""One set told twice: "worked up to a single at 45: 5@20, 3@30, 1@45", "… 1 at 30. The last single was a 9"."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from bot.reading.bounds import clause_end
from bot.reading.facts import Fact
from bot.reading.message import Message

LEAST_STEPS = 2  # sets on the way up to the one announced
LOADS = frozenset({"load", "at"})
LEAST_KG = 10  # of a "20x3" that is load by reps
BESIDE = frozenset({"move", "word", "plan", "weighted"})
CLOSED = (".", ":", "nl", ";")


def announced(_: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts without the top set announced, where the ladder that leads to it is told right behind."""
    first = next((n for n, fact in enumerate(facts) if _reps(fact)), None)
    if first is None:
        return facts
    end = clause_end(facts, first + 1)
    told = facts[first:end]
    top = _pairs(told)
    marked = end < len(facts) and facts[end].note.get("mark") in (*CLOSED, ",")
    if len(top) != 1 or not marked:
        return facts
    ladder = _pairs(facts[end:])
    rises = all(one[1] < other[1] for one, other in pairwise(ladder))
    if len(ladder) <= LEAST_STEPS or ladder[-1] != top[0] or not rises:
        return facts
    kept = [fact for fact in told if not _reps(fact) and fact.kind not in LOADS]
    return [*facts[:first], *kept, *facts[end:]]


def heads_ladder(_: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "Worked up to a single on pull-ups: 20x3, 30x2, 40x1": the single is told once more, with its load."""
    for at, fact in enumerate(facts):
        if fact.kind != "rows" or len(fact.value) != 1 or not fact.value[0].reps or "own_load" in fact.note:
            continue
        colon = next((n for n in range(at + 1, len(facts)) if facts[n].kind not in BESIDE), len(facts))
        if colon >= len(facts) or facts[colon].note.get("mark") != ":":
            return facts
        behind = facts[colon + 1 : colon + 3]
        if len(behind) > 1 and _reps(behind[0]) == fact.value[0].reps and behind[1].kind in LOADS:
            return [*facts[:at], *facts[at + 1 :]]  # "a triple on pull-ups: 3 at 30"
        steps = [one for one in facts[colon + 1 :] if one.kind == "rows"]
        loaded = [one for one in steps if "own_load" in one.note or len(one.value) >= LEAST_KG]
        if len(loaded) >= LEAST_STEPS and loaded == steps[: len(loaded)]:
            again = any(one.value[0].reps == fact.value[0].reps for one in loaded)
            return [*facts[:at], *facts[at + 1 :]] if again else facts
        return facts
    return facts


def echoed(_: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "12 (zwölf!)", "2 s (in Worten: zwei)": the number of a bracket in words is the one before it once more."""
    out = list(facts)
    for at in range(len(out) - 1, 0, -1):
        fact = out[at]
        if fact.kind != "bare" or not fact.note.get("spelled"):
            continue
        opened = next((n for n in range(at - 1, -1, -1) if not _beside_echo(out[n])), None)
        if opened is None or opened == 0 or out[opened].note.get("mark") != "(":
            continue
        told = next(
            (one for one in reversed(out[:opened]) if one.kind not in BESIDE and one.note.get("mark") != "."), None
        )
        if told is not None and fact.value in _numbers_of(told):
            del out[at]
    return out


def _beside_echo(fact: Fact) -> bool:
    """ "In words:", "yes,": what may lead the number said once more."""
    return fact.kind == "word" or bool(fact.note.get("weak")) or (fact.kind == "sep" and fact.note.get("mark") != "(")


def _numbers_of(fact: Fact) -> set[float | None]:
    """The numbers that a fact told."""
    if fact.kind == "rows":
        return {len(fact.value)} | {value for one in fact.value for value in (one.reps, one.hold_s)}
    return {fact.value, fact.note.get("kg")} if fact.kind in ("bare", "load", "count") else set()


def _reps(fact: Fact) -> int:
    """The reps of the one set that a fact tells; 0: of none."""
    if fact.kind == "bare":
        return int(fact.value) if fact.value == int(fact.value) else 0
    return int(fact.value[0].reps or 0) if fact.kind == "rows" and len(fact.value) == 1 else 0


def _pairs(facts: Sequence[Fact]) -> list[tuple[int, float]]:
    """Reps and kilograms of the sets told one by one with their loads; none where something else is told of sets."""
    found: list[tuple[int, float]] = []
    reps = 0
    for fact in facts:
        kg = fact.value[1] if fact.kind == "at" else fact.value if fact.kind in LOADS else None
        if kg is not None and reps:
            found.append((reps, round(kg, 2)))
            reps = 0
        elif _reps(fact) and "own_load" in fact.note:
            found.append((_reps(fact), round(fact.note["own_load"], 2)))
        elif _reps(fact) and not reps:
            reps = _reps(fact)
        elif fact.kind in ("rows", "bare", "loads", "count", "load"):
            return []
        elif fact.kind == "sep" and fact.note.get("mark") in (".", "nl") and found and not reps:
            break
    return [] if reps else found
