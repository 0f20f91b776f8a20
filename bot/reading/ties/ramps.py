"""Loads told by their step: "5x3, added 2.5 each set starting at 15" is 15, 17.5, 20, 22.5 and 25."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.facts import Fact
from bot.reading.message import Message

LEAST_SETS = 2


def ramps(_: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts, with the load of each set where the first and the step are told; a step from nowhere is asked."""
    out = list(facts)
    while (at := next((n for n, fact in enumerate(out) if fact.kind == "step"), None)) is not None:
        low, high = _own_part(out, at)
        work = _sets(out, at, low, high)
        base = _base(out, at, low, high)
        if work is None or base is None:
            out[at] = Fact("ask", out[at].start, out[at].end, "load_kg")
            continue
        place, count = work
        first = float(out[base].value if out[base].kind == "load" else out[base].note.get("kg", out[base].value))
        kgs = [first + n * float(out[at].value) for n in range(count)]
        if min(kgs) < 0:
            out[at] = Fact("ask", out[at].start, out[at].end, "load_kg")
            continue
        start, end = min(out[base].start, out[at].start), max(out[base].end, out[at].end)
        loads = Fact("loads", start, end, kgs)
        behind = min(at, base) > place  # told behind the sets, or before them
        spent = {id(out[at]), id(out[base])} | _scope_of(out, base)
        anchor = out[place]
        out = [fact for fact in out if id(fact) not in spent]
        put = next(n for n, fact in enumerate(out) if fact is anchor)
        out.insert(put + 1 if behind or anchor.kind == "count" else put, loads)
    return out


def _own_part(facts: Sequence[Fact], at: int) -> tuple[int, int]:
    """Where the work of one movement begins and ends around `at`: between the names of others that have sets."""
    low, high = 0, len(facts)
    moves = [n for n, fact in enumerate(facts) if fact.kind == "move"]
    before = [n for n in moves if n < at]
    after = [n for n in moves if n > at]
    if len(before) > 1:
        low = before[-1]
    if before and after:
        high = after[0]
    return low, high


def _sets(facts: Sequence[Fact], at: int, low: int, high: int) -> tuple[int, int] | None:
    """Where the sets stand that the step is of, and how many they are: the nearest before it, else behind it."""
    for n in (*range(at - 1, low - 1, -1), *range(at + 1, high)):
        fact = facts[n]
        if fact.kind == "count" and fact.value >= LEAST_SETS:
            return n, int(fact.value)
        if fact.kind == "rows" and len(fact.value) >= LEAST_SETS:
            counted = next((m for m in range(low, n) if facts[m].kind == "count"), None)
            return (n, len(fact.value)) if counted is None or fact.note.get("list") else (counted, facts[counted].value)
    return None


def _base(facts: Sequence[Fact], at: int, low: int, high: int) -> int | None:
    """Where the load of the first set stands."""
    loads = [n for n in range(low, high) if facts[n].kind == "load" and facts[n].value is not None]
    firsts = [n for n in range(low, at) if facts[n].kind == "bare" and _scope_of(facts, n)]
    loads = loads or firsts  # "first set 20"
    told = [n for n in loads if facts[n].note.get("start")]
    before = [n for n in loads if n < at]
    return told[0] if told else before[-1] if before else None


def _scope_of(facts: Sequence[Fact], base: int) -> set[int]:
    """ "First set 20, then 2.5 more each set": the words that say that the load is the first set's."""
    before = facts[base - 1] if base else None
    first = before is not None and before.kind == "scope" and before.value in (1, "first")
    return {id(before)} if first else set()
