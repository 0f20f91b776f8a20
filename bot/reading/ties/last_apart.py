"""The last set told apart with its effort before its reps or its name: "the last to failure 19", "@7 the last"."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.facts import Fact
from bot.reading.message import Message


def last_apart(_: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts, with the reps before the effort, as they are told of any other set."""
    out = list(facts)
    for at in range(len(out) - 2):
        scope, effort, reps = out[at : at + 3]
        last = scope.kind == "scope" and scope.value == "last" and effort.kind == "effort" and effort.note.get("words")
        whole = reps.kind == "bare" and not reps.note.get("spelled") and reps.value == int(reps.value)
        closes = at + 3 >= len(out) or out[at + 3].kind in ("sep", "word")
        if last and whole and closes:
            out[at + 1], out[at + 2] = reps, effort
    return _named_behind(out)


def _named_behind(facts: Sequence[Fact]) -> list[Fact]:
    """ "4x4 with 12, @7 the last": the effort in a clause of its own is of the set named behind it."""
    out = list(facts)
    for at in range(1, len(out) - 1):
        mark, effort, scope = out[at - 1 : at + 2]
        named = scope.kind == "scope" and scope.value == "last" and not scope.note.get("rep")
        closes = at + 2 >= len(out) or out[at + 2].kind == "sep"
        if mark.kind == "sep" and effort.kind in ("effort", "at") and named and closes:
            out[at], out[at + 1] = scope, effort
    return out
