"""What may never happen in twelve weeks of somebody who does what is asked, too hard, sore or not at all."""

from __future__ import annotations

from datetime import timedelta

from hypothesis import given, settings
from hypothesis import strategies as st

from planner import ladders
from planner.facts import PainAnswer, Session, WorkSet
from planner.history import GRIPS
from planner.plan import Review
from tests.planner.athletes import START, athlete, live, with_tests

WEEKS = 12
STRONG = with_tests(WorkSet("pull_up", 3, load_kg=35.0, rpe=9.0))
answers = st.tuples(
    st.integers(0, WEEKS * 7 - 1), st.integers(0, 5), st.sampled_from(["after", "morning", "during"])
).map(lambda said: PainAnswer(START + timedelta(said[0]), "elbow_inner", "left", float(said[1]), said[2]))


@settings(max_examples=20, deadline=None)
@given(
    overs=st.lists(st.sampled_from([-1.0, 0.0, 0.0, 0.5, 1.0, 2.0, 3.0]), min_size=WEEKS * 7, max_size=WEEKS * 7),
    absent=st.sets(st.integers(0, WEEKS * 7 - 1), max_size=20),
    pain=st.lists(answers, max_size=6).map(lambda found: tuple(sorted(found, key=lambda one: one.on))),
    rung=st.sampled_from(["weighted_pull_up", "archer_elbow_lower", "archer_elbow_full", "hand_on_biceps"]),
)
def test_twelve_weeks_keep_the_rules(overs: list[float], absent: set[int], pain: tuple[PainAnswer, ...], rung: str):
    days = live(
        athlete(rung),
        WEEKS * 7,
        (STRONG,),
        over=lambda one, on: overs[(on - START).days],
        trains=lambda on: (on - START).days not in absent,
        pain=pain,
    )
    week_one: dict[int, list[float]] = {}
    doses: dict[tuple[int, bool], int] = {}
    for seen, record in days:
        plan = seen.today
        assert seen.ladders[0].rung == rung  # nobody approved anything
        done = [session for session in record.sessions if session.on < plan.on]
        main = [62.0 + one.load_kg for one in plan.sets if one.part == "main" and one.movement in GRIPS]
        if main:
            _is_no_rise(plan.on, main[0], done)
        if plan.kind == "deload" and main:
            late = _main_loads(done, plan.on - timedelta(14), plan.on)
            assert all(main[0] < before or before <= 62.0 for before in late)
            first = week_one.get(plan.block)
            assert not first or main[0] <= max(62.0, 0.95 * min(first)) + 1e-6
        number = (plan.on - START).days
        if main and plan.week == 1 and plan.kind == "training" and number not in absent:
            week_one.setdefault(plan.block, []).append(main[0])
        _grows_in_no_block(seen, doses)
        if any(one.site == "elbow_inner" and one.level == "step_down" for one in seen.pain):
            assert not any(one.part == "skill" for one in plan.sets)


def _grows_in_no_block(seen: Review, doses: dict[tuple[int, bool], int]) -> None:
    """Neither the dose nor the other day's grows in mid-block, and the other day's is never the larger.

    `doses`: the fewest reps a set so far by block and kind of day.
    """
    plan, position = seen.today, seen.ladders[0]
    rung = ladders.get(position.ladder).by_id[position.rung]
    skill = [one for one in plan.sets if one.part == "skill"]
    if plan.kind != "training" or not skill or rung.other_day is None:
        return
    own = skill[0].movement == rung.movement and skill[0].rom != rung.other_day.rom
    reps = max(one.reps or 0 for one in skill)
    dose = next(step for step in rung.steps if step.label == position.dose)
    assert reps <= dose.reps
    if not any("exposures_capped" in {reason.code for reason in one.reasons} for one in plan.decisions):
        assert reps <= doses.get((plan.block, own), reps)
        doses[plan.block, own] = reps


def _main_loads(done: list[Session], since, until) -> list[float]:
    """System loads of the heaviest set of each session: warm-ups are lighter."""
    return [
        max(62.0 + work.load_kg for work in one.sets if work.movement in GRIPS)
        for one in done
        if since <= one.on < until and not one.is_test and any(work.movement in GRIPS for work in one.sets)
    ]


def _is_no_rise(on, load: float, done: list[Session]) -> None:
    late = [
        62.0 + work.load_kg
        for one in done
        if on - timedelta(28) <= one.on
        for work in one.sets
        if work.movement in GRIPS and work.reps
    ]
    if late:
        assert load <= 1.05 * max(late) + 1e-6
