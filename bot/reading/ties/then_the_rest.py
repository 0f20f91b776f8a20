"""Beside a plan, what came after its first sets: "first set 5, then only 4s", "erster Satz 5, danach nur noch 4er"."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.bounds import clause_end, ends_sentence, is_then, sentence_end
from bot.reading.facts import Fact
from bot.reading.little import little
from bot.reading.message import Message

NEAR = 1.6  # times; loads of one movement on one day
AS_PLANNED = frozenset({"planned", "same", "done", "fine"})
VALUES = frozenset({"load", "bare", "rows"})
LIFTS = frozenset({"move", "side"})
ASIDE = frozenset({"word", "plan", "scheme"})


def then_the_rest(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts, with the clause behind the first sets as that of the rest, where it tells one number of several."""
    if not message.context.today or sum(fact.kind == "scope" and fact.value != "all" for fact in facts) != 1:
        return facts
    first = next(n for n, fact in enumerate(facts) if fact.kind == "scope" and fact.value != "all")
    if not (
        facts[first].value == "first" or (isinstance(facts[first].value, tuple) and facts[first].value[0] == "first")
    ):
        return facts
    start = clause_end(facts, first + 1)
    told = [fact for fact in facts[:start] if fact.kind not in ASIDE | {"scope", "move", "claim", "sep"}]
    end = sentence_end(facts, start)
    end = _told_to(facts, start, end)
    behind = facts[start:end]
    named = any("rest" in fact.note.get("names", ()) for fact in behind if fact.kind == "plan")
    then = named or any(is_then(fact) for fact in behind)
    values = [fact for fact in behind if fact.kind not in ASIDE | {"sep", "scope"}]
    if not then or len(told) != 1 or len(values) != 1 or any(ends_sentence(fact) for fact in facts[:first]):
        return facts
    value = _load(told[0], values[0]) or _several(message, values[0], behind)
    value = values[0] if value is None and named and values[0].kind == "bare" else value
    if value is None:
        return facts
    rest = Fact("scope", value.start, value.start, "rest", {"text": ""})
    mark = Fact("sep", value.start, value.start, 1, {"mark": ","})
    return [*facts[:start], mark, rest, value, *facts[end:]]


def so_many_then_rest(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "Two sets as planned, the other two with 25": the first two, where a value is told of the rest."""
    rest = next((n for n, fact in enumerate(facts) if fact.kind == "scope" and fact.value == "rest"), 0)
    counts = [n for n, fact in enumerate(facts[:rest]) if fact.kind == "count" and not fact.note.get("only")]
    if not message.context.today or len(counts) != 1 or any(f.kind in LIFTS for f in facts[counts[0] : rest]):
        return facts
    at = counts[0]
    end = next((n for n in range(at, rest) if facts[n].kind == "sep"), rest)
    done = any(AS_PLANNED.intersection(fact.note.get("names", ())) for fact in facts[at:end])
    told = [fact for fact in facts[rest + 1 :] if fact.kind not in ASIDE]
    if not done or not told or told[0].kind not in VALUES:
        return facts
    first = Fact("scope", facts[at].start, facts[at].end, ("first", int(facts[at].value)), {"text": ""})
    return [*facts[:at], first, *facts[at + 1 :]]


def _told_to(facts: Sequence[Fact], start: int, end: int) -> int:
    """Where what came after is told, where a last clause says how all else went: "then 22.5, rest as planned"."""
    aside = ASIDE | {"sep", "scope"}
    parts = [n for n in range(start + 1, end) if facts[n].kind == "sep" and facts[n - 1].kind != "sep"]
    for part in parts:
        valued = any(fact.kind not in aside for fact in facts[start:part])
        last = facts[part + 1 : end]
        if valued and last and "rest" in last[0].note.get("names", ()) and all(fact.kind in aside for fact in last):
            return part
    return end


def _load(first: Fact, then: Fact) -> Fact | None:
    """ "The first two with 17.5, then 20": the load of the others."""
    if first.kind != "load" or then.kind not in ("bare", "load") or not then.value or not first.value:
        return None
    kg = float(then.note.get("kg", then.value))
    near = first.value / NEAR <= kg <= first.value * NEAR
    return Fact("load", then.start, then.end, kg, {"how": "at", "unit": "kg"}) if near else None


def _several(message: Message, fact: Fact, clause: Sequence[Fact]) -> Fact | None:
    reps = _reps_of_several(message, fact, clause)
    return None if reps is None else Fact("bare", fact.start, fact.end, float(reps), {"kg": float(reps)})


def _reps_of_several(message: Message, fact: Fact, clause: Sequence[Fact]) -> int | None:
    """The reps of each of several sets: "4s", "fours", "all 4", "4er"; None for one number of one set."""
    every = any(one.kind == "scope" and one.value == "all" for one in clause)
    if fact.kind == "rows" and len(fact.value) == 1:
        entry = fact.value[0]
        ends = message.tokens[fact.end - 1].text.endswith(tuple(little("plural")))
        if entry.hold_s and fact.note.get("one") and ends:
            return int(entry.hold_s)  # "4s" beside reps told before
        return entry.reps if entry.reps and (every or fact.note.get("each_of") or fact.note.get("the")) else None
    if fact.kind != "bare" or fact.value != int(fact.value):
        return None
    after = message.tokens[fact.end] if fact.end < len(message.tokens) else None
    plural = after is not None and not after.space and after.text in little("ending_of_these")
    return int(fact.value) if plural or every else None
