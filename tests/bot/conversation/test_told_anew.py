"""The whole set told anew where a correction's question was open: it takes the place of what was told before."""

from __future__ import annotations

import pytest


def pull_ups(chat):
    """Reps and load of every set of pull-ups that counts."""
    return [(work.reps, work.load_kg) for one in chat.record().sessions if not one.is_test for work in one.sets
            if work.movement == "pull_up"]  # fmt: skip


def test_the_whole_set_anew_replaces_the_one_that_was_asked_about(chat):
    chat.answer("mira", "pull ups 5x3 +20", "18:00")
    assert "added weight" in chat.answer("mira", "sorry, that was 22", "18:01")

    said = chat.answer("mira", "pull-ups 5x3 +22.5", "18:02")
    assert "now reads: pull-ups 5×3 +22.5 kg" in said
    assert "Before: pull-ups 5×3 +20 kg" in said
    assert pull_ups(chat) == [(3, 22.5)] * 5


def test_only_the_movement_told_anew_is_replaced(chat):
    chat.answer("mira", "pull ups 5x3 +20, dips 3x8", "18:00")
    chat.answer("mira", "sorry, that was 22", "18:01")
    chat.answer("mira", "pull-ups 4x3 +22.5", "18:02")

    assert pull_ups(chat) == [(3, 22.5)] * 4
    assert sum(work.movement == "dip" for work in chat.record().sessions[-1].sets) == 3


def test_two_reports_of_a_day_are_each_put_right(chat):
    chat.answer("mira", "pull ups 4x5 +20", "18:00")
    chat.answer("mira", "dips 3x6", "18:01")
    chat.answer("mira", "sorry, that was 8", "18:02")
    chat.answer("mira", "pull-ups 4x5 +22.5, dips 3x8", "18:03")

    assert pull_ups(chat) == [(5, 22.5)] * 4
    dips = [work.reps for one in chat.record().sessions for work in one.sets if work.movement == "dip"]
    assert dips == [8, 8, 8]


def test_sets_of_something_else_are_a_report_of_their_own(chat):
    chat.answer("mira", "pull ups 5x3 +20", "18:00")
    chat.answer("mira", "sorry, that was 22", "18:01")
    assert "Noted for" in chat.answer("mira", "dips 3x8", "18:02")
    assert pull_ups(chat) == [(3, 20.0)] * 5


@pytest.mark.parametrize(
    ("words", "counted"), [("", [22.5] * 5), ("mira 5x3 at 22.5 on tuesday", [20.0] * 5 + [22.5] * 5)]
)
def test_told_the_next_day_it_is_the_old_set_unless_one_was_planned(chat, words, counted):
    if words:
        chat.answer("coach", words, "07:10")
    chat.answer("mira", "pull ups 5x3 +20", "18:00")
    chat.answer("mira", "sorry, that was 22", "18:01")
    chat.answer("mira", "pull-ups 5x3 +22.5", "17:00", "2027-01-05")
    assert [load for _, load in pull_ups(chat)] == counted


def test_taking_it_back_restores_what_was_told_first(chat):
    chat.answer("mira", "pull ups 5x3 +20", "18:00")
    chat.answer("mira", "sorry, that was 22", "18:01")
    chat.answer("mira", "pull-ups 5x3 +22.5", "18:02")
    chat.answer("mira", "undo", "18:03")
    assert pull_ups(chat) == [(3, 20.0)] * 5


@pytest.mark.parametrize("answer", ["reps", "pull ups 4x4 +20"])
def test_two_values_of_nothing_named_are_asked_about_and_put_right(chat, answer):
    chat.answer("mira", "pull ups 4x5 +20", "18:00")
    assert "of what, reps or added weight?" in chat.answer("mira", "that was 4, not 5", "18:01")
    assert "now reads: pull-ups 4×4 +20 kg" in chat.answer("mira", answer, "18:02")


def test_a_button_says_which_of_the_two_it_was(chat):
    chat.answer("mira", "pull ups 4x5 +5", "18:00")
    asked = chat.says("mira", "that was 4, not 5", "18:01")[-1]
    assert asked["buttons"] == ["4, not 5 reps", "4, not 5 weight"]
    chat.says("mira", None, "18:02", press="4, not 5 weight")
    assert pull_ups(chat) == [(5, 4.0)] * 4
