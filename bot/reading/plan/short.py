"""So many less than planned, told without a word for reps: "right one less on each set", "one lever short"."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.facts import Fact
from bot.reading.message import Message
from bot.reading.plan.ground import plan_names

MOST_SHORT = 3  # reps; more than that is a number of something else


def less_on_a_side(message: Message, facts: Sequence[Fact]) -> list[Fact]:
    """ "Derecha una menos", "right one less", "rechts je eine weniger": reps of that side, in each set."""
    out: list[Fact] = []
    for fact in facts:
        last = out[-2:]
        if plan_names(fact) & {"less"} and last:
            number = last[-1]
            if [one.kind for one in last] == ["side", "bare"] and number.value in range(1, MOST_SHORT + 1):
                out[-1] = Fact("delta", number.start, fact.end, (number.value, "reps", -1), {"open": True})
                continue
            of_one = number.kind == "side" and message.tokens[number.end - 1].value == 1
            if of_one:  # "right one less": the "one" is no part of the side's name
                out.append(Fact("delta", number.end, fact.end, (1.0, "reps", -1), {"open": True}))
                continue
        if fact.kind == "delta" and [(one.kind, one.value == "each") for one in last] == [
            ("side", False),
            ("side", True),
        ]:
            out[-1] = Fact("scope", last[1].start, last[1].end, "all", {"text": ""})  # "rechts je": in each set
        out.append(fact)
    return out


def one_short(facts: Sequence[Fact]) -> list[Fact]:
    """ "One lever short": a set of them."""
    out: list[Fact] = []
    for fact in facts:
        last = out[-2:]
        named = [one.kind for one in last] == ["bare", "move"] and last[0].value == 1
        if named and last[0].note.get("spelled") and fact.start == last[1].end and plan_names(fact) & {"less"}:
            out[-2:] = [last[1], Fact("count", last[0].start, fact.start, 1)]
        out.append(fact)
    return out
