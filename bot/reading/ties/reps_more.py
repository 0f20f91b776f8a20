"""Further reps behind the sets, told by their number alone: "3x20 in a vest, took it off and did 25 more"."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.bounds import SENTENCE
from bot.reading.facts import LOADED, Entry, Fact
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.plan.ground import plan_names

LEAST_REPS = 6  # fewer may be so many sets more
MOST_REPS = 100
REACH = 12  # facts from a number back to the weight that was put aside


def reps_more(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts, with such a number as one more set; without a word for it only where the weight was put aside."""
    if message.context.today:
        return facts
    out = list(facts)
    worked = loaded = hung = False  # sets told so far, kilograms told so far, a movement that they are hung on
    for at, fact in enumerate(facts):
        whole = fact.kind == "bare" and fact.value == int(fact.value) and LEAST_REPS <= fact.value <= MOST_REPS
        if whole and worked:
            aside, done = _clause(facts, at)
            more = _more(message, facts, at)
            closes = at + 1 == len(facts) or facts[at + 1].kind == "sep"
            if (aside and (more or closes)) or (more and (done or not (loaded or hung))):
                out[at] = Fact("rows", fact.start, fact.end, [Entry(int(fact.value))], {"one": True, "reps": True})
        worked = worked or (fact.kind == "rows" and len(fact.value) > 1)
        loaded = loaded or fact.kind in ("load", "at", "loads")
        hung = fact.value.movement in LOADED if fact.kind == "move" else hung
    return out


def _clause(facts: Sequence[Fact], at: int) -> tuple[bool, bool]:
    """Whether the words right before a number put a weight aside ("belt off"), and whether they say "did"."""
    aside = done = False
    for place in range(at - 1, max(-1, at - 1 - REACH), -1):
        one = facts[place]
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
