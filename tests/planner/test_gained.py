"""A change of strength is called one only where it is worth the word."""

from __future__ import annotations

from dataclasses import replace

import pytest

from planner import review
from planner.facts import Order, Record, Session, WorkSet
from planner.gained import gain_of
from tests.planner.athletes import athlete, day, live, with_tests


def shown(reps: int, load_kg: float) -> Session:
    return Session(day(34), (WorkSet("pull_up", reps, load_kg=load_kg, rpe=9.5),))


@pytest.fixture(scope="module")
def before() -> Record:
    """Five weeks as asked, the last day's test aside."""
    *_, (_, record) = live(athlete(), 34, (with_tests(),))
    return record


def gained(record: Record, *more: Session, orders: tuple[Order, ...] = ()):
    whole = replace(record, sessions=(*record.sessions, *more), orders=orders)
    return gain_of(whole, review(whole, day(35)))


def test_nothing_is_said_before_four_weeks_are_known(before):
    early = replace(before, sessions=before.sessions[:3])
    assert gain_of(early, review(early, day(20))) is None


def test_the_least_change_is_three_hundredths_of_bodyweight(before):
    # The trade: 0.03 bodyweights, of 62 kg
    assert gained(before).least_kg == pytest.approx(1.86)


def test_a_strong_test_is_a_gain_and_the_same_again_is_none(before):
    assert gained(before, shown(5, 25.0)).is_change
    assert gained(before, shown(5, 25.0)).kg > 0
    same = tuple(Session(day(at), (WorkSet("pull_up", 5, load_kg=17.5, rpe=8.0),)) for at in range(0, 35, 3))
    assert not gained(replace(before, sessions=same)).is_change


def test_the_rule_says_what_is_worth_the_word(before):
    strict = Order("set_rule", day(0), rule="strength.smallest_progress", value=0.1)
    assert gained(before, shown(5, 25.0)).is_change
    assert not gained(before, shown(5, 25.0), orders=(strict,)).is_change
