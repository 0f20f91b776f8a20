"""A rehearsal on a copy of a record: the athlete of the trend does what is planned, week after week.

What it shows is a difference between two ways, not a forecast: the modelled athlete misses no day, has no pain, grows
along the damped trend known today, passes the tests they are given, and their coach approves at once.
"""

from __future__ import annotations

import itertools
import math
from collections.abc import Mapping
from dataclasses import dataclass, replace
from datetime import date, timedelta

from planner import ladders
from planner.facts import Order, PainAnswer, PlannedSet, Record, SentPlan, Session, Side, Weekly, WorkSet
from planner.history import GRIPS
from planner.layout import Key
from planner.main_lift import share_of_grip
from planner.movements import movement
from planner.plan import DayPlan, Review
from planner.repetitions import expected_reps_to_failure
from planner.review import review
from planner.rules import rules_of
from planner.strength import BodyweightHistory, strength_of
from planner.trend import Trend
from planner.view import exposures_of

DAY = timedelta(days=1)
WEEKS = 8  # a block of the usual length, its deload, and the start of the next
LEAST_EFFORT = 5.0  # what people still report: below it a set is "easy"
TOP_DAYS = 35  # a block has light weeks and heavy ones, and may be in another grip: loads compare over all of it


@dataclass(frozen=True)
class Season:
    """What came of some weeks. `top`: the heaviest main set of their last `TOP_DAYS`, deloads and tests apart;
    `exposures`: one-arm reps of the busier side; `deload_on`, `test_on`: the first ones ahead."""

    top: PlannedSet | None
    rungs: tuple[tuple[str, str], ...]
    sessions: int
    exposures: int
    deload_on: date | None
    test_on: date | None


def rehearse(record: Record, on: date, weeks: int = WEEKS) -> Season:
    """The `weeks` after day `on` as they would go; today's session too, where it is not done."""
    strong = strength_of(record, on, rules_of(record.athlete))
    body = BodyweightHistory(record).on(on)
    plans: list[DayPlan] = []
    day = on + DAY if any(one.on == on and one.sets for one in record.sessions) else on
    end, seen = on + timedelta(weeks=weeks), review(record, on)
    while day <= end:
        seen = review(record, day)
        plan = seen.today
        approved = _approvals(seen, day)
        if plan.sets:
            plans.append(plan)
            record = _trained(record, plan, strong, body)
        record = replace(record, orders=(*record.orders, *approved))
        following = seen.next_training_on
        # Days off change nothing, and looking at them costs as much as a day of training.
        day = following if not approved and following is not None and following > day else day + DAY
    return _season(plans, seen)


def with_days(record: Record, count: int) -> Record:
    """The record of somebody who trains so many days a week: apart as far as can be, and kept where they are."""
    now = record.athlete.schedule
    kept = now.days if isinstance(now, Weekly) else frozenset[int]()
    best = max(
        itertools.combinations(range(7), count),
        key=lambda days: (_least_gap(days), len(kept & set(days)), [-day for day in days]),
    )
    return replace(record, athlete=replace(record.athlete, schedule=Weekly(frozenset(best))))


def _least_gap(days: tuple[int, ...]) -> int:
    return min((after - day) % 7 or 7 for day, after in zip(days, (*days[1:], days[0]), strict=True))


def _approvals(seen: Review, day: date) -> list[Order]:
    found = [Order("start", day)] if seen.stopped is not None and seen.stopped.code == "not_screened" else []
    for position in seen.ladders:
        if position.proposal is not None:
            found.append(Order("approve", day, ladder=position.ladder, rung=position.proposal.rung))
    return found


def _trained(record: Record, plan: DayPlan, strong: Mapping[Key, Trend], body_kg: float) -> Record:
    """The record with a day done: the plan that was sent, its sets, and no pain."""
    done = tuple(_done(one, plan.on, strong, body_kg) for one in plan.sets if one.part != "warm_up")
    sent = SentPlan(plan.on, plan.block, plan.week, plan.kind, plan.sets, plan.holds)
    return replace(
        record,
        sessions=(*record.sessions, Session(plan.on, done)),
        sent=(*(one for one in record.sent if one.on != plan.on), sent),
        pain=(*record.pain, PainAnswer(plan.on, None, None, 0.0, "after")),
    )


def _done(one: PlannedSet, day: date, strong: Mapping[Key, Trend], body_kg: float) -> WorkSet:
    """A set done up to its ceiling; with what reserve the trend says. Without a trend, exactly as asked."""
    known, share = _known(one, strong)
    ceiling = 9.0 if one.rpe is None else one.rpe
    reps, rpe, failed = one.reps, one.rpe, False
    system_kg = body_kg * movement(one.movement).bodyweight_share + one.load_kg - one.assist_kg
    if known is not None and one.hold_s is None and system_kg > 0:
        habits = known.habits
        could = expected_reps_to_failure(known.at(day).e1rm_kg * share, system_kg, habits.steepness)
        most = max(0, math.floor(could))
        reps = max(0, math.floor(could - (10.0 - ceiling))) if reps is None else min(reps, most)
        failed = one.reps is not None and most < one.reps
        # Told as this athlete tells it: what they call two left is what the trend takes it for.
        told = (could - reps) / (1.0 + habits.reserve_bias)
        rpe = 10.0 if failed else min(10.0, max(LEAST_EFFORT, round(2 * (10.0 - told)) / 2))
    elif reps is None and one.hold_s is None:
        reps = _proof_reps(one)
    return WorkSet(
        one.movement, reps, one.side, one.hold_s, one.load_kg, one.assist_kg, rpe, one.rom, one.eccentric, one.pauses,
        failed=failed,
    )  # fmt: skip


def _known(one: PlannedSet, strong: Mapping[Key, Trend]) -> tuple[Trend | None, float]:
    """The trend that a set is measured by, and the share of it: a grip without one is as strong as plans take it."""
    own = strong.get((one.movement, one.side)) or strong.get((one.movement, None))
    if own is not None or one.movement not in GRIPS:
        return own, 1.0
    others = [(strong[key], share_of_grip(one.movement, grip)) for grip in GRIPS if (key := (grip, None)) in strong]
    return max(others, key=lambda other: other[0].on, default=(None, 1.0))


def _proof_reps(one: PlannedSet) -> int:
    for ladder in ladders.known().values():
        if one.rung is not None and one.rung in ladder.by_id:
            return ladder.by_id[one.rung].proof.reps or 1
    return 1


def _season(plans: list[DayPlan], last: Review) -> Season:
    mains = [
        one
        for plan in plans
        if plan.kind == "training" and (last.on - plan.on).days < TOP_DAYS
        for one in plan.sets
        if one.part == "main"
    ]
    by_side: dict[Side, int] = {"left": 0, "right": 0}
    for plan in plans:
        for side, count in exposures_of(plan.sets).items():
            by_side[side] += count
    return Season(
        top=max(mains, key=lambda one: one.load_kg, default=None),
        rungs=tuple((position.ladder, position.rung) for position in last.ladders),
        sessions=len(plans),
        exposures=max(by_side.values()),
        deload_on=next((plan.on for plan in plans if plan.kind == "deload"), None),
        test_on=next((plan.on for plan in plans if plan.kind == "test"), None),
    )
