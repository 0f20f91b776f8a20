"""Efforts told against the planned ones: "rpe 8 on every one of them, not 7", "each set was 9 rather than 8"."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.facts import Fact
from bot.reading.fold.rows import Row
from bot.reading.message import Message
from bot.reading.plan.ground import plan_names

EFFORTS = range(5, 11)
NEAR = 3  # facts from the planned effort to the other one
REACH = 7  # facts from an effort to what it is instead of
SILENT = frozenset({"word", "sep", "scope"})


def rated_instead(_message: Message, facts: Sequence[Fact], _rows: Sequence[Row]) -> list[Fact]:
    """The facts without the planned effort, and with "every one" as the sets that the effort is of."""
    facts = _old_first(facts)
    out: list[Fact] = []
    rated: int | None = None  # the place of the effort last told
    for at, fact in enumerate(facts):
        if fact.kind == "effort" and not fact.note.get("session"):
            rated = len(out)
        elif rated is not None and len(out) - rated <= REACH and all(_silent(one) for one in out[rated + 1 :]):
            if plan_names(fact) == {"every"} and rated == len(out) - 1:
                out[rated:] = [Fact("scope", fact.start, fact.end, "all", {"text": ""}), out[rated]]
                rated += 1
                continue
            after = facts[at + 1] if at + 1 < len(facts) else None
            if "instead" in plan_names(fact) and after is not None and _effort(after):
                continue
            if _effort(fact) and "instead" in plan_names(facts[at - 1]):
                continue
        out.append(fact)
    return out


def _old_first(facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "Statt rpe 8 eher 9,5 im letzten": the effort that was, behind the planned one."""
    for at in range(1, len(facts) - 1):
        if facts[at].kind != "effort" or "instead" not in plan_names(facts[at - 1]):
            continue
        new = next((n for n in range(at + 1, min(at + NEAR, len(facts))) if facts[n].kind != "word"), at)
        value = facts[new].value if facts[new].kind in ("bare", "effort") else None
        if value is not None and value * 2 in range(2 * EFFORTS.start, 2 * EFFORTS.stop - 1):
            told = Fact("effort", facts[at - 1].start, facts[new].end, float(value), {"rated": True})
            return [*facts[: at - 1], told, *facts[new + 1 :]]
    return facts


def _silent(fact: Fact) -> bool:
    return fact.kind in SILENT or plan_names(fact) <= {"every"}


def _effort(fact: Fact) -> bool:
    return fact.kind in ("bare", "effort") and fact.value in EFFORTS
