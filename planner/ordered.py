"""The coach's own sets and locks, written over the day's plan."""

from __future__ import annotations

from dataclasses import replace

from planner.draft import Draft, Today
from planner.facts import Order, PlannedSet, Side
from planner.first_rungs import plan_volume
from planner.history import GRIPS, SIDES
from planner.main_lift import basis_of, main_work, plan_work
from planner.movements import movement
from planner.plan import Value
from planner.repetitions import expected_reps_to_failure
from planner.shown import weaker_first
from planner.steps import write_steps
from planner.warm_up import plan_warm_up


def write_orders(today: Today, draft: Draft) -> None:
    history = today.history
    lock = history.orders.load_locked(frozenset(one.movement for one in draft.main), True, today.day)
    if lock is not None and _sore_since(today, draft, lock):
        lock = None  # what hurt after the order was given weighs more than the order
    if lock is not None and lock.load_kg is not None and draft.main and _can_be_hung(today, draft.main[0]):
        draft.main = [
            _locked(today, one, lock.load_kg) if lock.movement in (None, one.movement) else one for one in draft.main
        ]
        _without_load_reason(draft)
        draft.hold("lock_load", draft.main[0].movement, lock.load_kg)
        draft.decide("order", draft.main[0].movement, "load_locked", {"load_kg": lock.load_kg, "until": lock.until})
    elif all(_is_of_another_lift(order) for order in history.orders.sets_for(today.day)):
        write_steps(today, draft)
    for order in history.orders.sets_for(today.day):
        _set_sets(today, draft, order)
    if draft.main and not draft.warm_up:
        plan_warm_up(today, draft)


def _is_of_another_lift(order: Order) -> bool:
    return order.movement is not None and order.movement not in GRIPS


def _sore_since(today: Today, draft: Draft, lock: Order) -> bool:
    """Whether pain has made the main lift lighter than a lock that was ordered before it, or on its day."""
    if not draft.main or lock.load_kg is None or lock.load_kg <= draft.main[0].load_kg:
        return False
    pain = today.pain_of(draft.main[0].movement)
    newest = max((answer.on for answer in today.history.record.pain if (answer.score or 0) > 0), default=lock.on)
    return pain is not None and pain.level == "step_down" and lock.on <= newest


def _can_be_hung(today: Today, one: PlannedSet) -> bool:
    return one.movement not in GRIPS or today.history.can_load(today.day)


def _locked(today: Today, one: PlannedSet, load_kg: float) -> PlannedSet:
    """A planned set at the locked load; no more reps than strength has at the ceiling of effort."""
    locked = replace(one, load_kg=load_kg, assist_kg=0.0)
    basis = basis_of(today.history, one.movement, today.day)
    if basis is None or one.reps is None or one.rpe is None or load_kg <= one.load_kg:
        return locked
    lifted_kg = load_kg + today.history.bodyweight.on(today.day) * movement(one.movement).bodyweight_share
    within = expected_reps_to_failure(basis.e1rm_kg, lifted_kg, basis.steepness) - (10.0 - one.rpe)
    return replace(locked, reps=max(1, min(one.reps, int(within))))


def _set_sets(today: Today, draft: Draft, order: Order) -> None:
    planned = draft.main or _as_planned(today, order)
    main = planned[0] if planned else None
    name = order.movement or (main.movement if main else today.slot.main)
    if today.stopped(name):
        return
    found = movement(name)
    as_main = order.movement is None or main is None or main.movement == name
    models = planned if as_main else [one for one in draft.skill if one.movement == name]
    model = models[0] if models else PlannedSet(name, "main" if not found.one_arm else "skill", None, rpe=8.0)
    one = replace(
        model,
        reps=order.reps if order.reps is not None else model.reps,
        load_kg=order.load_kg if order.load_kg is not None else model.load_kg,
        assist_kg=0.0 if order.load_kg is not None else model.assist_kg,
    )
    count = order.sets if order.sets is not None else max(1, len(models))
    sides = (weaker_first_of(today, name) if found.one_sided else (None,)) if model.side is None else SIDES
    sets = [replace(one, side=side) for _ in range(count) for side in sides]
    if found.one_arm:
        draft.skill = [kept for kept in draft.skill if kept.movement != name] + sets
    elif as_main:
        _without_load_reason(draft)
        draft.main = sets
        draft.warm_up = []
    else:
        draft.accessories += [replace(made, part="accessory") for made in sets]
    draft.hold("set_sets", name, f"{count}x{one.reps}@{one.load_kg:g}")
    values: dict[str, Value] = {"movement": name, "sets": count, "reps": one.reps, "load_kg": one.load_kg}
    draft.decide("order", name, "sets_ordered", values)


def _as_planned(today: Today, order: Order) -> list[PlannedSet]:
    """The main lift on a day on which the block has none: as on a heavy day of the week it stands in, for the reps
    ordered; none where the order is of another movement."""
    at = today.timeline.slot_at(today.day)
    if at is None or order.reps is None or order.movement not in (None, *GRIPS):
        return []
    as_heavy = replace(today, slot=at._replace(on=today.day, kind="deload" if at.is_deload else "heavy"))
    made = Draft(today.day, as_heavy.slot)
    climb = next((one for one in today.climbs if one.position.ladder.main_rung is not None), None)
    if order.movement is None and climb is not None and climb.position.rung.work == "volume":
        plan_volume(as_heavy, made, climb, climb.position.rung)
        return made.main
    work = main_work(as_heavy)
    plan_work(as_heavy, made, replace(work, sets=order.sets or work.sets, reps=order.reps))
    return made.main


def _without_load_reason(draft: Draft) -> None:
    """The coach's word takes the place of the planner's reason for the same load."""
    about = {one.movement for one in draft.main}
    draft.decisions = [one for one in draft.decisions if not (one.kind == "load" and one.about in about)]


def weaker_first_of(today: Today, name: str) -> tuple[Side, Side]:
    for climb in today.climbs:
        for rung in climb.position.ladder.rungs:
            if rung.movement == name:
                return weaker_first(today.history, rung, today.day)
    return SIDES
