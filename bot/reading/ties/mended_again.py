"""A lift, or another in its place, named behind words that take something back: "dips 3x8 +15, no wait, +10"."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.facts import Fact
from bot.reading.message import Message
from bot.reading.plan.ground import plan_names

SILENT = frozenset({"word", "sep", "scheme"})
REACH = 4  # facts from the words to the lift


def mended_again(_message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts, without the name of the lift that was told right before: what follows is of its sets."""
    out: list[Fact] = []
    last: Fact | None = None
    mended = REACH + 1  # facts since the words
    for at, fact in enumerate(facts):
        mended = 0 if fact.kind == "mend" else mended + 1
        if fact.kind == "move":
            same = last is not None and last.value.movement == fact.value.movement
            if (
                same
                and mended <= REACH
                and all(_silent(one) for one in out[len(out) - mended + 1 :])
                and _told(facts[at + 1 :])
            ):
                continue
            last = fact
        out.append(fact)
    return out


def another_lift(_message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "Pull-ups 4x5, no wait, chin-ups 4x5": the same sets, told again under the name that was meant."""
    for at, fact in enumerate(facts):
        if fact.kind != "mend":
            continue
        first = next((n for n in range(at - 1, -1, -1) if facts[n].kind == "move"), None)
        second = next((n for n in range(at + 1, len(facts)) if not _silent(facts[n])), None)
        if first is None or second is None or facts[second].kind != "move":
            continue
        told = [one for one in facts[first + 1 : at] if not _silent(one)]
        again = 0  # of those told, how many are told again
        ends = second + 1
        for n in range(second + 1, len(facts)):
            if again == len(told) or (not _silent(facts[n]) and facts[n].value != told[again].value):
                break
            if not _silent(facts[n]):
                again, ends = again + 1, n + 1
        if again:  # "pull-ups 4x5 +10, actually chin-ups 4x5": the load stays
            return [*facts[:first], facts[second], *facts[first + 1 : at], *facts[ends:]]
    return facts


def _silent(fact: Fact) -> bool:
    return fact.kind in SILENT or (fact.kind == "plan" and plan_names(fact) <= {"the", "only"})


def _told(behind: Sequence[Fact]) -> bool:
    """Whether a value stands right behind."""
    told = next((fact for fact in behind[:REACH] if not (fact.kind in ("word", "scheme") or _silent(fact))), None)
    return told is not None and told.kind in ("load", "rows", "bare", "at", "count", "scope")
