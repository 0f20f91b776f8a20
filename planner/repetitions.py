"""Repetitions and load: what a set says of a maximum, and what a maximum says of a set.

`n` is reps to failure, reps + (10 - RPE): a real number from 1. Loads are system loads [kg].
"""

from __future__ import annotations

import math

MAX_REPS_AS_EVIDENCE = 12


def reps_to_failure(reps: float, rpe: float) -> float:
    """Reps that the load would have allowed.

    Source: RIR = 10 - RPE, Zourdos et al. 2016.
    """
    return reps + (10.0 - rpe)


def brzycki(n: float) -> float:
    """1RM over load. Brzycki 1993, 36 / (37 - n); n below 37."""
    return 36.0 / (37.0 - n)


def epley(n: float) -> float:
    """1RM over load. Epley 1985, 1 + n / 30; above 1 even for a single."""
    return 1.0 + n / 30.0


def epley_from_one(n: float) -> float:
    """Epley with a single worth itself: a straight line from 1 at n = 1 to the published value at n = 2.

    Why: at n = 1 the load is the maximum, and a step between 1 and 1.5 reps would make loads jump with half a point
    of effort.
    """
    return epley(n) if n >= 2.0 else 1.0 + (n - 1.0) / 15.0


def one_rep_max_factor(n: float) -> float:
    """1RM over load by the lower of Brzycki 1993 and Epley 1985: equal at n = 10, Brzycki below, Epley above.

    The lower one: too high costs a tendon, too low costs a week.
    """
    by_brzycki, by_epley = brzycki(n), epley(n)
    return by_brzycki if by_brzycki <= by_epley else by_epley


def log_factor(n: float) -> float:
    """The natural log of `one_rep_max_factor`, which is not called for speed: a trend of years asks for thousands."""
    by_brzycki, by_epley = 36.0 / (37.0 - n), 1.0 + n / 30.0
    return math.log(by_brzycki if by_brzycki <= by_epley else by_epley)


def load_ratio(n_evidence: float, n_wanted: float, steepness: float = 1.0) -> float:
    """Load for `n_wanted` reps to failure over the load that `n_evidence` reps were done with.

    Whichever equation gives less for this pair: one curve turned to fewer reps is bolder than the other (a 10RM as a
    3RM is 1.259 by Brzycki, 1.212 by Epley). `steepness` is the athlete's own: below 1 their reps fall faster with
    load than the equations say.
    """
    by_brzycki = brzycki(n_evidence) / brzycki(min(n_wanted, 36.0))
    by_epley = epley_from_one(n_evidence) / epley_from_one(n_wanted)
    return math.pow(min(by_brzycki, by_epley), steepness)


def system_load_kg_for(
    e1rm_kg: float, reps: float, rpe: float, n_evidence: float = 1.0, steepness: float = 1.0
) -> float:
    """System load [kg] at which `reps` reps are RPE `rpe`, from an estimated maximum.

    `n_evidence`: the reps to failure (about) that the estimate came from. The estimate is taken back to that load
    first, then over to the wanted reps, so that the pair decides and not one curve twice.
    """
    n_evidence = min(max(n_evidence, 1.0), float(MAX_REPS_AS_EVIDENCE))
    shown_kg = e1rm_kg / math.pow(one_rep_max_factor(n_evidence), steepness)
    wanted = reps_to_failure(reps, rpe)
    return shown_kg * load_ratio(n_evidence, wanted, steepness)


def reps_of_factor(factor: float) -> float:
    """The reps to failure at which a 1RM is `factor` times the load: `one_rep_max_factor` turned round."""
    n = 37.0 - 36.0 / factor
    return n if n <= 10.0 else 30.0 * (factor - 1.0)


def expected_reps_to_failure(e1rm_kg: float, system_load_kg: float, steepness: float = 1.0) -> float:
    """Reps that a load should allow, by the lower curve; below 1 where the load is over the maximum, never below 0."""
    return max(0.0, reps_of_factor(math.pow(e1rm_kg / system_load_kg, 1.0 / steepness)))
