"""The plan of a day: the block, moves, absences, stops, orders. Common practice, no source, where none is named."""

from __future__ import annotations

from dataclasses import replace
from datetime import date

import pytest

from planner import plan_for, review, week_ahead
from planner.facts import (
    Absence,
    Bodyweight,
    Cycle,
    Equipment,
    Move,
    Order,
    PainAnswer,
    Record,
    Resume,
    SentPlan,
    Session,
    WarningSign,
    WorkSet,
)
from planner.history import History
from planner.main_lift import basis_of
from tests.planner.athletes import START, as_asked, athlete, codes, day, live, main_sets, skill_sets, with_tests

BLOCK = [  # sets, reps, ceiling: heavy day / volume day of four weeks, then deload and test
    (4, 4, 7.0),
    (4, 6, 7.0),
    (5, 3, 7.5),
    (4, 6, 7.5),
    (5, 3, 8.0),
    (4, 5, 8.0),
    (4, 2, 8.5),
    (3, 5, 8.0),
    (2, 3, 6.0),
    (1, None, 9.0),
]


def test_a_block_is_the_table_of_the_trade():
    seen = [one for one, _ in live(athlete(), 35, (with_tests(),)) if one.today.sets]
    table = [(len(main_sets(one)), main_sets(one)[0].reps, main_sets(one)[0].rpe) for one in seen]
    assert table == BLOCK
    assert [one.today.kind for one in seen] == ["training"] * 8 + ["deload", "test"]


def test_a_deload_is_lighter_than_week_one_and_all_of_the_fortnight_before():
    seen = [one for one, _ in live(athlete(), 35, (with_tests(),)) if one.today.sets]
    systems = [62.0 + main_sets(one)[0].load_kg for one in seen]
    assert systems[8] <= 0.95 * min(systems[:2])
    assert all(systems[8] < before for before in systems[4:8])


def test_who_tells_the_ceiling_every_time_does_not_lose_a_plate_a_week():
    seen = [one for one, _ in live(athlete(), 70, (with_tests(),)) if one.today.kind == "training"]
    heavy = [main_sets(one)[0].load_kg for one in seen if main_sets(one)[0].reps == 4]
    assert heavy[1] >= heavy[0]


def test_two_points_over_the_ceiling_cuts_the_next_of_its_kind_by_a_twentieth():
    hard = live(athlete(), 8, (with_tests(),), over=lambda one, on: 2.0 if on == START else 0.0)
    seen = [one for one, _ in hard if one.today.sets]
    first, second = main_sets(seen[0])[0], main_sets(seen[2])[0]
    assert 62.0 + second.load_kg <= 0.95 * (62.0 + first.load_kg)
    assert codes(seen[2]) & {"load_cut_effort", "load_down", "load_block"}


def test_one_point_over_the_ceiling_holds_the_load():
    hard = live(athlete(), 8, (with_tests(),), over=lambda one, on: 1.0 if on == START else 0.0)
    seen = [one for one, _ in hard if one.today.sets]
    assert main_sets(seen[2])[0].load_kg <= main_sets(seen[0])[0].load_kg


def _second_heavy_day(did):
    """(first, second) heavy day of an athlete who does the first one's pull-ups as `did` says."""

    def tells(done, on):
        return did(done) if on == START and done.movement == "pull_up" else done

    told = live(athlete(), 8, (with_tests(),), did=tells)
    seen = [one for one, _ in told if one.today.sets]
    return seen[0], seen[2]


def test_a_rep_short_without_a_word_on_the_effort_holds_the_load():
    first, second = _second_heavy_day(lambda done: replace(done, reps=done.reps - 1, rpe=None))
    assert "load_hold_short" in codes(second)
    assert main_sets(second)[0].load_kg == main_sets(first)[0].load_kg


