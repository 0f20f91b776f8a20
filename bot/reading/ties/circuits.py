"""Circuits whose rounds are told once, in front: "3 rounds: 5 chins, 8 dips", "3 sets each: pull-ups 6, dips 8"."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from bot.reading.facts import Entry, Fact
from bot.reading.little import little
from bot.reading.message import Message

LEAST = 2  # movements of a circuit
MOST_REPS = 60
MOST_ROUNDS = 15
ASIDE = frozenset({"word", "scheme", "plan"})
OF_ONE = frozenset({"move", "bare", "rows", "load", "assist", "side", "effort"})  # what may be told of one movement


def circuits(_: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts with as many sets of each movement as there were rounds, the number of rounds taken out."""
    for at, fact in enumerate(facts):
        if fact.kind in ("move", "rows", "load"):
            return facts
        times = _rounds(facts, at)
        if times is None:
            continue
        rounds, start = times
        end = next((n for n in range(start, len(facts)) if facts[n].kind == "sep" and facts[n].value == 3), len(facts))
        parts = _parts(facts[start:end])
        made = [_sets(part, rounds) for part in parts]
        if len(made) < LEAST or not all(made):
            return facts
        told = [fact for one in made for fact in one]
        return [*facts[:at], *told, *facts[end:]]
    return facts


def _rounds(facts: Sequence[Fact], at: int) -> tuple[int, int] | None:
    """The rounds told at a place before a colon, and the place behind it: "3 rounds:", "3x:", "3 sets each:"."""
    fact = facts[at]
    after = at + 1
    if fact.kind in ("count", "rounds", "repeat"):
        many = int(fact.value)
    elif fact.kind == "bare" and after < len(facts) and str(facts[after].value) in little("by_sign"):
        many, after = int(fact.value), after + 1
    else:
        return None
    while after < len(facts) and (facts[after].kind in ASIDE or facts[after].note.get("plain")):
        after += 1
    colon = after < len(facts) and facts[after].note.get("mark") == ":"
    return (many, after + 1) if colon and 1 < many <= MOST_ROUNDS else None


def _parts(facts: Sequence[Fact]) -> list[list[Fact]]:
    """The facts of each movement, cut at commas and slashes."""
    parts: list[list[Fact]] = [[]]
    for fact in facts:
        if fact.kind == "sep":
            parts.append([])
        elif fact.kind not in ASIDE:
            parts[-1].append(fact)
    return [part for part in parts if part]


def _sets(part: Sequence[Fact], rounds: int) -> list[Fact]:
    """The movement with its sets and what else is told of it; nothing where the part is not one movement and reps."""
    moves = [fact for fact in part if fact.kind == "move"]
    numbers = [fact for fact in part if fact.kind in ("bare", "rows")]
    if len(moves) != 1 or len(numbers) != 1 or any(fact.kind not in OF_ONE for fact in part):
        return []
    number = numbers[0]
    one = _entry(number)
    if one is None:
        return []
    own = {"own_load": number.note["own_load"]} if "own_load" in number.note else {}
    work = Fact("rows", number.start, number.end, [replace(one) for _ in range(rounds)], {"plain": True, **own})
    rest = [fact for fact in part if fact is not moves[0] and fact is not number]
    return [moves[0], work, *rest, Fact("sep", part[-1].end, part[-1].end, 1, {"mark": ","})]


def _entry(fact: Fact) -> Entry | None:
    """What one set of a circuit was: so many reps, or so long a hold."""
    if fact.kind == "rows":
        return fact.value[0] if len(fact.value) == 1 else None
    whole = fact.value == int(fact.value) and 0 < fact.value <= MOST_REPS
    return Entry(int(fact.value)) if whole else None
