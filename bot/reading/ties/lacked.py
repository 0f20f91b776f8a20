"""Reps that one of the sets just told lacked: "dips 3x8, missed two on the last", "4x5 at 20, one short on set 3"."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.facts import Fact
from bot.reading.message import Message
from bot.reading.plan.ground import plan_names
from bot.reading.plan.lacking import reps_lacked

LEAST = 2  # sets told, for one of them to lack reps
SETS = "all", "over", "rest"  # scopes that are no one set


def lacked(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts, with the set ahead of the reps that it lacked, so that these are taken from it.

    Against a plan it is the plan's set: there the sets are told by nothing else.
    """
    sets = next((at for at, fact in enumerate(facts) if fact.kind == "rows" and len(fact.value) >= LEAST), None)
    if sets is None or message.context.today:
        return facts
    tail = reps_lacked(message, facts[sets + 1 :], ())
    out = list(facts[: sets + 1])
    at = 0
    while at < len(tail):
        fact = tail[at]
        less = fact.kind == "delta" and fact.value[1:] == ("reps", -1)
        missed = fact.kind == "fail" and fact.note.get("rep") and not any(fact is one for one in facts)
        scope = _scope_behind(tail, at) if less or missed else None
        if scope is not None:
            out += [tail[scope], fact]
            at = scope + 1
            continue
        out.append(fact)
        at += 1
    return out


def _scope_behind(facts: Sequence[Fact], at: int) -> int | None:
    """The place of the one set named right behind: "one short on the third"."""
    behind = next((n for n in range(at + 1, len(facts)) if not _small(facts[n])), None)
    if behind is None or facts[behind].kind != "scope":
        return None
    value = facts[behind].value
    return behind if isinstance(value, int) or (isinstance(value, str) and value not in SETS) else None


def _small(fact: Fact) -> bool:
    return (fact.kind == "word" and fact.end == fact.start + 1) or plan_names(fact) == {"the"}
