"""What sets show: doses done, holds, reps a side, the proof of a rung, and where tests place an athlete."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from datetime import date, timedelta
from statistics import median

from planner.digest import sets_in
from planner.evidence import counts, system_load_kg
from planner.facts import Rom, Session, Side, WorkSet
from planner.history import GRIPS, SIDES, History
from planner.ladders import GateRule, Ladder, Number, Rung, Shown, Step
from planner.movements import movement
from planner.repetitions import MAX_REPS_AS_EVIDENCE, expected_reps_to_failure, one_rep_max_factor, reps_to_failure
from planner.rules import Rules
from planner.units import step_kg

DAY = timedelta(days=1)
VOLUME_RPE = 8.0  # ceiling of the work of the first rungs; common practice
JUDGED_RESERVE = 2.0  # reps left that are told well enough to prove anything; common practice
TESTED_REPS = 8.0  # reps to failure up to which a test measures a maximum; common practice


def value_of(number: Number, rules: Rules) -> float:
    return rules.number(number) if isinstance(number, str) else float(number)


def sets_of(session: Session, rung: Rung) -> list[WorkSet]:
    return [work for work in sets_in(session, rung.movement) if not work.eccentric]


def did(session: Session, rung: Rung, dose: Step) -> bool:
    """Whether a session holds the whole dose: on each side where the work is one-sided."""
    pauses = frozenset(dose.pauses)
    fitting = [
        work
        for work in sets_in(session, rung.movement)
        if not work.eccentric
        and not work.failed
        and (dose.reps == 0 or (work.reps or 0) >= dose.reps)
        and (work.rom == dose.rom or work.rom == "full")
        and work.load_kg >= dose.load_kg
        and pauses.issubset(work.pauses)
    ]
    if len(fitting) < dose.sets or not rung.one_sided:
        return len(fitting) >= dose.sets
    unsided = sum(work.side is None for work in fitting)
    return all(unsided + sum(work.side == side for work in fitting) >= dose.sets for side in SIDES)


def dose_effort(sessions: Iterable[Session], rung: Rung, dose: Step, *, other_day: bool = False) -> float | None:
    """The median effort told of the dose's own sets in `sessions`, of the side it is harder for; None where none was.

    A set beyond the dose is a gift and not judged. With `other_day` it is the rung's work of the other day.
    """
    name, rom = rung.movement, dose.rom
    if other_day and rung.other_day is not None:
        name, rom = rung.other_day.movement, rung.other_day.rom
    judged: list[WorkSet] = []
    for session in sessions:
        taken: dict[Side | None, int] = {}
        for work in sets_in(session, name):
            if work.rom not in (rom, "full") or work.eccentric:
                continue
            if (work.reps or 0) < dose.reps or taken.get(work.side, 0) >= dose.sets:
                continue
            taken[work.side] = taken.get(work.side, 0) + 1
            judged.append(work)
    return median_effort(judged)


def median_effort(sets: Iterable[WorkSet]) -> float | None:
    """The median effort told of the side that it is higher for; None where none was told."""
    efforts: dict[Side | None, list[float]] = {}
    for work in sets:
        if work.rpe is not None:
            efforts.setdefault(work.side, []).append(work.rpe)
    return max((median(found) for found in efforts.values()), default=None)


def worst_effort(session: Session, rung: Rung) -> float | None:
    """The highest effort told of a rung's sets; None where none was told."""
    return max((work.rpe for work in sets_of(session, rung) if work.rpe is not None), default=None)


def reps_left_to(session: Session, rung: Rung, side: Side, rom: Rom) -> float:
    """The most reps to failure that a clean set of one side tells in the range `rom`, of what was left the part that
    can be judged; without an effort only its reps. 0 without a set."""
    return max(
        (
            (work.reps or 0) + (0.0 if work.rpe is None else min(10.0 - work.rpe, JUDGED_RESERVE))
            for work in sets_of(session, rung)
            if work.side in (side, None) and not work.failed and not work.linked and work.rom in (rom, "full")
        ),
        default=0.0,
    )


def best_hold(sessions: Iterable[Session], name: str) -> float | None:
    """The longest hold [s] of a movement."""
    return max(
        (work.hold_s for one in sessions for work in sets_in(one, name) if work.hold_s and not work.failed),
        default=None,
    )


def reps_shown(sessions: Iterable[Session], rule: GateRule) -> float | None:
    best: float | None = None
    names = GRIPS if rule.movement in GRIPS else (rule.movement or "",)
    for one in sessions:
        reps = sorted(
            (
                float(work.reps)
                for name in names
                for work in sets_in(one, name)
                if work.reps and work.rom == "full" and not work.assist_kg and not work.linked
            ),
            reverse=True,
        )
        if len(reps) >= rule.sets:
            best = max(best or 0.0, reps[rule.sets - 1])
    return best


def both_sides(sessions: Iterable[Session], shown: Shown) -> int:
    """The reps shown by the weaker side's best set."""
    best: dict[Side, int] = {"left": 0, "right": 0}
    for one in sessions:
        for work in sets_in(one, shown.movement):
            if work.rom != "full" or work.eccentric or work.failed:
                continue
            if shown.max_assist_kg is not None and work.assist_kg > shown.max_assist_kg:
                continue
            for side in (work.side,) if work.side else SIDES:
                best[side] = max(best[side], work.reps or 0)
    return min(best.values())


