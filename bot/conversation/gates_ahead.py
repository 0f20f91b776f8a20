"""What a rung that a coach sets asks of strength and the athlete has not shown: the coach decides, and knows."""

from __future__ import annotations

from bot.conversation.desk import Desk
from planner import ladders
from planner.rules import rules_of
from planner.shown import value_of


def unmet(desk: Desk, ladder_id: str, wanted: str) -> list[str]:
    """The highest gate of strength on the way to `wanted` that is not met, in numbers."""
    ladder, rules, say = ladders.get(ladder_id), rules_of(desk.record.athlete), desk.say_coach
    now = next((one.rung for one in desk.review.ladders if one.ladder == ladder_id), None)
    order = list(ladder.by_id)
    start = order.index(now) + 1 if now in order else 0
    way = [ladder.by_id[rung] for rung in order[start : order.index(wanted) + 1]]
    wants = [value_of(gate.want, rules) for rung in way for gate in rung.gates if gate.kind == "relative_added"]
    have = _relative(desk)
    if not wants or have is None or have >= max(wants):
        return []
    return [say.say("rung-gate-unmet", want=say.number(max(wants)), have=say.number(have))]


def _relative(desk: Desk) -> float | None:
    lift = desk.review.main_lift
    known = [one for one in desk.review.strength if one.movement == lift and one.side is None]
    return known[0].added_e1rm_kg / known[0].bodyweight_kg if known else None
