"""What was meant is told first: "instead of the 5x3 I did 4x4", "rather than five sets I did four"."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from bot.reading.bounds import SENTENCE, clause_start
from bot.reading.facts import Fact
from bot.reading.message import Message
from bot.reading.plan.ground import plan_names

NUMBERS = frozenset({"rows", "bare", "count", "load", "loads"})
OPENS = frozenset({"word", "sep", "claim"})
REACH = 8  # facts from what was meant to what was done
WORDS = 4  # facts between a load and "instead of"


def instead_led(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts without the sets that were meant, where a clause begins with them and tells after what was done."""
    for at, fact in enumerate(facts):
        if not plan_names(fact) & {"instead"} or not _opens(facts, at):
            continue
        meant = next((n for n in range(at + 1, min(at + REACH, len(facts))) if facts[n].kind in NUMBERS), None)
        if meant is None or any(one.kind == "sep" for one in facts[at:meant]):
            continue
        done = next((n for n in range(meant + 1, min(meant + REACH, len(facts))) if facts[n].kind in NUMBERS), None)
        if done is None or any(one.value == SENTENCE for one in facts[meant:done] if one.kind == "sep"):
            continue
        told = _done(message, facts[meant], facts[done])
        if told is not None:
            named = [one for one in facts[at + 1 : meant] if one.kind == "move"]
            return [*facts[:at], *named, *facts[meant + 1 : done], told, *facts[done + 1 :]]
    return facts


def _opens(facts: Sequence[Fact], at: int) -> bool:
    """Whether nothing but words stands before a fact in its clause."""
    low = clause_start(facts, at)
    return all(fact.kind in OPENS for fact in facts[low:at])


def _done(message: Message, meant: Fact, done: Fact) -> Fact | None:
    """What was done, in terms of what was meant; None: the two are not of one kind."""
    planned = message.context.today is not None
    if meant.kind == "count" and done.kind in ("count", "bare") and done.value == int(done.value):
        note = {"of_plan": int(meant.value)} if planned else {}
        return Fact("count", done.start, done.end, int(done.value), note)
    if meant.kind != "rows" or done.kind != "rows":
        return None
    if len(meant.value) == 1 and len(done.value) == 1 and planned:
        new, old = done.value[0].reps, meant.value[0].reps
        if new and old and meant.note.get("each_of") and done.note.get("each_of"):
            return Fact("instead", done.start, done.end, (float(new), float(old), "reps"))
        return None
    return replace(done) if len(done.value) > 1 else None