@pytest.mark.parametrize(
    "did",
    [
        lambda done: replace(done, rpe=None),  # all the reps
        lambda done: replace(done, reps=done.reps - 1, load_kg=done.load_kg + 5.0, rpe=None),  # with more weight
        lambda done: replace(done, reps=done.reps - 1),  # the effort is known to have been fine
    ],
)
def test_what_is_no_shortfall_does_not_hold_the_load(did):
    _, second = _second_heavy_day(did)
    assert "load_hold_short" not in codes(second)


def test_two_sessions_far_over_bring_the_deload_early():
    hard = live(athlete(), 12, (with_tests(),), over=lambda one, on: 1.5)
    seen = [one for one, _ in hard if one.today.sets]
    assert seen[2].today.kind == "deload"
    assert "deload_effort" in codes(seen[2])


def test_nothing_is_planned_before_the_health_questions_are_cleared():
    record = Record(athlete(screened=False), sessions=(with_tests(),))
    seen = review(record, START)
    assert seen.stopped is not None
    assert seen.stopped.code == "not_screened"
    assert seen.today.kind == "rest"
    assert not seen.today.sets
    cleared = Record(athlete(screened=False), sessions=(with_tests(),), orders=(Order("start", day(1)),))
    assert review(cleared, day(3)).today.kind == "training"


@pytest.mark.parametrize("sign", ["pop", "chest_pain", "numbness", "night_pain"])
def test_a_warning_sign_stops_all_until_the_coach_restarts(sign: str):
    record = Record(athlete(), sessions=(with_tests(),), signs=(WarningSign(day(1), sign),))
    for number in (1, 3, 7, 21):
        seen = review(record, day(number))
        assert seen.today.kind == "rest"
        assert seen.alerts[0].code == "stopped_by_sign"
    restarted = Record(record.athlete, record.sessions, signs=record.signs, orders=(Order("restart", day(5)),))
    assert review(restarted, day(3)).today.kind == "rest"
    assert review(restarted, day(7)).today.sets


def test_a_sent_plan_stays_while_no_exception_comes_or_goes():
    record = Record(athlete(), sessions=(with_tests(),))
    made = plan_for(record, START, START)
    sent = SentPlan(START, made.block, made.week, made.kind, made.sets[:-1], made.holds)
    later = Record(record.athlete, record.sessions, sent=(sent,))
    assert plan_for(later, START, START).sets == made.sets[:-1]
    sore = Record(
        record.athlete, record.sessions, sent=(sent,), pain=(PainAnswer(START, "elbow_inner", "left", 7, "rest"),)
    )
    assert plan_for(sore, START, START).kind == "rest"


def test_a_missed_session_slides_to_the_next_free_day_with_48_hours():
    record = Record(athlete(), sessions=(with_tests(),), absences=(Absence("missed", START, START, START),))
    week = week_ahead(record, START)
    assert [plan.on for plan in week if plan.sets] == [day(1), day(3)]


def test_a_missed_session_without_48_hours_left_is_dropped_and_never_doubled():
    told_late = Absence("missed", day(2), START, START)
    record = Record(athlete(), sessions=(with_tests(),), absences=(told_late,))
    assert [plan.on for plan in week_ahead(record, day(2)) if plan.sets] == [day(3), day(7)]


def test_a_moved_session_is_on_its_new_day_and_not_on_the_old():
    record = Record(athlete(), sessions=(with_tests(),), moves=(Move(START, day(3), day(4)),))
    assert [plan.on for plan in week_ahead(record, START) if plan.sets] == [START, day(4)]


def test_a_move_too_near_to_the_next_session_makes_that_one_slide():
    record = Record(athlete(), sessions=(with_tests(),), moves=(Move(START, START, day(2)),))
    assert [plan.on for plan in week_ahead(record, START) if plan.sets] == [day(2), day(4)]


