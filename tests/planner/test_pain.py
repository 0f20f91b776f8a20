"""What pain does to the plan. Thresholds: Thomeé 1997, Silbernagel 2007 (Achilles, not elbows)."""

from __future__ import annotations

from dataclasses import replace

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from planner import review
from planner.facts import Order, PainAnswer, Record, Session, WorkSet
from planner.history import GRIPS
from planner.movements import movement
from planner.pain import PainHistory
from planner.rules import default_rules
from tests.planner.athletes import athlete, codes, day, live, main_sets, skill_sets, with_tests


def elbow(number: int, score: float, when: str | None = "after") -> PainAnswer:
    return PainAnswer(day(number), "elbow_inner", "left", score, when)  # type: ignore[arg-type]


def lived(days: int, *pain: PainAnswer, orders: tuple[Order, ...] = (), rung: str = "archer_elbow_full"):
    return [one for one, _ in live(athlete(rung), days, (with_tests(),), pain=pain, orders=orders)]


def test_up_to_two_goes_on_as_planned():
    with_pain, without = lived(8, elbow(3, 2), elbow(4, 1, "morning")), lived(8)
    assert with_pain[7].today.sets == without[7].today.sets
    assert with_pain[7].pain[0].level == "fine"


def test_four_that_is_gone_in_the_morning_holds_the_load():
    seen = lived(8, elbow(0, 4), elbow(1, 0, "morning"))
    assert seen[7].pain[0].level == "hold"
    assert main_sets(seen[7])[0].load_kg <= main_sets(seen[0])[0].load_kg
    assert skill_sets(seen[7])


def test_four_that_is_still_there_in_the_morning_takes_the_skill_out_for_a_week_and_a_tenth_off():
    seen = lived(15, elbow(3, 4), elbow(4, 4, "morning"))
    assert seen[7].pain[0].level == "step_down"
    assert not skill_sets(seen[7])
    assert 62.0 + main_sets(seen[7])[0].load_kg <= 0.9 * (62.0 + 22.5)
    assert main_sets(seen[7])[0].rpe == 7.5  # the ceiling stays
    assert skill_sets(seen[14])


def test_a_step_down_that_goes_on_is_told_once_and_lasts_from_its_newest_answer():
    seen = lived(20, elbow(3, 4), elbow(4, 4, "morning"), elbow(7, 4), elbow(8, 4, "morning"))
    down = [one for one in seen if one.pain and one.pain[0].level == "step_down"]
    assert (down[0].on, down[-1].on) == (day(4), day(14))
    assert {alert.since for one in down for alert in one.alerts if alert.code == "pain_step_down"} == {day(4)}
    worse = lived(20, elbow(3, 4), elbow(4, 4, "morning"), elbow(7, 5), elbow(8, 5, "morning"))
    told = {alert.since for one in worse for alert in one.alerts if alert.code == "pain_step_down"}
    assert told == {day(4), day(8)}


def test_pain_that_rises_from_week_to_week_steps_down():
    seen = lived(22, elbow(3, 2), elbow(10, 3), elbow(17, 4))
    assert "pain_rising" in codes(seen[21])
    assert not skill_sets(seen[21])


@pytest.mark.parametrize("answer", [elbow(4, 6), elbow(4, 1, "rest")])
def test_above_five_or_any_at_rest_stops_the_pattern_until_the_coach_restarts(answer: PainAnswer):
    seen = lived(15, answer)
    for one in (seen[7], seen[10], seen[14]):
        assert one.today.kind == "rest"
        assert one.alerts[0].code == "pain_stop"
        assert one.alerts[0].urgency == 3
    again = lived(15, answer, orders=(Order("restart", day(9)),))
    assert again[7].today.kind == "rest"
    assert again[10].today.sets


def test_other_patterns_go_on():
    knee = PainAnswer(day(1), "knee", "left", 7, "after")
    seen = review(Record(athlete(), sessions=(with_tests(),), pain=(knee,)), day(3))
    assert main_sets(seen)
    assert all(not movement(one.movement).loads_site("knee") for one in seen.today.sets)


def test_three_sessions_in_a_row_at_three_step_back_until_two_quiet_weeks():
    seen = lived(40, elbow(0, 3), elbow(3, 3), elbow(7, 3))
    after = [one for one in seen if one.today.kind == "training" and 7 < (one.on - day(0)).days < 21]
    assert all(one.rung in (None, "archer_elbow_lower") for day_seen in after for one in skill_sets(day_seen))
    quiet = [one for one in seen if one.today.kind == "training" and (one.on - day(0)).days > 21]
    assert any(one.rung == "archer_elbow_full" for day_seen in quiet for one in skill_sets(day_seen))


def test_a_bare_number_belongs_to_the_place_named_before():
    seen = lived(6, elbow(3, 4), PainAnswer(day(4), None, None, 4, "morning"))
    assert [(one.site, one.score, one.level) for one in seen[5].pain] == [("elbow_inner", 4, "step_down")]


def test_no_pain_answers_for_every_place():
    seen = lived(6, elbow(3, 4), PainAnswer(day(4), None, None, 0, None))
    assert seen[5].pain[0].level == "fine"


def test_a_sore_joint_is_not_tested():
    seen = lived(33, elbow(28, 4), elbow(29, 4, "morning"))
    assert seen[31].today.kind == "deload"
    assert "pain_next_morning" in codes(seen[31])
    assert not skill_sets(seen[31])
    assert all(one.rpe == 6.0 for one in main_sets(seen[31]) if one.movement in GRIPS)


def test_a_word_without_a_side_is_the_same_place_as_one_with_a_side():
    bare = PainAnswer(day(3), "elbow_inner", None, None, "after")
    seen = lived(8, elbow(5, 5), replace(bare, on=day(5), score=4))
    assert [(one.site, one.side) for one in seen[7].pain] == [("elbow_inner", "left")]
    told = [one for one in seen[7].today.decisions if one.kind == "pain" and one.about == "elbow_inner"]
    assert len(told) == 1


def test_the_coach_sees_the_score_that_was_acted_on():
    seen = lived(8, elbow(3, 7), elbow(4, 2, "morning"))
    stop = next(one for one in seen[5].alerts if one.code == "pain_stop")
    assert stop.values["score"] == 7


answers = st.builds(
    PainAnswer,
    on=st.integers(0, 30).map(day),
    site=st.sampled_from(["elbow_inner", "shoulder", None]),
    side=st.sampled_from(["left", None]),
    score=st.sampled_from([None, 0.0, 2.0, 3.0, 4.0, 6.0]),
    when=st.sampled_from(["during", "after", "morning"]),
)


@settings(deadline=None, max_examples=60)
@given(said=st.lists(answers, max_size=30), trained=st.sets(st.integers(0, 30)), number=st.integers(0, 30))
def test_a_day_is_judged_by_what_was_known_then(said: list[PainAnswer], trained: set[int], number: int):
    pain = tuple(sorted(said, key=lambda one: one.on))
    done = tuple(Session(day(on), (WorkSet("pull_up", 5),)) for on in sorted(trained))
    whole = Record(athlete(), sessions=done, pain=pain)
    known = replace(whole, pain=tuple(one for one in pain if one.on <= day(number)))
    rules = default_rules()
    assert PainHistory(whole, rules).at(day(number)) == PainHistory(known, rules).at(day(number))
