"""What is to come of the block: four loading weeks, the fifth is the deload and ends in the test."""

from __future__ import annotations

from datetime import timedelta

from planner.ahead import look_ahead
from planner.facts import Absence, Record
from tests.planner.athletes import athlete, day, live, with_tests


def test_a_block_of_four_loading_weeks_is_seen_to_its_end():
    ahead = look_ahead(Record(athlete(), sessions=(with_tests(),)), day(0))

    assert ahead.block is not None
    assert ahead.test is not None
    assert (ahead.block.week, ahead.block.loading_weeks, ahead.block.ends_on) == (1, 4, day(34))
    assert (ahead.deload_on, ahead.test.on, ahead.test.kind) == (day(28), day(31), "test")
    assert {one.movement for one in ahead.test.sets if one.part == "main"} == {"pull_up"}


def test_a_test_that_is_done_is_ahead_no_more():
    *_, (_, record) = live(athlete(), 33, (with_tests(),))
    ahead = look_ahead(record, day(31))

    assert any(session.on == day(31) and not session.is_test for session in record.sessions)
    assert ahead.test is not None
    assert ahead.test.on > day(31) + timedelta(weeks=3)


def test_an_absence_without_an_end_leaves_nothing_in_sight():
    record = Record(athlete(), sessions=(with_tests(),), absences=(Absence("away", day(0), day(0), None),))

    assert look_ahead(record, day(0)).test is None
    assert look_ahead(record, day(0)).deload_on is None
