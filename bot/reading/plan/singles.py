"""Singles of the plan called by that name: "singles left out", "then the singles: one per arm"."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.bounds import clause_end, clause_start
from bot.reading.facts import Entry, Fact
from bot.reading.fold.rows import Row
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.movements.mention import Mention

ONE = [Entry(1)]
LOADED = frozenset({"load", "loads", "at"})
COUNTING = frozenset({"bare", "count", "rows", "rounds", "load", "move"})


def singles_named(message: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> list[Fact]:
    """The facts with the movement in place of "singles", where the plan has one movement of singles by side.

    "2 singles per arm", "5 singles" tell how many; so does a number right before.
    """
    movement = _of_singles(rows)
    if movement is None or not any(fact.kind == "rows" and fact.value == ONE for fact in facts):
        return list(facts)
    out: list[Fact] = []
    for at, fact in enumerate(facts):
        own = [one for one in _clause(facts, at) if one is not fact]
        missed = bool(out) and out[-1].kind == "fail" and out[-1].value is not None and bool(fact.note.get("word"))
        named = _named(message, fact) or (missed and fact.kind == "rows" and fact.value == ONE)  # "the last single"
        if named and not any(one.kind in LOADED or (one.kind in COUNTING and one.end <= fact.start) for one in own):
            mention = Mention(movement, [(fact.start, fact.end)])
            out.append(Fact("move", fact.start, fact.end, mention, {"outcome": True}))
            continue
        out.append(fact)
    return out


def _of_singles(rows: Sequence[Row]) -> str | None:
    own = [row for row in rows if row.side is not None and row.part != "warm_up"]
    names = {row.movement for row in own}
    single = len(names) == 1 and all(row.reps == 1 for row in own)
    return own[0].movement if single else None


def _named(message: Message, fact: Fact) -> bool:
    """Whether a fact is the word "single" or "singles"."""
    if fact.kind != "rows" or fact.value != ONE or not (fact.note.get("each_of") or fact.note.get("the")):
        return False
    return message.tokens[fact.end - 1].text in little("singles")


def _clause(facts: Sequence[Fact], at: int) -> list[Fact]:
    """The facts between the separators around a place."""
    start = clause_start(facts, at + 1)
    end = clause_end(facts, at)
    return list(facts[start:end])
