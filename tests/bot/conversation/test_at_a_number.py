""" "4x4 at 10": a load or an effort. It is asked, and neither is noted before."""

from __future__ import annotations

import pytest


def sets(chat):
    return [(work.reps, work.load_kg, work.rpe) for one in chat.record().sessions if not one.is_test
            for work in one.sets]  # fmt: skip


def test_no_effort_is_noted_while_it_is_asked_what_it_is(chat):
    chat.waits_until("08:00")
    asked = chat.says("mira", "2x3 at 10", "18:00")[-1]
    assert asked["buttons"] == ["10 weight", "RPE 10"]
    assert {rpe for _, _, rpe in sets(chat)} <= {None}


@pytest.mark.parametrize(("press", "last"), [("10 weight", (3, 10.0, None)), ("RPE 10", (3, 11.25, 10.0))])
def test_a_button_says_what_it_was(chat, press, last):
    chat.waits_until("08:00")
    chat.says("mira", "2x3 at 10", "18:00")
    chat.says("mira", None, "18:01", press=press)
    assert len(sets(chat)) == 2
    assert sets(chat)[-1] == last


def test_the_last_set_is_no_warm_up(chat):
    chat.waits_until("08:00")
    chat.answer("mira", "done as planned", "18:00")
    before = sets(chat)
    assert "did not find that value" in chat.answer("mira", "actually the last set was 4 not 5", "18:01")
    assert sets(chat) == before
    assert "now reads: scapular pull-ups 4;" in chat.answer(
        "mira", "actually the last scapular pull-ups set was 4 not 5", "18:02"
    )
