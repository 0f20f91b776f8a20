"""Orders that no strength carries: a slip of the coach's thumb is not sent to an athlete."""

from __future__ import annotations

from bot.conversation import gates_ahead
from bot.conversation.desk import Desk
from bot.conversation.reasons import rung_name
from planner import ladders, movements
from planner.history import GRIPS
from planner.plan import Strength
from planner.repetitions import expected_reps_to_failure

# Shares and counts above which an order is taken for a slip; common practice, no source.
SURELY = 1.15  # of the maximum: the estimate may be that far behind
MOST_SETS, MOST_REPS = 12, 30
LOADS_UP_TO_KG = 200.0


def refusal(
    desk: Desk, scheme: tuple[int, int] | None, load_kg: float | None, movement: str | None = None
) -> str | None:
    """Why sets or a lock are not taken; None where they can be meant. `movement`: None is the main lift."""
    say, name = desk.say_coach, desk.person.name
    if scheme is not None and not (1 <= scheme[0] <= MOST_SETS and 1 <= scheme[1] <= MOST_REPS):
        return say.say("order-too-many", name=name, sets=scheme[0], reps=scheme[1])
    known = _strength(desk, movement)
    if known is None or load_kg is None or known.bodyweight_kg + load_kg <= SURELY * known.e1rm_kg:
        return None
    return say.say("order-beyond", name=name, load=say.load(load_kg), most=say.load(round(known.added_e1rm_kg)))


def warning(desk: Desk, reps: int, load_kg: float | None, movement: str | None = None) -> str | None:
    """That the reps ordered are more than the estimate allows to failure; None where they are not."""
    known = _strength(desk, movement)
    if known is None or load_kg is None:
        return None
    possible = expected_reps_to_failure(known.e1rm_kg, known.bodyweight_kg + load_kg)
    if reps <= possible:
        return None
    return desk.say_coach.say("order-hard", name=desk.person.name, reps=reps, possible=int(possible))


def far_off(desk: Desk, movement: str | None) -> str | None:
    """That a one-arm movement is of a rung further up than the athlete's own and no rep of it was ever told; None where
    it can be meant."""
    found = movements.movement(movement or "")
    if movement is None or not found.one_arm or found.hold or _was_done(desk, movement):
        return None
    short = list[str]()
    for position in desk.review.ladders:
        rungs = list(ladders.get(position.ladder).by_id.values())
        at = next((place for place, rung in enumerate(rungs) if rung.id == position.rung), 0)
        if any(rung.movement == movement for rung in rungs[: at + 1]):
            return None
        ahead = next((rung for rung in rungs[at + 1 :] if rung.movement == movement), None)
        short += gates_ahead.unmet(desk, position.ladder, ahead.id) if ahead is not None else []
    say = desk.say_coach
    stands = say.listed([rung_name(position.rung, say) for position in desk.review.ladders]) or "–"
    gate = " ".join(["", *short])
    return say.say("order-one-arm", name=desk.person.name, movement=say.movement(movement), rung=stands, gate=gate)


def _was_done(desk: Desk, movement: str) -> bool:
    return any(
        one.movement == movement and (one.reps or 0) >= 1 and not one.failed and not one.eccentric
        for session in desk.record.sessions
        for one in session.sets
    )


def _strength(desk: Desk, movement: str | None) -> Strength | None:
    name = movement or desk.review.main_lift
    known = {one.movement for one in desk.review.strength if one.side is None}
    if name in GRIPS and name not in known:
        name = desk.review.main_lift  # a grip without a trend of its own is about as strong as the others
    return next((one for one in desk.review.strength if one.movement == name and one.side is None), None)
