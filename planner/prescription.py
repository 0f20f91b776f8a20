"""The sets of one day, in order: warm-up, skill, main lift, accessories; each load with its reasons."""

from __future__ import annotations

from dataclasses import replace

from planner import blocks
from planner.draft import Draft, Today, pains_on
from planner.exposures import share_joints
from planner.facts import PlannedSet
from planner.first_rungs import plan_volume
from planner.history import SIDES
from planner.main_lift import plan_main
from planner.movements import movement
from planner.ordered import write_orders
from planner.plan import Decision
from planner.progress import Climb
from planner.skill import plan_rung_test, plan_skill
from planner.timeline import AS_IF_TEST
from planner.warm_up import plan_warm_up


def fill(today: Today) -> Draft:
    """The draft of a training day."""
    slot, draft = today.slot, Draft(today.day, today.slot)
    if slot.why is not None:
        draft.hold(slot.why.code, slot.planned_for)
        draft.decisions.append(Decision(today.day, "absence", "session", (slot.why,)))
    if slot.comeback is not None:
        draft.hold("comeback", slot.comeback.on)
        values = {
            "days": slot.comeback.days,
            "percent": round(100 * slot.comeback.cut),
            "rpe": slot.comeback.rpe_ceiling,
        }
        draft.decide("absence", "session", "comeback", values)
    _tell_pain(today, draft)
    _tell_deload(today, draft)
    _tell_grip(today, draft)
    for order in today.history.record.orders:
        if order.kind == "set_rung" and order.on == today.day:
            draft.hold("set_rung", order.ladder, order.rung)
    if slot.pulling:
        _pull(today, draft)
    for climb in today.climbs:
        if climb.position.ladder.main_rung is None and _is_day_of(today, climb):
            plan_skill(today, draft, climb)
    share_joints(today, draft)
    if draft.skill and not draft.warm_up:
        easy = (
            "push_up" if movement(draft.skill[0].movement).pattern.endswith(("push", "planche")) else "scapular_pull_up"
        )
        if movement(easy).possible_with(today.equipment) and not today.stopped(easy):
            draft.warm_up.append(PlannedSet(easy, "warm_up", 5))
    write_orders(today, draft)
    _accessories(today, draft)
    return draft


def _tell_pain(today: Today, draft: Draft) -> None:
    for pain in today.pains:
        if pain.level != "fine":
            draft.hold("pain", pain.level, pain.site, pain.side, pain.since)
            draft.decide("pain", pain.site, pain.why, {"site": pain.site, "side": pain.side, "score": pain.acted_on})


def _tell_deload(today: Today, draft: Draft) -> None:
    if not today.slot.early:
        return
    for early in today.timeline.early:
        if today.slot.week_start == early.on:
            draft.hold("early_deload", early.on)
            draft.decisions.append(Decision(today.day, "deload", "block", (early.reason,)))


def _tell_grip(today: Today, draft: Draft) -> None:
    """On the first day of a block in another grip."""
    before = [slot for slot in today.timeline.slots if slot.block == today.slot.block - 1]
    if before and today.day == today.slot.block_start and before[-1].main != today.slot.main:
        draft.decide("grip", today.slot.main, "grip_of_block", {"movement": today.slot.main, "before": before[-1].main})


def _is_day_of(today: Today, climb: Climb) -> bool:
    """Levers go with pulling; pushing goes on the other training days, where there are any."""
    if climb.position.ladder.pattern in ("pull", "lever"):
        return today.slot.pulling
    has_others = any(not slot.pulling for slot in today.timeline.slots if slot.week_start == today.slot.week_start)
    return not today.slot.pulling if has_others else today.slot.pulling


def _pull(today: Today, draft: Draft) -> None:
    climb = next((one for one in today.climbs if one.position.ladder.main_rung is not None), None)
    if climb is None:
        return
    rung = climb.position.rung
    if rung.work != "skill" and any(one.level == "step_back" for one in pains_on(today, rung.movement)):
        before = climb.position.ladder.before(rung.id)
        rung = before if before is not None else rung
    if today.stopped(today.slot.main):
        return
    if rung.work == "volume":
        plan_volume(today, draft, climb, rung)
    else:
        plan_main(today, draft)
    if today.slot.kind == "test":
        plan_rung_test(today, draft, climb)
    elif rung.work == "skill":
        plan_skill(today, draft, climb)
    if draft.main:
        plan_warm_up(today, draft)


def _accessories(today: Today, draft: Draft) -> None:
    slot = today.slot
    kind = "test" if slot.kind in AS_IF_TEST else slot.kind
    for row in blocks.shipped().accessories[kind]:
        found = movement(row.movement)
        if row.movement in today.excluded or not found.possible_with(today.equipment):
            continue
        pain = today.pain_of(row.movement)
        if pain is not None and pain.level != "hold":
            continue
        one = PlannedSet(
            row.movement,
            "accessory",
            None if found.hold else row.amount,
            hold_s=float(row.amount) if found.hold else None,
            rpe=row.rpe,
        )
        draft.accessories += ([replace(one, side=side) for side in SIDES] if found.one_sided else [one]) * row.sets
