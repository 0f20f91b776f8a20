"""What one session says of strength: at most one measurement for each movement and side."""

from __future__ import annotations

import math
from dataclasses import dataclass
from datetime import date
from functools import lru_cache
from typing import Literal, NamedTuple

from planner.digest import digest
from planner.facts import Session, WorkSet
from planner.layout import Key, lift_of
from planner.movements import movement
from planner.repetitions import log_factor, reps_to_failure
from planner.rules import Rules

_Told = tuple[float, float, float, float, float]  # a set with an effort: variance, log 1RM, n, reserve, log load


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
    lift = lift_of(work.movement)
    if lift is None or work.reps is None or work.rom != "full" or work.eccentric or work.hold_s:
        return False
    return work.assist_kg > 0 or not lift.helped


# Told efforts come in halves, so the same few are asked for again and again.
_log_factor = lru_cache(maxsize=1024)(log_factor)


def measure(session: Session, bodyweight_kg: float, errors: Errors) -> dict[Key, Measurement]:
    """The measurements of one session, by movement and side.

    Of several sets with an effort the most certain one is taken; equal ones are averaged. A set without effort, one
    with pauses and one done straight after another prove only the reps that were done. Where such a floor lies above
    the estimate, the estimate is lifted to it: what was done was done.
    """
    estimates: dict[Key, list[_Told]] = {}
    floors: dict[Key, tuple[float, float, float]] = {}  # log 1RM, n, log load
    ceilings: dict[Key, float] = {}  # log load
    on, sets, most = session.on, session.sets, errors.most_reps
    for places, (share, helped, keys) in digest(session).layout.lifts:
        body_kg, before = share * bodyweight_kg, None
        alike: list[_Told] | None = None
        for work in sets[places]:
            if work is before:  # Storage hands out equal sets as one.
                if alike:
                    alike.append(alike[-1])
                continue
            before, alike, reps = work, None, work.reps
            # As in `counts`, which is not called for speed: half of five years' sets fall out here.
            if reps is None or work.rom != "full" or work.eccentric or work.hold_s or (helped and work.assist_kg <= 0):
                continue
            load = body_kg + work.load_kg - work.assist_kg
            if load <= 0:
                continue
            key, log_load = keys[work.side], math.log(load)
            if reps < 1:
                if work.failed and (key not in ceilings or log_load < ceilings[key]):
                    ceilings[key] = log_load
                continue
            # A missed rep tells the effort: nothing was left.
            rpe = 10.0 if work.failed else work.rpe
            if rpe is None or work.linked or work.pauses or (n := reps_to_failure(reps, rpe)) > most:
                proven = float(reps) if reps < most else most
                log_e1rm, known = log_load + _log_factor(proven), floors.get(key)
                if known is None or log_e1rm > known[0]:
                    floors[key] = (log_e1rm, proven, log_load)
            else:
                alike = estimates.setdefault(key, [])
                alike.append((errors.variance(n, n - reps), log_load + _log_factor(n), n, n - reps, log_load))
    result = {key: _combined(on, found) for key, found in estimates.items()}
    for key, (log_e1rm, proven, log_load) in floors.items():
        estimate = result.get(key)
        if estimate is None:
            variance = errors.variance(proven, 0.0)
            result[key] = Measurement(on, "floor", log_e1rm, variance, proven, 0.0, log_load)
        elif log_e1rm > estimate.log_e1rm:
            result[key] = estimate._replace(log_e1rm=log_e1rm, log_load=log_load, n=proven, reserve=0.0)
    for key, log_load in ceilings.items():
        if key not in result:
            result[key] = Measurement(on, "ceiling", log_load, errors.variance(1.0, 0.0), 1.0, 0.0, log_load)
    return result


def _combined(on: date, sets: list[_Told]) -> Measurement:
    best = sets
    if len(sets) > 1:
        least = min(sets)[0]
        best = [one for one in sets if one[0] <= least * 1.0001]
    variance, log_e1rm, n, reserve, log_load = best[0]
    if len(best) > 1:
        # No smaller variance for more sets: a day's form and a person's way of judging effort are shared by all.
        count = len(best)
        log_e1rm, log_load = sum([one[1] for one in best]) / count, sum([one[4] for one in best]) / count
    return Measurement(on, "estimate", log_e1rm, variance, n, reserve, log_load)
