"""Sets on top of the plan: "one more set with 15 push-ups", "as planned plus a set of dips", "added two sets"."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from itertools import pairwise

from bot.reading.bounds import clause_end
from bot.reading.facts import Fact
from bot.reading.fold.rows import Row
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.plan.ground import members, plan_names

TOLD = frozenset("rows bare loads load at instead delta scope side fail".split())
NOT_ON_TOP = frozenset({"only", "less", "except", "instead", "skipped", "minus", "swap", "extra_set"})
INSTEAD = frozenset({"instead", "swap", "became"})  # what puts a lift in the place of a planned one


def more_of_another(message: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> list[Fact]:
    """The facts, with "one more set" of an unplanned lift as one set of it, and "plus a set", "added a set" as more."""
    known = {row.movement for row in rows}
    out: list[Fact] = []
    start = 0
    while start < len(facts):
        end = clause_end(facts, start)
        piece = _plus_a_set(message, list(facts[start:end]))
        moves = [fact for fact in piece if fact.kind == "move"]
        other = len(moves) == 1 and moves[0].value.movement != "!" and not set(members(moves[0].value)) & known
        told = _one_set(message, piece) if other else None
        out += told or (piece if other else _put_on(message, piece))
        open_reps = told is not None and not any(fact.kind in ("rows", "load") for fact in told)
        if end < len(facts) and not (open_reps and _lone_reps(facts, end)):
            out.append(facts[end])
        start = end + 1
    return out


def _lone_reps(facts: Sequence[Fact], at: int) -> bool:
    """Whether no more than reps stands behind a comma: "another set of push-ups, 15"."""
    behind = facts[at + 1 : at + 3]
    told = bool(behind) and behind[0].kind in ("bare", "rows") and facts[at].value == 1
    return told and (len(behind) == 1 or behind[1].kind == "sep")


def _plus_a_set(message: Message, piece: list[Fact]) -> list[Fact]:
    """The facts of a piece, with a count in "plus a set of dips"."""
    at = next((at for at, fact in enumerate(piece) if plan_names(fact) == {"by"} or fact.value == "+"), None)
    if at is None or message.tokens[piece[at].start].text not in little("on_top") or not _a_set(message, piece[at].end):
        return piece
    plus = piece[at]
    behind = [fact for fact in piece[at + 1 :] if fact.kind == "rows" or fact.start >= plus.end + 2]
    one = [] if any(fact.kind == "rows" for fact in behind) else [_count(plus.end, plus.end + 2)]
    return [*piece[:at], Fact("sep", plus.start, plus.end, 1, {"mark": "and"}), *one, *behind]


def _a_set(message: Message, at: int) -> bool:
    """Whether "a set" begins at a token."""
    if at + 1 >= len(message.tokens) or message.tokens[at].text not in little("a", "one"):
        return False
    return any(hit.table == "sets" for hit in message.beginning("grammar")[at + 1])


def _one_set(message: Message, piece: list[Fact]) -> list[Fact] | None:
    """The facts of one piece where it tells of one set of its lift; else None."""
    counted = [fact for fact in piece if fact.kind == "count"]
    if counted or any(plan_names(fact) & INSTEAD for fact in piece):
        return piece if len(counted) == 1 and counted[0].value == 1 else None
    told = any(fact.kind == "rows" for fact in piece)
    for at, fact in enumerate(piece):
        if fact.kind == "plan" and "extra_set" in {fact.value, *plan_names(fact)}:
            return [*piece[:at], *([] if told else [_count(fact.start, fact.end)]), *piece[at + 1 :]]
        of_it = (
            fact.kind == "rows" and fact.note.get("each_of") and at + 1 < len(piece) and piece[at + 1].kind == "move"
        )
        if of_it and fact.start and message.tokens[fact.start - 1].text in little("a", "one"):
            return [*piece[:at], replace(fact, note={"reps": True}), *piece[at + 1 :]]  # "a set with 12 push-ups"
    return None


def _put_on(message: Message, piece: list[Fact]) -> list[Fact]:
    """The facts of a piece, with the sets that it says came on top as so many more: "added two sets of dips"."""
    if any(fact.kind in TOLD or plan_names(fact) & NOT_ON_TOP for fact in piece) or not piece:
        return piece
    tokens = message.tokens[piece[0].start : piece[-1].end]
    said = {token.text for token in tokens} | {f"{one.text} {after.text}" for one, after in pairwise(tokens)}
    if said.isdisjoint(little("sets_put_on")):
        return piece
    counted = [at for at, fact in enumerate(piece) if fact.kind == "count"]
    if not counted:
        a = next((at for at in range(piece[0].start, piece[-1].end) if _a_set(message, at)), None)
        if a is None or any(fact.start < a + 2 and fact.end > a and fact.kind != "word" for fact in piece):
            return piece
        counted = [sum(fact.start < a for fact in piece)]
        rest = [fact for fact in piece[counted[0] :] if fact.start >= a + 2]
        piece = [*piece[: counted[0]], _count(a, a + 2), *rest]
    if len(counted) == 1:
        many = piece[counted[0]]
        piece[counted[0]] = replace(many, note={**many.note, "more": True})
    return piece


def _count(start: int, end: int) -> Fact:
    return Fact("count", start, end, 1, {"within": False, "more": False, "names": []})
