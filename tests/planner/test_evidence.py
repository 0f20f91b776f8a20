import math
from datetime import date

import pytest

from planner.evidence import errors_of, measure
from planner.facts import Session, WorkSet
from planner.rules import default_rules

ERRORS = errors_of(default_rules())
DAY = date(2027, 1, 4)


def measured(*sets, bodyweight_kg=75.0):
    return measure(Session(DAY, sets), bodyweight_kg, ERRORS)


def pull_up(reps, **more):
    return WorkSet("pull_up", reps, **more)


def only(*sets):
    (one,) = measured(*sets).values()
    return one


def test_a_session_says_one_thing_of_a_movement_and_side():
    sides = [WorkSet("archer_ring_elbow", 2, side=side, rpe=7) for side in ("left", "right", "left", "right")]

    found = measured(pull_up(3, load_kg=20), pull_up(3, load_kg=20, rpe=8), *sides)

    assert set(found) == {("pull_up", None), ("archer_ring_elbow", "left"), ("archer_ring_elbow", "right")}


def test_the_set_nearest_to_failure_is_the_word():
    one = only(pull_up(5, load_kg=20, rpe=6), pull_up(5, load_kg=20, rpe=9))

    assert one.kind == "estimate"
    assert math.exp(one.log_e1rm) == pytest.approx(95 * 36 / 31)  # Brzycki 1993 at 6 reps to failure


def test_without_effort_a_set_is_a_floor():
    one = only(pull_up(5, load_kg=20))

    assert one.kind == "floor"
    assert math.exp(one.log_e1rm) == pytest.approx(95 * 36 / 32)


def test_a_floor_above_the_estimate_lifts_it():
    one = only(pull_up(2, load_kg=10, rpe=10), pull_up(6, load_kg=20))

    assert one.kind == "estimate"
    assert math.exp(one.log_e1rm) == pytest.approx(95 * 36 / 31)


def test_a_missed_rep_tells_that_nothing_was_left():
    one = only(pull_up(2, load_kg=30, failed=True))

    assert (one.kind, one.n) == ("estimate", 2)


def test_an_attempt_without_a_rep_is_a_ceiling():
    one = only(pull_up(0, load_kg=40, failed=True))

    assert one.kind == "ceiling"
    assert math.exp(one.log_e1rm) == pytest.approx(115.0)


@pytest.mark.parametrize(
    "work",
    [
        pull_up(3, rom="lower_half", rpe=8),
        WorkSet("one_arm_pull_up", 1, side="left", eccentric=True, rpe=8),
        WorkSet("band_pull_up", 8, rpe=8),
        WorkSet("ring_row", 10, rpe=8),
        WorkSet("dead_hang", None, hold_s=40.0),
        pull_up(None),
    ],
)
def test_what_is_no_full_rep_at_a_known_load_says_nothing(work):
    assert measured(work) == {}


def test_a_pause_or_a_set_straight_after_another_proves_only_its_reps():
    assert only(pull_up(3, load_kg=20, rpe=9, pauses=("top",))).kind == "floor"
    assert only(pull_up(3, load_kg=20, rpe=9, linked=True)).kind == "floor"


def test_many_reps_are_a_floor_of_the_reps_that_count():
    one = only(pull_up(15, rpe=10))

    assert one.kind == "floor"
    assert math.exp(one.log_e1rm) == pytest.approx(75 * 1.4)  # Epley 1985 at 12


def test_assistance_comes_off_the_system_load_and_a_stack_has_no_body_in_it():
    assisted = only(WorkSet("one_arm_counterweight", 1, side="left", assist_kg=10.0, rpe=10))
    stack = only(WorkSet("lat_pulldown", 1, load_kg=60.0, rpe=10))

    assert math.exp(assisted.log_e1rm) == pytest.approx(65.0)
    assert math.exp(stack.log_e1rm) == pytest.approx(60.0)


def test_more_than_the_body_taken_off_says_nothing():
    assert measured(WorkSet("one_arm_counterweight", 1, side="left", assist_kg=80.0)) == {}


@pytest.mark.parametrize("rpe", [None, 7.0])
def test_one_object_for_equal_sets_says_what_several_say(rpe):
    one, other = pull_up(5, load_kg=10.0, rpe=rpe), pull_up(3, load_kg=15.0, rpe=7.0)
    assert measured(one, one, one, other, other) == measured(
        *(pull_up(5, load_kg=10.0, rpe=rpe) for _ in range(3)), *(pull_up(3, load_kg=15.0, rpe=7.0) for _ in range(2))
    )