def test_an_eight_day_cycle_pulls_on_two_of_its_four_days():
    who = athlete(schedule=Cycle(8, frozenset({1, 3, 5, 7}), START))
    plans = week_ahead(Record(who, sessions=(with_tests(),)), START, 16)
    pulls = [plan.on for plan in plans if any(one.part == "main" for one in plan.sets)]
    assert pulls == [START, day(4), day(8), day(12)]


def test_the_week_after_ten_days_away_is_a_tenth_lighter_at_seven():
    away = Absence("away", day(2), day(4), day(13))
    seen = [one for one, _ in live(athlete(), 22, (with_tests(),), absences=(away,)) if one.today.sets]
    back = seen[2]
    assert back.today.on == day(14)
    assert back.today.week == 2
    assert main_sets(back)[0].rpe == 7.0
    assert "comeback" in codes(back)
    assert 62.0 + main_sets(back)[0].load_kg <= 0.9 * (62.0 + 20.0)


def test_after_twenty_days_away_the_block_starts_again():
    away = Absence("away", day(2), day(4), day(23))
    seen = [one for one, _ in live(athlete(), 29, (with_tests(),), absences=(away,)) if one.today.sets]
    assert (seen[2].today.week, seen[2].today.kind) == (1, "training")


def test_after_forty_days_away_strength_is_tested_and_skill_is_a_rung_lower():
    away = Absence("away", day(2), day(4), day(43))
    seen = [
        one for one, _ in live(athlete("archer_elbow_full"), 50, (with_tests(),), absences=(away,)) if one.today.sets
    ]
    assert seen[2].today.kind == "test"
    assert not skill_sets(seen[2])
    assert seen[3].ladders[0].rung == "archer_elbow_lower"


def test_fever_keeps_two_whole_days_free():
    record = Record(athlete(), sessions=(with_tests(),), signs=(WarningSign(day(1), "fever"),))
    week = week_ahead(record, day(1))
    assert all(not plan.sets for plan in week[:3])
    assert review(record, day(1)).stopped is None


def test_a_coachs_sets_stand_and_show():
    order = Order("set_sets", day(1), for_date=day(3), sets=4, reps=3, load_kg=17.5)
    plan = plan_for(Record(athlete(), sessions=(with_tests(),), orders=(order,)), day(1), day(3))
    main = [one for one in plan.sets if one.part == "main"]
    assert [(one.reps, one.load_kg) for one in main] == [(3, 17.5)] * 4
    assert any(hold.startswith("set_sets") for hold in plan.holds)


def test_a_coachs_sets_stand_on_a_day_off_too():
    order = Order("set_sets", START, for_date=day(2), movement="pull_up", sets=2, reps=3, load_kg=5.0)
    plan = plan_for(Record(athlete(), sessions=(with_tests(),), orders=(order,)), START, day(2))
    assert [one.load_kg for one in plan.sets if one.part == "main"] == [5.0, 5.0]


def test_sets_without_a_load_get_one_on_a_day_off_too():
    order = Order("set_sets", START, for_date=day(2), sets=4, reps=3)
    plan = plan_for(Record(athlete(), sessions=(with_tests(),), orders=(order,)), START, day(2))
    main = [one for one in plan.sets if one.part == "main"]
    # 3 reps at 7 leave as much as the tested 5 at 9 with 15 kg did; the cautious side is a plate or two below.
    assert len(main) == 4
    assert {(one.reps, one.rpe) for one in main} == {(3, 7.0)}
    assert all(12.5 <= one.load_kg <= 15.0 for one in main)


def test_sets_on_a_day_off_are_of_the_first_rungs_work_where_that_is_trained():
    order = Order("set_sets", START, for_date=day(2), sets=4, reps=3)
    row = with_tests(WorkSet("ring_row", 10, rpe=9.0))
    plan = plan_for(Record(athlete("ring_row"), sessions=(row,), orders=(order,)), START, day(2))
    assert {(one.movement, one.reps) for one in plan.sets if one.part == "main"} == {("ring_row", 3)}