def proven(session: Session, rung: Rung, history: History, rules: Rules) -> dict[str, float | int] | None:
    """What a session shows of a rung's proof, by slot name; None where it is not enough."""
    names = GRIPS if rung.movement in GRIPS else (rung.movement,)
    fitting = [
        work
        for name in names
        for work in sets_in(session, name)
        if not work.eccentric and work.rom in (rung.rom, "full") and not work.linked
    ]
    if not fitting:
        return None
    proof, body_kg = rung.proof, history.bodyweight.on(session.on)
    if proof.hold_s is not None:
        held = max((work.hold_s or 0.0 for work in fitting if not work.failed), default=0.0)
        return {"seconds": held} if held >= value_of(proof.hold_s, rules) else None
    plate = step_kg(history.athlete.plate_step, history.athlete.plate_unit) if proof.smallest_plate else 0.0
    share = 0.0 if proof.max_assist_share is None else value_of(proof.max_assist_share, rules)
    fitting = [work for work in fitting if work.load_kg >= plate - 1e-6 and work.assist_kg <= share * body_kg + 1e-6]
    want = proof.reps or 1
    if not rung.one_sided:
        reps = max((work.reps or 0 for work in fitting), default=0)
        return {"reps": reps} if reps >= want else None
    best = {side: max((work.reps or 0 for work in fitting if work.side == side), default=0) for side in SIDES}
    if min(best.values()) < want:
        return None
    return {"reps_left": best["left"], "reps_right": best["right"]}


def relative_added(history: History, day: date, tests: Sequence[Session] = ()) -> float | None:
    """Relative added 1RM of the main lift on `day`: the middle of the best grip's trend, or what the newest of the
    late `tests` showed, whichever is more; None without evidence.

    The trend is of the tired body of training, a few percent under the fresh one that a test measures.
    """
    body_kg = history.bodyweight.on(day)
    known = [trend.at(day).e1rm_kg for (name, _), trend in history.strength.items() if name in GRIPS]
    if known:
        known += [tested for one in reversed(tests) if (tested := _tested_kg(history, one)) is not None][:1]
    return max(known) / body_kg - 1.0 if known else None


def _tested_kg(history: History, session: Session) -> float | None:
    """1RM of the system load [kg] by a test's best set of the main lift; None where none is near a maximum."""
    body_kg = history.bodyweight.on(session.on)
    return max(
        (
            # A curve flatter than the book's, however well learned, makes no test worth more.
            system_load_kg(work, body_kg) * one_rep_max_factor(n) ** min(1.0, history.steepness(work.movement))
            for work in session.sets
            if work.movement in GRIPS and counts(work) and work.reps and not work.linked and not work.pauses
            if (effort := 10.0 if work.failed else work.rpe) is not None and 10.0 - effort <= JUDGED_RESERVE
            if (n := reps_to_failure(work.reps, effort)) <= TESTED_REPS
        ),
        default=None,
    )


def placed_by_tests(history: History, ladder: Ladder) -> str:
    """The highest rung that the tests before the start show, with the margin its proof asks for.

    Without any test it is the first rung that the equipment allows.
    """
    tests = [one for one in history.sessions if one.is_test]
    has = history.equipment(history.athlete.started_on)
    found = next((rung for rung in ladder.rungs if movement(rung.movement).possible_with(has)), ladder.rungs[0])
    for rung in ladder.rungs:
        shows = any(proven(one, rung, history, history.rules) is not None for one in tests)
        if (rung.proof.reps or rung.proof.hold_s) and (
            shows or (rung.work == "main" and _strong_enough(history, rung))
        ):
            found = rung
    return found.id


def _strong_enough(history: History, rung: Rung) -> bool:
    """Whether a test set, heavier or longer, is worth the main lift's proof (six reps with the smallest plate)."""
    body_kg = history.bodyweight.on(history.athlete.started_on)
    plate = step_kg(history.athlete.plate_step, history.athlete.plate_unit)
    for one in history.sessions:
        for work in one.sets if one.is_test else ():
            if work.movement not in GRIPS or not work.reps or not counts(work):
                continue
            # A set of many reps is no estimate of a maximum, but it proves at least twelve of them.
            n = min(reps_to_failure(work.reps, 10.0 if work.rpe is None else work.rpe), MAX_REPS_AS_EVIDENCE)
            maximum = system_load_kg(work, history.bodyweight.on(one.on)) * one_rep_max_factor(n)
            if expected_reps_to_failure(maximum, body_kg + plate) >= (rung.proof.reps or 1):
                return True
    return False


def weaker_first(history: History, rung: Rung, day: date) -> tuple[Side, Side]:
    """The weaker side, then the other: by the newest session that tells them apart, left where none does."""
    for session in reversed(history.between(day - 180 * DAY, day)):
        works = [work for work in sets_in(session, rung.movement) if work.side]
        if not works:
            continue
        left, right = (_worth([work for work in works if work.side == side]) for side in SIDES)
        if left != right and left is not None and right is not None:
            return ("left", "right") if left < right else ("right", "left")
    return SIDES


def _worth(works: list[WorkSet]) -> tuple[float, float] | None:
    """Reps of the best set, then the ease of the hardest."""
    if not works:
        return None
    efforts = [work.rpe for work in works if work.rpe is not None]
    return max(float(work.reps or 0) - (0.5 if work.failed else 0) for work in works), -max(efforts, default=0.0)
