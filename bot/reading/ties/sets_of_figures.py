"""Sets named by the figure of their reps: "two 6s and a 5", "zwei 6er Klimmzüge", "2 6er, 1 5er"."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.facts import Entry, Fact
from bot.reading.fold.block import is_hold
from bot.reading.little import little
from bot.reading.message import Message

MOST_SETS, MOST_REPS = 10, 30
THINGS = frozenset({"plate", "tool", "word"})  # "two 20er plates"


def sets_of_figures(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts, with so many sets of so many reps where a figure with its ending is counted."""
    out: list[Fact] = []
    for at, fact in enumerate(facts):
        if fact.kind == "rows" and _held_by_ending(message, fact) and _no_hold(facts, at):
            entries = [Entry(int(entry.hold_s or 0)) for entry in fact.value]
            out.append(Fact("rows", fact.start, fact.end, entries, {"plain": True}))
            continue
        if fact.kind == "word" and _ends_figure(message, fact) and _counted(out):
            many, reps = out[-2:]
            entries = [Entry(int(reps.value)) for _ in range(int(many.value))]
            out[-2:] = [Fact("rows", many.start, fact.end, entries, {"plain": True} if len(entries) > 1 else {})]
            continue
        out.append(fact)
    return out


def _held_by_ending(message: Message, fact: Fact) -> bool:
    """Whether seconds are told by no more than the ending of a figure that a word counts: "two 6s"."""
    tokens = message.tokens[fact.start : fact.end]
    if len(fact.value) not in range(2, MOST_SETS + 1) or len(tokens) != 3 or not tokens[0].spelled:
        return False
    held = all(entry.hold_s is not None and entry.hold_s == int(entry.hold_s) <= MOST_REPS for entry in fact.value)
    return held and not tokens[2].space and tokens[2].text in little("ending_of_these")


def _no_hold(facts: Sequence[Fact], at: int) -> bool:
    """Whether the lift spoken of is none that is held."""
    before = next((one for one in reversed(facts[:at]) if one.kind == "move"), None)
    named = before or next((one for one in facts[at:] if one.kind == "move"), None)
    return named is not None and named.value.movement != "!" and not is_hold(named.value.movement)


def _ends_figure(message: Message, fact: Fact) -> bool:
    """Whether a word is the ending of a figure of reps, and no plate or dumbbell follows."""
    token = message.tokens[fact.start]
    if fact.end != fact.start + 1 or token.space or token.text not in little("ending_of_reps"):
        return False
    behind = message.beginning("grammar")[fact.end] if fact.end < len(message.tokens) else ()
    return not any(hit.table == "load" and hit.name in THINGS for hit in behind)


def _counted(before: Sequence[Fact]) -> bool:
    """Whether two whole numbers stand right before: how many sets, and their reps."""
    if len(before) < 2 or [fact.kind for fact in before[-2:]] != ["bare", "bare"]:
        return False
    many, reps = before[-2:]
    return many.end == reps.start and many.value in range(1, MOST_SETS + 1) and reps.value in range(1, MOST_REPS + 1)
