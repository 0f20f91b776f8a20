"""A name in front of sets: nothing of another's is noted as one's own, and nobody learns who else is coached."""

from __future__ import annotations

import pytest


def told(chat):
    return [(work.movement, work.reps, work.load_kg) for one in chat.record().sessions if not one.is_test
            for work in one.sets]  # fmt: skip


@pytest.mark.parametrize(
    "words",
    [
        "tom 4x3 at 50", "Tom: 4x3 +50", "tomas 4x3 at 50", "Lena did 4x3 at 50", "tell tom 4x3 at 50",
        "Anna's pull-ups 4x3 +50", "für Jonas 4x3 +50", "Björn hat 4x3 mit 50 gemacht", "Sofía 4x3 con 50 kg",
    ],
)  # fmt: skip
def test_sets_behind_another_name_are_asked_about_and_not_noted(two, words):
    assert "are they yours?" in two.answer("mira", words, "18:00")
    assert told(two) == []


def test_one_of_the_squad_and_anyone_else_are_asked_about_in_the_same_words(two):
    squad, other = (two.answer("mira", f"{name} 4x3 at 50", "18:00") for name in ("tom", "lena"))
    assert squad == other.replace("lena", "tom")


def test_a_name_of_the_squad_that_no_list_has_is_met_too():
    from tests.bot.conversation.conftest import Chat, athlete

    chat = Chat(athlete("mira"), athlete("zd7", name="Zdzisia"))
    chat.waits_until("07:00")
    try:
        assert "are they yours?" in chat.answer("mira", "zdzisia 4x3 at 50", "18:00")
    finally:
        chat.close()


@pytest.mark.parametrize("answer", ["mine", "yes, those were mine", "meine"])
def test_said_to_be_hers_they_are_noted(two, answer):
    two.answer("mira", "lena 4x3 at 20", "18:00")
    assert "Noted for Mon 4 Jan: pull-ups 4×3 +20 kg" in two.answer("mira", answer, "18:01")
    assert told(two) == [("pull_up", 3, 20.0)] * 4


@pytest.mark.parametrize("answer", ["not mine", "no", "toms", "nein"])
def test_said_to_be_anothers_nothing_is_noted(two, answer):
    two.answer("mira", "pull ups 4x4 +15", "18:00")
    two.answer("mira", "tom 4x3 at 50", "18:01")
    assert "Nothing is noted" in two.answer("mira", answer, "18:02")
    assert told(two) == [("pull_up", 4, 15.0)] * 4


def test_of_two_lines_her_own_is_noted(two):
    two.answer("mira", "pull ups 4x4 +15\nTom dips 3x8", "18:00")
    asked = two.heard[-1]
    assert asked["buttons"] == ["Mine", "Not mine"]
    two.says("mira", None, "18:01", press="Not mine")
    assert told(two) == [("pull_up", 4, 15.0)] * 4


def test_a_warning_sign_beside_another_name_still_stops(two):
    answer = two.answer("mira", "tom did 4x3 at 50 and something popped in my elbow", "18:00")
    assert "Stop training now" in answer
    assert "are they yours?" in answer
    assert told(two) == []


@pytest.mark.parametrize(
    "words",
    [
        "mira 4x4 at 15", "Inês, 4x4 at 15 done", "Anna, I did 4x4 +15", "Tom and I 4x4 +15", "dips 3x8 with Tom",
        "today 4x4 +15", "max 4x4 +15", "done 4x4 at 15",
    ],
)  # fmt: skip
def test_her_own_name_her_coachs_and_who_is_spoken_to_are_no_doubt(two, words):
    assert "are they yours?" not in two.answer("mira", words, "18:00")
    assert told(two)
