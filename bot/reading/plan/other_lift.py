"""The other one of two lifts: "dips were 8, 8, 6, the other one by the book", "die andere Übung nach Plan"."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.bounds import is_strong
from bot.reading.facts import Fact
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.movements.mention import Mention
from bot.reading.plan.ground import members, plan_names, planned

SAID = frozenset({"done", "planned", "same", "fine", "skipped"})
TOLD = frozenset({"rows", "bare", "count"})


def other_lift(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts, with the lift in place of "the other one", where the plan has no sides and one lift is not named."""
    at = next((n for n, fact in enumerate(facts) if fact.kind == "side" and fact.value == "other"), None)
    rows = planned(message) if at is not None else ()
    if at is None or not rows or any(row.side for row in rows):
        return facts
    named = {one for fact in facts if fact.kind == "move" for one in members(fact.value)}
    left = {row.movement for row in rows if row.part != "warm_up"} - named
    end = at + 2 if at + 1 < len(facts) and _a_lift(message, facts[at + 1]) else at + 1
    clause = []
    for fact in facts[end:]:
        if is_strong(fact):
            break
        clause.append(fact)
    said = any(plan_names(fact) & SAID for fact in (clause if end > at + 1 else clause[:1]))
    said = said or (end > at + 1 and any(fact.kind in TOLD for fact in clause))
    if at and facts[at - 1].kind == "scope":
        return facts  # "all the other stuff as planned"
    if not named or len(left) != 1 or not said or any(fact.kind == "move" for fact in clause):
        return facts
    start, stop = facts[at].start, facts[end - 1].end
    while end < len(facts) and facts[end].kind == "word" and _text(message, facts[end]) in little("felt_so", "feels"):
        end += 1
    lift = Fact("move", start, stop, Mention(str(left.pop()), [(start, stop)]))
    return [*facts[:at], lift, *facts[end:]]


def _text(message: Message, fact: Fact) -> str:
    return " ".join(token.text for token in message.tokens[fact.start : fact.end])


def _a_lift(message: Message, fact: Fact) -> bool:
    """Whether a fact is the "one" of "the other one", or a word for a lift."""
    one = fact.kind == "bare" and fact.value == 1 and bool(fact.note.get("spelled"))
    return one or (fact.kind == "word" and message.tokens[fact.start].text in little("lift"))
