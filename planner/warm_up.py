"""The warm-up of a pulling day."""

from __future__ import annotations

from planner import blocks
from planner.draft import Draft, Today
from planner.facts import PlannedSet
from planner.movements import closest_possible, movement
from planner.units import round_down_to_plates


def plan_warm_up(today: Today, draft: Draft) -> None:
    """A ramp that doesn't tire: easy hangs, then the day's movement up to a part of the working load."""
    first = draft.main[0]
    pulls: list[PlannedSet] = []
    if movement("scapular_pull_up").possible_with(today.equipment) and not today.stopped("scapular_pull_up"):
        pulls.append(PlannedSet("scapular_pull_up", "warm_up", 5))
    history = today.history
    body_kg = history.bodyweight.on(today.day) * movement(first.movement).bodyweight_share
    working_kg = body_kg + first.load_kg - first.assist_kg
    seen: set[float] = set()
    for share, reps in blocks.shipped().warm_up:
        load = round_down_to_plates(working_kg * share - body_kg, history.plates.step, history.plates.unit)
        if load in seen or (load == 0.0 and first.load_kg == 0.0):
            continue
        seen.add(load)
        fewer = reps if first.reps is None else min(reps, first.reps)
        pulls.append(PlannedSet(first.movement, "warm_up", fewer, load_kg=load))
    if len(pulls) < 2 and first.load_kg == 0.0:
        easier = closest_possible("ring_row", today.equipment, today.excluded)
        if easier is not None:
            pulls.append(PlannedSet(easier, "warm_up", 5))
    draft.warm_up += pulls
