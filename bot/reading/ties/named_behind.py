"""Sets that are named behind what they were: "left only 12 on the last"."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.facts import Fact
from bot.reading.little import little
from bot.reading.message import Message


def named_behind(_: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "left only 12 on the last", "got 1 on the last two": the sets that a bare number is of are told after it."""
    out = list(facts)
    for at in range(1, len(out) - 1):
        one, scope = out[at], out[at + 1]
        if one.kind != "bare" or scope.kind != "scope" or scope.value == "all" or one.end != scope.start:
            continue
        closes = at + 2 == len(out) or out[at + 2].kind == "sep"
        before = out[at - 1]
        led = before.kind == "plan" and "only" in before.note.get("names", ())
        fell = before.kind == "link" and before.value == "drop"  # "5x5, dropped to 3 on the last set"
        several = isinstance(scope.value, tuple) and before.kind == "scheme" and before.value == "got"
        if fell and closes:
            out[at - 1] = Fact("word", before.start, before.end, None, {"noise": True})
        if closes and (led or fell or several) and scope.note.get("text", "").startswith(tuple(little("before_scope"))):
            out[at], out[at + 1] = scope, one
    return out
