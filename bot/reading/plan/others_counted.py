"""The sets besides those named, by their number: "forgot set 2, the other four are fine" of five planned."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from bot.reading.bounds import clause_end
from bot.reading.facts import Fact
from bot.reading.fold.rows import Row
from bot.reading.message import Message
from bot.reading.plan.choosing import main_rows, pick
from bot.reading.plan.ground import members, plan_names

VERDICT = frozenset({"done", "planned", "fine", "same"})
LEAST_PLACES = 2
NUMBERS = frozenset({"rows", "bare", "load", "at", "loads", "count"})


def others_counted(_message: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> list[Fact]:
    """The facts, with "the other four" as the rest of the sets, done, where that is how many are left."""
    out: list[Fact] = []
    for at, fact in enumerate(facts):
        led = out[-1] if out else None
        if led is not None and fact.kind == "bare" and (led.kind, led.value) == ("scope", "rest"):
            behind = facts[at + 1 : clause_end(facts, at)]
            if led.end == fact.start and _verdict(fact, behind) and _left(out[:-1], rows) == fact.value:
                out[-1] = replace(led, end=fact.end, note={**led.note, "names": ["done"]})
                continue
        out.append(fact)
    return out


def places_counted(_message: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> Sequence[Fact]:
    """ "First 3 sets as planned, last 2 with 10" of five planned: numbers of sets, where they add up to all of them."""
    places = [at for at, fact in enumerate(facts) if fact.kind == "scope" and _place(fact) is not None]
    counts = [_count_at(facts, at) for at in places]
    move = next((fact.value for fact in facts if fact.kind == "move"), None)
    own = [at for at, row in enumerate(rows) if move is not None and row.movement in members(move)] or main_rows(rows)
    step = 2 if own and rows[own[0]].side is not None else 1
    if len(places) < LEAST_PLACES or None in counts or sum(one or 0 for one in counts) * step != len(own):
        return facts
    out: list[Fact] = []
    for at, fact in enumerate(facts):
        counted = at - 1 in places and not isinstance(facts[at - 1].value, tuple)
        if counted and fact.kind == "bare" and fact.start == facts[at - 1].end:
            name, many = _place(out[-1]), int(fact.value)
            out[-1] = replace(out[-1], end=fact.end, value="rest" if name == "rest" else (name, many))
            continue
        out.append(fact)
    return out


def _place(scope: Fact) -> str | None:
    """ "First", "last" or "rest", with or without their number."""
    name = scope.value[0] if isinstance(scope.value, tuple) else scope.value
    return str(name) if name in ("first", "last", "rest") else None


def _count_at(facts: Sequence[Fact], at: int) -> int | None:
    """How many sets stand at a place: in the scope itself or right behind it."""
    value = facts[at].value
    if isinstance(value, tuple):
        return int(value[1]) if isinstance(value[1], int) else None
    behind = facts[at + 1] if at + 1 < len(facts) else None
    told = behind is not None and behind.kind == "bare" and behind.start == facts[at].end
    whole = told and behind is not None and behind.value == int(behind.value) and behind.value > 1
    return int(behind.value) if whole and behind is not None else None


def _verdict(fact: Fact, behind: Sequence[Fact]) -> bool:
    """Whether what stands behind the number says how those sets went, and nothing of reps or loads."""
    if not behind or any(one.kind in NUMBERS for one in behind):
        return False
    every = any((one.kind, one.value) == ("scope", "all") or plan_names(one) & VERDICT for one in behind)
    return every or (bool(fact.note.get("spelled")) and behind[0].kind in ("word", "scheme"))


def _left(before: Sequence[Fact], rows: Sequence[Row]) -> int:
    """How many sets of the lift spoken of are left once those named are told; 0 where none was named."""
    move = next((fact.value for fact in reversed(before) if fact.kind == "move"), None)
    own = [at for at, row in enumerate(rows) if move is not None and row.movement in members(move)] or main_rows(rows)
    scopes = [fact.value for fact in before if fact.kind == "scope" and fact.value not in ("all", "rest", "over")]
    named = {at for scope in scopes for at in pick(rows, own, scope)}
    step = 2 if own and rows[own[0]].side is not None else 1
    return (len(own) - len(named)) // step if named else 0
