"""Messages to sets. Expected values follow the reading contract; the notation is common practice of the trade."""

import pytest

from tests.bot.reading.messages import planned

PULL_DAY = planned("pull_up", 3, 3, 3, 3, 3, load_kg=22.5, rpe=8.0)


def short(reading):
    """(movement, reps or seconds, load, effort) of each set."""
    return [(s.movement, s.reps if s.hold_s is None else s.hold_s, s.load_kg, s.rpe) for s in reading.sets]


@pytest.mark.parametrize(
    ("text", "sets"),
    [
        ("pull-ups 2x3 +20", [("pull_up", 3, 20, None)] * 2),
        ("pullups 3x5 w/ 20 kg @8", [("pull_up", 5, 20, None)] * 2 + [("pull_up", 5, 20, 8)]),
        ("dips +20x5x3 sets", [("dip", 5, 20, None)] * 3),
        ("chins 5@20 3@25", [("chin_up", 5, 20, None), ("chin_up", 3, 25, None)]),
        ("2 sets of 6 ring dips", [("ring_dip", 6, 0, None)] * 2),
        ("pull-ups 20kg: 5,5,4", [("pull_up", 5, 20, None)] * 2 + [("pull_up", 4, 20, None)]),
        ("tuck front lever 2x10s", [("tuck_front_lever", 10, 0, None)] * 2),
        ("dips 8, 7, nothing left", [("dip", 8, 0, None), ("dip", 7, 0, 10)]),
        ("rpe 8 no 9 on the last, pull-ups 2x3 +25", [("pull_up", 3, 25, None), ("pull_up", 3, 25, 9)]),
        ("pull-ups 2x3 +20 first set 6 last set 8 rpe", [("pull_up", 3, 20, 6), ("pull_up", 3, 20, 8)]),
        ("chins 2x5 +20, last one a 9", [("chin_up", 5, 20, None), ("chin_up", 5, 20, 9)]),
        ("chins 3x5 @7, @7.5, @8.5", [("chin_up", 5, 0, 7), ("chin_up", 5, 0, 7.5), ("chin_up", 5, 0, 8.5)]),
        ("pull ups 3x4, sets 1-2 rpe 7, last one 9", [("pull_up", 4, 0, 7)] * 2 + [("pull_up", 4, 0, 9)]),
        ("2x max push ups (30, 24)", [("push_up", 30, 0, None), ("push_up", 24, 0, None)]),
        ("ring muscle up 1!", [("ring_muscle_up", 1, 0, None)]),
        ("tempo pull ups 2x4 31x1 +10", [("pull_up", 4, 10, None)] * 2),
        ("dips 8,8,6 - the 6 was all i had", [("dip", 8, 0, None)] * 2 + [("dip", 6, 0, None)]),
        ("my mate did 5 pull ups, I did 8", [("pull_up", 8, 0, None)]),
        ("DB row 1x12 with the 22s each arm", [("row", 12, 22, None)] * 2),
        ("archer with ring at shoulder level: 2 left 2 right, x2", [("archer_ring_shoulder", 2, 0, None)] * 4),
        ("a double, a double and a single with 40, pullups", [("pull_up", n, 40, None) for n in (2, 2, 1)]),
        ("chin up +45 single, failed. then +42.5 and got it", [("chin_up", 0, 45, None), ("chin_up", 1, 42.5, None)]),
        ("dips 2x6, 3", [("dip", 6, 0, None)] * 2 + [("dip", 3, 0, None)]),
        ("tried +50 pull up twice. no.", [("pull_up", 0, 50, None)] * 2),
        ("squats 2x5 80", [("squat", 5, 80, None)] * 2),
        ("another 2x3 day, pull-ups +20", [("pull_up", 3, 20, None)] * 2),
        ("hr avg 132 max 171, pull ups 2x3", [("pull_up", 3, 0, None)] * 2),
        (
            "tuck planche 1x8 sec, adv tuck 1 x 4 sec",
            [("tuck_planche", 8, 0, None), ("advanced_tuck_planche", 4, 0, None)],
        ),
    ],
)
def test_notation_of_the_trade_is_read(reads, text, sets):
    assert short(reads(text)) == sets


