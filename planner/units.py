"""Units of load: pounds and kilograms, and what a set of plates can make."""

from __future__ import annotations

import math
from typing import Literal

Unit = Literal["kg", "lb"]

KG_PER_LB = 0.45359237  # exact, by the agreement of 1959

# 20 kg told as 44.0924 lb and back must still be 20: anything nearer than this to a whole step is that step.
_STEP_SLACK = 1e-6


def kg_from_lb(pounds: float) -> float:
    """Kilograms of `pounds`."""
    return pounds * KG_PER_LB


def lb_from_kg(kilograms: float) -> float:
    """Pounds of `kilograms`."""
    return kilograms / KG_PER_LB


def step_kg(step: float, unit: Unit) -> float:
    """A plate step in kilograms; `step` is in `unit`, above 0.

    Raises:
        ValueError: `step` is not above 0.
    """
    if not step > 0:
        raise ValueError(f"a plate step must be above 0, not {step}")
    return step * KG_PER_LB if unit == "lb" else step


def round_down_to_plates(load_kg: float, step: float, unit: Unit = "kg") -> float:
    """The heaviest load [kg] of whole plate steps that is not above `load_kg`; never below 0.

    Whole steps are counted in the plates' own unit, so 45 lb stays 45 lb.
    """
    one_step_kg = step_kg(step, unit)
    steps = math.floor(load_kg / one_step_kg + _STEP_SLACK)
    return _whole_steps_kg(max(0, steps), step, unit)


def round_up_to_plates(load_kg: float, step: float, unit: Unit = "kg") -> float:
    """The lightest load [kg] of whole plate steps that is not below `load_kg`; never below 0. For assistance."""
    one_step_kg = step_kg(step, unit)
    steps = math.ceil(load_kg / one_step_kg - _STEP_SLACK)
    return _whole_steps_kg(max(0, steps), step, unit)


def _whole_steps_kg(steps: int, step: float, unit: Unit) -> float:
    in_unit = round(steps * step, 6)
    return in_unit * KG_PER_LB if unit == "lb" else in_unit