def test_without_a_bar_the_closest_movement_is_asked_for():
    travel = Equipment(START, frozenset({"rings"}), day(6))
    plan = plan_for(Record(athlete(), sessions=(with_tests(),), equipment=(travel,)), START, START)
    assert {one.movement for one in plan.sets if one.part == "main"} == {"ring_pull_up"}


def test_a_pulldown_is_loaded_by_the_system():
    travel = Equipment(START, frozenset({"lat_pulldown"}), day(6))
    plan = plan_for(Record(athlete(), sessions=(with_tests(),), equipment=(travel,)), START, START)
    main = [one for one in plan.sets if one.part == "main"]
    assert {one.movement for one in main} == {"lat_pulldown"}
    assert 60.0 <= main[0].load_kg <= 75.0


def test_loads_are_whole_plates_in_the_athletes_own_unit():
    who = athlete(plate_step=2.5, plate_unit="lb")
    for one, _ in live(who, 35, (with_tests(),)):
        for work in one.today.sets:
            steps = work.load_kg / 0.45359237 / 2.5  # the pound since 1959
            assert steps == pytest.approx(round(steps), abs=1e-6)


def test_silence_for_two_sessions_is_told_to_the_coach():
    record = Record(athlete(), sessions=(with_tests(),))
    assert [alert.code for alert in review(record, day(4)).alerts] == ["silent"]
    assert review(record, day(3)).silent_sessions == 1


def test_an_athlete_without_any_number_is_asked_for_what_the_ceiling_allows():
    plan = plan_for(Record(athlete()), START, START)
    main = [one for one in plan.sets if one.part == "main"]
    assert main
    assert all(one.reps is None and one.rpe == 7.0 for one in main)


@pytest.mark.parametrize(
    ("sets", "rung"),
    [
        ((), "ring_row"),
        ((WorkSet("ring_row", 10),), "ring_row"),
        ((WorkSet("pull_up", 3, rpe=10),), "pull_up"),
        ((WorkSet("pull_up", 12, rpe=10),), "weighted_pull_up"),
        ((WorkSet("pull_up", 3, load_kg=20, rpe=9),), "weighted_pull_up"),
    ],
)
def test_placement_from_tests(sets: tuple[WorkSet, ...], rung: str):
    sessions = (with_tests(*sets),) if sets else ()
    assert review(Record(athlete(None), sessions=sessions), START).ladders[0].rung == rung


def test_the_first_weeks_plan_is_there_on_the_first_day():
    seen = review(Record(athlete(), sessions=(with_tests(),)), START)
    assert (seen.block.block, seen.block.week) == (1, 1) if seen.block else False
    assert seen.today.sets
    assert seen.next_training_on == START


def test_the_first_block_begins_on_the_first_training_day():
    who = athlete(started_on=date(2027, 1, 6))  # a Wednesday; training on Monday and Thursday
    seen = review(Record(who, sessions=(with_tests(),)), date(2027, 1, 7))
    assert (seen.today.week, main_sets(seen)[0].reps) == (1, 4)


def test_the_grip_changes_for_one_block_after_half_a_year():
    grips: dict[int, set[str]] = {}
    for one, _ in live(athlete(), 290, (with_tests(),)):
        for work in main_sets(one):
            grips.setdefault(one.today.block, set()).add(work.movement)
    assert all(len(found) == 1 for found in grips.values())
    others = [block for block, found in grips.items() if found != {"pull_up"}]
    assert others == [7]  # 4 to 12 months: common practice, no source


def test_a_grip_that_gets_more_help_is_taken_to_be_as_strong_as_overhand():
    """Underhand and parallel grips are no weaker than overhand, rings are: common practice, no source."""
    known = History(Record(athlete(), sessions=(with_tests(),)), START)
    at = {grip: basis_of(known, grip, START).e1rm_kg for grip in ("pull_up", "chin_up", "ring_pull_up")}
    assert at["ring_pull_up"] < at["chin_up"] == at["pull_up"]


