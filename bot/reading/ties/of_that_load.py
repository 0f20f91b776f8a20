"""An effort of the sets that are named by their load: "4@20 3@25 2@30, the 25 was rpe 8", "en la de 30 nada dentro"."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.bounds import clause_end, ends_sentence
from bot.reading.facts import Fact
from bot.reading.little import little
from bot.reading.message import Message

LEAST_LOAD = 12  # beyond what reps and efforts are
NEAR = 3  # words between the two
BETWEEN = frozenset({"word", "plan"})


def of_that_load(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts, with the place of those sets, before the effort; unchanged where a set's load is not told."""
    if message.context.today:
        return facts
    for at, effort in enumerate(facts):
        if effort.kind != "effort":
            continue
        named = _named_beside(facts, at)
        if named is None:
            continue
        places = _places(facts[: min(at, named)], facts[named].value)
        if places is None:
            continue
        value = places[0] if len(places) == 1 else ("these", places)
        low, high = sorted((at, named))
        scope = Fact("scope", facts[named].start, facts[named].end, value, {"text": ""})
        return [*facts[:low], scope, effort, *facts[high + 1 :]]
    return facts


def _named_beside(facts: Sequence[Fact], at: int) -> int | None:
    """Where a load stands alone in the clause of an effort."""
    for step in (-1, 1):
        place = at + step
        while 0 <= place < len(facts) and abs(place - at) <= NEAR and facts[place].kind in BETWEEN:
            place += step
        if 0 <= place < len(facts) and facts[place].kind == "bare" and facts[place].value >= LEAST_LOAD:
            before = facts[place - 1] if place else None
            behind = facts[place + 1] if place + 1 < len(facts) else None
            led = before is not None and before.kind in BETWEEN and before.end == facts[place].start
            if led and (behind is None or behind.kind in BETWEEN | {"sep", "effort"}):
                return place
    return None


def _places(facts: Sequence[Fact], kg: float) -> tuple[int, ...] | None:
    """Which of the sets told so far, from one on, had a load; None: none, or not each is told with its own."""
    start = next((n + 1 for n in range(len(facts) - 1, -1, -1) if facts[n].kind == "move"), 0)
    loads: list[float] = []
    waiting, ahead = 0, None
    for fact in facts[start:]:
        if fact.kind in ("rows", "bare"):
            if waiting:
                return None
            many = len(fact.value) if fact.kind == "rows" else 1
            own = fact.note.get("own_load", ahead)
            loads += [own] * many if own is not None else []
            waiting, ahead = (0, None) if own is not None else (many, None)
        elif fact.kind == "load":
            loads += [fact.value] * waiting
            waiting, ahead = 0, None if waiting else fact.value
        elif fact.kind not in BETWEEN | {"sep", "effort", "scheme"}:
            return None
    found = tuple(n for n, load in enumerate(loads, 1) if load == kg)
    return found if found and not waiting and len(found) < len(loads) else None


def load_again(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "+45 missed. Not my day for 45": a sentence that speaks of a load told before tells no reps."""
    for at, fact in enumerate(facts):
        if fact.kind != "bare" or fact.value < LEAST_LOAD:
            continue
        low = next((n + 1 for n in range(at - 1, -1, -1) if ends_sentence(facts[n])), 0)
        high = clause_end(facts, at)
        alone = low < at and all(one.kind == "word" or one is fact for one in facts[low:high])
        loads = {one.value for one in facts[:low] if one.kind == "load"}
        loads |= {one.note["own_load"] for one in facts[:low] if "own_load" in one.note}
        led = fact.start > 0 and message.tokens[fact.start - 1].text in little("speaks_of")
        if alone and led and fact.value in loads:
            spoken = Fact("word", fact.start, fact.end, None, {"noise": True})
            return [*facts[:at], spoken, *facts[at + 1 :]]
    return facts
