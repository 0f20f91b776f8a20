"""The last set told apart with its effort before its reps: "30, 25 and the last to failure 19"."""

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
    return out
