"""Whether a message leans on the plan."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.facts import Fact
from bot.reading.message import Message
from bot.reading.plan.ground import PARTS, STRONG, ground, members, plan_names


def leans(message: Message, facts: list[Fact]) -> bool:
    """Whether the message is told against the plan, and there is one."""
    if not message.context.today:
        return False
    names = set().union(*(plan_names(fact) for fact in facts)) if facts else set()
    moves = [fact for fact in facts if fact.kind == "move" and fact.value.movement != "!"]
    if names & STRONG or any(fact.kind in ("instead", "delta") for fact in facts):
        return True
    if any(fact.kind == "count" and (fact.note.get("of_plan") or fact.note.get("only")) for fact in facts):
        return True
    if not moves and alone(facts, 0) and "fine" in plan_names(facts[0]) and any(f.kind == "effort" for f in facts):
        return True
    if any(alone(facts, i) for i, fact in enumerate(facts) if "all_lifts" in plan_names(fact)):
        return True
    if (
        not moves
        and any(f.kind == "scope" and f.value not in ("over", "all") for f in facts)
        and any(f.kind in ("load", "at", "fail") for f in facts)
    ):
        return True
    if (
        any(f.kind == "fail" and f.note.get("weak") for f in facts)
        and moves
        and not any(f.kind == "rows" for f in facts)
    ):
        return True
    if moves:
        known = {row.movement for row in ground(message)}
        worked = any(fact.kind in ("rows", "bare", "loads") for fact in facts)
        named = any(set(members(fact.value)) & known for fact in moves)
        if not worked and named and names & {"only", "fine", "rest"}:
            return True
        return bool(names & {"only"} and named and any(fact.kind == "scope" for fact in facts) and not worked)
    if names & {"only"} and any(fact.kind == "count" for fact in facts):
        return True
    return bool(names & set(PARTS) and names & {"fine", "only"})


def alone(facts: Sequence[Fact], at: int) -> bool:
    """Whether a fact is a clause by itself: "everything, 70 min"."""
    if at >= len(facts):
        return False
    left = at == 0 or facts[at - 1].kind in ("sep", "claim")
    return left and (at + 1 == len(facts) or facts[at + 1].kind in ("sep", "claim"))
