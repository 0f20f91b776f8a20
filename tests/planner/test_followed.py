"""Strength kept with sessions is what folding all of them at once gives, to the last digit."""

from dataclasses import replace

from hypothesis import given, settings
from hypothesis import strategies as st

from planner.evidence import errors_of
from planner.facts import Session, WorkSet
from planner.followed import Fold, fold
from planner.rules import default_rules
from planner.state_space import model_of
from tests.planner.athletes import day

ERRORS, MODEL = errors_of(default_rules()), model_of(default_rules())

sets = st.builds(
    WorkSet,
    st.sampled_from(["pull_up", "chin_up", "one_arm_pull_up"]),
    st.integers(0, 9),
    load_kg=st.sampled_from([0.0, 10.0, 20.0, 40.0]),
    rpe=st.sampled_from([None, 6.0, 8.0, 10.0]),
    failed=st.booleans(),
)
runs = st.lists(st.lists(sets, min_size=1, max_size=3).map(tuple), min_size=1, max_size=40)


def fresh(told):
    return [Session(day(3 * number), those) for number, those in enumerate(told)]


def words(found):
    """All that a fold says, as it prints."""
    return {key: (tuple(line.measurements), line.followed(), tuple(line.levels())) for key, line in found.lines.items()}


def at_once(sessions, kgs):
    return words(Fold(ERRORS, MODEL).then([replace(one) for one in sessions], kgs))


@settings(deadline=None, max_examples=60)
@given(told=runs)
def test_folding_report_by_report_changes_no_digit(told):
    sessions, kgs = fresh(told), [70.0 + number % 3 for number in range(len(told))]
    for count in range(1, len(sessions) + 1):
        grown = words(fold(sessions[:count], kgs[:count], ERRORS, MODEL))
    assert repr(grown) == repr(at_once(sessions, kgs))


@settings(deadline=None, max_examples=60)
@given(told=runs, data=st.data())
def test_what_was_kept_is_not_used_for_other_sessions_or_weights(told, data):
    sessions, kgs = fresh(told), [70.0] * len(told)
    fold(sessions, kgs, ERRORS, MODEL)
    gone = data.draw(st.integers(0, len(sessions) - 1))
    fewer = sessions[:gone] + sessions[gone + 1 :]
    assert repr(words(fold(fewer, kgs[1:], ERRORS, MODEL))) == repr(at_once(fewer, kgs[1:]))
    heavier = [kg + 1 for kg in kgs]
    assert repr(words(fold(sessions, heavier, ERRORS, MODEL))) == repr(at_once(sessions, heavier))
