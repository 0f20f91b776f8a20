"""Further reps behind the sets, told by their number alone: "3x20 in a vest, took it off and did 25 more"."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.facts import LOADED, Entry, Fact
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.plan.ground import plan_names

LEAST_REPS = 6  # fewer may be so many sets more
MOST_REPS = 100
SENTENCE = 3  # the value of a `sep` that ends one


def reps_more(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts, with such a number as one more set; without a word for it only where the weight was put aside."""
    if message.context.today:
        return facts
    out = list(facts)
    for at, fact in enumerate(facts):
        whole = fact.kind == "bare" and fact.value == int(fact.value) and LEAST_REPS <= fact.value <= MOST_REPS
        if not whole or not _worked(facts[:at]):
            continue
        aside, done = _clause(facts[:at])
        more = _more(message, facts, at)
        closes = at + 1 == len(facts) or facts[at + 1].kind == "sep"
        if (aside and (more or closes)) or (more and (done or _unloaded(facts[:at]))):
            out[at] = Fact("rows", fact.start, fact.end, [Entry(int(fact.value))], {"one": True, "reps": True})
    return out


def _worked(before: Sequence[Fact]) -> bool:
    """Whether whole sets of a movement are told."""
    return any(one.kind == "rows" and len(one.value) > 1 for one in before)


def _clause(before: Sequence[Fact]) -> tuple[bool, bool]:
    """Whether the words right before a number put a weight aside ("belt off"), and whether they say "did"."""
    aside = done = False
    for one in reversed(before):
        if one.kind not in ("word", "sep", "plan", "scheme", "load") or one.value == SENTENCE:
            break
        if one.kind == "load":
            aside = bool(one.note.get("none"))
            break
        done = done or (one.kind == "scheme" and one.value == "got")
    return aside, done


def _more(message: Message, facts: Sequence[Fact], at: int) -> bool:
    """ "25 more", "15 to finish"."""
    after = facts[at + 1] if at + 1 < len(facts) else None
    if after is None or after.start != facts[at].end:
        return False
    said = " ".join(token.text for token in message.tokens[after.start : after.start + 2])
    return "more" in plan_names(after) or said in little("at_the_end")


def _unloaded(before: Sequence[Fact]) -> bool:
    """Whether the movement is one that nobody hangs kilograms on: "push ups 3x20, then 25 more"."""
    moves = [one for one in before if one.kind == "move"]
    loaded = any(one.kind in ("load", "at", "loads") for one in before)
    return bool(moves) and moves[-1].value.movement not in LOADED and not loaded
