"""Work ticked and crossed off on a day without a plan: "pull-ups 4x6 ✅ dips 3x10 ❌" did no dips."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.facts import Fact
from bot.reading.message import Message
from bot.reading.plan.ticks import CROSSES, TICKS

LINE_ENDS = ("emoji", "|")


def crossed(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts without the work that a cross stands behind, where a tick stands behind other work."""
    if message.context.today or not any(sign in message.text for sign in CROSSES):
        return facts
    ticks = any(_is(message, fact, TICKS) for fact in facts)
    out: list[Fact] = []
    for fact in facts:
        out.append(fact)
        if not ticks or not _is(message, fact, CROSSES):
            continue
        first = len(out) - 1
        while first and not _ends(out[first - 1]):
            first -= 1
        if any(one.kind == "move" for one in out[first:]):
            del out[first:-1]
    return out


def _is(message: Message, fact: Fact, signs: Sequence[str]) -> bool:
    return fact.kind == "sep" and message.span(fact.start, fact.end).strip().startswith(tuple(signs))


def _ends(fact: Fact) -> bool:
    return fact.kind == "sep" and (fact.note.get("mark") in LINE_ENDS or bool(fact.note.get("nl")))
