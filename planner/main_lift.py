"""The main lift of one day: movement, load, and why this load."""

from __future__ import annotations

from dataclasses import replace
from datetime import date

from planner import blocks, loading
from planner.blocks import Work
from planner.draft import Draft, Today, cut_of, late_exposures
from planner.facts import PlannedSet
from planner.history import GRIPS, History
from planner.load_limits import ceilings, shown_kg_of
from planner.loading import Basis, BestSet
from planner.movements import movement
from planner.plan import Value
from planner.repetitions import expected_reps_to_failure
from planner.strength import basis_from, best_sets, planned_kg
from planner.timeline import AS_IF_TEST, Exposure, Slot, ceiling_of
from planner.units import round_down_to_plates, round_up_to_plates

# Of another grip's strength, until the grip has a trend of its own. Underhand and parallel grips get more help from the
# arm's flexors than overhand, so who comes to them loses nothing. Common practice, no source.
OTHER_GRIP_SHARE = 0.97
HELPED_GRIPS = frozenset({"chin_up", "neutral_grip_pull_up"})


def main_work(today: Today) -> Work:
    """Sets, reps and ceiling of the main lift by the block; a first week back has a lower ceiling."""
    slot, table = today.slot, blocks.shipped()
    pain = today.pain_of(slot.main)
    if slot.kind == "test" and pain is not None and pain.level != "hold":
        return table.deload  # a sore joint is not tested
    if slot.kind in AS_IF_TEST:
        work = table.test
        if slot.kind == "retest":
            # After a long time away a top set at 8 measures enough.
            work = replace(work, rpe=work.rpe - 1.0)
    elif slot.kind == "deload":
        work = table.deload
    else:
        work = table.work(slot.kind, slot.week, slot.loading_weeks)
    if slot.comeback is not None and slot.kind not in AS_IF_TEST:
        work = replace(work, rpe=min(work.rpe, slot.comeback.rpe_ceiling))
    return work


def plan_main(today: Today, draft: Draft) -> None:
    plan_work(today, draft, main_work(today))


def plan_work(today: Today, draft: Draft, work: Work) -> None:
    """Sets, reps and ceiling of the main lift with the load that they are good for today."""
    slot = today.slot
    name = _main_movement(today, draft)
    if name is None:
        draft.hold("no_equipment")
        draft.decide("load", slot.main, "nothing_to_pull_on", {"movement": slot.main})
        return
    basis = basis_of(today.history, name, today.day)
    if basis is None:
        draft.decide("load", name, "load_unknown", {"movement": name, "rpe": work.rpe})
        draft.main += [PlannedSet(name, "main", None, rpe=work.rpe, rung=None)] * min(work.sets, 3)
        return
    if name not in GRIPS and name != "lat_pulldown":
        draft.main += [PlannedSet(name, "main", 8, rpe=min(work.rpe, 8.0))] * work.sets
        return
    if name in GRIPS and not today.history.can_load(today.day):
        _bodyweight_main(today, draft, name, work, basis)
        return
    _loaded_main(today, draft, name, work, basis)


def _main_movement(today: Today, draft: Draft) -> str | None:
    """The main lift as it can be done today: the grip the coach wrote sets in, the block's, another where that hurts
    less, or a substitute."""
    ordered = _grip_ordered(today)
    if ordered is not None:
        return ordered
    name = today.done_as(today.slot.main)
    pain = today.pain_of(today.slot.main)
    if pain is not None and pain.level == "step_down":
        other = _painless_grip(today)
        if other is not None:
            draft.decide("grip", today.slot.main, "grip_for_pain", {"movement": other, "before": today.slot.main})
            return other
    if name is not None and name != today.slot.main:
        draft.hold("instead_of", today.slot.main, name)
        code = "movement_left_out" if today.slot.main in today.excluded else "movement_substituted"
        if today.history.orders.swapped(today.slot.main, today.day):
            code = "movement_swapped"
        draft.decide("load", name, code, {"movement": name, "before": today.slot.main})
    return name


def _grip_ordered(today: Today) -> str | None:
    """The grip of the sets that the coach wrote for this day, where it can be done; None where they named none."""
    named = [one.movement for one in today.history.orders.sets_for(today.day) if one.movement in GRIPS]
    return next((name for name in reversed(named) if name is not None and today.done_as(name) == name), None)


def _painless_grip(today: Today) -> str | None:
    """Another grip that was trained within a year on days without pain in the place; None where none is known."""
    hold_from = today.history.rules.number("pain.hold_from")
    sore = {answer.on for answer in today.history.record.pain if (answer.score or 0) >= hold_from}
    for name in GRIPS:
        if name == today.slot.main or not today.can_do(name):
            continue
        trend = today.history.strength.get((name, None))
        if trend is None or (today.day - trend.on).days > 365 or trend.on in sore:
            continue
        return name
    return None


