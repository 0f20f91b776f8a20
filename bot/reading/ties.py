"""Facts that say what a fact beside them is: a row of numbers by set that closes in an effort, a small "call it 2"."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from bot.reading.facts import Fact
from bot.reading.message import Message

LEAST_EFFORT = 4  # nobody rates a set of work lower; what is called less is a number of reps


def tie(message: Message, facts: Sequence[Fact]) -> list[Fact]:
    """The facts, with what their neighbours make of them."""
    return _reckoned(message, _rated(facts))


def _rated(facts: Sequence[Fact]) -> list[Fact]:
    """ "first set 6 last set 8 rpe": the word names every number of the row, each beside the set it rates."""
    out = list(facts)
    for at, fact in enumerate(out):
        if fact.kind != "effort":
            continue
        for place in range(at - 1, 0, -1):
            one = out[place]
            if one.kind == "sep" and one.value == 1 or one.kind == "scope":
                continue
            sure = one.kind == "bare" and out[place - 1].kind == "scope" and 5 <= one.value <= 10
            if not sure or out[at - 1].kind != "scope":
                break
            out[place] = replace(one, kind="effort")
    for at in range(1, len(out) - 1):
        one, after = out[at], out[at + 1]
        if one.kind == "effort" and out[at - 1].kind == "scope":
            # "sets 1-4 rpe 7, last one 9"
            rest = [f for f in out[at + 1 : at + 4] if not (f.kind == "sep" and f.value == 1)]
            if after.kind in ("sep", "scope") and len(rest) > 1 and rest[0].kind == "scope" and rest[1].kind == "bare":
                place = next(i for i, f in enumerate(out) if f is rest[1])
                if 5 <= rest[1].value <= 10 and (place + 1 == len(out) or out[place + 1].kind == "sep"):
                    out[place] = replace(rest[1], kind="effort")
    return out


def _reckoned(message: Message, facts: Sequence[Fact]) -> list[Fact]:
    """ "so call it 2" after a set mends its reps: it is no effort."""
    out: list[Fact] = []
    for fact in facts:
        called = fact.kind == "effort" and fact.value < LEAST_EFFORT and not fact.note.get("rir")
        if called and any(
            hit.table == "effort" and hit.name == "reckoned"
            for hit in message.book("grammar").at(message.tokens, fact.start)
        ):
            out.append(Fact("mend", fact.start, fact.start + 1, "mend"))
            out.append(replace(fact, kind="bare", start=fact.end - 1))
            continue
        out.append(fact)
    return out
