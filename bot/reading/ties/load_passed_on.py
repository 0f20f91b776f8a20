"""A bare number for further sets where those before had a load: "first two with 10, then 5 for the last two"."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.bounds import clause_end
from bot.reading.facts import Fact
from bot.reading.little import little
from bot.reading.message import Message

MOST_MORE = 2  # reps that a set has more than the others
TIED = frozenset({"word", "plan"})


def load_passed_on(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts, the number as the load of the sets that are named behind it."""
    told = next((at for at, fact in enumerate(facts) if fact.kind == "rows" and len(fact.value) > 1), None)
    if told is None:
        return facts
    for at in range(told + 1, len(facts) - 1):
        scope, load = facts[at : at + 2]
        if scope.kind != "scope" or load.kind != "load" or not load.value or load.note.get("unit") == "lb":
            continue
        n = at + 2
        while n < len(facts) and facts[n].kind == "sep":
            n += 1
        end = clause_end(facts, n)
        clause = facts[n:end]
        if n == at + 2 or len(clause) < 2 or clause[0].kind != "bare" or clause[-1].kind != "scope":
            continue
        between = {token.text for token in message.tokens[clause[0].end : clause[-1].start]}
        led = between & little("load_for", "on_a_side") or {message.tokens[clause[-1].start].text} & little("on_a_side")
        if not led or any(one.kind not in TIED for one in clause[1:-1]) or clause[-1].value == scope.value:
            continue
        number = clause[0]
        kg = float(number.note.get("kg", number.value))
        reps = facts[told].value[0].reps or 0
        if number.value <= reps + MOST_MORE:
            if led & little("on_a_side"):
                continue  # "4 on the last" are reps
            asked = Fact("ask", number.start, clause[-1].end, "load_kg", {"some": True})
            return [*facts[:n], asked, *facts[end:]]  # of sets of six as likely five reps
        passed = Fact("load", number.start, number.end, kg, {"how": "at"})
        return [*facts[:n], clause[-1], passed, *facts[end:]]
    return facts
