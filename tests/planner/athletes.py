"""Athletes and days for the engine's tests: people who do what the plan asks, and what goes wrong on top of it."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from datetime import date, timedelta
from typing import Any

from planner import review
from planner.facts import Athlete, PlannedSet, Record, SentPlan, Session, WorkSet
from planner.plan import Review

START = date(2027, 1, 4)  # a Monday
TESTED = date(2027, 1, 2)
USUAL = frozenset({"bar", "rings", "belt"})


def day(number: int) -> date:
    """The day `number` days after the start; 0 is the first Monday, 3 the first Thursday."""
    return START + timedelta(number)


def athlete(rung: str | None = "weighted_pull_up", **changes: Any) -> Athlete:
    values: dict[str, Any] = {
        "handle": "mira",
        "started_on": START,
        "bodyweight_kg": 62.0,
        "ladders": (("one_arm_pull_up", rung),),
        "equipment": USUAL,
        "screened": True,
    }
    return Athlete(**{**values, **changes})


def with_tests(*sets: WorkSet) -> Session:
    return Session(TESTED, sets or (WorkSet("pull_up", 5, load_kg=15.0, rpe=9.0),), is_test=True)


def as_asked(one: PlannedSet, over: float = 0.0) -> WorkSet:
    """The set as it was asked for, `over` points harder than its ceiling."""
    reps = 5 if one.reps is None and one.hold_s is None else one.reps
    rpe = None if one.rpe is None else min(10.0, one.rpe + over)
    return WorkSet(
        one.movement, reps, one.side, one.hold_s, one.load_kg, one.assist_kg, rpe, one.rom, one.eccentric, one.pauses
    )


def live(
    who: Athlete,
    days: int,
    tests: tuple[Session, ...] = (),
    over: Callable[[PlannedSet, date], float] = lambda one, on: 0.0,
    trains: Callable[[date], bool] = lambda on: True,
    did: Callable[[WorkSet, date], WorkSet] = lambda done, on: done,
    **facts: tuple[Any, ...],
) -> Iterator[tuple[Review, Record]]:
    """Day after day: the morning's review, then the session as it was asked for, each set as `did` changes it. Yields
    the review and its record."""
    sessions, sent = list(tests), list[SentPlan]()
    for number in range(days):
        on = who.started_on + timedelta(number)
        known = {name: tuple(fact for fact in found if _said(fact) <= on) for name, found in facts.items()}
        record = Record(who, sessions=tuple(sessions), sent=tuple(sent), **known)
        seen = review(record, on)
        plan = seen.today
        yield seen, record
        if plan.sets:
            sent.append(SentPlan(on, plan.block, plan.week, plan.kind, plan.sets, plan.holds))
            if trains(on):
                sessions.append(Session(on, tuple(did(as_asked(one, over(one, on)), on) for one in plan.sets)))


def _said(fact: Any) -> date:
    said: date = getattr(fact, "said_on", None) or getattr(fact, "on", None) or fact.since
    return said


def main_sets(seen: Review) -> list[PlannedSet]:
    return [one for one in seen.today.sets if one.part == "main"]


def skill_sets(seen: Review) -> list[PlannedSet]:
    return [one for one in seen.today.sets if one.part == "skill"]


def codes(seen: Review) -> set[str]:
    return {reason.code for decision in seen.today.decisions for reason in decision.reasons}
