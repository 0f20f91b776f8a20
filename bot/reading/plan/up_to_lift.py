"""The plan up to one of its lifts: "everything up to the curls", "all before the dips", "alles bis inklusive Dips"."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.bounds import clause_end
from bot.reading.facts import Fact
from bot.reading.fold.rows import Row
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.plan.ground import PARTS, members, plan_names
from bot.reading.plan.state import Said, Told

WHOLE = frozenset({"done", "planned", "all_lifts"})
BETWEEN = 6  # facts between "everything" and its lift: "up to and including the"
SILENT = frozenset({"word", "claim", "scheme"})


def up_to_lift(message: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> Sequence[Fact]:
    """The facts, with one word for how far the plan was done in place of the words for it."""
    known = {row.movement for row in rows}
    for at, fact in enumerate(facts):
        own = fact.kind == "move" and bool(set(members(fact.value)) & known)
        if not own and not plan_names(fact) & set(PARTS):
            continue
        low = next((n for n in range(at - 1, max(-1, at - BETWEEN - 1), -1) if _whole(facts[n])), None)
        if low is None or not all(_led(one) for one in facts[low + 1 : at]):
            continue
        words = [message.tokens[n].text for n in range(facts[low].end, fact.start)]
        end = clause_end(facts, at + 1)
        if any(one.kind not in SILENT and not plan_names(one) & WHOLE for one in facts[at + 1 : end]):
            continue
        behind = any(token.text in little("including") for token in message.tokens[fact.end : fact.end + 1])
        if little("before_lift").intersection(words):
            how = "before"
        elif little("up_to", "up_to_lift").intersection(words):
            how = "with" if behind or little("including").intersection(words) else "open"
        else:
            continue
        until = Fact("plan", facts[low].end, fact.end, "until_lift", {"names": ["until_lift"], "how": how})
        return [*facts[: low + 1], until, *facts[at:]]
    return facts


def _whole(fact: Fact) -> bool:
    return bool(plan_names(fact) & WHOLE) or (fact.kind == "scope" and fact.value == "all")


def _led(fact: Fact) -> bool:
    """Whether a fact may stand between "everything" and its lift."""
    joins = fact.kind == "sep" and fact.note.get("mark") == "and"
    told = fact.kind == "plan" and plan_names(fact) <= {"more", "the", "reached", "done"}
    return joins or told or fact.kind in ("word", "scheme")


def kept_up_to_lift(told: Told, said: Said) -> bool:
    """What comes before the lift was done; the lift itself is asked, unless the words or another clause say so."""
    until = next((fact for fact in said.clause.facts if "until_lift" in plan_names(fact)), None)
    if until is None or not said.named:
        return False
    first, last = min(said.clause.targets), max(said.clause.targets)
    for at in range(len(told.rows)):
        if at < first or (until.note["how"] == "with" and at <= last):
            told.keep.setdefault(at, True)
        else:
            told.keep.setdefault(at, False)
            if until.note["how"] == "open" and at <= last:
                told.behind[at] = until
    told.exclusive = True
    return True
