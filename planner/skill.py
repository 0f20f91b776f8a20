"""The skill sets of one day: dose, other half, third set, tests of a rung and of a hold."""

from __future__ import annotations

from dataclasses import replace

from planner import blocks
from planner.digest import sets_in
from planner.draft import DAY, Draft, Today, pains_on
from planner.exposures import fits
from planner.facts import PlannedSet, Rom
from planner.history import SIDES
from planner.ladders import Rung, Step
from planner.progress import Climb, third_set
from planner.prospects import Prospects
from planner.shown import best_hold, value_of, weaker_first
from planner.units import round_down_to_plates, round_up_to_plates


# What hits skill work hardest comes last: stepping down takes it out, stepping back makes it lighter.
def plan_rung_test(today: Today, draft: Draft, climb: Climb) -> None:
    """A new rung is tried fresh, before the main lift, where its gates are met and nothing hurts; where they are not,
    the present dose where its margin is in doubt."""
    rung = Prospects(climb).may_test(today.day)
    one = _margin_set(today, climb) if rung is None else _proof_set(today, rung)
    rung = rung or climb.position.rung
    if one is None:
        return
    if any(pain.level != "fine" for pain in pains_on(today, rung.movement)) or today.stopped(rung.movement):
        draft.decide("rung", climb.position.ladder.id, "no_test_pain", {"rung": rung.id})
        return
    sides = weaker_first(today.history, climb.position.rung, today.day) if rung.one_sided else (None,)
    if rung.one_sided and not fits(today, dict.fromkeys(SIDES, one.reps or 1)):
        draft.decide("rung", climb.position.ladder.id, "no_test_exposures", {"rung": rung.id})
        return
    draft.skill += [replace(one, side=side) for side in sides]
    draft.decide("rung", climb.position.ladder.id, "rung_test", {"rung": rung.id, "reps": one.reps or 0})


def _proof_set(today: Today, rung: Rung) -> PlannedSet | None:
    """The set that would prove a new rung; None where it needs weight and there is none to hang on."""
    proof, history = rung.proof, today.history
    load = assist = 0.0
    if proof.smallest_plate:
        if not history.can_load(today.day):
            return None
        load = round_up_to_plates(1e-3, history.plates.step, history.plates.unit)
    if proof.max_assist_share is not None:
        most = value_of(proof.max_assist_share, history.rules) * history.bodyweight.on(today.day)
        assist = round_down_to_plates(most, history.plates.step, history.plates.unit)
    ceiling = blocks.shipped().test_rung_rpe
    return PlannedSet(
        rung.movement, "skill", proof.reps, load_kg=load, assist_kg=assist, rpe=ceiling, rom=rung.rom, rung=rung.id
    )


def _margin_set(today: Today, climb: Climb) -> PlannedSet | None:
    """The set that would show the margin of the present dose; None where nobody asks."""
    reps, rung = Prospects(climb).margin_test(today.day), climb.position.rung
    if reps is None or not today.can_do(rung.movement):
        return None
    assist = _counterweight(today, climb) if rung.movement == "one_arm_counterweight" else 0.0
    ceiling, rom = blocks.shipped().test_rung_rpe, climb.position.dose.rom
    return PlannedSet(rung.movement, "skill", reps, assist_kg=assist, rpe=ceiling, rom=rom, rung=rung.id)


def _is_test_of_others(today: Today, climb: Climb) -> bool:
    """Ladders that are not trained on pulling days are tested on the deload week's last day of their own."""
    slot = today.slot
    if not slot.is_deload or slot.pulling or climb.position.ladder.pattern in ("pull", "lever"):
        return False
    own = [one.on for one in today.timeline.slots if one.week_start == slot.week_start and not one.pulling and one.on]
    return bool(own) and today.day == max(own)


def _hold_test(today: Today, draft: Draft, rung: Rung) -> None:
    """The best hold is measured at the end of a block: training at a part of it never shows it."""
    if rung.work != "hold" or not today.can_do(rung.movement):
        return
    if any(one.level != "fine" for one in pains_on(today, rung.movement)):
        return
    draft.skill.append(PlannedSet(rung.movement, "skill", None, rpe=blocks.shipped().test_rung_rpe, rung=rung.id))
    draft.decide("rung", rung.id, "hold_test", {"rung": rung.id})