def test_a_deload_at_bodyweight_asks_for_fewer_reps():
    heavy = athlete(bodyweight_kg=70.0)
    weak = with_tests(WorkSet("pull_up", 3, load_kg=10.0, rpe=9.0))
    deload = next(one for one, _ in live(heavy, 35, (weak,)) if one.today.kind == "deload")
    assert [(work.load_kg, work.reps) for work in main_sets(deload)] == [(0.0, 2)] * 2


def test_holds_are_trained_at_a_part_of_the_best_and_measured_at_the_end():
    who = athlete(ladders=(("front_lever", "tuck_front_lever"),))
    best = with_tests(WorkSet("tuck_front_lever", None, hold_s=12.0, rpe=9.0))
    seen = [one for one, _ in live(who, 35, (best,)) if one.today.sets]
    assert {work.hold_s for work in skill_sets(seen[0])} == {7.0}  # 60 % of 12 s
    last = skill_sets(seen[-1])
    assert seen[-1].today.kind == "test"
    assert [(work.hold_s, work.reps, work.rpe) for work in last] == [(None, None, 9.0)]


def test_fifteen_seconds_open_the_next_hold():
    who = athlete(ladders=(("front_lever", "tuck_front_lever"),))
    best = with_tests(WorkSet("tuck_front_lever", None, hold_s=16.0, rpe=9.0))
    seen = next(one for one, _ in live(who, 35, (best,)) if one.today.kind == "test")
    assert [work.movement for work in skill_sets(seen)] == ["advanced_tuck_front_lever", "tuck_front_lever"]


def test_several_ladders_share_the_joints():
    who = athlete(ladders=(("one_arm_pull_up", "archer_elbow_full"), ("front_lever", "tuck_front_lever")))
    rules = {"skill.joint_sets_a_day": 5}
    tight = next(one for one, _ in live(athlete(ladders=who.ladders, rules=rules), 1, (with_tests(),)))
    assert len(skill_sets(tight)) == 5
    assert [work.movement for work in skill_sets(tight)][:4] == ["archer_ring_elbow"] * 4
    assert "joints_shared" in codes(tight)


def test_a_pause_stops_everything_until_the_athlete_is_back():
    pause = Absence("pause", day(1), day(1), None)
    record = Record(athlete(), sessions=(with_tests(),), absences=(pause,))
    assert review(record, day(10)).today.kind == "rest"
    assert review(record, day(10)).stopped is not None
    back = Record(record.athlete, record.sessions, absences=(pause,), resumes=(Resume(day(12)),))
    assert review(back, day(14)).today.sets


def test_a_lock_holds_the_load_until_its_day():
    lock = Order("lock_load", START, load_kg=5.0, until=day(6))
    seen = [one for one, _ in live(athlete(), 8, (with_tests(),), orders=(lock,)) if one.today.sets]
    assert {work.load_kg for one in seen[:2] for work in main_sets(one)} == {5.0}
    assert main_sets(seen[2])[0].load_kg > 5.0


def test_a_lock_above_the_plan_takes_fewer_reps_not_more_effort():
    plain = [one for one, _ in live(athlete(), 8, (with_tests(),)) if one.today.sets]
    heavy = Order("lock_load", START, load_kg=main_sets(plain[0])[0].load_kg + 7.5, until=day(6))
    locked = [one for one, _ in live(athlete(), 1, (with_tests(),), orders=(heavy,)) if one.today.sets]
    was, now = main_sets(plain[0])[0], main_sets(locked[0])[0]
    assert (now.load_kg, now.rpe) == (heavy.load_kg, was.rpe)
    assert (now.reps or 0) < (was.reps or 0)


def test_nothing_is_locked_on_where_nothing_can_be_hung():
    lock = Order("lock_load", START, load_kg=15.0, until=day(6))
    bare = athlete(equipment=frozenset({"bar"}))
    seen = next(one for one, _ in live(bare, 1, (with_tests(WorkSet("pull_up", 8, rpe=9.0)),), orders=(lock,)))
    assert {work.load_kg for work in main_sets(seen)} == {0.0}


