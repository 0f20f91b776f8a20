"""Gates, proofs, promotions, doses: common practice, no source."""

from __future__ import annotations

import pytest

from planner import review
from planner.facts import Clip, Order, Record, Session, WorkSet
from tests.planner.athletes import athlete, codes, day, live, skill_sets, with_tests

STRONG = with_tests(WorkSet("pull_up", 3, load_kg=35.0, rpe=9.0))
TEST_DAY = day(31)


def test_a_test_with_margin_is_only_a_proposal():
    last = [one for one, _ in live(athlete(), 36, (STRONG,))][-1]
    position = last.ladders[0]
    assert position.rung == "weighted_pull_up"
    assert position.proposal is not None
    assert position.proposal.rung == "archer_elbow_lower"
    assert "clips_missing" in {reason.code for reason in position.proposal.reasons}
    assert "proposal_waiting" in {alert.code for alert in last.alerts}


def test_clips_that_the_coach_has_seen_are_not_missed():
    clips = tuple(Clip(TEST_DAY, "archer_ring_elbow", side, True) for side in ("left", "right"))
    last = [one for one, _ in live(athlete(), 36, (STRONG,), clips=clips)][-1]
    assert last.ladders[0].proposal is not None
    assert [reason.code for reason in last.ladders[0].proposal.reasons] == ["proof_shown"]


def test_the_rung_test_is_fresh_and_on_both_sides():
    seen = next(one for one, _ in live(athlete(), 33, (STRONG,)) if one.today.kind == "test")
    parts = [one.part for one in seen.today.sets]
    assert parts.index("skill") < parts.index("main")
    assert [(one.side, one.reps, one.rpe) for one in skill_sets(seen)] == [("left", 3, 9.0), ("right", 3, 9.0)]


def test_an_approval_in_the_test_week_acts_in_the_next_block():
    order = Order("approve", TEST_DAY, ladder="one_arm_pull_up", rung="archer_elbow_lower")
    seen = [one for one, _ in live(athlete(), 37, (STRONG,), orders=(order,))]
    assert seen[32].ladders[0].rung == "weighted_pull_up"
    assert seen[32].ladders[0].proposal is None
    assert seen[35].ladders[0].rung == "archer_elbow_lower"
    assert [(one.reps, one.rom) for one in skill_sets(seen[35])] == [(1, "lower_half")] * 4


def test_a_declined_proposal_is_gone():
    order = Order("decline", day(32), ladder="one_arm_pull_up", rung="archer_elbow_lower")
    last = [one for one, _ in live(athlete(), 36, (STRONG,), orders=(order,))][-1]
    assert last.ladders[0].proposal is None


def test_no_test_below_the_gate():
    seen = [one for one, _ in live(athlete(), 35, (with_tests(),)) if one.today.kind == "test"]
    assert not skill_sets(seen[0])


def test_a_held_rung_is_neither_tested_nor_proposed():
    hold = Order("hold_rung", day(1), until=day(60))
    seen = [one for one, _ in live(athlete(), 36, (STRONG,), orders=(hold,))]
    assert seen[-1].ladders[0].proposal is None
    assert seen[-1].ladders[0].held_until == day(60)
    assert not skill_sets(seen[31])


def test_a_good_day_without_a_test_is_no_proof():
    sides = tuple(WorkSet("archer_ring_elbow", 3, side, rpe=8.0, rom="lower_half") for side in ("left", "right"))
    ego = Session(day(5), sides)
    last = [one for one, _ in live(athlete(), 12, (STRONG, ego))][-1]
    assert last.ladders[0].proposal is None


def test_the_dose_grows_from_block_to_block_only():
    seen = [one for one, _ in live(athlete("archer_elbow_full"), 80, (STRONG,)) if one.today.kind == "training"]
    doses = {one.today.block: {work.reps for work in skill_sets(one)} for one in seen if skill_sets(one)}
    assert doses == {1: {1}, 2: {2}, 3: {3}}


def test_a_dose_above_its_ceiling_does_not_grow():
    hard = live(athlete("archer_elbow_full"), 40, (STRONG,), over=lambda one, on: 1.0 if one.part == "skill" else 0.0)
    last = [one for one, _ in hard][-1]
    assert last.ladders[0].dose == "2x1"


def test_the_weaker_side_goes_first_and_the_stronger_does_no_more():
    shown = with_tests(
        WorkSet("pull_up", 3, load_kg=35.0, rpe=9.0),
        WorkSet("archer_ring_elbow", 4, "left", rpe=9.0),
        WorkSet("archer_ring_elbow", 3, "right", rpe=9.0),
    )
    first = next(one for one, _ in live(athlete("archer_elbow_full"), 1, (shown,)))
    assert [one.side for one in skill_sets(first)] == ["right", "left"] * 2


