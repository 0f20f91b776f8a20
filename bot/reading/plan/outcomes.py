"""One side got, the other missed: "missed the single on the left, got it on the right", "left there, right failed"."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from bot.reading.facts import Fact
from bot.reading.fold.rows import Row
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.plan.ground import plan_names

SILENT = frozenset({"word", "scheme", "plan", "side", "fail", "move", "scope"})
GOT = frozenset({"done", "fine", "only"})
PAIR = {"left", "right"}


def by_outcome(message: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> list[Fact]:
    """The facts with the reps of each side in place of how it went; of several planned sets a side that is asked."""
    sides = [row for row in rows if row.side in PAIR]
    singles = _several_singles(sides)
    if not sides or len({row.movement for row in sides}) > 1:
        return list(facts)
    denied = any(fact.kind == "fail" or plan_names(fact) & {"not", "not_this"} for fact in facts)
    if not singles and not denied:
        return list(facts)
    pieces = [_each(piece, singles) if singles else piece for piece in _pieces(facts)]
    pieces = [part for piece in pieces for part in _two_sides(piece)]
    pieces = _of_rounds(message, pieces, singles) if singles else pieces
    for at in range(len(pieces) - 2):
        first, second = _told(message, pieces[at], singles), _told(message, pieces[at + 2], singles)
        if first is None or second is None or first[0] == second[0] or (first[1] and second[1]):
            continue
        around = [*pieces[at], *pieces[at + 2]]
        tried = any(fact.kind == "fail" or (fact.kind == "scheme" and fact.value == "got") for fact in around)
        if not (singles or (tried and (all(row.reps == 1 for row in sides) or any(f.kind == "fail" for f in around)))):
            continue  # "left done, right not" of sets: not done, and no rep missed
        moves = [fact for fact in around if fact.kind == "move"]
        said = _outcome(around, sides, (first, second))
        pieces[at : at + 3] = [[*moves, *said]]
        return [fact for piece in pieces for fact in piece]
    return [fact for piece in pieces for fact in piece]


def _of_rounds(message: Message, pieces: list[list[Fact]], singles: int) -> list[list[Fact]]:
    """ "Second round: left yes, right missed": the miss of that round; the other side went up as planned."""
    out = list(pieces)
    for at in range(len(pieces) - 2):
        nth = pieces[at][0] if pieces[at] else None
        if nth is None or nth.kind != "scope" or nth.value == "all" or len(out[at + 1]) > 1:
            continue
        own = [fact for fact in pieces[at][1:] if fact.kind != "sep"]
        first = _told(message, own, singles) if own else None
        second = _told(message, pieces[at + 2], singles)
        if first is None or second is None or first[0] == second[0] or first[1] == second[1]:
            continue
        side, said = (first[0], own) if second[1] else (second[0], pieces[at + 2])
        fails = [fact for fact in said if fact.kind == "fail"]
        missed = replace(fails[0], note={}) if fails else None
        if missed is not None:
            out[at : at + 3] = [[nth, Fact("side", said[0].start, said[0].end, side), missed], [], []]
    return out


def _each(piece: list[Fact], singles: int) -> list[Fact]:
    """ "3 each arm" of three planned singles a side is all of them; "2 each arm" may be reps, and is asked."""
    pairs = [fact for fact in piece if fact.kind == "rows" and fact.note.get("mark") == "/" and len(fact.value) == 2]
    if len(pairs) == 1 and all(fact is pairs[0] or _silent(fact) for fact in piece):
        return _pair(piece, pairs[0], singles)
    sides = [fact for fact in piece if fact.kind == "side"]
    told = [fact for fact in piece if fact.kind == "bare"]
    if len(sides) == len(told) == 1 and told[0].value == singles and told[0].note.get("the") and piece[-1] is told[0]:
        return [*piece[:-1], Fact("scope", told[0].start, told[0].end, "all", {"text": ""})]  # "la derecha las tres"
    if len(sides) != 1 or sides[0].value != "each" or len(told) != 1 or not 1 < told[0].value <= singles:
        return piece
    if any(fact is not told[0] and not _silent(fact) for fact in piece):
        return piece
    start, end = min(told[0].start, sides[0].start), max(told[0].end, sides[0].end)
    moves = [fact for fact in piece if fact.kind == "move"]
    if told[0].value == singles:
        return [*moves, Fact("count", start, end, singles, {"outcome": True})]
    return [*moves, Fact("ask", start, end, "sets", {"outcome": True})]


def _pair(piece: list[Fact], pair: Fact, singles: int) -> list[Fact]:
    """ "3/2" of three planned singles a side counts them; whether the third was missed or left out is asked."""
    many = [entry.reps or 0 for entry in pair.value]
    if max(many) < 2 or max(many) > singles:
        return piece
    moves = [fact for fact in piece if fact.kind == "move"]
    if min(many) == singles:
        return [*moves, Fact("count", pair.start, pair.end, singles, {"outcome": True})]
    return [*moves, Fact("ask", pair.start, pair.end, "sets", {"outcome": True})]


def _pieces(facts: Sequence[Fact]) -> list[list[Fact]]:
    """The facts cut at each separator, which is a piece of its own."""
    pieces: list[list[Fact]] = [[]]
    for fact in facts:
        if fact.kind == "sep" and fact.note.get("mark") != ":":
            pieces += [[fact], []]
        else:
            pieces[-1].append(fact)
    return pieces


def _several_singles(sides: Sequence[Row]) -> int:
    """How many singles a side the plan has, where it has several: then "only one on the left" counts them."""
    left = sum(row.side == "left" for row in sides)
    return left if left > 1 and all(row.reps == 1 for row in sides) else 0


def _two_sides(piece: list[Fact]) -> list[list[Fact]]:
    """ "Left yes right no" cut between the sides, with nothing between them."""
    sides = [at for at, fact in enumerate(piece) if fact.kind == "side"]
    fails = [at for at, fact in enumerate(piece) if fact.kind == "fail"]
    if len(sides) != 2 or not fails:
        return [piece]
    cut = sides[1] if sides[0] < fails[0] else sides[0] + 1  # "yes on the left, no on the right"
    return [piece[:cut], [], piece[cut:]]


def _told(message: Message, piece: Sequence[Fact], singles: int) -> tuple[str, bool] | None:
    """Which side a clause speaks of, and whether it all went up; None: it says something else."""
    sides = [fact.value for fact in piece if fact.kind == "side"]
    if len(sides) != 1 or sides[0] not in PAIR:
        return None
    up = _up(message, piece)
    piece = [fact for fact in piece if fact.kind != "flag" or fact not in up]  # "links oben": no hold at the top
    many = [
        fact
        for fact in piece
        if fact.kind in ("bare", "count", "repeat") or (fact.kind == "scope" and fact.value == "all")
    ]
    if singles and len(many) == 1 and all(fact is many[0] or _silent(fact) for fact in piece):
        return sides[0], many[0].kind == "scope" or many[0].value >= singles
    one = any(fact.kind == "rows" and fact.note.get("each_of") for fact in piece)
    if singles and not many and one and any(plan_names(fact) & {"only"} for fact in piece):
        return sides[0], False  # "links nur einer"
    if any(not _silent(fact) for fact in piece):
        return None
    fails = [fact for fact in piece if fact.kind == "fail"]
    which = fails and (fails[0].value is not None or any(fact.kind == "scope" for fact in piece))
    if which:
        return None  # "left failed the last": which one is told
    if fails:
        return sides[0], fails[0].note.get("name") == "yes"
    if plan_names(piece[-1]) & {"not", "not_this"}:
        return sides[0], False  # "rechts nicht"
    got = any((fact.kind == "scheme" and fact.value == "got") or plan_names(fact) & GOT for fact in piece)
    return (sides[0], True) if got or up else None


def _up(message: Message, piece: Sequence[Fact]) -> list[Fact]:
    """The facts that say that it went up: "rechts sauber hochgekommen", "izquierda arriba"."""
    up = little("side_went_up")
    return [fact for fact in piece if {token.text for token in message.tokens[fact.start : fact.end]} & up]


def _silent(fact: Fact) -> bool:
    """Whether a fact has no number but the set's own name: "the single", "the last one"."""
    if fact.kind == "sep":
        return True
    if fact.kind == "rows":
        return len(fact.value) == 1 and bool(fact.note.get("the") or fact.note.get("each_of"))
    return fact.kind in SILENT


def _outcome(around: Sequence[Fact], sides: Sequence[Row], told: Sequence[tuple[str, bool]]) -> list[Fact]:
    start, end = around[0].start, around[-1].end
    planned = {side: [row.reps for row in sides if row.side == side] for side, _ in told}
    if any(planned[side] != [1] for side, _ in told):
        return [Fact("ask", start, end, "sets", {"outcome": True})]
    out: list[Fact] = []
    for side, went in told:
        reps = 1.0 if went else 0.0
        out += [Fact("side", start, end, side), Fact("bare", start, end, reps, {"kg": reps, "outcome": True})]
    return out
