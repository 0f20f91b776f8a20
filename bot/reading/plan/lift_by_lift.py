"""What is told of one lift after the other, or of each in one word.

"Dips only 3 sets, pull-ups only 2", "rpe on the last set: dips 9, pull-ups 8", "dips with half the weight".
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from bot.reading.bounds import clause_end, ends_sentence
from bot.reading.facts import Fact
from bot.reading.fold.rows import Row
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.plan.choosing import main_rows
from bot.reading.plan.ground import members, plan_names

HALF = 2


def counted_alike(_message: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> list[Fact]:
    """ "Dips nur 3 Sätze, Klimmzüge nur 2": the lone number of one lift counts what the other's counts."""
    pieces = _pieces(facts)
    counted = [piece for piece in pieces if _lift_and(piece, "count")]
    if not counted:
        return list(facts)
    alone = {id(_number(piece)): piece for piece in pieces if _lift_and(piece, "bare")}
    out: list[Fact] = []
    for fact in facts:
        piece = alone.get(id(fact))
        if piece is not None:
            move = next(one for one in piece if one.kind == "move")
            own = [row for row in rows if row.movement in members(move.value)]
            sets = len(own) // HALF if any(row.side for row in own) else len(own)
            if fact.value in range(1, sets + 1):
                fact = Fact("count", fact.start, fact.end, int(fact.value), {"more": False})
        out.append(fact)
    return out


def _pieces(facts: Sequence[Fact]) -> list[Sequence[Fact]]:
    out: list[Sequence[Fact]] = []
    start = 0
    while start < len(facts):
        end = clause_end(facts, start)
        out.append(facts[start:end])
        start = end + 1
    return out


def _lift_and(piece: Sequence[Fact], kind: str) -> bool:
    """Whether a clause names one lift, then a number of this kind, and tells no more."""
    told = [fact for fact in piece if fact.kind != "word" and not plan_names(fact) & {"only", "the"}]
    return [fact.kind for fact in told] == ["move", kind]


def _number(piece: Sequence[Fact]) -> Fact:
    return next(fact for fact in piece if fact.kind == "bare")


def only_the_weight(message: Message, facts: Sequence[Fact], _rows: Sequence[Row]) -> list[Fact]:
    """ "Dips fine but for the weight, that was 2.5 lower": no set is left out. "Plan minus 2.5 kg": nor there."""
    out: list[Fact] = []
    for at, fact in enumerate(facts):
        after = facts[at + 1] if at + 1 < len(facts) else None
        weight = after is not None and after.kind == "word" and _weight(message, after)
        changed = after is not None and (after.kind == "load" or (after.kind == "delta" and after.value[1] == "load"))
        if "except" in plan_names(fact) and fact.kind == "plan" and weight:
            fact = Fact("word", fact.start, fact.end, None, {"noise": True})
        elif fact.kind == "plan" and changed and {"by", "skipped"} <= plan_names(fact):
            fact = replace(fact, note={**fact.note, "names": ["by"]})
        out.append(fact)
    return out


def _weight(message: Message, fact: Fact) -> bool:
    return any(token.text in little("weight", "load_noun") for token in message.tokens[fact.start : fact.end])


def half_weight(message: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> list[Fact]:
    """ "Dips with half the weight": half of what is planned for the lift named before, or for the main one."""
    out: list[Fact] = []
    move: Fact | None = None
    at = 0
    while at < len(facts):
        fact = facts[at]
        after = facts[at + 1] if at + 1 < len(facts) else None
        if ends_sentence(fact):
            move = None
        move = fact if fact.kind == "move" else move
        if after is not None and _half(message, fact) and after.kind == "word" and _weight(message, after):
            own = [row for row in rows if move is not None and row.movement in members(move.value)]
            loads = {row.load_kg for row in own or [rows[n] for n in main_rows(rows)] if row.load_kg}
            if len(loads) == 1:
                out.append(Fact("load", fact.start, after.end, loads.pop() / HALF, {"how": "at", "unit": "kg"}))
                at += 2
                continue
        out.append(fact)
        at += 1
    return out


def _half(message: Message, fact: Fact) -> bool:
    words = [token.text for token in message.tokens[fact.start : fact.end]]
    return fact.kind in ("word", "plan", "flag") and bool(words) and words[-1] in little("half_the")
