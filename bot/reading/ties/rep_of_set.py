"""Which repetition of which set did not go up: "im letzten Satz die zweite verkackt", "missed the third in set 2"."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from bot.reading.facts import Fact
from bot.reading.message import Message

BESIDE = frozenset({"word", "plan", "scheme"})  # what may stand between the set, the repetition and the miss


def rep_of_set(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts, with the repetition at the miss that it is of, where another word names the set."""
    for at, fact in enumerate(facts):
        if fact.kind != "fail" or fact.note.get("weak"):
            continue
        if isinstance(fact.value, int):
            behind = next((n for n in range(at + 1, len(facts)) if facts[n].kind not in BESIDE), None)
            if message.context.today and behind is not None and _is_set(message, facts[behind]):
                missed = replace(fact, note={**fact.note, "rep": True})
                return [*facts[:at], facts[behind], missed, *facts[at + 1 : behind], *facts[behind + 1 :]]
        if fact.value is not None:
            continue
        scopes = _before(facts, at)
        if len(scopes) != 2:
            continue
        sets = [n for n in scopes if _names_set(message, facts[n])]
        reps = [n for n in scopes if n not in sets and (isinstance(facts[n].value, int) or facts[n].value == "last")]
        if len(sets) == 1 and len(reps) == 1:
            missed = replace(fact, value=facts[reps[0]].value, note={**fact.note, "rep": True})
            return [missed if n == at else one for n, one in enumerate(facts) if n != reps[0]]
    return facts


def _before(facts: Sequence[Fact], at: int) -> list[int]:
    """The scopes of the clause right before a miss."""
    found: list[int] = []
    for n in range(at - 1, -1, -1):
        if facts[n].kind == "scope":
            found.append(n)
        elif facts[n].kind not in BESIDE:
            break
    return found


def _is_set(message: Message, fact: Fact) -> bool:
    return fact.kind == "scope" and _names_set(message, fact)


def _names_set(message: Message, fact: Fact) -> bool:
    """Whether a scope says that it is of a set."""
    grammar = message.beginning("grammar")
    return bool(fact.note.get("numbered")) or any(
        hit.table == "sets" and hit.start <= fact.end
        for n in range(fact.start, min(fact.end + 1, len(grammar)))
        for hit in grammar[n]
    )