def plan_skill(today: Today, draft: Draft, climb: Climb) -> None:
    """The rung's sets of the day: dose, third set, other half; held or left out by pain and the cap on exposures."""
    position, slot, history = climb.position, today.slot, today.history
    rung, dose = position.rung, position.dose
    pains = pains_on(today, rung.movement)
    level = max(
        (one.level for one in pains),
        key=lambda one: ("fine", "hold", "step_back", "step_down", "stop").index(one),
        default="fine",
    )
    if level in ("stop", "step_down"):
        draft.decide("pain", rung.id, "skill_out_pain", {"rung": rung.id})
        return
    if level == "step_back":
        before = position.ladder.before(rung.id)
        if before is None or before.work not in ("skill", "hold"):
            draft.decide("pain", rung.id, "skill_out_pain", {"rung": rung.id})
            return
        draft.decide("pain", rung.id, "step_back_pain", {"rung": before.id, "before": rung.id})
        rung, dose = before, before.steps[0]
    if slot.kind == "light" or slot.kind == "retest":
        return
    if slot.kind == "test" or _is_test_of_others(today, climb):
        if position.ladder.main_rung is None:
            plan_rung_test(today, draft, climb)
            _hold_test(today, draft, rung)
        return
    if not today.can_do(rung.movement):
        why = "skill_left_out" if rung.movement in today.excluded else "skill_not_possible"
        draft.hold("no_skill", rung.id)
        draft.decide("rung", rung.id, why, {"rung": rung.id, "movement": rung.movement})
        return
    ceiling = history.rules.number("skill.rpe")
    if slot.comeback is not None:
        ceiling = min(ceiling, slot.comeback.rpe_ceiling)
    if rung.work == "hold":
        _hold_sets(today, draft, rung, dose, ceiling)
        return
    name, rom = rung.movement, dose.rom
    other = rung.other_day
    other_half = other is not None and slot.kind == "volume" and (dose.rom != "full" or not rung.next)
    if other is not None and other_half and today.can_do(other.movement):
        name, rom = other.movement, other.rom
        dose = position.other_dose if dose == position.dose else replace(dose, pauses=(), load_kg=0.0)
    sets = dose.sets
    if slot.kind == "deload":
        # A set that was within its ceiling of 7 feels like 6 with a rep less; a single without its variant.
        sets, ceiling = 1, blocks.shipped().deload_skill_rpe
        dose = replace(dose, reps=max(1, dose.reps - 1), pauses=(), load_kg=0.0)
    elif level == "fine" and third_set(history, climb, slot, today.day):
        sets += 1
        draft.decide("dose", rung.id, "third_set", {"rung": rung.id, "sets": sets})
    if not rung.one_sided:
        draft.skill += [PlannedSet(name, "skill", dose.reps, rpe=ceiling, rom=rom, rung=rung.id)] * sets
        return
    _one_sided(today, draft, climb, rung, dose, name, rom, sets, ceiling, hold=level in ("hold", "step_back"))


def _one_sided(
    today: Today,
    draft: Draft,
    climb: Climb,
    rung: Rung,
    dose: Step,
    name: str,
    rom: Rom,
    sets: int,
    ceiling: float,
    *,
    hold: bool,
) -> None:
    history = today.history
    reps, wanted = dose.reps, sets * dose.reps
    while sets and not fits(today, dict.fromkeys(SIDES, sets * reps), hold=hold):
        if sets > 1 and (sets > 2 or reps == 1):
            sets -= 1
        elif reps > 1:
            reps -= 1
        else:
            sets -= 1
    if sets * reps < wanted:
        draft.decide("dose", rung.id, "exposures_capped", {"rung": rung.id, "reps": sets * reps, "wanted_reps": wanted})
    assist, load = 0.0, 0.0
    if name == "one_arm_counterweight":
        assist = _counterweight(today, climb)
    elif dose.load_kg and history.can_load(today.day):
        load = round_down_to_plates(dose.load_kg, history.plates.step, history.plates.unit)
    sides = weaker_first(history, rung, today.day)
    for _ in range(sets):
        draft.skill += [
            PlannedSet(
                name,
                "skill",
                reps,
                side=side,
                load_kg=load,
                assist_kg=assist,
                rpe=ceiling,
                rom=rom,
                pauses=dose.pauses,
                rung=rung.id if name == rung.movement else None,
            )
            for side in sides
        ]
    draft.decide("dose", rung.id, "dose_of_rung", {"rung": rung.id, "dose": climb.position.dose.label, "sets": sets})


def _counterweight(today: Today, climb: Climb) -> float:
    """Help [kg] of the counterweight: the least that two reps were done with, at most a tenth of bodyweight; a plate
    step less once every dose is held."""
    history = today.history
    most = history.rules.number("gate.counterweight_share_max") * history.bodyweight.on(today.day)
    recent = [
        work.assist_kg
        for one in history.between(today.day - 120 * DAY, today.day)
        for work in sets_in(one, "one_arm_counterweight")
        if (work.reps or 0) >= 2 and 0 < work.assist_kg <= most
    ]
    step, unit = history.plates.step, history.plates.unit
    if not recent:
        return round_down_to_plates(most, step, unit)
    least = min(recent)
    if climb.position.dose.is_variant:
        return round_up_to_plates(max(least - round_up_to_plates(1e-3, step, unit), 0.0), step, unit) or least
    return least


def _hold_sets(today: Today, draft: Draft, rung: Rung, dose: Step, ceiling: float) -> None:
    rules = today.history.rules
    best = best_hold(today.history.between(today.day - rules.whole("gate.days") * DAY, today.day), rung.movement)
    sets = 2 if today.slot.is_deload else dose.sets
    if best is None:
        draft.decide("dose", rung.id, "hold_unknown", {"rung": rung.id})
        draft.skill += [PlannedSet(rung.movement, "skill", None, rpe=ceiling, rung=rung.id)] * sets
        return
    seconds = max(2.0, float(int(best * rules.number("hold.work_share"))))
    draft.skill += [PlannedSet(rung.movement, "skill", None, hold_s=seconds, rpe=ceiling, rung=rung.id)] * sets
    draft.decide("dose", rung.id, "hold_of_best", {"rung": rung.id, "seconds": seconds, "best_s": best, "sets": sets})
