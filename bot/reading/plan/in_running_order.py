"""Sets told one after the other: "two sets as planned, the next only 3, the last 5", "20 s twice, then 18"."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from bot.reading.bounds import SENTENCE
from bot.reading.facts import Entry, Fact
from bot.reading.fold.rows import Row
from bot.reading.message import Message
from bot.reading.plan.choosing import main_rows
from bot.reading.plan.ground import members, plan_names
from bot.reading.plan.value import near_reps

AS_PLANNED = frozenset({"done", "planned", "fine", "same"})
COUNTED_OTHERWISE = ("more", "only", "stopped", "of_plan", "those")
MOST_WORDS = 3  # beside a number of the row: "la siguiente solo 3", "otra vez las 5"


def in_running_order(_message: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> Sequence[Fact]:
    """The facts with one list in place of such a row, where it has as many sets as the plan."""
    move: Fact | None = None
    for at, fact in enumerate(facts):
        move = fact if fact.kind == "move" else move
        own = [row for row in rows if move is not None and row.movement in members(move.value)]
        own = own or [rows[n] for n in main_rows(rows)]
        if any(row.side for row in own) or not own:
            continue
        begun = _begun(facts, at, own)
        if begun is None:
            continue
        entries, end = begun
        while len(entries) < len(own):
            told = _next(facts, end, len(entries) + 1, own)
            if told is None:
                break
            entries.append(told[0])
            end = told[1]
        if len(entries) != len(own) or end >= len(facts) + 1 or not _closes(facts, end):
            continue
        values = [float(one.reps if one.reps is not None else one.hold_s or 0) for one in entries]
        note = {"list": True, "mark": ",", "values": values, "outcome": True}
        listed = Fact("rows", fact.start, facts[end - 1].end, entries, note)
        return [*facts[:at], listed, *facts[end:]]
    return facts


def _begun(facts: Sequence[Fact], at: int, own: Sequence[Row]) -> tuple[list[Entry], int] | None:
    """The first sets of a row, more than one and not all, and the place behind them."""
    fact = facts[at]
    after = facts[at + 1] if at + 1 < len(facts) else None
    if fact.kind == "rows" and after is not None and after.kind == "repeat" and len(fact.value) == 1:
        return [replace(fact.value[0]) for _ in range(after.value)], at + 2
    if fact.kind == "rows" and 1 < len(fact.value) < len(own) and all(_plain(one) for one in fact.value):
        return [replace(one) for one in fact.value], at + 1
    many = fact.value if fact.kind == "count" and not any(fact.note.get(name) for name in COUNTED_OTHERWISE) else 0
    if fact.kind == "scope" and isinstance(fact.value, tuple) and fact.value[0] == "first":
        many = fact.value[1]
    if not many or many >= len(own) or after is None or not plan_names(after) & AS_PLANNED:
        return None
    return [Entry(row.reps, row.hold_s) for row in own[:many]], at + 2


def _plain(entry: Entry) -> bool:
    return entry.load_kg is None and entry.side is None and entry.ask is None


def _next(facts: Sequence[Fact], at: int, nth: int, own: Sequence[Row]) -> tuple[Entry, int] | None:
    """The one set told next, and the place behind it; `nth`: which one it is."""
    start = at
    while at < len(facts) and facts[at].kind == "sep" and facts[at].value < SENTENCE:
        at += 1
    joined = at > start
    words = 0
    while joined and at < len(facts) and _beside(facts[at], nth, len(own)):
        words += facts[at].kind == "word"
        at += 1
    if not joined or at >= len(facts) or words > MOST_WORDS:
        return None
    fact = facts[at]
    if fact.kind == "rows" and len(fact.value) == 1 and fact.note.get("one") and _plain(fact.value[0]):
        return replace(fact.value[0]), at + 1
    if fact.kind != "bare" or fact.note.get("comma"):
        return None
    if own[0].hold_s is not None:
        return Entry(hold_s=float(fact.value)), at + 1
    return (Entry(int(fact.value)), at + 1) if fact.value >= 1 and near_reps(fact.value, own) else None


def _beside(fact: Fact, nth: int, many: int) -> bool:
    """Whether a fact may stand before the next number: "the next only", "and the last", "luego"."""
    if fact.kind == "scope":
        return fact.value == nth or (fact.value == "last" and nth == many)
    got = fact.kind == "scheme" and fact.value == "got"
    return got or fact.kind == "word" or (fact.kind == "plan" and plan_names(fact) <= {"the", "only"})


def _closes(facts: Sequence[Fact], at: int) -> bool:
    return at >= len(facts) or facts[at].kind in ("sep", "claim")
