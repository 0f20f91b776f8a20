"""A movement or part of the plan of which nothing was done: "dips nicht geschafft", "all done bar the pull-ups"."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.bounds import clause_end, clause_start
from bot.reading.facts import Fact
from bot.reading.fold.rows import Row
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.plan.ground import PARTS, plan_names
from bot.reading.prose import not_managed


def lift_not_managed(message: Message, facts: Sequence[Fact], _rows: Sequence[Row]) -> list[Fact]:
    """ "Pull-ups done, dips nicht geschafft": no set of theirs was done, where no set or repetition is named."""
    out: list[Fact] = []
    for at, fact in enumerate(facts):
        if fact.kind == "fail" and fact.value is None and not fact.note.get("weak") and not_managed(message, fact):
            low = clause_start(facts, at)
            high = clause_end(facts, at + 1)
            clause = [one for one in facts[low:high] if one is not fact]
            named = any(one.kind == "move" or plan_names(one) & set(PARTS) for one in clause)
            if named and all(one.kind in ("move", "word", "plan", "claim") for one in clause):
                fact = Fact("plan", fact.start, fact.end, "skipped", {"names": ["skipped"]})
        out.append(fact)
    return out


def lift_denied(message: Message, facts: Sequence[Fact], _rows: Sequence[Row]) -> Sequence[Fact]:
    """ "Couldn't warm up, did the rest", "no time to do the dips": only words that deny stand before it.

    "Couldn't feel the dips", "didn't warm up properly" say nothing of that kind.
    """
    out = list(facts)
    for at, fact in enumerate(facts):
        if fact.kind != "move" and not plan_names(fact) & set(PARTS):
            continue
        low, high = clause_start(facts, at), clause_end(facts, at)
        clause = [one for one in facts[low:high] if one is not fact]
        words = [message.tokens[n].text for one in facts[low:at] for n in range(one.start, one.end)]
        tail = [message.tokens[n].text for one in facts[at + 1 : high] for n in range(one.start, one.end)]
        silent = all(one.kind in ("word", "scheme", "claim") or _denies_little(one) for one in clause)
        denied = not little("denies_work").isdisjoint(words)
        denied = denied and all(word in little("denies_work", "beside_denial") for word in words)
        if silent and denied and all(word in little("behind_denial") for word in tail):
            out[low] = Fact("plan", facts[low].start, facts[low].end, "skipped", {"names": ["skipped"]})
    return out


def _denies_little(fact: Fact) -> bool:
    """ "No", "not this", "the"."""
    return (fact.kind == "fail" and fact.value is None) or plan_names(fact) <= {"the", "instead", "not_this"}


def leaving_lifts(message: Message, facts: Sequence[Fact], _rows: Sequence[Row]) -> list[Fact]:
    """ "all done bar the pull-ups": "bar" there is no part of the movement's name."""
    grammar = message.beginning("grammar")
    out: list[Fact] = []
    for fact in facts:
        if fact.kind == "move" and out and plan_names(out[-1]) & {"done", "planned", "all_lifts"}:
            start = min(first for first, _ in fact.value.spans)
            if any(hit.table == "plan" and hit.name == "except" for hit in grammar[start]):
                out.append(Fact("plan", start, start + 1, "except", {"names": ["except"]}))
        out.append(fact)
    return out
