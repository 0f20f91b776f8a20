"""How hard a set was, told before its reps: "the third to failure, got 5", "third one at rpe 9: 5"."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.bounds import is_comma
from bot.reading.facts import Fact
from bot.reading.message import Message

MOST_REPS = 30
SILENT = frozenset({"word", "scheme"})


def rated_ahead(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts, with the reps of a set before its effort."""
    out = list(facts)
    at = 0
    while at + 3 < len(out):
        reps = _reps_behind(message, out, at)
        if reps is not None:
            effort, told = out[at + 1], out[at + 3 : reps + 1]
            again = isinstance(out[at].value, int) and _sets_before(out[:at]) >= out[at].value
            here = [Fact("scope", effort.start, effort.start, out[at].value, {"text": ""})] if again else []
            out[at + 1 : reps + 1] = [*told, *here, effort]
            at = reps
        at += 1
    return out


def _sets_before(facts: Sequence[Fact]) -> int:
    """How many sets of the lift spoken of were told before."""
    move = next((at for at in range(len(facts) - 1, -1, -1) if facts[at].kind == "move"), 0)
    return sum(len(fact.value) for fact in facts[move:] if fact.kind == "rows")


def _reps_behind(message: Message, facts: Sequence[Fact], at: int) -> int | None:
    """Where the reps of a rated set stand that begins here; None: there are none."""
    scope, effort, sep = facts[at : at + 3]
    numbered = isinstance(scope.value, int) or (scope.value == "last" and bool(message.context.today))
    if scope.kind != "scope" or not numbered or effort.kind != "effort" or effort.note.get("session"):
        return None
    if not is_comma(sep) or sep.note.get("mark") not in (",", ":"):
        return None
    end = at + 3
    while end < len(facts) and facts[end].kind in SILENT:
        end += 1
    if end >= len(facts) or (end + 1 < len(facts) and facts[end + 1].kind not in (*SILENT, "sep")):
        return None
    fact = facts[end]
    one = fact.kind == "rows" and len(fact.value) == 1 and fact.value[0].reps is not None and not fact.note.get("the")
    bare = fact.kind == "bare" and fact.value == int(fact.value) and 0 <= fact.value <= MOST_REPS
    return end if one or bare else None
