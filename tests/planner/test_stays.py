"""Stays on rungs from a record, and the curve across a roster."""

from dataclasses import replace
from datetime import date, timedelta

import pytest

from planner.facts import Athlete, Order, Record, Session, WorkSet
from planner.stays import across, stays_of
from planner.survival import Stay

START = date(2027, 1, 4)
LADDER = "one_arm_pull_up"
LOW, HIGH = "archer_elbow_full", "archer_shoulder"


def climber(*orders: Order) -> Record:
    athlete = Athlete("mira", START, 62.0, ((LADDER, LOW),), equipment=frozenset({"bar", "rings"}), screened=True)
    test = Session(date(2027, 1, 2), (WorkSet("pull_up", 5, load_kg=15.0, rpe=9.0),), is_test=True)
    return Record(athlete, (test,), orders=orders)


def put_on(rung: str, weeks: int) -> Order:
    return Order("set_rung", START + timedelta(weeks=weeks), ladder=LADDER, rung=rung)


def test_who_never_moved_is_still_there():
    assert stays_of(climber(), START + timedelta(weeks=6)) == {(LADDER, LOW): (Stay(6.0, False),)}


def test_a_step_up_ends_a_stay_and_a_step_back_does_not_end_one():
    record = climber(put_on(HIGH, 4), put_on(LOW, 7))
    found = stays_of(record, START + timedelta(weeks=9))

    assert [stay.left for stay in found[LADDER, LOW]] == [True, False]
    assert [stay.left for stay in found[LADDER, HIGH]] == [False]
    assert sum(stay.weeks for stays in found.values() for stay in stays) == pytest.approx(9.0)


def test_nothing_is_known_before_the_start():
    assert stays_of(climber(), START - timedelta(days=1)) == {}


def test_a_roster_is_counted_together_each_on_their_own_day():
    fast, slow = climber(put_on(HIGH, 4)), climber()
    slow = replace(slow, athlete=replace(slow.athlete, handle="tom"))
    low = across([(fast, START + timedelta(weeks=5)), (slow, START + timedelta(weeks=10))])[0]

    # by hand: of two, one left at 4 weeks; the other is still there at 10
    assert (low.rung, len(low.stays)) == (LOW, 2)
    assert [(step.weeks, step.share, step.at_risk) for step in low.steps] == [(4.0, 0.5, 2)]