def test_half_range_rungs_keep_work_in_the_other_half():
    seen = [one for one, _ in live(athlete("archer_elbow_lower"), 7, (STRONG,)) if one.today.sets]
    assert [{one.rom for one in skill_sets(day_seen)} for day_seen in seen] == [{"lower_half"}, {"upper_half"}]


def test_the_free_one_arm_pull_up_is_two_singles_a_week():
    seen = [one for one, _ in live(athlete("one_arm_pull_up"), 7, (STRONG,)) if one.today.sets]
    free = [one for day_seen in seen for one in skill_sets(day_seen) if one.movement == "one_arm_pull_up"]
    other = {one.movement for one in skill_sets(seen[1])}
    assert [(one.side, one.reps) for one in free] == [("left", 1), ("right", 1)] * 2
    assert other == {"one_arm_hand_on_shoulder"}


def test_a_third_set_comes_late_and_only_where_the_effort_fell():
    easier = live(
        athlete("archer_elbow_full"),
        28,
        (STRONG,),
        over=lambda one, on: -1.0 if one.part == "skill" and on > day(10) else 0.0,
    )
    seen = [one for one, _ in easier if one.today.sets]
    counts = [len(skill_sets(one)) // 2 for one in seen]
    assert counts[:4] == [2, 2, 2, 2]
    assert 3 in counts[4:]
    assert any("third_set" in codes(one) for one in seen[4:])


def test_a_deload_that_was_missed_is_a_week_of_little_work():
    # Two singles twice a week, then nothing: the mean of three weeks is 2.7, and 4 more may be added.
    days = live(athlete("archer_elbow_full"), 42, (STRONG,), trains=lambda on: not 28 <= (on - day(0)).days < 35)
    week_six = [one for one, _ in days if one.today.on >= day(35)]
    left = sum(one.reps or 0 for seen in week_six for one in skill_sets(seen) if one.side == "left")
    assert 0 < left <= 6


def test_exposures_rise_by_no_more_than_the_cap():
    """A mean of three weeks + 30 % or 4 reps, whichever is more; a deload week counts as the week before it."""
    weeks: dict[int, int] = {}
    deloads = set()
    for seen, _ in live(athlete("archer_elbow_full"), 100, (STRONG,)):
        week = (seen.on - day(0)).days // 7
        left = sum(one.reps or 0 for one in skill_sets(seen) if one.side == "left")
        weeks[week] = weeks.get(week, 0) + left
        if seen.today.kind in ("deload", "test"):
            deloads.add(week)
    counted = [weeks[week - 1] if week in deloads and week else weeks[week] for week in sorted(weeks)]
    for week in range(3, len(counted)):
        mean = sum(counted[week - 3 : week]) / 3
        assert weeks[week] <= max(mean * 1.3, mean + 4) + 1e-9


def test_the_counterweight_needs_a_pulley():
    last = next(one for one, _ in live(athlete("archer_shoulder"), 1, (STRONG,)))
    assert last.ladders[0].next_rung == "hand_on_biceps"
    without = Order("exclude", day(0), movement="one_arm_hand_on_biceps")
    bare = next(one for one, _ in live(athlete("archer_shoulder"), 1, (STRONG,), orders=(without,)))
    assert bare.ladders[0].next_rung is None
    who = athlete("archer_shoulder", equipment=frozenset({"bar", "rings", "belt", "pulley"}))
    pulley = next(one for one, _ in live(who, 1, (STRONG,), orders=(without,)))
    assert pulley.ladders[0].next_rung == "counterweight"


def test_a_dose_far_too_hard_in_two_sessions_shrinks():
    def over(one, on):
        return 2.0 if one.part == "skill" and day(34) < on < day(47) else 0.0

    seen = [one for one, _ in live(athlete("archer_elbow_full"), 60, (STRONG,), over=over)]
    assert seen[35].ladders[0].dose == "2x2"
    assert seen[47].ladders[0].dose == "2x1"
    assert any("dose_shrinks" in {r.code for d in one.decisions for r in d.reasons} for one in seen)


def test_one_hard_set_does_not_unmake_a_held_dose():
    hard: set[object] = set()

    def over(one, on):
        first = one.part == "skill" and one.side == "left" and on not in hard
        if first:
            hard.add(on)
        return 0.5 if first and on == day(24) else 0.0

    last = [one for one, _ in live(athlete("archer_elbow_full"), 40, (STRONG,), over=over)][-1]
    assert last.ladders[0].dose == "2x2"


def test_a_hard_other_half_stays_behind_and_holds_nobody_up():
    def over(one, on):
        return 1.0 if one.part == "skill" and one.rom == "upper_half" else 0.0

    seen = [one for one, _ in live(athlete("archer_elbow_lower"), 75, (STRONG,), over=over)]
    assert [seen[number].ladders[0].dose for number in (0, 36, 71)] == ["2x1 half", "2x2 half", "2x3 half"]
    reps = {(work.rom, work.reps) for one in seen[70:] if one.today.kind == "training" for work in skill_sets(one)}
    assert reps == {("lower_half", 3), ("upper_half", 1)}


def test_the_other_half_shrinks_by_its_own_efforts():
    def over(one, on):
        return 2.0 if one.part == "skill" and one.rom == "upper_half" and on > day(35) else 0.0

    seen = [one for one, _ in live(athlete("archer_elbow_lower"), 60, (STRONG,), over=over)]
    reps = [(work.rom, work.reps) for one in seen[35:] if one.today.week in (1, 4) for work in skill_sets(one)]
    assert set(reps) == {("lower_half", 2), ("upper_half", 2), ("upper_half", 1)}
    assert reps[-1] == ("upper_half", 1)


def _told_hard(one, on):
    """Half a point above the ceiling in training, two reps left in every test."""
    return 0.5 if one.part == "skill" and one.rpe == 7.0 else 0.0


def test_a_dose_in_doubt_is_tested_at_the_end_of_its_block():
    seen = [one for one, _ in live(athlete("archer_elbow_full"), 40, (STRONG,), over=_told_hard)]
    test = next(one for one in seen if one.today.kind == "test")
    # A single at 7 leaves three more: three at 9 show it.
    assert [(one.movement, one.reps, one.rpe) for one in skill_sets(test)] == [("archer_ring_elbow", 3, 9.0)] * 2
    assert seen[-1].ladders[0].dose == "2x2"


def test_a_test_without_margin_leaves_the_dose():
    def over(one, on):
        return 1.0 if one.part == "skill" and one.rpe == 9.0 else _told_hard(one, on)

    last = [one for one, _ in live(athlete("archer_elbow_full"), 40, (STRONG,), over=over)][-1]
    assert last.ladders[0].dose == "2x1"


def test_a_dose_held_is_not_tested():
    seen = [one for one, _ in live(athlete("archer_elbow_full"), 40, (STRONG,))]
    assert not skill_sets(next(one for one in seen if one.today.kind == "test"))


def test_a_fresh_test_counts_for_the_gate_of_strength():
    sets = (WorkSet("pull_up", 3, load_kg=20.0, rpe=9.0),)
    tired = tuple(Session(day(n), (WorkSet("pull_up", 5, load_kg=5.0, rpe=8.0),)) for n in range(3, 31, 3))
    record = Record(athlete(), sessions=(*tired, Session(day(32), sets, is_test=True)))
    gate = next(one for one in review(record, day(33)).ladders[0].gates if one.name == "relative_added")
    # Brzycki 1993: 82 kg x 36 / (37 - 4) = 89.5 kg, 0.443 of 62 kg above it
    assert gate.have == pytest.approx(0.443, abs=0.01)
    later = review(record, day(33 + 71)).ladders[0].gates
    # The trend alone goes by the tired sets as well.
    assert next(one.have for one in later if one.name == "relative_added") < gate.have - 0.005


def test_a_deload_asks_for_a_rep_fewer_at_six():
    seen = [one for one, _ in live(athlete("archer_elbow_full"), 70, (STRONG,)) if one.today.kind == "deload"]
    doses = {one.today.block: {(work.reps, work.rpe) for work in skill_sets(one)} for one in seen if skill_sets(one)}
    assert doses == {1: {(1, 6.0)}, 2: {(1, 6.0)}}


def test_a_test_far_above_the_proof_begins_with_doubles():
    order = Order("approve", TEST_DAY, ladder="one_arm_pull_up", rung="archer_elbow_lower")

    def easy(one, on):
        return -1.5 if one.part == "skill" and on == TEST_DAY else 0.0

    last = [one for one, _ in live(athlete(), 37, (STRONG,), over=easy, orders=(order,))][-1]
    assert last.ladders[0].dose == "2x2 half"


def test_a_missed_test_day_slides_to_the_next_free_day():
    seen = [one for one, _ in live(athlete(), 36, (STRONG,), trains=lambda on: on != TEST_DAY)]
    assert seen[32].today.kind == "test"
    assert "session_slid" in codes(seen[32])
    assert skill_sets(seen[32])
    assert seen[35].today.block == 2
    assert seen[35].ladders[0].proposal is not None
