"""Sets done whenever something happened: "5 pull-ups every time I walked past, 8 times"."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.facts import Fact
from bot.reading.message import Message
from bot.reading.plan.ground import plan_names

ASIDE = frozenset({"word", "plan", "scope"})  # facts of "every time I walked past"


def every_time(_message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts, the occasion no exercise of its own."""
    out: list[Fact] = []
    occasion = False
    for at, fact in enumerate(facts):
        if fact.kind in ("scope", "plan") and _every(fact):
            occasion = True
        elif occasion and fact.kind == "move" and fact.value.movement == "!" and not _counted(facts, at):
            fact = Fact("word", fact.start, fact.end, None)
        elif fact.kind not in ASIDE:
            occasion = False
        out.append(fact)
    return out


def _every(fact: Fact) -> bool:
    return "every" in fact.note.get("names", ()) or (fact.kind == "plan" and "every" in plan_names(fact))


def _counted(facts: Sequence[Fact], at: int) -> bool:
    """Whether a number stands right beside an exercise: "every time 5 km running"."""
    beside = [facts[n] for n in (at - 1, at + 1) if 0 <= n < len(facts)]
    return any(one.kind in ("bare", "rows", "left", "count") or one.note.get("noise") for one in beside)