def test_an_excluded_movement_is_not_planned():
    order = Order("exclude", START, movement="pull_up", until=day(20))
    plan = plan_for(Record(athlete(), sessions=(with_tests(),), orders=(order,)), START, START)
    assert all(work.movement != "pull_up" for work in plan.sets)
    assert any(work.part == "main" for work in plan.sets)


def test_a_change_of_bodyweight_is_said():
    lighter = Bodyweight(day(5), 59.0)
    seen = [one for one, _ in live(athlete(), 8, (with_tests(),), bodyweights=(lighter,)) if one.today.sets]
    told = [reason for one in seen[2].today.decisions for reason in one.reasons if reason.code == "bodyweight_changed"]
    assert [(reason.values["was_kg"], reason.values["now_kg"]) for reason in told] == [(62.0, 59.0)]


def test_a_test_after_hard_weeks_does_not_ask_for_the_old_best():
    best = with_tests(WorkSet("pull_up", 5, load_kg=25.0, rpe=9.0))
    hard = live(athlete(), 12, (best,), over=lambda one, on: 2.0)
    test = next(one for one, _ in hard if one.today.kind == "test")
    # Five at 25 kg and RPE 9 are worth three at 31; the hard weeks, taken at their word, three at 20.
    assert main_sets(test)[0].load_kg < 27.5


def test_sets_ordered_for_the_day_a_session_left_stand_in_its_stead():
    moved = (Move(START, day(3), day(4)),)
    order = Order("set_sets", START, for_date=day(3), sets=4, reps=3, load_kg=17.5)
    record = Record(athlete(), sessions=(with_tests(),), moves=moved, orders=(order,))
    week = week_ahead(record, START)
    assert [plan.on for plan in week if any(one.part == "main" for one in plan.sets)] == [START, day(3)]
    assert "session_dropped" in {reason.code for one in week[4].decisions for reason in one.reasons}


@pytest.mark.parametrize("kind", ["away", "missed", "ill", "pause"])
def test_sets_ordered_for_a_day_on_which_nobody_trains_take_no_other_session_away(kind):
    moved = (Move(START, day(3), day(4)),)
    order = Order("set_sets", START, for_date=day(3), sets=4, reps=3, load_kg=17.5)
    gone = Absence(kind, START, day(3), day(3))
    record = Record(athlete(), sessions=(with_tests(),), moves=moved, orders=(order,), absences=(gone,))
    week = week_ahead(record, START)
    assert day(4) in [plan.on for plan in week if any(one.part == "main" for one in plan.sets)]


def test_an_absence_told_afterwards_gives_the_moved_session_back():
    moved = (Move(START, day(3), day(4)),)
    order = Order("set_sets", START, for_date=day(3), sets=4, reps=3, load_kg=17.5)
    ill = Absence("ill", day(4), day(3), day(3))
    record = Record(athlete(), sessions=(with_tests(),), moves=moved, orders=(order,), absences=(ill,))
    assert any(one.part == "main" for one in plan_for(record, day(4), day(4)).sets)


def test_ordered_dips_leave_the_moved_session():
    moved = (Move(START, day(3), day(4)),)
    order = Order("set_sets", START, movement="dip", for_date=day(3), sets=4, reps=3)
    record = Record(athlete(), sessions=(with_tests(),), moves=moved, orders=(order,))
    assert [plan.on for plan in week_ahead(record, START) if plan.sets] == [START, day(3), day(4)]


