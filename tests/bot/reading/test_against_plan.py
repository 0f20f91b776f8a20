"""Reports that lean on the day's plan. Plans, wordings and golds: our own; the contract's page says what is right."""

from __future__ import annotations

from typing import Any

import pytest

from bot.reading import read
from tests.corpus import against_plan, notation
from tests.corpus.context import context_of
from tests.corpus.score import SET_FIELDS, judge

LEAST_EXACT = 0.98
HEAVY, TWO, FULL, ARM = against_plan.HEAVY, against_plan.TWO, against_plan.FULL, against_plan.ARM


def told(text: str, plan: str, language: str = "en") -> Any:
    line = {
        "text": text,
        "sent_at": against_plan.SENT_AT,
        "timezone": against_plan.ZONE,
        "unit": "kg",
        "language": language,
        "bodyweight_kg": 71.5,
        "today": notation.prescribed(plan),
    }
    return read(text, context_of(line)).to_json()


def plain(sets: list[dict[str, Any]]) -> list[dict[str, Any]]:
    return [{name: one[name] for name in SET_FIELDS} for one in sets]


@pytest.mark.parametrize("code", ["en", "de", "es"])
def test_every_wording_of_a_change_is_read_as_the_plan_so_changed(code: str):
    lines = against_plan.every_wording(1, code)
    verdicts = [judge(line, read(line["in"]["text"], context_of(line["in"])).to_json()) for line in lines]
    assert [v.id for v in verdicts if v.silent_misread and "sets" in v.misread] == []
    assert [v.id for v in verdicts if v.missed_ask] == []
    assert sum(v.exact for v in verdicts) >= LEAST_EXACT * len(verdicts), [v.id for v in verdicts if not v.exact]


def test_generated_lines_repeat_with_their_seed_and_are_sound():
    lines = against_plan.messages(200, 5, "de")
    assert lines == against_plan.messages(200, 5, "de")
    assert all(judge(line, line["gold"]).exact for line in lines)


@pytest.mark.parametrize(
    ("text", "plan", "sets"),
    [
        ("did 4 sets instead of 5", HEAVY, "pull_up 4x3 +20"),
        ("6 sets instead of 5", HEAVY, "pull_up 6x3 +20"),
        ("sets 1-3 as planned, last two with 17.5", HEAVY, "pull_up 3x3 +20; pull_up 2x3 +17.5"),
        ("done, went up to 22.5 on the last two", HEAVY, "pull_up 3x3 +20; pull_up 2x3 +22.5"),
        ("22.5 today, otherwise as planned", HEAVY, "pull_up 5x3 +22.5"),
        ("done but only 2 sets of 3 and 3 sets of 2", HEAVY, "pull_up 2x3 +20; pull_up 3x2 +20"),
        ("as planned except set 4, 2 reps", HEAVY, "pull_up 3,3,3,2,3 +20"),
        ("first two sets with 22.5, the rest with 20", HEAVY, "pull_up 2x3 +22.5; pull_up 3x3 +20"),
        ("pull ups ✅ dips ❌", TWO, "pull_up 4x6 +12.5"),
        ("chin-ups instead of pull-ups, dips as planned", TWO, "chin_up 4x6 +12.5; dip 3x10 +5"),
        ("push-ups instead of dips, 3x15", TWO, "push_up 3x15"),
        ("stopped after the pull-ups", TWO, "pull_up 4x6 +12.5"),
        ("half of it: pull ups only", TWO, "pull_up 4x6 +12.5"),
        ("left as planned, right nothing", ARM, "one_arm_counterweight 3x2 L -10"),
        ("2/1 on the last, rest as planned", ARM, "one_arm_counterweight 2x2 LR -10; one_arm_counterweight 2/1 -10 LR"),
        ("💪✅", HEAVY, "pull_up 5x3 +20"),
    ],
)
def test_what_departs_from_the_plan_changes_only_what_it_names(text: str, plan: str, sets: str):
    found = told(text, plan)
    assert found["ask"] == []
    key = [tuple(map(str, one.values())) for one in plain(notation.sets(sets))]
    assert sorted(tuple(str(v) for v in one.values()) for one in comparable(found["sets"])) == sorted(key)


def comparable(sets: list[dict[str, Any]]) -> list[dict[str, Any]]:
    """Numbers as the notation writes them: 20, not 20.0."""

    def short(value: Any) -> Any:
        return int(value) if isinstance(value, float) and value.is_integer() else value

    return [{name: short(value) for name, value in one.items()} for one in plain(sets)]


@pytest.mark.parametrize(
    ("text", "plan", "about"),
    [
        ("most of it", HEAVY, "sets"),
        ("done with 2 sets to go", HEAVY, "sets"),
        ("as planned but only 2 reps on set six", HEAVY, "sets"),
        ("first three as planned, dropped to 15 for the last two", against_plan.EITHER, "reps"),
        ("done +2.5", HEAVY, "load_kg"),
        ("done, failed the last set", HEAVY, "reps"),
        ("as planned but did chin-ups", HEAVY, "movement"),
        ("skipped the dips", TWO, "sets"),
        ("all done, then archers 3x3", TWO, "movement"),  # which archers, where the plan has none
        ("front lever 10 10 8, the rest as planned", TWO, "movement"),
    ],
)
def test_what_reads_two_ways_against_the_plan_is_asked(text: str, plan: str, about: str):
    assert about in [ask["about"] for ask in told(text, plan)["ask"]]


@pytest.mark.parametrize("text", ["ok 👍", "thanks!", "got it", "passt", "vale, gracias"])
def test_an_answer_of_manners_is_no_report(text: str):
    assert told(text, HEAVY)["sets"] == []


def test_the_plans_effort_is_no_effort_told():
    assert {one["rpe"] for one in told("done as planned", FULL)["sets"]} == {None}


def test_a_load_instead_of_the_planned_one_is_a_report_and_no_correction():
    found = told("Chin-ups mit 22,5 statt 20", against_plan.CHINS, "de")
    assert found["correction"] is None
    assert {one["load_kg"] for one in found["sets"]} == {22.5}
