"""The work of the first rungs: rows, then clean pull-ups below their limit, with help until then."""

from __future__ import annotations

from dataclasses import replace

from planner.blocks import Work
from planner.draft import Draft, Today, cut_of
from planner.facts import PlannedSet
from planner.history import GRIPS
from planner.ladders import Rung
from planner.load_limits import reps_shown
from planner.main_lift import basis_of, plan_assisted
from planner.progress import Climb
from planner.repetitions import expected_reps_to_failure
from planner.shown import VOLUME_RPE
from planner.timeline import AS_IF_TEST


def plan_volume(today: Today, draft: Draft, climb: Climb, rung: Rung) -> None:
    """The first rungs: rows, then clean pull-ups below their limit, with help until then."""
    slot, position = today.slot, climb.position
    dose = rung.steps[min(position.step, len(rung.steps) - 1)] if rung.id == position.rung.id else rung.steps[0]
    ceiling = VOLUME_RPE if slot.comeback is None else min(VOLUME_RPE, slot.comeback.rpe_ceiling)
    if slot.kind == "deload":
        ceiling, dose = 6.0, replace(dose, sets=2, reps=max(1, dose.reps // 2))
    if slot.kind in AS_IF_TEST:
        dose, ceiling = replace(dose, sets=1, reps=0), 9.0
    name = today.done_as(rung.movement)
    if name is None:
        draft.hold("no_equipment")
        draft.decide("load", rung.movement, "nothing_to_pull_on", {"movement": rung.movement})
        return
    if name != rung.movement:
        draft.hold("instead_of", rung.movement, name)
        draft.decide("load", name, "movement_substituted", {"movement": name, "before": rung.movement})
    reps: int | None = dose.reps or None
    if name in GRIPS and reps is not None:
        basis = basis_of(today.history, name, today.day)
        if basis is None:
            reps = None
        else:
            body_kg = today.history.bodyweight.on(today.day)
            able = expected_reps_to_failure(basis.e1rm_kg * (1.0 - cut_of(today, name)), body_kg) - (10.0 - ceiling)
            if cut_of(today, name) == 0:
                able = max(able, reps_shown(today, name) - (10.0 - ceiling))
            if able < 1:
                plan_assisted(today, draft, name, Work(dose.sets, max(dose.reps, 4), ceiling), basis)
                _rows(today, draft, ceiling)
                return
            reps = max(1, min(int(able), dose.reps + 2))
    draft.main += [PlannedSet(name, "main", reps, rpe=ceiling, rung=rung.id)] * dose.sets
    draft.decide("dose", rung.id, "dose_volume", {"rung": rung.id, "sets": dose.sets, "reps": reps, "rpe": ceiling})
    if name in GRIPS and slot.kind == "volume":
        _rows(today, draft, ceiling)


def _rows(today: Today, draft: Draft, ceiling: float) -> None:
    name = today.done_as("ring_row")
    if name is not None and name not in {one.movement for one in draft.main}:
        draft.main += [PlannedSet(name, "main", 8, rpe=min(ceiling, 7.0))] * 2
