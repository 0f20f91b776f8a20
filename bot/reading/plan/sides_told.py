"""Work by side, told in a few words: "right only one each", "set 2: left 2, right 1", "right nothing"."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.bounds import clause_end, ends_sentence
from bot.reading.facts import Entry, Fact
from bot.reading.fold.rows import Row
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.plan.ground import plan_names

VALUES = frozenset({"rows", "bare", "load", "loads", "count", "delta", "instead", "fail", "at"})
SIDES = ("left", "right")
UNSURE = ("all", "over", "rest", "top", "back")


def sides_told(message: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> list[Fact]:
    """The facts, clause by clause, with what the words for a side leave unsaid."""
    if not any(row.side for row in rows):
        return list(facts)
    out: list[Fact] = []
    before: list[Fact] = []
    start = 0
    while start < len(facts):
        end = clause_end(facts, start)
        mark = facts[start - 1] if start else None
        piece = _none_of_it(message, _each_set(facts[start:end]))
        piece = _other_side(before, piece)
        if mark is not None and mark.note.get("mark") == "and":
            piece = _of_subject(before, piece)
        out += [*piece, *facts[end : end + 1]]
        before = piece if piece else before
        if end < len(facts) and ends_sentence(facts[end]):
            before = []
        start = end + 1
    return out


def _one_side(piece: Sequence[Fact]) -> Fact | None:
    sides = [fact for fact in piece if fact.kind == "side" and fact.value in SIDES]
    return sides[0] if len(sides) == 1 else None


def _each_set(piece: Sequence[Fact]) -> list[Fact]:
    """ "Right only one each": in each set, where a side is named already."""
    if _one_side(piece) is None or any(fact.kind == "scope" for fact in piece):
        return list(piece)
    out: list[Fact] = []
    for fact in piece:
        led = bool(out) and out[-1].kind == "scope" and out[-1].end == fact.start
        if fact.kind == "side" and fact.value == "each" and fact.note.get("plain"):
            fact = Fact("scope", fact.start, fact.end, "all", {"names": ["every"], "text": ""})
        elif led and fact.kind == "bare" and fact.value == int(fact.value):
            fact = Fact("rows", fact.start, fact.end, [Entry(int(fact.value))], {"one": True, "reps": True})
        out.append(fact)
    return out


def _none_of_it(message: Message, piece: list[Fact]) -> list[Fact]:
    """ "Right nothing": that side was left out, where the clause tells no more."""
    told = [fact for fact in piece if fact.kind not in ("word", "claim", "move", "scheme")]
    none = [fact for fact in piece if fact.kind == "word" and _says_nothing(message, fact)]
    if [fact.kind for fact in told] != ["side"] or told[0].value not in SIDES or len(none) != 1:
        return piece
    if any(fact.kind != "scheme" for fact in piece[piece.index(none[0]) + 1 :]):
        return piece  # "rechts nichts gespürt"
    skipped = Fact("plan", none[0].start, none[0].end, "skipped", {"names": ["skipped"]})
    return [skipped if fact is none[0] else fact for fact in piece]


def _says_nothing(message: Message, fact: Fact) -> bool:
    words = [token.text for token in message.tokens[fact.start : fact.end]]
    return len(words) == 1 and words[0] in little("nothing")


def _other_side(before: Sequence[Fact], piece: list[Fact]) -> list[Fact]:
    """ "Set 2: left 2, right 1": the other side's number is of the same set."""
    one, other = _one_side(before), _one_side(piece)
    scopes = [fact for fact in before if fact.kind == "scope" and fact.value not in UNSURE]
    if one is None or other is None or one.value == other.value or len(scopes) != 1:
        return piece
    told = [[fact.kind for fact in clause if fact.kind in VALUES] for clause in (before, piece)]
    plain = all(
        fact.kind in ("side", "word", "bare", "rows") or plan_names(fact) in ({"only"}, {"the"}) for fact in piece
    )
    if told[0] != told[1] or len(told[1]) != 1 or not plain:
        return piece
    return [Fact("scope", piece[0].start, piece[0].start, scopes[0].value, dict(scopes[0].note)), *piece]


def _of_subject(before: Sequence[Fact], piece: list[Fact]) -> list[Fact]:
    """ "The right side was tired and did only one": whose the number is was said before the "and"."""
    side = _one_side(before)
    spoken = any(fact.kind in VALUES or fact.kind in ("move", "scope") for fact in before)
    told = [fact for fact in piece if fact.kind in VALUES]
    if side is None or spoken or len(told) != 1 or any(fact.kind == "side" for fact in piece):
        return piece
    names = {name for fact in [*before, *piece] for name in plan_names(fact)}
    if names & {"rest", "planned", "same", "fine", "except", "skipped"}:
        return piece
    return [Fact("side", piece[0].start, piece[0].start, side.value, {"plain": False}), *piece]