def basis_of(history: History, name: str, day: date) -> Basis | None:
    """What loads of a main lift are made from: its own trend, else the strongest related one, a little less."""
    own = history.strength.get((name, None))
    if own is not None:
        return basis_from(own, day, history.rules)
    others = [
        (basis_from(trend, day, history.rules), share_of_grip(name, grip))
        for grip in (*GRIPS, "lat_pulldown")
        if (trend := history.strength.get((grip, None))) is not None
    ]
    if not others:
        return None
    found, share = max(others, key=lambda other: other[0].e1rm_kg)
    return replace(found, e1rm_kg=found.e1rm_kg * share)


def share_of_grip(name: str, known: str) -> float:
    """How strong a grip without a trend is taken to be, as a share of the strength in a `known` movement."""
    return 1.0 if name in HELPED_GRIPS and known in GRIPS else OTHER_GRIP_SHARE


def _bodyweight_main(today: Today, draft: Draft, name: str, work: Work, basis: Basis) -> None:
    """Without a way to hang weight on: the reps that bodyweight allows at the ceiling."""
    body_kg = today.history.bodyweight.on(today.day)
    share = 1.0 - cut_of(today, name)
    left = expected_reps_to_failure(basis.e1rm_kg * share, body_kg, basis.steepness) - (10.0 - work.rpe)
    reps = max(1, min(12, int(left)))
    if today.slot.kind == "deload":
        reps = min(reps, max(1, _least_reps(today) - 1))
    if left < 1:
        plan_assisted(today, draft, name, work, basis)
        return
    draft.hold("no_load")
    draft.decide("load", name, "bodyweight_only", {"movement": name, "reps": reps, "rpe": work.rpe})
    draft.main += [PlannedSet(name, "main", reps, rpe=work.rpe)] * work.sets


def _least_reps(today: Today) -> int:
    return min((one.reps for one in late_exposures(today, 14)), default=4)


def _loaded_main(today: Today, draft: Draft, name: str, work: Work, basis: Basis) -> None:
    history, slot, rules = today.history, today.slot, today.history.rules
    share = movement(name).bodyweight_share
    body_kg = history.bodyweight.on(today.day) * share
    last = _last_of_kind(today, name, basis.e1rm_kg)
    caps = ceilings(today, name, body_kg, last, draft)
    code, limit = min(caps, key=lambda item: item[1], default=("", None))
    best = best_sets(history.record, name, None, today.day, rules) if name in GRIPS or name == "lat_pulldown" else ()
    best = tuple(one for one in best if not one.is_warm_up(basis.e1rm_kg))
    if not best and last is not None and name == last.movement and slot.kind not in AS_IF_TEST:
        # Nothing comparable of late: never above what was last done.
        caps.append(("load_after_gap", body_kg + last.added_kg))
        code, limit = min(caps, key=lambda item: item[1])
    made = loading.prescribe(
        basis,
        work.reps,
        work.rpe,
        body_kg,
        history.plates,
        best=best,
        max_rise=rules.number("strength.max_rise"),
        ceiling_kg=limit,
        scale=1.0 - cut_of(today, name),
    )
    if made.limited_by == "assistance" or (made.limited_by == "bodyweight" and made.reps < 2):
        plan_assisted(today, draft, name, work, basis)
        return
    shown_kg = shown_kg_of(today, name, work, last)
    if made.limited_by in ("strength", "bodyweight") and shown_kg is not None and shown_kg - body_kg >= made.load_kg:
        # Shown weeks ago, or with fewer reps, is no way around the cap on a rise.
        cap = loading.cap_kg(best, work.reps, work.rpe, rules.number("strength.max_rise"))
        allowed = min(kg for kg in (shown_kg, limit, cap) if kg is not None)
        load = round_down_to_plates(allowed - body_kg, history.plates.step, history.plates.unit)
        if load >= made.load_kg and allowed >= body_kg:
            made = replace(made, load_kg=load, reps=work.reps, limited_by="strength")
    reps = made.reps
    if limit is not None and made.load_kg == 0.0 and limit < body_kg and slot.is_deload:
        reps = _deload_reps(today, work, basis, body_kg)
    # A test shows the most where the reps are left open: an effort told near the maximum is told best.
    asked = None if slot.kind in AS_IF_TEST and work != blocks.shipped().deload else reps
    draft.main += [PlannedSet(name, "main", asked, load_kg=made.load_kg, rpe=work.rpe)] * work.sets
    draft.most_kg = _most_kg(best, work, body_kg, limit, made.load_kg, rules.number("strength.max_rise"))
    values: dict[str, Value] = {"movement": name, "load_kg": made.load_kg, "reps": reps, "rpe": work.rpe}
    if last is not None:
        values["before_kg"] = last.added_kg
        values["before_reps"] = last.reps
        values["before_on"] = last.on
    if made.limited_by == "ceiling":
        draft.decide("load", name, code, values)
    elif made.limited_by == "best_set":
        draft.decide("load", name, "load_capped", {**values, "percent": round(100 * rules.number("strength.max_rise"))})
    elif made.limited_by == "bodyweight" and reps < work.reps:
        draft.decide("load", name, "load_fewer_reps", {**values, "wanted_reps": work.reps})
    elif cut_of(today, name) > 0:
        why = "load_absence" if slot.comeback is not None else "load_pain_cut"
        draft.decide("load", name, why, {**values, "percent": round(100 * cut_of(today, name))})
    else:
        draft.decide(
            "load", name, _by_trend(slot, last, made.load_kg, reps), {**values, "e1rm_kg": round(basis.e1rm_kg, 1)}
        )
    _tell_bodyweight(today, draft, name, last)


