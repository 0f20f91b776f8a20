"""Whether a clause goes on with the set that the one before has named: "15 on the last and only 4 reps"."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.facts import Fact
from bot.reading.plan.ground import plan_names

VALUES = frozenset("rows bare loads at count effort effort_range efforts instead delta fail assist".split())
WHICH = ("all", "over", "rest", "top", "back")  # scopes that name no set by its place
AS_PLANNED = frozenset({"done", "planned", "same", "fine", "rest"})
MOST_WORDS = 3  # beside the value


def goes_on(before: Sequence[Fact], facts: Sequence[Fact]) -> bool:
    """Whether a set named, with its load or nothing told of it, has its reps (and load) in the next clause."""
    named = [fact for fact in before if fact.kind == "scope"]
    if len(named) != 1 or named[0].value in WHICH or any(fact.kind in VALUES | {"side"} for fact in before):
        return False
    names = set().union(*(plan_names(fact) for fact in before))
    if names & AS_PLANNED and "except" not in names:
        return False
    loads = [fact for fact in before if fact.kind == "load"]
    told = [fact for fact in facts if fact.kind in VALUES or fact.kind == "load"]
    aside = [fact for fact in facts if fact not in told]
    if len(loads) > 1 or any(not fact.value for fact in loads) or not all(_silent(fact) for fact in aside):
        return False
    if sum(fact.kind == "word" for fact in aside) > MOST_WORDS:
        return False
    kinds = sorted(fact.kind for fact in told)
    alone = kinds in (["rows"], ["bare"]) or (not loads and kinds in (["load", "rows"], ["bare", "load"]))
    return alone and all(_one(fact) for fact in told)


def _silent(fact: Fact) -> bool:
    got = fact.kind == "scheme" and fact.value == "got"
    return got or fact.kind == "word" or (fact.kind == "plan" and plan_names(fact) <= {"the", "only", "took"})


def _one(fact: Fact) -> bool:
    """Whether a value can be of one set."""
    if fact.kind == "rows":
        return len(fact.value) == 1 and bool(fact.note.get("one")) and fact.value[0].load_kg is None
    return fact.kind == "bare" or bool(fact.value)
