"""From strength to a load: the one place where kilograms to lift are made."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from typing import Literal

from planner import repetitions
from planner.units import Unit, round_down_to_plates, round_up_to_plates

# What warm-ups are known by; common practice, no source.
LIGHT_SHARE = 0.85  # of the session's heaviest system load, or of the 1RM by the reps done: less is no work
WARM_UP_RESERVE = 4.0  # reps left that are told of a warm-up

Limit = Literal["strength", "best_set", "ceiling", "bodyweight", "assistance"]


@dataclass(frozen=True, slots=True)
class Plates:
    """What an athlete can hang on: loads are whole multiples of `step`, in `unit`."""

    step: float
    unit: Unit = "kg"


@dataclass(frozen=True, slots=True)
class Basis:
    """What a load is made from.

    `e1rm_kg`: the cautious 1RM of the system load [kg]. `n_range`: fewest and most reps to failure that it came from;
    the pair of rep counts starts from the nearest of them.
    `steepness`: the athlete's own habit, neutral by default. How they judge effort is not in it: the ceiling is meant
    as it is, and what they say of it is corrected where it is evidence.
    """

    e1rm_kg: float
    n_range: tuple[float, float] = (6.0, 6.0)
    steepness: float = 1.0

    def system_load_kg(self, reps: float, rpe: float) -> float:
        """System load [kg] for `reps` at RPE `rpe`, before plates and caps."""
        wanted = repetitions.reps_to_failure(reps, rpe)
        nearest = min(max(wanted, self.n_range[0]), self.n_range[1])
        return repetitions.system_load_kg_for(self.e1rm_kg, reps, rpe, nearest, self.steepness)


@dataclass(frozen=True, slots=True)
class BestSet:
    """A set that was done: system load [kg], reps, and reps to failure (reps, where no effort was told)."""

    system_load_kg: float
    reps: float
    n: float
    told: bool = True
    planned: bool = False

    def is_warm_up(self, e1rm_kg: float) -> bool:
        """Whether it cannot have been meant as work: far below the strength known, and nothing said of being hard."""
        eased = not self.planned and (not self.told or self.n - self.reps >= WARM_UP_RESERVE)
        return eased and self.system_load_kg * repetitions.one_rep_max_factor(self.reps) < LIGHT_SHARE * e1rm_kg


@dataclass(frozen=True, slots=True)
class Loading:
    """A load as it can be lifted. Only one of `load_kg` and `assist_kg` is above 0.

    `reps` may be fewer than wanted where bodyweight alone is too much. `limited_by`: what kept it from being more.
    `uncapped_kg`: the system load that strength alone would have given.
    """

    load_kg: float
    assist_kg: float
    reps: int
    system_load_kg: float
    limited_by: Limit
    uncapped_kg: float


def cap_kg(best: Iterable[BestSet], reps: int, rpe: float, max_rise: float) -> float | None:
    """The heaviest system load [kg] that the best comparable set of late allows; None where there is none.

    Comparable are sets of at least the wanted reps. Without such, every set counts at what it was worth for the wanted
    reps, and never at more than its load.
    """
    sets = tuple(best)
    alike = [done.system_load_kg for done in sets if reps <= done.reps]
    if alike:
        return max(alike) * (1.0 + max_rise)
    wanted = repetitions.reps_to_failure(reps, rpe)
    worth = (done.system_load_kg * min(1.0, repetitions.load_ratio(max(done.n, 1.0), wanted)) for done in sets)
    heaviest = max(worth, default=None)
    return None if heaviest is None else heaviest * (1.0 + max_rise)


def prescribe(
    basis: Basis,
    reps: int,
    rpe: float,
    bodyweight_kg: float,
    plates: Plates,
    *,
    best: Iterable[BestSet] = (),
    max_rise: float = 0.05,
    ceiling_kg: float | None = None,
    scale: float = 1.0,
    assistance: bool = False,
) -> Loading:
    """The load for a set of `reps` (at least 1) at RPE ceiling `rpe`.

    Args:
        basis: Strength it is made from.
        bodyweight_kg: The share of the bodyweight that the movement lifts [kg]; 0 for a stack or a dumbbell.
        plates: The athlete's plate step. Loads are rounded down to it, assistance up.
        best: Sets of this movement and side in the last weeks; the load is at most `max_rise` above the best.
        ceiling_kg: A further cap on the system load [kg] (deload, pain, the coach's lock).
        scale: Factor on the system load that strength gives (0.95 after a set two points too hard).
        assistance: Whether kilograms can be taken off (pulley, stack); else fewer reps.

    Below bodyweight the load is 0 and the reps are cut until the effort fits; where not even one rep does, assistance
    is asked for in kilograms, whether or not the athlete has it (the caller then chooses an easier movement).
    """
    wanted_kg = basis.system_load_kg(reps, rpe) * scale
    target = wanted_kg
    limit: Limit = "strength"
    risen = cap_kg(best, reps, rpe, max_rise)
    if risen is not None and risen < target:
        target, limit = risen, "best_set"
    if ceiling_kg is not None and ceiling_kg < target:
        target, limit = ceiling_kg, "ceiling"
    if target >= bodyweight_kg:
        load = round_down_to_plates(target - bodyweight_kg, plates.step, plates.unit)
        return Loading(load, 0.0, reps, bodyweight_kg + load, limit, wanted_kg)
    if not assistance:
        for fewer in range(reps - 1, 0, -1):
            if basis.system_load_kg(fewer, rpe) * scale >= bodyweight_kg:
                return Loading(0.0, 0.0, fewer, bodyweight_kg, "bodyweight", wanted_kg)
    assist = round_up_to_plates(bodyweight_kg - target, plates.step, plates.unit)
    return Loading(0.0, assist, reps, bodyweight_kg - assist, "assistance", wanted_kg)
