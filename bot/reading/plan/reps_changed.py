"""Repetitions more or fewer than planned, told as a number of them: "+1 rep on the last", "cut it by one rep"."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.bounds import clause_end, clause_start
from bot.reading.facts import Fact
from bot.reading.fold.rows import Row
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.plan.ground import plan_names

MOST = 3  # reps more or fewer; a higher number is what the set came to
LEFT = frozenset({"skipped", "minus", "quit", "less", "out", "out_of"})  # plan words that say no more than the change


def reps_changed(message: Message, facts: Sequence[Fact], _rows: Sequence[Row]) -> Sequence[Fact]:
    """The facts, with a change in place of such repetitions, and without the words that told which way."""
    out = list(facts)
    for at, fact in enumerate(facts):
        low, high = clause_start(facts, at), clause_end(facts, at)
        many = _few(message, fact)
        sign = _sign(message, facts[low:high], fact) if many else 0
        if not sign:
            continue
        out[at] = Fact("delta", fact.start, fact.end, (float(many), "reps", sign), {"open": False})
        for place in range(low, high):
            one = facts[place]
            if place != at and plan_names(one) & LEFT and not any(f.kind == "sep" for f in facts[min(place, at) : at]):
                out[place] = Fact("word", one.start, one.end, None, {"noise": True})
    return out


def _few(message: Message, fact: Fact) -> int:
    """How many reps a fact is of, where it may be a change; 0: it is none."""
    if fact.kind == "last_rep" and fact.value is None:
        return 1
    if fact.kind == "rows" and len(fact.value) == 1 and fact.value[0].reps in range(1, MOST + 1):
        named = any(message.tokens[at].text in little("repetition") for at in range(fact.start, fact.end))
        return int(fact.value[0].reps) if named else 0
    article = fact.kind == "word" and fact.value in little("repetition") and fact.end == fact.start + 1
    return int(article and fact.start > 0 and message.tokens[fact.start - 1].text in little("rep_put_on"))


def _sign(message: Message, clause: Sequence[Fact], fact: Fact) -> int:
    """1 or -1 by the words beside the number; 0: they tell none."""
    tokens = message.tokens
    before = tokens[fact.start - 1].text if fact.start else ""
    names = {name for one in clause for name in plan_names(one)}
    words = {token.text for token in tokens[clause[0].start : clause[-1].end]}
    if fact.kind != "last_rep" and before in little("rep_put_on"):
        return 1
    led = next((one for one in reversed(clause) if one.end == fact.start), None)
    if led is not None and "minus" in plan_names(led):
        return -1
    if before in little("by_so_much") and names & {"skipped", "less", "minus", "turned_to"}:
        return -1
    if words & little("rep_left") and (names & {"out", "out_of"} or words & little("rep_left_out")):
        return -1
    short = {token.text for token in tokens[fact.end : fact.end + 2]} & little("short_of_it")
    return -1 if fact.kind != "last_rep" and short else 0
