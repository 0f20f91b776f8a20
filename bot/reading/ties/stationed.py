"""Where some sets were done, told behind them: "muscle-ups 3x2 on the bar and 2x1 on rings"."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from bot.reading.facts import Entry, Fact
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.movements.mention import Mention

ON_RINGS = {"dip": "ring_dip", "pull_up": "ring_pull_up", "chin_up": "ring_pull_up", "muscle_up": "ring_muscle_up"}
ON_BARS = {"ring_dip": "dip", "ring_pull_up": "pull_up", "ring_muscle_up": "muscle_up"}
WORK = frozenset({"rows", "bare"})
THEN, SENTENCE = 2, 3  # values of a `sep`
MOST_REPS = 30
LEAST_SETS = 2  # sets told alone, "5@10, 5@20", are all of one place


def stationed(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts, with the movement named again before sets that were done somewhere else."""
    out: list[Fact] = []
    named: int | None = None  # where the movement of the sets stands in `out`
    counted: set[int] = set()  # where numbers stand that a place follows
    moved = False
    begun = 0  # where what the next place is told of begins
    for fact in facts:
        out.append(fact)
        if fact.kind == "move":
            named = begun = len(out) - 1
            continue
        if fact.kind == "sep" and (fact.value == SENTENCE or _whole(out[begun:])):
            named = None if fact.value == SENTENCE else named
            begun = len(out)
        if named is None or not _may_be_place(fact) or not _leads(message, fact):
            continue
        where = out[named].value.movement
        there = ON_RINGS if _is(message, fact, "rings") else ON_BARS if _is(message, fact, "bars") else {}
        work = next((at for at in range(begun, len(out)) if out[at].kind in WORK), None)
        if there and work is not None and {where} & (ON_RINGS.keys() | ON_BARS.keys()):
            counted.add(out[work].start)
        if where not in there or work is None:
            begun = len(out) if there else begun
            continue
        move, moved = _moved(out[named], there[where]), True
        if any(one.kind in WORK for one in out[named + 1 : begun]):
            out.insert(work, replace(move, start=out[work].start, end=out[work].start))
            named = work
        else:
            out[named] = move
        begun = len(out)
    return [_reps(one) if one.start in counted else one for one in out] if moved else facts


def _whole(facts: Sequence[Fact]) -> bool:
    """Whether sets are told here that stand for themselves: a scheme, or a list."""
    return any(fact.kind == "rows" and len(fact.value) >= LEAST_SETS for fact in facts)


def _may_be_place(fact: Fact) -> bool:
    return fact.kind in ("word", "plan") or (fact.kind == "claim" and fact.value is None)


def _leads(message: Message, fact: Fact) -> bool:
    """Whether "on" or "on the" stands before a word."""
    at = fact.end - 2
    while at > 0 and message.tokens[at].text in little("the"):
        at -= 1
    return at >= 0 and message.tokens[at].text in little("at_station")


def _is(message: Message, fact: Fact, name: str) -> bool:
    return message.tokens[fact.end - 1].text in little(name)


def _reps(fact: Fact) -> Fact:
    """ "5 on the rings": what is done somewhere is reps."""
    if fact.kind != "bare" or fact.value != int(fact.value) or fact.value > MOST_REPS:
        return fact
    return Fact("rows", fact.start, fact.end, [Entry(int(fact.value))], {"reps": True})


def _moved(move: Fact, movement: str) -> Fact:
    mention: Mention = move.value
    return replace(move, value=Mention(movement, list(mention.spans), {movement}))
