"""Sets told a second time count once, whatever is told beside them; a value put right finds the sets that it is of."""

from __future__ import annotations

import pytest

TUESDAY = "2027-01-05"


def sets(chat, movement):
    return [(work.reps, work.load_kg, work.rpe) for one in chat.record().sessions if not one.is_test
            for work in one.sets if work.movement == movement]  # fmt: skip


def test_a_movement_told_beside_the_same_sets_is_added_and_the_sets_count_once(chat):
    chat.waits_until("08:00")
    chat.answer("mira", "pull ups 4x4 +15", "18:00")
    answer = chat.answer("mira", "pull ups 4x4 +15, dips 3x8", "18:05")

    assert "Noted for Mon 4 Jan: dips 3×8." in answer
    assert "not counted twice: pull-ups 4×4 +15 kg" in answer
    assert sets(chat, "pull_up") == [(4, 15.0, None)] * 4
    assert sets(chat, "dip") == [(8, 0.0, None)] * 3


def test_efforts_told_with_the_sets_anew_go_to_the_first_report(chat):
    chat.waits_until("08:00")
    chat.answer("mira", "pull ups 4x4 +15", "18:00")
    chat.answer("mira", "pull ups 4x4 +15 @8, dips 3x8", "18:05")

    assert [load for _, load, _ in sets(chat, "pull_up")] == [15.0] * 4
    assert sets(chat, "pull_up")[-1] == (4, 15.0, 8.0)


def test_half_of_a_report_told_again_counts_once(chat):
    chat.waits_until("08:00")
    chat.answer("mira", "pull ups 4x4 +15, dips 3x8", "18:00")
    assert "already noted" in chat.answer("mira", "dips 3x8", "18:05")
    assert len(sets(chat, "dip")) == 3


def test_other_sets_of_the_movement_count_beside(chat):
    chat.waits_until("08:00")
    chat.answer("mira", "pull ups 4x4 +15", "18:00")
    chat.answer("mira", "pull ups 2x6 +5, dips 3x8", "18:05")
    assert len(sets(chat, "pull_up")) == 6


def test_sets_said_to_be_done_once_more_count_once_more(chat):
    chat.waits_until("08:00")
    chat.answer("mira", "pull ups 4x4 +15", "18:00")
    chat.answer("mira", "another 4x4 pull ups +15", "19:00")
    assert sets(chat, "pull_up") == [(4, 15.0, None)] * 8


def test_time_and_effort_of_the_session_told_with_known_sets_are_kept_once(chat):
    chat.waits_until("08:00")
    chat.answer("mira", "pull ups 4x4 +15", "18:00")
    for at in ("18:05", "18:06"):
        chat.answer("mira", "pull ups 4x4 +15, 60 min", at)
    assert [one.duration_min for one in chat.record().sessions if one.duration_min] == [60.0]


@pytest.mark.parametrize(
    ("told", "words", "movement", "now"),
    [
        ("pull ups 4x4 +13.75", "sorry 4x4 was +11.25, not 13.75", "pull_up", 11.25),
        ("pull ups 4x4 +13.75, dips 3x8 +10", "sorry 3x8 was +11.25, not 10", "dip", 11.25),
        ("pull ups 4x4 +13.75, dips 3x8 +10", "no, the 4x4 was at 11.25 not 13.75", "pull_up", 11.25),
        ("Klimmzüge 4x4 +13,75", "sorry, 4x4 waren mit 11,25, nicht 13,75", "pull_up", 11.25),
    ],
)
def test_the_sets_named_say_which_movement_is_put_right(chat, told, words, movement, now):
    chat.waits_until("08:00")
    chat.answer("mira", told, "18:00")
    before = {name: sets(chat, name) for name in ("pull_up", "dip")}
    chat.answer("mira", words, "18:01")

    for name, was in before.items():
        assert sets(chat, name) == [(reps, now if name == movement else load, rpe) for reps, load, rpe in was]


def test_where_two_movements_had_these_sets_it_is_asked_which(chat):
    chat.waits_until("08:00")
    chat.answer("mira", "pull ups 4x4 +13.75, dips 4x4 +13.75", "18:00")
    assert "Which movement" in chat.answer("mira", "sorry 4x4 was +11.25, not 13.75", "18:01")


@pytest.mark.parametrize(
    ("words", "now"),
    [
        ("sorry yesterday's 4x4 was +11.25, not 13.75", [(4, 11.25)] * 4),
        ("yesterday's pull-ups were +11.25, not 13.75", [(4, 11.25)] * 4),
        ("yesterday the last set of pull-ups was only 3", [(4, 13.75)] * 3 + [(3, 13.75)]),
        ("yesterday I did pull ups 4x4 +13.75 and dips 3x8", [(4, 13.75)] * 4),
    ],
)
def test_what_is_said_the_next_day_mends_the_report_and_is_no_second_one(chat, words, now):
    chat.waits_until("08:00")
    chat.answer("mira", "pull ups 4x4 +13.75", "18:00")
    chat.answer("mira", words, "18:00", TUESDAY)
    assert [(reps, load) for reps, load, _ in sets(chat, "pull_up")] == now