def test_warm_ups_alone_after_a_month_of_silence_cap_nothing():
    record = [known for _, known in live(athlete(), 15, (with_tests(),))][-1]
    heavy = max(main_sets(one)[0].load_kg for one, _ in live(athlete(), 5, (with_tests(),)) if one.today.sets)
    ramp = Session(day(52), (WorkSet("pull_up", 5), WorkSet("pull_up", 3, load_kg=5.0)))
    after = plan_for(replace(record, sessions=(*record.sessions, ramp)), day(56), day(56))
    work = [one for one in after.sets if one.part == "main"]
    assert work
    assert work[0].load_kg >= heavy - 2.5


def test_sets_that_ramp_up_are_not_compared_with():
    ramp = tuple(WorkSet("pull_up", 6, load_kg=load) for load in (0.0, 0.0, 5.0))
    done = Session(day(1), (*ramp, WorkSet("pull_up", 3, load_kg=20.0, rpe=8.0)))
    record = Record(athlete(), sessions=(with_tests(), done))
    volume = next(plan for plan in week_ahead(record, day(3)) if plan.sets)
    assert next(one.load_kg for one in volume.sets if one.part == "main") > 0.05 * 62.0


def test_a_deload_at_bodyweight_takes_no_more_reps_than_it_need():
    # 62 kg: bodyweight is under 95 % of week 1's heavy day, not under 95 % of its volume day.
    test = with_tests(WorkSet("pull_up", 5, load_kg=8.0, rpe=9.0))
    seen = [one for one, _ in live(athlete(), 35, (test,)) if one.today.sets]
    week_one = sorted(62.0 + main_sets(one)[0].load_kg for one in seen[:2])
    assert 0.95 * week_one[0] < 62.0 <= 0.95 * week_one[1]
    assert (main_sets(seen[8])[0].load_kg, main_sets(seen[8])[0].reps) == (0.0, 3)


def test_who_missed_week_one_has_a_deload_lighter_than_week_two():
    missed = live(athlete(), 35, (with_tests(),), trains=lambda on: on > day(6))
    seen = [one for one, _ in missed if one.today.sets]
    deload = next(one for one in seen if one.today.kind == "deload")
    week_two = [62.0 + main_sets(one)[0].load_kg for one in seen if (one.today.block, one.today.week) == (1, 2)]
    assert 62.0 + main_sets(deload)[0].load_kg <= max(62.0, 0.95 * min(week_two))


def test_a_plan_that_is_done_tells_no_other_load_than_it_asked_for():
    # Sore since the week before: lighter by a tenth, and the day's report moves strength again.
    pain = (PainAnswer(day(1), "elbow", "left", 4.0, "after"), PainAnswer(day(2), "elbow", "left", 4.0, "morning"))
    for seen, record in live(athlete(), 22, (with_tests(),), over=lambda one, on: 2.0, pain=pain):
        for known in (record, _done(record, seen)):
            plan = plan_for(known, seen.on, seen.on)
            asked = {one.load_kg for one in plan.sets if one.part == "main"}
            told = {
                reason.values["load_kg"]
                for decision in plan.decisions
                if decision.kind == "load"
                for reason in decision.reasons
                if "load_kg" in reason.values
            }
            assert not asked or told <= asked


def _done(record, seen):
    """The record after today's session, done two points too hard."""
    plan = seen.today
    sent = SentPlan(seen.on, plan.block, plan.week, plan.kind, plan.sets, plan.holds)
    done = Session(seen.on, tuple(as_asked(one, 2.0) for one in plan.sets))
    return replace(record, sessions=(*record.sessions, done), sent=(*record.sent, sent)) if plan.sets else record


def test_a_load_held_for_an_effort_names_the_session_that_it_is_compared_with():
    # Mondays are heavy days: what follows Thursday's volume is compared with the Monday before.
    hard = {START}
    seen = list(live(athlete(), 8, (with_tests(),), over=lambda one, on: 1.0 if on in hard else 0.0))[7][0]
    reasons = [reason for decision in seen.today.decisions for reason in decision.reasons]
    (held,) = [one for one in reasons if one.code == "load_hold_effort"]
    assert held.values["before_on"] == START
