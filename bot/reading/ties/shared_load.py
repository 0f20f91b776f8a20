"""One load behind sets told in two breaths: "two sets of eight dips and one of six, with the 10 kg vest"."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from bot.reading.facts import Entry, Fact
from bot.reading.message import Message


def shared_load(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts, with the load as that of all the sets; "3x5 and 2x4 with 20", without a comma, stays as it is told."""
    told = [fact for fact in facts if fact.kind not in ("word", "thing", "claim", "flag")]
    for at in range(1, len(told) - 2):
        if told[at].note.get("mark") != "and" or told[at].kind != "sep":
            continue
        first = next((fact for fact in reversed(told[max(0, at - 2) : at]) if fact.kind != "move"), None)
        second, end = _second(told, at + 1)
        if first is None or second is None or not _plain(first) or len(first.value) < 2 or end >= len(told):
            continue
        comma = told[end].kind == "sep" and told[end].note.get("mark") == "," and end + 1 < len(told)
        load = told[end + comma]
        others = [fact for fact in told if fact.kind in ("load", "loads", "at", "assist") and fact is not load]
        if load.kind != "load" or not load.value or others or not (comma or _elliptic(message, second)):
            continue
        if load.note.get("how") == "plus" and comma:
            continue  # "3x5 and 1x3, +20 kg": of the last as likely
        kg = float(load.value)
        gone = {id(fact) for fact in (load, *told[at + 1 : end])}
        new = {id(first): replace(first, note={**first.note, "own_load": kg})}
        last = replace(second, note={**second.note, "own_load": kg})
        out: list[Fact] = []
        for fact in facts:
            if fact is told[at + 1]:
                out.append(last)
            elif id(fact) not in gone:
                out.append(new.get(id(fact), fact))
        return out
    return facts


def _second(told: Sequence[Fact], at: int) -> tuple[Fact | None, int]:
    """The second of the two, "one of six" or "einmal 2", and where it ends."""
    fact, after = told[at], told[at + 1]
    if fact.kind == "repeat" and after.kind == "bare" and after.value == int(after.value):
        rows = [Entry(int(after.value))] * int(fact.value)
        return Fact("rows", fact.start, after.end, rows, {"plain": True, "times": True}), at + 2
    return (fact, at + 1) if _plain(fact) else (None, at)


def _plain(fact: Fact) -> bool:
    """Whether a fact tells sets by their number and reps, with no load of their own."""
    listed = fact.note.keys() & {"list", "word", "each_of", "the", "own_load"}
    return fact.kind == "rows" and not listed and all(entry.reps for entry in fact.value)


def _elliptic(message: Message, fact: Fact) -> bool:
    """ "One of six", "einmal 6": it leans on what was named before it."""
    return len(fact.value) == 1 and (message.tokens[fact.start].spelled or bool(fact.note.get("times")))
