"""The rings or the bar told alone behind a lift: "dips 8 8, then on the rings 6 and 5", "dips 3x8 an den Ringen"."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from bot.reading.facts import Fact
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.movements.not_had import not_had

RINGED = {"pull_up": "ring_pull_up", "dip": "ring_dip", "muscle_up": "ring_muscle_up"}
PLAIN = {ring: plain for plain, ring in RINGED.items()}
WORK = frozenset({"rows", "bare", "count"})


def rings_turned(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts, with the lift as it is there in front of the sets told of the rings, or of the bar, alone."""
    if not any(_gear(message, fact) for fact in facts):
        return facts
    out: list[Fact] = []
    clause: list[Fact] = []
    lift: Fact | None = None
    worked, pending, ahead = False, None, False
    for fact in [*facts, None]:
        if fact is not None and fact.kind != "sep":
            clause.append(fact)
            continue
        gear = next((name for one in clause if (name := _gear(message, one)) is not None), pending)
        moves = [one for one in clause if one.kind == "move"]
        told = any(one.kind in WORK for one in clause)
        named = fact is not None and fact.note.get("mark") == ":" and len(moves) == 1
        heads = gear == "ring" and named and ahead and moves[0].value.movement in RINGED
        if heads:  # "5 sets on the rings, pull-ups: 6 6 5 5 4"
            ring = RINGED[moves[0].value.movement]
            turned = replace(moves[0], value=replace(moves[0].value, movement=ring, features={ring}))
            clause = [turned if one is moves[0] else one for one in clause]
            moves, gear = [turned], None
        counted = told and all(one.kind == "count" for one in clause if one.kind in WORK)
        ahead = not moves and lift is None and (not told or counted) and gear is not None and _led(message, clause)
        pending = gear if ahead or not (told or moves) else None  # "an den Ringen dann noch 5 und 4"
        last = moves[-1] if moves else lift
        there = RINGED if gear == "ring" else PLAIN if gear else {}
        other = there.get(last.value.movement) if last is not None else None
        if other is not None and last is not None and told and (len(moves) == 1 or (not moves and worked)):
            where = [(last.start, last.end)] if moves else [(clause[0].start, clause[0].start)]
            turned = replace(last.value, movement=other, features={other}, spans=where)
            if not moves:
                last = Fact("move", *where[0], turned)
                out.append(last)
            elif gear == "ring" and _led(message, clause):  # "dips 3x8 on the rings"
                last = replace(last, value=turned)
                clause = [last if one is moves[0] else one for one in clause]
        lift = last
        worked = told or (worked and not moves)
        out += clause
        out += [fact] if fact is not None else []
        clause = []
    return out


def _led(message: Message, clause: Sequence[Fact]) -> bool:
    """Whether words of a clause say that it was done on the gear."""
    geared = next((fact for fact in clause if _gear(message, fact) is not None), None)
    if geared is None:
        return False
    led = message.tokens[max(0, geared.start - 2) : geared.end]
    return any(token.text in little("on_gear") for token in led)


def _gear(message: Message, fact: Fact) -> str | None:
    """Whether a word is one for the rings or the bar."""
    if fact.kind != "word":
        return None
    if any(token.text in little("bars") for token in message.tokens[fact.start : fact.end]):
        return "bar"  # "2x8 on the bars"
    hits = [hit for at in range(fact.start, fact.end) for hit in message.beginning("movements")[at]]
    gear = next((hit for hit in hits if hit.name in ("ring", "bar")), None)
    return None if gear is None or not_had(message, gear.start, gear.end) else gear.name
