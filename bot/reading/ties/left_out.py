"""What a second clause leaves out because the first one said it: "2 sets of archers and 4 of pull-ups", "4, not 5"."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from bot.reading.bounds import ends_sentence, is_comma
from bot.reading.facts import Fact
from bot.reading.little import little
from bot.reading.message import Message

MOST_LEFT_OUT = 3  # sets, where no lift is named
MOST_SETS = 8  # "3 series de fondos de 8 y 20 de flexiones": more are repetitions
SILENT = ("word", "move", "plan", "scheme")
REACH = 10  # facts from a count to the number that is denied
DENIED = ["sep", "fail", "bare"]


def sets_left_out(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts, with a number before "of pull-ups" as sets, where the clause before counted sets of another lift."""
    out = list(facts)
    counted = False  # sets of a movement were counted, and nothing but their reps was told since
    for at, fact in enumerate(facts):
        if fact.kind == "count":
            after = [one.kind for one in facts[at + 1 : at + 3]]
            counted = after == ["word", "move"] or after[:1] == ["move"]
        elif fact.kind in ("rows", "load", "at") or ends_sentence(fact):
            counted = False
        elif counted and fact.kind == "bare" and _of_a_lift(message, facts, at):
            note = {"within": False, "more": False, "names": []}
            out[at] = replace(fact, kind="count", value=int(fact.value), note=note)
    return out


def _of_a_lift(message: Message, facts: Sequence[Fact], at: int) -> bool:
    """Whether a comma or "and" stands before a small number, and "of" and a movement behind it."""
    number, before = facts[at], facts[at - 1] if at else None
    joined = before is not None and is_comma(before)
    small = number.value == int(number.value) and 1 <= number.value <= MOST_SETS
    if not (joined and small) or [one.kind for one in facts[at + 1 : at + 3]] != ["word", "move"]:
        return False
    of = facts[at + 1]
    return of.end == of.start + 1 and message.tokens[of.start].text in little("of")


def not_so_many(_: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "4 sets of pull-ups, not 5": the number denied is of the same sets."""
    for at, fact in enumerate(facts):
        if fact.kind != "count":
            continue
        told = [n for n in range(at + 1, min(at + REACH, len(facts))) if facts[n].kind not in SILENT]
        if len(told) < len(DENIED) - 1 or facts[told[0]].kind != "sep":
            continue
        denied = [facts[n].kind for n in told[:3]] == DENIED and facts[told[1]].note.get("name") == "no"
        opposed = facts[told[1]].kind == "bare" and any(
            "not_this" in one.note.get("names", ()) for one in facts[told[0] : told[1]]
        )
        number = told[2] if denied else told[1] if opposed else None
        if number is None or (number + 1 < len(facts) and facts[number + 1].kind != "sep"):
            continue
        kept = [one for n, one in enumerate(facts) if not told[0] < n <= number or one.kind == "move"]
        return [replace(one, note={**one.note, "only": True}) if one is fact else one for one in kept]
    return facts


def all_but_so_many(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "All but one" of a day's plan leaves so many sets out, and does not say which."""
    if not message.context.today:
        return facts
    for at in range(len(facts) - 1):
        plan, many = facts[at : at + 2]
        closes = at + 2 == len(facts) or facts[at + 2].kind == "sep"
        few = many.kind in ("bare", "count") and many.value in range(1, MOST_LEFT_OUT + 1)
        if few and closes and plan.kind == "plan" and plan.value == "except" and plan.end == many.start:
            whole = at > 0 and facts[at - 1].kind == "scope" and facts[at - 1].value == "all"
            left = replace(many, kind="count", value=int(many.value))
            return [*facts[: at - whole], plan, left, *facts[at + 2 :]]  # "alles bis auf einen": "alles" is no set's
    return facts
