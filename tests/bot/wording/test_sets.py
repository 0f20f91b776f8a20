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


@pytest.mark.parametrize(
    ("language", "told"),
    [
        ("en", "pull-ups 3 without weight, 2 +2.5 kg, 2×4 +15 kg"),
        ("de", "Klimmzüge 3 ohne Gewicht, 2 +2,5 kg, 2×4 +15 kg"),
        ("es", "dominadas 3 sin peso, 2 +2,5 kg, 2×4 +15 kg"),
    ],
)
def test_a_load_is_seen_to_be_of_its_own_sets(language, told):
    sets = [WorkSet("pull_up", reps, load_kg=kg) for reps, kg in ((3, 0.0), (2, 2.5), (4, 15.0), (4, 15.0))]
    assert done_in_words(sets, Wording(language)) == told


def test_two_sides_tell_the_loads_of_their_sets():
    sets = [WorkSet("archer_pull_up", 3, side="left", load_kg=kg) for kg in (5.0, 2.5)]
    sets.append(WorkSet("archer_pull_up", 3, side="right", load_kg=5.0))
    assert done_in_words(sets, SAY).endswith("left 3 +5 kg, 3 +2.5 kg, right 3 +5 kg")
