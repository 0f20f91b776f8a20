"""What hardly anybody can do is doubted: a slip of the pen, or a number that the reader gave to the wrong exercise.

Limits are far beyond good athletes; they are common practice, no source.
"""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.fold.rows import Row
from planner.repetitions import one_rep_max_factor

# Added 1RM in bodyweights that is believed.
MOST_RELATIVE = {"pull_up": 1.25, "chin_up": 1.3, "neutral_grip_pull_up": 1.25, "ring_pull_up": 1.2, "dip": 1.7}
MOST_RELATIVE |= {"ring_dip": 1.4, "muscle_up": 0.6, "ring_muscle_up": 0.5}
# Added load in bodyweights of what is done with one arm.
MOST_ON_ONE_ARM = dict.fromkeys(("one_arm_pull_up", "one_arm_chin_up", "one_arm_hand_on_shoulder"), 0.25)
TWO_ARMED = frozenset("pull_up chin_up neutral_grip_pull_up ring_pull_up dip ring_dip muscle_up ring_muscle_up".split())
# Reps of one set that are believed.
MOST_REPS = 120
MOST_REPS_OF = dict.fromkeys(("pull_up", "chin_up", "neutral_grip_pull_up", "ring_pull_up"), 35)
MOST_REPS_OF |= {"muscle_up": 20, "ring_muscle_up": 15, "dip": 80, "ring_dip": 50, "handstand_push_up": 40}
MOST_REPS_OF |= dict.fromkeys(("one_arm_pull_up", "one_arm_chin_up"), 8)
# Reps of one exercise in one message that are believed.
MOST_IN_ALL = dict.fromkeys(("pull_up", "chin_up", "neutral_grip_pull_up", "ring_pull_up"), 160)
MOST_IN_ALL |= {"muscle_up": 60, "ring_muscle_up": 40, "dip": 300, "ring_dip": 200, "push_up": 800}
MOST_IN_ALL |= dict.fromkeys(("one_arm_pull_up", "one_arm_chin_up"), 60)


def too_many_in_all(movement: str | None, rows: Sequence[Row]) -> bool:
    """Whether the reps of an exercise add up to more than is believed: "5 x 20" told of loads, say."""
    most = MOST_IN_ALL.get(movement or "")
    reps = [row.reps or 0 for row in rows]
    # A set that alone is beyond belief has its own question.
    return most is not None and sum(reps) > most and max(reps, default=0) <= most_reps(movement)


def most_reps(movement: str | None) -> int:
    """The most reps of one set that are believed."""
    return MOST_REPS_OF.get(movement or "", MOST_REPS)


def strong_beyond_belief(movement: str | None, row: Row, bodyweight_kg: float | None) -> bool:
    """Whether a loaded set would take an added 1RM that is not believed."""
    if not bodyweight_kg or not row.load_kg or row.failed:
        return False
    on_one = MOST_ON_ONE_ARM.get(movement or "")
    if on_one is not None:
        return row.load_kg > on_one * bodyweight_kg
    most = MOST_RELATIVE.get(movement or "")
    if most is None or row.hold_s is not None or not row.reps or row.reps < 2:
        return False
    system_kg = bodyweight_kg + row.load_kg
    return system_kg * one_rep_max_factor(min(float(row.reps), 30.0)) > (1.0 + most) * bodyweight_kg


def sided_beyond_belief(movement: str | None, row: Row) -> bool:
    """Whether one side is told of what is done with both arms at once."""
    return movement in TWO_ARMED and row.side in ("left", "right")
