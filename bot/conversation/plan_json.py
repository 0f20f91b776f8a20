"""A day's plan as the rehearsal contract has it."""

from __future__ import annotations

from typing import Any

from planner.facts import PlannedSet
from planner.plan import DayPlan


def plan_object(plan: DayPlan) -> dict[str, Any]:
    return {
        "date": plan.on.isoformat(),
        "week": plan.week,
        "block": plan.block,
        "kind": plan.kind,
        "sets": [_set(one) for one in plan.sets],
    }


def _set(one: PlannedSet) -> dict[str, Any]:
    return {
        "movement": one.movement,
        "side": one.side,
        "reps": one.reps,
        "hold_s": one.hold_s,
        "load_kg": one.load_kg,
        "assist_kg": one.assist_kg,
        "rpe": one.rpe,
        "rom": one.rom,
        "eccentric": one.eccentric,
        "pauses": list(one.pauses),
        "failed": False,
        "linked": False,
        "on": None,
        "part": one.part,
        "rung": one.rung,
    }
