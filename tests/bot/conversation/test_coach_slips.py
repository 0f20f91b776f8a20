"""What a coach types in haste: slips are not sent, what was not understood is named."""

import pytest


def test_a_load_far_beyond_the_maximum_is_not_set(chat):
    answer = chat.answer("coach", "mira 4x3 at 175 on thursday", "08:00")
    assert "nothing was set" in answer
    assert not chat.record().orders


def test_a_lock_far_beyond_the_maximum_is_not_set(chat):
    assert "nothing was set" in chat.answer("coach", "mira lock 150", "08:00")
    assert not chat.record().orders


def test_twenty_sets_of_twenty_are_a_slip(chat):
    assert "nothing was set" in chat.answer("coach", "mira 20x20 at 5 on thursday", "08:00")


def test_more_reps_than_the_estimate_has_are_set_with_a_word_of_warning(chat):
    answer = chat.answer("coach", "mira 4x5 at 25 on thursday", "08:00")
    assert "+25 kg" in answer
    assert "Mind that 5 reps are more" in answer


def test_words_that_only_show_say_what_was_not_understood(chat):
    answer = chat.answer("coach", "give mira a holiday plan", "08:00")
    assert "“holiday”" in answer
    assert "nothing was changed" in answer
    assert "nothing was changed" not in chat.answer("coach", "show me mira's week please", "08:10")


def test_no_dips_this_week_leaves_them_out_until_sunday(chat):
    chat.answer("coach", "mira no dips this week", "08:00")
    (order,) = chat.record().orders
    assert (order.kind, order.movement, order.until.isoformat()) == ("exclude", "dip", "2027-01-10")


def test_a_session_is_moved_and_both_are_told(chat):
    answer = chat.answer("coach", "move mira's thursday to friday", "08:00")
    assert "Fri 8 Jan" in answer
    assert any("Inês moved your session" in one["text"] for one in chat.heard if one["to"] == "mira")
    assert [(one.moved_from.isoformat(), one.moved_to.isoformat()) for one in chat.record().moves] == [
        ("2027-01-07", "2027-01-08")
    ]


def test_everyone_is_told(two):
    assert two.answer("coach", "tell everyone: the hall is closed on friday", "08:00") == "Told 2: Mira, Tom."
    assert {one["to"] for one in two.heard if "the hall is closed" in one["text"]} == {"mira", "tom"}


@pytest.mark.parametrize("asked", ["who hasn't reported today?", "who has not answered yet"])
def test_who_has_not_reported(two, asked):
    two.answer("mira", "done as planned", "18:00")
    answer = two.answer("coach", asked, "18:30")
    assert "tom" in answer
    assert "mira" not in answer


def test_a_session_is_not_moved_to_its_own_day(chat):
    assert "did not get which session" in chat.answer("coach", "mira move thursday to thursday", "08:00")
    assert not chat.record().moves


def test_after_a_stop_no_empty_session_is_announced(chat):
    chat.waits_until("08:00")
    chat.answer("mira", "something popped in my elbow", "08:10")
    for words in ("mira", "mira hold rung 3 weeks"):
        answer = chat.answer("coach", words, "09:00")
        assert not [line for line in answer.splitlines() if line.startswith("Next") and line.rstrip().endswith(":")]


def test_a_span_is_no_part_of_a_movements_name(chat):
    assert "the movement “wombats”" in chat.answer("coach", "mira no wombats this week", "08:00")


def test_a_day_of_another_year_is_said_with_its_year(chat):
    assert "2032" in chat.answer("coach", "mira hold rung 300 weeks", "08:00")


def test_a_rung_far_ahead_is_set_and_the_gate_is_told(chat):
    assert "gate 0.75 of bodyweight" in chat.answer("coach", "mira rung one_arm_pull_up", "08:00")
    assert [one.rung for one in chat.record().orders] == ["one_arm_pull_up"]


def test_an_unlock_says_what_it_lifted(chat):
    chat.answer("coach", "mira exclude dips", "08:00")
    assert "without dips" in chat.answer("coach", "mira unlock", "08:10")
