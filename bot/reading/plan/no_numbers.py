"""Words that tell no number and no set: "tough one", "the L-sits first", the "+" of "warm-up + top set"."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.facts import Fact
from bot.reading.fold.rows import Row
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.plan.choosing import main_rows
from bot.reading.plan.ground import PARTS, plan_names


def no_numbers(_message: Message, facts: Sequence[Fact], _rows: Sequence[Row]) -> list[Fact]:
    """Without articles that look like a number, and without "first" where it tells the order."""
    return [fact for at, fact in enumerate(facts) if not (_article(facts, at) or _at_first(facts, at))]


def set_led(_message: Message, facts: Sequence[Fact], _rows: Sequence[Row]) -> list[Fact]:
    """ "Last set: got 2", "fourth: three": without the colon between a set and what it came to."""
    out: list[Fact] = []
    for at, fact in enumerate(facts):
        if fact.kind == "sep" and fact.note.get("mark") == ":" and out and out[-1].kind == "scope":
            opens = len(out) == 1 or out[-2].kind == "sep"
            if opens and out[-1].value not in ("all", "over", "rest") and _one_number(facts[at + 1 : at + 4]):
                continue
        out.append(fact)
    return out


def _one_number(facts: Sequence[Fact]) -> bool:
    """Whether the clause begins with a number: "2", "got 2", "only got 2 reps"."""
    for fact in facts:
        if fact.kind == "bare" or (fact.kind == "rows" and len(fact.value) == 1):
            return True
        if fact.kind not in ("scheme", "word") and plan_names(fact) != {"only"}:
            return False
    return False


def _article(facts: Sequence[Fact], at: int) -> bool:
    """ "tough one", "the third one": no number."""
    fact = facts[at]
    if fact.kind != "bare" or not fact.note.get("spelled") or fact.value != 1:
        return False
    if at and facts[at - 1].kind == "scheme" and facts[at - 1].value == "got":
        return False  # "con el izquierdo me salió una"
    beside = [*facts[max(0, at - 1) : at], *facts[at + 1 : at + 2]]
    return not any(one.kind == "side" or plan_names(one) & {"only"} for one in beside)


def hold_named(message: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> Sequence[Fact]:
    """ "First hold 12, then 10 10 9" of planned holds: the hold that is meant, and no pause of a repetition."""
    if not rows or any(rows[at].hold_s is None for at in main_rows(rows)):
        return facts
    return [fact for at, fact in enumerate(facts) if not (at and _is_hold(message, facts[at - 1], fact))]


def _is_hold(message: Message, before: Fact, fact: Fact) -> bool:
    pause = fact.kind == "flag" and fact.end == fact.start + 1
    scope = before.kind == "scope" and before.end == fact.start
    return pause and scope and message.tokens[fact.start].text in little("hold_word")


def names_joined(_message: Message, facts: Sequence[Fact], _rows: Sequence[Row]) -> list[Fact]:
    """With an "and" for each "+" between two names."""
    return [_joining(facts, at) for at in range(len(facts))]


def _joining(facts: Sequence[Fact], at: int) -> Fact:
    """The "+" of "warm-up + top set only"."""
    fact = facts[at]
    if fact.kind != "word" or fact.value != "+":
        return fact
    beside = [one for one in (*facts[at - 1 : at], *facts[at + 1 : at + 2]) if one.kind in ("plan", "scope", "move")]
    if len(beside) != 2:
        return fact
    return Fact("sep", fact.start, fact.end, 1, {"mark": "and"})


def _at_first(facts: Sequence[Fact], at: int) -> bool:
    """ "Did the L-sits first, then the levers": the order, not the first set."""
    fact = facts[at]
    if fact.kind != "scope" or fact.note.get("text") not in little("at_first"):
        return False
    before = facts[at - 1] if at else None
    after = facts[at + 1] if at + 1 < len(facts) else None
    named = before is not None and (before.kind == "move" or bool(plan_names(before) & set(PARTS)))
    return named and (after is None or after.kind in ("sep", "claim"))
