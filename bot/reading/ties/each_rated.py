"""One number of reps, then each load with its effort: "fours. 15kg rpe 6, 17.5kg rpe 7, 20kg rpe 8" is three sets."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from bot.reading.bounds import is_strong
from bot.reading.facts import Entry, Fact
from bot.reading.message import Message

LEAST = 2  # loads
LEAST_LOAD = 10  # of a bare number that is a load
SAID = ("word", "reps", "each_of")


def each_rated(_: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts, with the loads and efforts as those of so many sets."""
    facts = _closed(facts)
    for at, fact in enumerate(facts):
        one = fact.kind == "rows" and len(fact.value) == 1 and any(fact.note.get(name) for name in SAID)
        many = fact.kind == "rows" and len(fact.value) > 1 and len({entry.reps for entry in fact.value}) == 1
        reps = fact.value[0].reps if one or many else None
        if not reps:
            continue
        start = at + 1
        while start < len(facts) and (facts[start].kind in ("sep", "move", "weighted") or _each(facts[start])):
            start += 1
        loads, efforts, end = _pairs(facts, start)
        if len(loads) < LEAST or (many and len(loads) != len(fact.value)):
            continue
        if end < len(facts) and facts[end].kind in ("rows", "bare", "count", "word", "load"):
            continue
        span = facts[start].start, facts[end - 1].end
        kept = [one for one in facts[at + 1 : start] if one.kind == "move"]
        rows = Fact("rows", *span, [Entry(reps, load_kg=kg) for kg in loads], {"list": True, "mark": ","})
        rated = Fact("efforts", *span, efforts)
        return [*facts[:at], *kept, replace(rows, start=fact.start), rated, *facts[end:]]
    return facts


def _closed(facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "20kg @7, 25kg @8, all triples": the reps named last, put first."""
    for at in range(len(facts)):
        loads, _, end = (
            _pairs(facts, at) if at == 0 or facts[at - 1].kind in ("move", "sep", "weighted") else ([], [], at)
        )
        if len(loads) < LEAST:
            continue
        while end < len(facts) and (
            facts[end].kind == "sep" or (facts[end].kind, facts[end].value) == ("scope", "all")
        ):
            end += 1
        word = facts[end] if end < len(facts) else None
        closes = end + 1 >= len(facts) or is_strong(facts[end + 1])
        if word is None or word.kind != "rows" or not word.note.get("each_of") or not closes:
            return facts
        mark = Fact("sep", facts[at].start, facts[at].start, 1, {"mark": ":"})
        return [*facts[:at], replace(word, note={"reps": True}), mark, *facts[at:end], *facts[end + 1 :]]
    return facts


def _each(fact: Fact) -> bool:
    return fact.kind == "side" and bool(fact.note.get("plain"))


def _pairs(facts: Sequence[Fact], start: int) -> tuple[list[float], list[float], int]:
    """Loads, each with its effort right behind, and where they end."""
    loads: list[float] = []
    efforts: list[float] = []
    at = end = start
    while at + 1 < len(facts):
        load, effort = facts[at : at + 2]
        heavy = load.kind == "bare" and load.value >= LEAST_LOAD
        kg = load.note.get("kg", load.value) if heavy else load.value if load.kind == "load" else None
        rated = effort.value if effort.kind == "effort" else effort.value[0] if effort.kind == "at" else None
        if kg is None or rated is None:
            break
        loads.append(float(kg))
        efforts.append(float(rated))
        at = end = at + 2
        while at < len(facts) and facts[at].kind == "sep":
            at += 1
    return loads, efforts, end
