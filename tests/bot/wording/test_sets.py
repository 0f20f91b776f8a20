"""Sets as coaches write them: equal ones grouped, sides told, nothing said twice."""

from __future__ import annotations

from datetime import date

import pytest

from bot.wording.catalogue import Wording
from bot.wording.sets import done_in_words, plan_in_words
from planner.facts import PlannedSet, WorkSet
from planner.plan import DayPlan

SAY = Wording("en")
PULL_UPS = [WorkSet("pull_up", reps, load_kg=20.0) for reps in (5, 5, 5)]


@pytest.mark.parametrize(
    ("sets", "words"),
    [
        (PULL_UPS, "pull-ups 3×5 +20 kg"),
        ([WorkSet("pull_up", reps, load_kg=20.0) for reps in (5, 5, 4)], "pull-ups 5, 5, 4 +20 kg"),
        (
            [WorkSet("pull_up", 3, load_kg=32.5), *[WorkSet("pull_up", 3, load_kg=27.5)] * 4],
            "pull-ups 3 +32.5 kg, 4×3 +27.5 kg",
        ),
        ([*PULL_UPS[:2], WorkSet("pull_up", 5, load_kg=20.0, rpe=8.0)], "pull-ups 3×5 +20 kg, last RPE 8"),
        ([WorkSet("pull_up", 5, rpe=8.0)] * 3, "pull-ups 3×5, RPE 8"),
        ([WorkSet("dip", 8, rpe=rpe) for rpe in (7.0, 8.0, 9.0)], "dips 3×8, RPE 7, 8, 9"),
        (
            [WorkSet("one_arm_pull_up", 1, side=side) for side in ("left", "right")] * 2,
            "one-arm pull-ups 2×1 a side",
        ),
        (
            [WorkSet("one_arm_pull_up", 3, side="left"), WorkSet("one_arm_pull_up", 2, side="right")],
            "one-arm pull-ups left 3, right 2",
        ),
        ([WorkSet("tuck_front_lever", None, hold_s=12.0)] * 3, "tuck front lever 3×12 s"),
        ([WorkSet("pull_up", 0, load_kg=40.0, failed=True)], "pull-ups 0 (missed) +40 kg"),
        ([WorkSet("one_arm_counterweight", 2, side="left", assist_kg=5.0)], "one arm with counterweight left 2 −5 kg"),
        ([WorkSet("pull_up", 3, pauses=("top",))] * 2, "pull-ups, pause on top 2×3"),
    ],
)
def test_sets_are_grouped(sets, words):
    assert done_in_words(sets, SAY) == words


def test_a_hold_without_a_number_is_asked_for_as_long_as_it_is_clean():
    plan = DayPlan(date(2027, 1, 4), 1, 1, "training", (PlannedSet("tuck_front_lever", "skill", None, rpe=7.0),) * 3)

    assert "tuck front lever 3×as long as it is clean, RPE up to 7" in plan_in_words(plan, SAY)