@pytest.mark.parametrize(
    ("text", "about"),
    [
        ("pull ups 20", "reps"),
        ("pull-ups 4x5 @8", "load_kg"),
        ("pull-ups 5x3 +250", "load_kg"),
        ("levers 4x8s", "movement"),
        ("half pull ups 3x5 +20", "rom"),
        ("pull-ups 5x4 +15, rpe 7-9 across", "rpe"),
        ("pull ups 5x3 +20 rpe between 7 and 8", "rpe"),
        ("dips 3x8, a 7 maybe", "rpe"),
        ("pull ups 3x5 20", "load_kg"),
        ("a double and a single with 40, pullups", "load_kg"),
        ("chins 3x5 20 25 30", "load_kg"),
        ("dips 3x8 about a 7", "rpe"),
        ("did the 3s with 25", "movement"),
        ("pull-ups 5x3 with two plates", "load_kg"),
        ("weighted pull-ups 0x5 +20", "sets"),
        ("hold 30s rpe 8", "movement"),
    ],
)
def test_what_reads_two_ways_is_asked(reads, text, about):
    assert about in [ask.about for ask in reads(text).ask]


@pytest.mark.parametrize(
    "text",
    [
        "my wife just did her first pull up!!",
        "haha 3 cats watched me",
        "room 12, second floor",
        "my mate did 20 pull ups today",
        "should I do 5x3 with 22.5?",
    ],
)
def test_talk_tales_and_questions_make_no_sets(reads, text):
    reading = reads(text)
    assert reading.sets == ()
    assert reading.ask == ()


def test_done_is_the_whole_plan_without_its_efforts(reads):
    assert short(reads("done", today=PULL_DAY)) == [("pull_up", 3, 22.5, None)] * 5


def test_a_clause_changes_only_what_it_speaks_of(reads):
    reading = reads("same but 2 on the last", today=PULL_DAY)
    assert [one.reps for one in reading.sets] == [3, 3, 3, 3, 2]


def test_five_by_three_is_reps_by_sets_where_the_plan_says_so(reads):
    today = planned("pull_up", 5, 5, 5, load_kg=20.0)
    assert short(reads("5x3 at 20", today=today)) == [("pull_up", 5, 20, None)] * 3


def test_what_was_left_out_is_not_in_the_report(reads):
    today = PULL_DAY + planned("dip", 6, 6, part="accessory", load_kg=10.0)
    assert {one.movement for one in reads("all but the dips", today=today).sets} == {"pull_up"}


def test_other_training_goes_to_unread_word_for_word(reads):
    assert reads("dips 3x8, Kettlebell swings 3x15 24kg").unread == ("Kettlebell swings 3x15 24kg",)


def test_a_coachs_own_word_names_a_movement(reads):
    reading = reads("monkeys 3x5", nicknames=(("monkeys", "archer_pull_up"),))
    assert {one.movement for one in reading.sets} == {"archer_pull_up"}


def test_pounds_are_converted_exactly(reads):
    # 1 lb = 0.45359237 kg, exact since 1959
    assert reads("pull-ups 1x3 +45", unit="lb").sets[0].load_kg == pytest.approx(20.41165665)


def test_cluster_reps_are_linked_to_the_set_before(reads):
    assert [one.linked for one in reads("pull-ups cluster 3+2+1 +30").sets] == [False, True, True]


@pytest.mark.parametrize(
    ("text", "unread"),
    [
        ("zercher carries 3x20, dips 3x8", "zercher carries 3x20"),
        ("dips 3x8, zercher carries 3x20", "zercher carries 3x20"),
        ("dips 3x8\nsled things 4x20 @8", "sled things 4x20 @8"),
    ],
)
def test_an_unknown_exercise_lends_its_sets_to_none(reads, text, unread):
    reading = reads(text)
    assert short(reading) == [("dip", 8, 0, None)] * 3
    assert reading.unread == (unread,)


def test_a_number_far_over_the_plan_is_asked(reads):
    reading = reads("pull ups 20", today=planned("pull_up", 4, 4, 4, 4, load_kg=10.0))
    assert [ask.about for ask in reading.ask] == ["reps"]


@pytest.mark.parametrize(
    ("text", "sets"),
    [
        ("did the lot but 25 on the belt instead of 22.5", [("pull_up", 3, 25, None)] * 5),
        ("dropped one set of pull ups, otherwise as planned", [("pull_up", 3, 22.5, None)] * 4),
        ("swapped the pull ups for chins, same weight and reps", [("chin_up", 3, 22.5, None)] * 5),
        ("all as planned, last one a 9", [("pull_up", 3, 22.5, None)] * 4 + [("pull_up", 3, 22.5, 9)]),
    ],
)
def test_what_departs_from_the_plan_is_read_against_it(reads, text, sets):
    assert short(reads(text, today=PULL_DAY)) == sets


def test_a_mend_beside_a_plan_is_not_the_plan_done(reads):
    reading = reads("that was 17.5 not 15", today=PULL_DAY)
    assert reading.sets == ()
    assert reading.intents == ("correction",)
