"""A side that goes on to the next set of the sentence: "right the first yes, the second missed", "right: the first"."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.bounds import clause_end
from bot.reading.facts import Fact
from bot.reading.fold.rows import Row
from bot.reading.message import Message

TOLD = frozenset({"bare", "rows", "fail"})


def side_goes_on(_message: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> Sequence[Fact]:
    """The facts with the side before the later set too, where the clause before told a set of that side."""
    if not any(row.side for row in rows):
        return facts
    out: list[Fact] = []
    piece: list[Fact] = []
    side: Fact | None = None
    for fact in [*_without_pauses(facts), None]:
        if fact is not None and fact.kind != "sep":
            piece.append(fact)
            continue
        sides = [one for one in piece if one.kind == "side"][-1:]
        scoped = any(one.kind == "scope" and one.value != "all" for one in piece)
        # "right arm: the first as planned, the second only one": the heading is each one's
        scoped = scoped or (bool(sides) and len(piece) == 1 and fact is not None and fact.note.get("mark") == ":")
        if sides or any(one.kind == "move" for one in piece):
            side = sides[0] if sides and scoped and sides[0].value in ("left", "right") else None
        elif side is not None and scoped and any(one.kind in TOLD for one in piece):
            piece = [Fact("side", piece[0].start, piece[0].start, side.value), *piece]
        out += piece
        piece = []
        if fact is not None:
            out.append(fact)
            side = None if fact.value == 3 else side
    return out


def _without_pauses(facts: Sequence[Fact]) -> list[Fact]:
    """The facts without the comma behind a side that heads what follows: "on the right, in the last set, only 1"."""
    out: list[Fact] = []
    piece: list[Fact] = []
    for at, fact in enumerate(facts):
        if fact.kind != "sep":
            piece.append(fact)
        elif _heads(piece) and fact.note.get("mark") == "," and _goes_on(facts[at + 1 :]):
            continue
        else:
            piece = []
        out.append(fact)
    return out


def _heads(piece: Sequence[Fact]) -> bool:
    """Whether a clause so far is a side, and at most which set."""
    told = [fact for fact in piece if fact.kind != "word"]
    one_side = bool(told) and told[0].kind == "side" and told[0].value in ("left", "right")
    return one_side and all(fact.kind == "scope" and fact.value != "all" for fact in told[1:])


def _goes_on(facts: Sequence[Fact]) -> bool:
    """Whether the next clause tells of a set and names neither a side nor a movement."""
    own = list(facts[: clause_end(facts)])
    return any(fact.kind in {*TOLD, "scope"} for fact in own) and not any(f.kind in ("side", "move") for f in own)


def _number(fact: Fact) -> bool:
    """Whether a fact is a bare number, and not the "one" of "the last one"."""
    return fact.kind == "bare" and not (fact.note.get("spelled") and fact.value == 1)
