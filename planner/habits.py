"""An athlete's own ways: how many reps "two left" means for them, and how fast their reps fall with load.

Neutral until the record itself shows otherwise. They are followed together with strength (`state_space.py`), for only
training at different efforts and rep counts tells them apart from it.
"""

from __future__ import annotations

from dataclasses import dataclass

# Habits outside these are more likely bad notes than bad judges. Common practice, no source.
STEEPNESS_LIMITS = (0.6, 1.3)
RESERVE_LIMITS = (-0.3, 0.8)


@dataclass(frozen=True, slots=True)
class Habits:
    """`steepness`: exponent on 1RM over load; below 1 reps fall faster with load than the equations say.
    `reserve_bias`: further reps left for every rep said to be left."""

    steepness: float = 1.0
    reserve_bias: float = 0.0


def believable(steepness: float, reserve_bias: float) -> Habits:
    """Habits within their limits."""
    return Habits(
        min(max(steepness, STEEPNESS_LIMITS[0]), STEEPNESS_LIMITS[1]),
        min(max(reserve_bias, RESERVE_LIMITS[0]), RESERVE_LIMITS[1]),
    )
