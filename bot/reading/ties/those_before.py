"""Beside a plan, the sets before those named: "last two only 2, the ones before 3", "davor alle 3"."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.bounds import clause_end
from bot.reading.facts import Fact
from bot.reading.little import little
from bot.reading.message import Message

VALUES = frozenset({"rows", "bare", "load", "at"})
ASIDE = frozenset({"word", "scheme", "plan"})


def those_before(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts, with the sets before the one named as what a clause behind it is about."""
    if not message.context.today:
        return facts
    out: list[Fact] = []
    named: Fact | None = None  # the scope of the clause before
    start = 0
    while start < len(facts):
        end = clause_end(facts, start)
        piece = facts[start:end]
        out += piece if named is None else _before(message, piece, named)
        if piece:
            named = _one_scope(piece)
        if end < len(facts):
            named = named if facts[end].value != 3 else None
            out.append(facts[end])
        start = end + 1
    return out


def _one_scope(piece: Sequence[Fact]) -> Fact | None:
    """The only scope of a clause that tells one value of it, where sets come before those."""
    scopes = [fact for fact in piece if fact.kind == "scope"]
    valued = [fact for fact in piece if fact.kind in VALUES]
    if len(scopes) != 1 or len(valued) != 1 or any(fact.kind not in VALUES | ASIDE | {"scope"} for fact in piece):
        return None
    which = scopes[0].value
    last = which == "last" or (isinstance(which, tuple) and which[0] == "last")
    return scopes[0] if last or (isinstance(which, int) and which > 1) else None


def _before(message: Message, piece: Sequence[Fact], named: Fact) -> Sequence[Fact]:
    """A clause, with a scope in place of "the ones before"."""
    at = next((at for at, fact in enumerate(piece) if fact.kind == "word" and _says_before(message, fact)), None)
    if at is None or any(fact.kind not in ASIDE and fact.value != "all" for fact in piece[:at]):
        return piece
    behind = [fact for fact in piece[at + 1 :] if (fact.kind, fact.value) != ("scope", "all")]
    if sum(fact.kind in VALUES for fact in behind) != 1 or any(fact.kind not in VALUES | ASIDE for fact in behind):
        return piece
    which = ("first", named.value - 1) if isinstance(named.value, int) else "rest"
    return [Fact("scope", piece[0].start, piece[at].end, which, {"text": ""}), *behind]


def _says_before(message: Message, fact: Fact) -> bool:
    return fact.end > fact.start and message.tokens[fact.start].text in little("those_before")
