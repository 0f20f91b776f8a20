"""Sets counted from the first: "1st set 4, 2nd set 4, 3rd set 3, stopped" lists what was done, and no more was."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.facts import Entry, Fact
from bot.reading.message import Message

LEAST = 3
ENDED = frozenset({"quit", "stopped"})


def counted_through(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts with such a list in one piece, on a day with a plan: of no set behind it anything is told."""
    plan = {fact.value for fact in facts if fact.kind == "plan"}
    if not message.context.today or plan - ENDED:
        return facts  # "first 4, second 3, the rest as planned"
    places = [at for at, fact in enumerate(facts) if fact.kind == "scope"]
    told = [(at, facts[at + 1]) for at in places if at + 1 < len(facts)]
    numbers = [1 if facts[at].value == "first" else facts[at].value for at, _ in told]
    counted = numbers == list(range(1, len(told) + 1)) and len(told) == len(places)
    if not counted or len(told) < (2 if plan else LEAST) or not all(_is_reps(after) for _, after in told):
        return facts
    last = told[-1][1]
    between = [fact for fact in facts[places[0] : facts.index(last) + 1] if fact.kind not in ("scope", "bare", "sep")]
    if between and any(fact.kind != "word" for fact in between):
        return facts
    reps = [Entry(int(after.value)) for _, after in told]
    listed = Fact("rows", facts[places[0]].start, last.end, reps, {"list": True})
    behind = [fact for fact in facts[facts.index(last) + 1 :] if fact.kind != "plan"]
    return [*facts[: places[0]], listed, *behind]


def _is_reps(fact: Fact) -> bool:
    return fact.kind == "bare" and fact.value == int(fact.value)
