"""What one session says of strength: at most one measurement for each movement and side."""

from __future__ import annotations

import math
from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date
from typing import Literal, NamedTuple

from planner.facts import Session, Side, WorkSet
from planner.movements import movement
from planner.repetitions import one_rep_max_factor, reps_to_failure
from planner.rules import Rules

Key = tuple[str, Side | None]


class Measurement(NamedTuple):
    """A session's word on one movement and side. Logs are natural, of system load [kg].

    estimate: what the 1RM was, `log_load` + log k(`n`), with its `variance`. floor: it was at least that (no effort
    told). ceiling: it was below that (an attempt without a single rep). `reserve`: reps said to be left.
    """

    on: date
    kind: Literal["estimate", "floor", "ceiling"]
    log_e1rm: float
    variance: float
    n: float
    reserve: float
    log_load: float


@dataclass(frozen=True, slots=True)
class Errors:
    """How far a set can be trusted: the `evidence.` rules, squared where it saves work."""

    most_reps: float
    day_variance: float
    reserve_sd: float
    reserve_sd_per_rep: float
    equation_sd_per_rep: float

    def variance(self, n: float, reserve: float) -> float:
        """Variance of the log 1RM of a set with `n` reps to failure, `reserve` of them said and not done.

        It grows with both: a misjudged rep costs 1 / (37 - n) (Brzycki), and people misjudge more the further from
        failure they stop (Zourdos 2021, Halperin 2022).
        """
        misjudged = (self.reserve_sd + self.reserve_sd_per_rep * reserve) / (37.0 - n)
        equation = self.equation_sd_per_rep * (n - 1.0)
        return self.day_variance + misjudged * misjudged + equation * equation


def errors_of(rules: Rules) -> Errors:
    return Errors(
        most_reps=rules.number("strength.max_reps_as_evidence"),
        day_variance=rules.number("evidence.day_sd") ** 2,
        reserve_sd=rules.number("evidence.reserve_sd"),
        reserve_sd_per_rep=rules.number("evidence.reserve_sd_per_rep"),
        equation_sd_per_rep=rules.number("evidence.equation_sd_per_rep"),
    )


def system_load_kg(work: WorkSet, bodyweight_kg: float) -> float:
    """Share of the bodyweight that the movement lifts + added load - assistance [kg]."""
    return movement(work.movement).bodyweight_share * bodyweight_kg + work.load_kg - work.assist_kg


def counts(work: WorkSet) -> bool:
    """Whether a set can say anything of the full movement's 1RM: whole range, lifted as well as lowered, a load that
    is known. Half range, lowering only, holds and a bare band do not."""
    if work.reps is None or work.rom != "full" or work.eccentric or work.hold_s:
        return False
    return movement(work.movement).measurable or (work.movement == "band_pull_up" and work.assist_kg > 0)


def measure(session: Session, bodyweight_kg: float, errors: Errors) -> dict[Key, Measurement]:
    """The measurements of one session, by movement and side.

    Of several sets with an effort the most certain one is taken; equal ones are averaged. A set without effort, one
    with pauses and one done straight after another prove only the reps that were done. Where such a floor lies above
    the estimate, the estimate is lifted to it: what was done was done.
    """
    estimates: dict[Key, list[Measurement]] = {}
    floors: dict[Key, Measurement] = {}
    ceilings: dict[Key, Measurement] = {}
    for work in session.sets:
        if not counts(work):
            continue
        load = system_load_kg(work, bodyweight_kg)
        if load <= 0:
            continue
        key = (work.movement, work.side)
        found = _of_set(work, math.log(load), session.on, errors)
        if found is None:
            continue
        if found.kind == "estimate":
            estimates.setdefault(key, []).append(found)
        elif found.kind == "floor":
            if key not in floors or found.log_e1rm > floors[key].log_e1rm:
                floors[key] = found
        elif key not in ceilings or found.log_e1rm < ceilings[key].log_e1rm:
            ceilings[key] = found
    result = {key: _combined(found) for key, found in estimates.items()}
    for key, floor in floors.items():
        if key not in result:
            result[key] = floor
        elif floor.log_e1rm > result[key].log_e1rm:
            result[key] = result[key]._replace(log_e1rm=floor.log_e1rm, log_load=floor.log_load, n=floor.n, reserve=0.0)
    for key, ceiling in ceilings.items():
        result.setdefault(key, ceiling)
    return result


def _of_set(work: WorkSet, log_load: float, on: date, errors: Errors) -> Measurement | None:
    reps = work.reps or 0
    if reps < 1:
        if not work.failed:
            return None
        return Measurement(on, "ceiling", log_load, errors.variance(1.0, 0.0), 1.0, 0.0, log_load)
    # A missed rep tells the effort: nothing was left.
    rpe = 10.0 if work.failed else work.rpe
    n = float(reps) if rpe is None else reps_to_failure(reps, rpe)
    if rpe is None or work.linked or work.pauses or n > errors.most_reps:
        proven = min(float(reps), errors.most_reps)
        log_e1rm = log_load + math.log(one_rep_max_factor(proven))
        return Measurement(on, "floor", log_e1rm, errors.variance(proven, 0.0), proven, 0.0, log_load)
    log_e1rm = log_load + math.log(one_rep_max_factor(n))
    return Measurement(on, "estimate", log_e1rm, errors.variance(n, n - reps), n, n - reps, log_load)


def _combined(found: Iterable[Measurement]) -> Measurement:
    sets = list(found)
    least = min(one.variance for one in sets)
    best = [one for one in sets if one.variance <= least * 1.0001]
    if len(best) == 1:
        return best[0]
    # No smaller variance for more sets: a day's form and a person's way of judging effort are shared by all of them.
    count = len(best)
    return best[0]._replace(
        log_e1rm=sum(one.log_e1rm for one in best) / count, log_load=sum(one.log_load for one in best) / count
    )
