"""The sets of one side told one by one, those of the other in one word: "left 3 3 2, right all 3s"."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.facts import Entry, Fact
from bot.reading.message import Message

SIDES = ("left", "right")
BESIDE = frozenset({"word", "sep", "plan"})


def all_of_a_side(_: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts, the side told in one word with as many sets as the other one."""
    listed = {
        side: next((len(one.value) for one in _of_side(facts, at) if one.kind == "rows" and _list(one)), 0)
        for at, fact in enumerate(facts)
        if fact.kind == "side" and (side := fact.value) in SIDES
    }
    out = list(facts)
    for at in range(len(facts) - 2, -1, -1):
        side = facts[at]
        if side.kind != "side" or side.value not in SIDES:
            continue
        sets = listed.get(SIDES[side.value == "left"], 0)
        own = _of_side(facts, at)
        told = [one for one in own if one.kind not in BESIDE]
        closes = len(told) > 1 and _all(told[-1])  # "right 20 every time"
        every = bool(told) and (_all(told[0]) or closes)
        number = told[:-1] if closes else told[1:] if every else told
        reps = _reps(number[0], every) if len(number) == 1 else None
        if sets < 2 or listed.get(side.value) or reps is None:
            continue
        start = next(n for n in range(at, len(facts)) if facts[n] is told[0])
        end = next(n for n in range(at, len(facts)) if facts[n] is (told[-1] if closes else number[0]))
        rows = [Entry(reps) for _ in range(sets)]
        note = {"list": True, "mark": " ", "values": [float(reps)] * sets}
        out[start : end + 1] = [Fact("rows", told[0].start, number[0].end, rows, note)]
    return out


def _of_side(facts: Sequence[Fact], at: int) -> Sequence[Fact]:
    """What is told of the side named at a place: up to the next one, or the end of its clause."""
    end = at + 1
    while end < len(facts) and facts[end].kind not in ("side", "move"):
        opens = facts[end].note.get("mark") == ":" and end == at + 1
        if facts[end].kind == "sep" and not opens:
            break
        end += 1
    return facts[at + 1 : end]


def _all(fact: Fact) -> bool:
    return fact.kind == "scope" and fact.value == "all"


def _list(rows: Fact) -> bool:
    return bool(rows.note.get("list")) and all(entry.reps is not None for entry in rows.value)


def _reps(number: Fact, every: bool) -> int | None:
    """The reps of each set: "all 3s", "all singles", "3s", "all 3"."""
    if number.kind == "bare":
        return int(number.value) if every and number.value == int(number.value) else None
    if number.kind != "rows" or len(number.value) != 1:
        return None
    entry = number.value[0]
    if entry.hold_s is not None:  # the "s" of "3s" is no second beside a side told in reps
        return int(entry.hold_s) if entry.hold_s == int(entry.hold_s) and number.note.get("unit") == "sec" else None
    return entry.reps if every or number.note.get("each_of") else None
