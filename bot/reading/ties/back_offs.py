"""Loads told bare between a word for sets by their weight and the sets: "top 30 x 3, backoff 25 3x5"."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.facts import Fact
from bot.reading.message import Message
from bot.reading.ties.values import kgs_of

LEAST_LOAD = 10  # as said; a lower number may count sets


def back_offs(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts, with the number between "backoff" and whole sets as their load."""
    out = list(facts)
    for at in range(len(facts) - 2):
        scope, number, rows = facts[at : at + 3]
        led = scope.kind == "scope" and scope.value == "back" and number.kind == "bare"
        if led and number.value >= LEAST_LOAD and rows.kind == "rows" and len(rows.value) > 1:
            out[at + 1] = Fact("load", number.start, number.end, kgs_of(message, number)[0], {"how": "at"})
    return out


def top_by_load(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "Top 30 x 3": one set with that load, not so many sets with a stop at the top."""
    out = list(facts)
    for at in range(len(facts) - 1):
        top, rows = facts[at : at + 2]
        led = top.kind == "flag" and top.value == "pause_top" and top.end - top.start == 1 and top.end == rows.start
        if not led or rows.kind != "rows" or not rows.note.get("plain") or "own_load" in rows.note:
            continue
        load, reps = len(rows.value), rows.value[0].reps or 0
        if load < LEAST_LOAD or reps >= load:
            continue
        number = Fact("bare", rows.start, rows.start + 1, float(load))
        note = {"one": True, "top": True, "own_load": kgs_of(message, number)[0]}
        out[at] = Fact("word", top.start, top.end, None, {"noise": True})
        out[at + 1] = Fact("rows", rows.start, rows.end, rows.value[:1], note)
    return out
