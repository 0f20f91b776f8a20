"""Orders that contradict each other are named; what no strength carries is asked for twice."""

from __future__ import annotations

import pytest

from planner.facts import WorkSet


def said(chat, *orders):
    """The answer to the last of several orders."""
    chat.waits_until("08:00")
    *first, last = orders
    for at, words in enumerate(first):
        chat.says("coach", words, f"09:{at:02}")
    return chat.answer("coach", last, "09:30")


@pytest.mark.parametrize(
    ("orders", "told"),
    [
        (
            ("mira 4x3 at 10 on thursday", "mira 5x3 at 12.5 on thursday"),
            "takes the place of your order of Mon 4 Jan: 4×3 +10 kg",
        ),
        (("mira lock 10", "mira lock 12.5"), "takes the place of your order of Mon 4 Jan: load locked at +10 kg"),
        (("mira hold rung 3 weeks", "mira hold rung 5 weeks"), "takes the place of your order of Mon 4 Jan: rung held"),
        (("mira lock 10", "mira 4x3 at 12.5 on thursday"), "goes before your order of Mon 4 Jan: load locked"),
        (("mira no dips", "mira dips 3x8 on thursday"), "goes before your order of Mon 4 Jan: without dips"),
        (("mira dips 3x8 on thursday", "mira no dips"), "still stands beside it: 3×8 dips"),
        (("mira 4x3 at 10 on thursday", "mira lock 12.5"), "still stands beside it: 4×3 +10 kg"),
        (("mira hold rung 3 weeks", "mira rung archer_shoulder"), "still stands beside it: rung held"),
        (("mira 4x3 at 10 on thursday", "mira deload from thursday"), "still stands beside it: 4×3 +10 kg"),
    ],
)
def test_what_a_new_order_meets_is_said(chat, orders, told):
    assert told in said(chat, *orders)


@pytest.mark.parametrize(
    "orders",
    [
        ("mira 4x3 at 10 on thursday", "mira 4x3 at 10 on monday"),
        ("mira lock 10", "mira lock 10"),
        ("mira no dips", "mira no archers"),
        ("mira hold rung 3 weeks", "mira no dips"),
        ("mira no dips for one week", "mira dips 3x8 on 21 january"),
    ],
)
def test_orders_that_meet_no_other_are_only_confirmed(chat, orders):
    assert "your order of" not in said(chat, *orders)


def test_a_one_arm_order_beyond_the_athlete_is_asked_for_twice(chat):
    asked = said(chat, "mira one-arm pull-ups 2x1 on thursday")
    assert "no clean rep of one-arm pull-ups was ever told" in asked
    assert "Nothing is set yet" in asked
    assert not chat.record().orders

    chat.says("coach", None, "09:31", press="Set it all the same")
    assert [(one.movement, one.sets) for one in chat.record().orders] == [("one_arm_pull_up", 2)]


@pytest.mark.parametrize("words", ["mira archers 2x2 on thursday", "mira dips 3x8 on thursday"])
def test_work_of_the_own_rung_is_not_asked_for_twice(chat, words):
    assert "Nothing is set" not in said(chat, words)
    assert chat.record().orders


def test_who_has_done_a_rep_is_not_asked_about(chat):
    chat.answer("mira", "one-arm pull-ups 1x1 left, 1x1 right", "08:30")
    assert WorkSet("one_arm_pull_up", 1, side="left") in chat.record().sessions[-1].sets

    assert "Nothing is set" not in said(chat, "mira one-arm pull-ups 2x1 on thursday")


@pytest.mark.parametrize(
    "words", ["mira slow lowering one-arm pull-ups 2x1 on thursday", "mira archers lower half 2x1 on thursday"]
)
def test_what_is_said_of_the_way_of_a_movement_is_not_dropped(chat, words):
    assert "Nothing is done" in said(chat, words)
    assert not chat.record().orders


def test_ordered_work_beside_the_main_lift_is_shown(chat):
    assert "dips 3×8" in said(chat, "mira dips 3x8 on thursday")
