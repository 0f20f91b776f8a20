"""Circuits whose rounds are told once: "3 rounds: 5 chins, 8 dips", "5 chins 8 dips: 6 rounds plus 3"."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from bot.reading.bounds import sentence_end
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
        end = sentence_end(facts, start)
        parts = _parts(facts[start:end])
        made = [_sets(part, rounds) for part in parts]
        if len(made) < LEAST or not all(made):
            return facts
        told = [fact for one in made for fact in one]
        return [*facts[:at], *told, *facts[end:]]
    return facts


def _rounds(facts: Sequence[Fact], at: int) -> tuple[int, int] | None:
    """The rounds told at a place before a colon, and the place behind it: "3 rounds:", "3x:", "3 sets each,"."""
    fact = facts[at]
    after = at + 1
    if fact.kind in ("count", "rounds", "repeat"):
        many = int(fact.value)
    elif fact.kind == "bare" and after < len(facts) and str(facts[after].value) in little("by_sign"):
        many, after = int(fact.value), after + 1
    else:
        return None
    each = False
    while after < len(facts) and (facts[after].kind in ASIDE or facts[after].note.get("plain")):
        each = each or facts[after].value == "each"
        after += 1
    heads = after < len(facts) and facts[after].note.get("mark") in ((":", ",") if each else (":",))
    return (many, after + 1) if heads and 1 < many <= MOST_ROUNDS else None


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


def named_ahead(_: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "Dips and pull-ups as a superset, 4 rounds, 8 dips 5 pull-ups": named once ahead, told behind the rounds."""
    at = next((n for n, fact in enumerate(facts) if fact.kind in ("count", "rounds", "repeat")), len(facts))
    ahead, behind = facts[:at], facts[at + 1 :]
    moves = [fact for fact in ahead if fact.kind == "move"]
    told = {fact.value.movement for fact in behind if fact.kind == "move"}
    alone = all(fact.kind in ("move", "sep", *ASIDE) for fact in ahead)
    if len(moves) < LEAST or not alone or {fact.value.movement for fact in moves} != told:
        return facts
    return [*(fact for fact in ahead if fact.kind not in ("move", "sep")), *facts[at:]]


def rounds_and_more(_: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "5 pull-ups 10 dips: 6 rounds plus 3", "7 rounds and 4 pull-ups": whole rounds, and a part of the next."""
    at = next((n for n, fact in enumerate(facts) if fact.kind == "rounds"), len(facts))
    rest = [fact for fact in facts[at + 1 :] if fact.note.get("mark") != "and"]
    more = rest[0] if rest else None
    added = more is not None and more.kind == "load" and more.note.get("how") == "plus" and not more.note.get("unit")
    joined = more is not None and more.kind == "bare" and facts[at + 1].note.get("mark") == "and"
    if more is None or not (added or joined) or not 1 < facts[at].value <= MOST_ROUNDS or more.value != int(more.value):
        return facts
    lead, works = _works(facts[:at])
    if len(works) < LEAST:
        return facts
    named = rest[1] if len(rest) > 1 and rest[1].kind == "move" else None
    tail = rest[1 + (named is not None) :]
    move = named or works[0][0]
    of_circuit = [work for one, work in works if one.value.movement == move.value.movement]
    made = [fact for one, work in works for fact in _sets([one, work], int(facts[at].value))]
    if not of_circuit or (tail and tail[0].kind != "sep"):
        return facts
    first = _entry(of_circuit[0])
    if first is None or not first.reps or more.value >= first.reps:
        return [*lead, *made, Fact("ask", facts[at].start, more.end, "sets"), *tail]
    last = Fact("rows", more.start, more.end, [Entry(int(more.value))], {"one": True, "reps": True})
    return [*lead, *made, replace(move, start=more.start, end=more.start), last, *tail]


def _works(facts: Sequence[Fact]) -> tuple[list[Fact], list[tuple[Fact, Fact]]]:
    """What leads a circuit in, and its movements with what was done of each a round; none where more is told."""
    moves = [n for n, fact in enumerate(facts) if fact.kind == "move"]
    begin = moves[0] - (moves[0] > 0 and facts[moves[0] - 1].kind in ("bare", "rows")) if moves else len(facts)
    works: list[tuple[Fact, Fact]] = []
    told = [fact for fact in facts[begin:] if fact.kind not in ("sep", *ASIDE)]
    for one, other in zip(told[::2], told[1::2], strict=False):
        move, work = (one, other) if one.kind == "move" else (other, one)
        if move.kind != "move" or work.kind not in ("bare", "rows") or _entry(work) is None:
            return [], []
        works.append((move, work))
    return (list(facts[:begin]), works) if len(works) * 2 == len(told) else ([], [])