def _most_kg(
    best: tuple[BestSet, ...], work: Work, body_kg: float, limit_kg: float | None, planned_kg: float, max_rise: float
) -> float:
    """The most added load [kg] that the rules have room for, whoever asks for it: no more than a rise over the best
    comparable set, or, where there is none, over the plan."""
    cap = loading.cap_kg(best, work.reps, work.rpe, max_rise)
    most_kg = (body_kg + planned_kg) * (1.0 + max_rise) if cap is None else cap
    return (most_kg if limit_kg is None else min(most_kg, limit_kg)) - body_kg


def _deload_reps(today: Today, work: Work, basis: Basis, body_kg: float) -> int:
    """The deload's reps where bodyweight is all there is: what the ceiling allows, fewer than any set of the fortnight
    before at bodyweight, and one fewer than the block's where bodyweight is above the deload's share of the heaviest
    of week 1."""
    rules, slot = today.history.rules, today.slot
    first = [one for one in today.timeline.exposures if one.slot.block == slot.block and one.slot.week == 1]
    heaviest = max((body_kg + one.added_kg for one in first), default=body_kg)
    most = work.reps if body_kg <= heaviest * rules.number("block.deload_share") else work.reps - 1
    late = late_exposures(today, rules.whole("block.deload_days_below"))
    most = min([most, *(one.reps - 1 for one in late if one.added_kg <= 0)])
    scale = 1.0 - cut_of(today, today.slot.main)
    return next((reps for reps in range(most, 1, -1) if basis.system_load_kg(reps, work.rpe) * scale >= body_kg), 1)


def _by_trend(slot: Slot, last: Exposure | None, load_kg: float, reps: int) -> str:
    if slot.kind in AS_IF_TEST:
        return "load_test"
    if last is None:
        return "load_first"
    if reps != last.reps:
        return "load_block"
    return "load_up" if load_kg > last.added_kg else "load_down" if load_kg < last.added_kg else "load_same"


def _tell_bodyweight(today: Today, draft: Draft, name: str, last: Exposure | None) -> None:
    """Three kilograms less with the same belt is less work: said where it is a plate or more."""
    if last is None:
        return
    history = today.history
    was, now = history.bodyweight.on(last.on), history.bodyweight.on(today.day)
    if abs(now - was) >= 1.0:
        values: dict[str, Value] = {"was_kg": was, "now_kg": now, "before_kg": last.added_kg, "movement": name}
        draft.decide("load", name, "bodyweight_changed", values)


def _last_of_kind(today: Today, name: str, e1rm_kg: float) -> Exposure | None:
    """The newest exposure of the same kind of day (in the same movement, where there was one), warm-ups apart."""
    kind = today.slot.kind
    done = [one for one in today.timeline.exposures if one.on < today.day and one.movement == name]
    return next((one for one in reversed(done) if one.slot.kind == kind and not _is_warm_up(today, one, e1rm_kg)), None)


def _is_warm_up(today: Today, one: Exposure, e1rm_kg: float) -> bool:
    planned = planned_kg(today.history.record, one.on, one.movement)
    if planned is not None and one.added_kg >= planned - 1e-6:
        return False
    left = 0.0 if one.over is None else max(0.0, 10.0 - (one.over + ceiling_of(one.slot)))
    reps = max(1.0, float(one.reps))
    return BestSet(one.top_kg, reps, reps + left, one.over is not None).is_warm_up(e1rm_kg)


def plan_assisted(today: Today, draft: Draft, name: str, work: Work, basis: Basis) -> None:
    """Below bodyweight: a pulldown by the stack, a band or pulley by its kilograms, else as many reps as the ceiling
    allows, at least lowered by rows."""
    history = today.history
    body_kg = history.bodyweight.on(today.day)
    wanted_kg = basis.system_load_kg(work.reps, work.rpe) * (1.0 - cut_of(today, name))
    has, step, unit = today.equipment, history.plates.step, history.plates.unit
    if "lat_pulldown" in has:
        stack = round_down_to_plates(wanted_kg, step, unit)
        one = PlannedSet("lat_pulldown", "main", work.reps, load_kg=stack, rpe=work.rpe)
        draft.decide("load", name, "load_pulldown", {"movement": "lat_pulldown", "load_kg": stack})
    elif "bands" in has or "pulley" in has:
        assist = round_up_to_plates(max(0.0, body_kg - wanted_kg), step, unit)
        help_by = "band_pull_up" if "bands" in has else name
        one = PlannedSet(help_by, "main", work.reps, assist_kg=assist, rpe=work.rpe)
        draft.decide("load", name, "load_assisted", {"movement": help_by, "assist_kg": assist})
    else:
        one = PlannedSet(name, "main", 1, rpe=work.rpe)
        draft.decide("load", name, "load_fewer_reps", {"movement": name, "reps": 1, "wanted_reps": work.reps})
    draft.main += [one] * work.sets
