"""A step that the coach ordered for a day of every week: on from the day's plan, as far as the rules have room.

A step for one day is set in numbers when it is ordered. One for weeks ahead meets days that nobody knows yet: there the
caps on the load hold, and where a joint is sore, after an absence, in a deload or a test nothing is raised.
"""

from __future__ import annotations

from dataclasses import replace

from planner.draft import Draft, Today, cut_of
from planner.facts import Order, PlannedSet
from planner.history import GRIPS
from planner.main_lift import basis_of
from planner.movements import movement
from planner.plan import Value
from planner.repetitions import expected_reps_to_failure
from planner.timeline import AS_IF_TEST
from planner.units import round_down_to_plates

LEFT_OVER = 0.5  # reps: no step takes a set nearer to failure; common practice, no source
A_GRAM = 1e-3  # kg: below a load that plates make, so that rounding down gives the next


def write_steps(today: Today, draft: Draft) -> None:
    """Each standing step of the day on the main lift; one that the rules hold back leaves the plan as it is, and says
    so."""
    for order in today.history.orders.steps_for(today.day):
        if not draft.main or draft.main[0].reps is None:
            continue
        planned, count = draft.main[0], len(draft.main)
        held = raises(order) and not _may_rise(today, planned)
        made = draft.main if held else _stepped(today, draft, order)
        if made == draft.main:
            draft.decide("order", planned.movement, "step_held", {"movement": planned.movement})
            continue
        draft.main = made
        draft.hold("step_sets", planned.movement, f"{len(made)}x{made[0].reps}@{made[0].load_kg:g}")
        values: dict[str, Value] = {
            "movement": planned.movement,
            "sets": len(made),
            "reps": made[0].reps,
            "load_kg": made[0].load_kg,
            "was_sets": count,
            "was_reps": planned.reps,
            "planned_kg": planned.load_kg,
        }
        draft.decide("order", planned.movement, "step_ordered", values)


def raises(order: Order) -> bool:
    """Whether a step asks for more."""
    return max(_percent(order), order.load_kg or 0.0, order.reps or 0, order.sets or 0) > 0


def _percent(order: Order) -> float:
    known = isinstance(order.value, (int, float)) and not isinstance(order.value, bool)
    return float(order.value or 0.0) if known else 0.0


def _may_rise(today: Today, planned: PlannedSet) -> bool:
    kind = today.slot.kind
    rested = kind in AS_IF_TEST or today.slot.is_deload or today.slot.comeback is not None
    return not rested and not cut_of(today, planned.movement) and today.pain_of(planned.movement) is None


def _stepped(today: Today, draft: Draft, order: Order) -> list[PlannedSet]:
    planned, count = draft.main[0], len(draft.main)
    if order.sets is not None:
        return [planned] * max(1, count + order.sets)
    assert planned.reps is not None
    if order.reps is not None:
        one = replace(planned, reps=max(1, planned.reps + order.reps))
        return [one] * count if order.reps < 0 or _is_in_reach(today, one) else draft.main
    if planned.movement not in GRIPS or planned.assist_kg or not today.history.can_load(today.day):
        return draft.main
    plates, body_kg = today.history.plates, today.history.bodyweight.on(today.day)
    by_kg = order.load_kg if order.load_kg is not None else _percent(order) / 100.0 * (planned.load_kg + body_kg)
    wanted_kg = max(0.0, planned.load_kg + by_kg)
    if by_kg > 0:
        wanted_kg = min(wanted_kg, draft.most_kg if draft.most_kg is not None else planned.load_kg)
    one = replace(planned, load_kg=round_down_to_plates(wanted_kg, plates.step, plates.unit))
    while one.load_kg > planned.load_kg and not _is_in_reach(today, one):
        one = replace(one, load_kg=round_down_to_plates(one.load_kg - A_GRAM, plates.step, plates.unit))
    return [one] * count if one.load_kg > planned.load_kg or by_kg < 0 else draft.main


def _is_in_reach(today: Today, one: PlannedSet) -> bool:
    basis = basis_of(today.history, one.movement, today.day)
    if basis is None or one.reps is None:
        return False
    lifted_kg = one.load_kg + today.history.bodyweight.on(today.day) * movement(one.movement).bodyweight_share
    return expected_reps_to_failure(basis.e1rm_kg, lifted_kg, basis.steepness) >= one.reps + LEFT_OVER
