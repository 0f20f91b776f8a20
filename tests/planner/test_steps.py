"""A step of every week: on from the plan, never beyond what the rules have room for."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta

import pytest

from planner import plan_for, review
from planner.facts import Order, PainAnswer, Record
from planner.plan import DayPlan
from planner.steps import raises
from tests.planner.athletes import START, athlete, day, live, with_tests

WEEKS = 5


def every_monday(**what: float) -> tuple[Order, ...]:
    days = [START + timedelta(weeks=week) for week in range(WEEKS)]
    return tuple(Order("step_sets", START, for_date=on, until=on, **what) for on in days)  # type: ignore[arg-type]


def plan_on(on: date, orders: tuple[Order, ...] = (), **facts: object) -> DayPlan:
    record = Record(athlete(), sessions=(with_tests(),), orders=orders)
    return plan_for(replace(record, **facts), on, on)  # type: ignore[arg-type]


def main(plan: DayPlan) -> list[tuple[int | None, float]]:
    return [(one.reps, one.load_kg) for one in plan.sets if one.part == "main"]


def codes(plan: DayPlan) -> list[str]:
    return [reason.code for one in plan.decisions for reason in one.reasons if reason.code.startswith("step_")]


def test_the_load_is_a_plate_above_the_plan_and_the_reason_says_so() -> None:
    without, stepped = plan_on(START), plan_on(START, every_monday(load_kg=1.25))

    assert main(stepped) == [(reps, load + 1.25) for reps, load in main(without)]
    assert codes(stepped) == ["step_ordered"]


@pytest.mark.parametrize(
    ("what", "sets", "reps"), [({"sets": 1}, 1, 0), ({"sets": -1}, -1, 0), ({"reps": 1}, 0, 1), ({"reps": -1}, 0, -1)]
)
def test_sets_and_reps_step_too(what: dict[str, int], sets: int, reps: int) -> None:
    planned, stepped = main(plan_on(START)), main(plan_on(START, every_monday(**what)))

    assert stepped == [(planned[0][0] + reps, planned[0][1])] * (len(planned) + sets)


def test_other_days_stay_as_they_are() -> None:
    assert main(plan_on(day(3), every_monday(load_kg=1.25))) == main(plan_on(day(3)))


def test_no_step_is_more_than_the_rise_that_the_rules_allow() -> None:
    # 62 kg of bodyweight: 5 % of the best comparable set of late, at every step of five weeks.
    for big, small in ((5.0, 1.25), (3.75, 1.25)):
        seen = dict[date, float]()
        for found, record in live(athlete(), 35, (with_tests(),), orders=every_monday(load_kg=big)):
            before = [one for one in record.sessions if one.on >= found.on - timedelta(28) and one.on < found.on]
            best = max(62.0 + work.load_kg for one in before for work in one.sets if work.movement == "pull_up")
            top = max((one.load_kg for one in found.today.sets if one.part == "main" and one.reps), default=0.0)
            assert 62.0 + top <= best * 1.05 + 1e-6
            seen[found.on] = top
        assert any(top > small for top in seen.values())


def test_in_a_deload_nothing_rises() -> None:
    plain = dict(_mondays(()))
    stepped = dict(_mondays(every_monday(load_kg=2.5)))
    deload = START + timedelta(weeks=4)

    assert plain[deload].kind == stepped[deload].kind == "deload"
    assert codes(stepped[deload]) == ["step_held"]
    last = max(load for _, load in main(stepped[START + timedelta(weeks=3)]))
    assert max(load for _, load in main(stepped[deload])) < last


def _mondays(orders: tuple[Order, ...]) -> list[tuple[date, DayPlan]]:
    lived = live(athlete(), 7 * WEEKS, (with_tests(),), orders=orders)
    return [(found.on, found.today) for found, _ in lived if found.on.weekday() == 0]


def test_a_sore_elbow_keeps_the_step_away_but_not_a_step_down() -> None:
    sore = (PainAnswer(day(-1), "elbow_inner", "left", 4.0, "after"),)
    planned = plan_on(START, pain=sore)

    up, down = (plan_on(START, every_monday(load_kg=by), pain=sore) for by in (1.25, -1.25))
    assert main(up) == main(planned)
    assert codes(up) == ["step_held"]
    assert main(down) == [(reps, load - 1.25) for reps, load in main(planned)]


def test_sets_too_hard_keep_the_step_away_the_week_after() -> None:
    orders = every_monday(load_kg=1.25)
    lived = live(athlete(), 8, (with_tests(),), over=lambda one, on: 2.0, orders=orders)
    plans = {found.on: found.today for found, _ in lived}

    first, second = (max(load for _, load in main(plans[on])) for on in (START, day(7)))
    assert 62.0 + second <= 0.95 * (62.0 + first) + 1e-6


def test_an_unlock_ends_it_and_sets_in_numbers_go_before_it() -> None:
    orders = every_monday(load_kg=1.25)
    ended = (*orders, Order("unlock", START))
    written = (*orders, Order("set_sets", START, for_date=START, sets=3, reps=2, load_kg=5.0))
    locked = (*orders, Order("lock_load", START, load_kg=7.5))

    assert main(plan_on(START, ended)) == main(plan_on(START))
    assert main(plan_on(START, written)) == [(2, 5.0)] * 3
    assert {load for _, load in main(plan_on(START, locked))} == {7.5}
    assert not codes(plan_on(START, written))


def test_what_raises_is_told_from_what_eases() -> None:
    given = [{"load_kg": 1.25}, {"load_kg": -1.25}, {"sets": 1}, {"reps": -1}, {"value": -10.0}, {"value": 5.0}]
    assert [raises(every_monday(**one)[0]) for one in given] == [True, False, True, False, False, True]


def test_the_review_has_the_step_too() -> None:
    record = Record(athlete(), sessions=(with_tests(),), orders=every_monday(load_kg=1.25))
    assert review(record, START).today == plan_for(record, START, START)
