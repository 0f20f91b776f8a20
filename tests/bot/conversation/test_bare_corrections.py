"""A value put right with an excuse and no word of what it is: asked, never waved through."""

from __future__ import annotations

import pytest


@pytest.mark.parametrize("words", ["sorry, that was 8.5", "sorry, it was 4", "sorry 22"])
def test_a_value_alone_is_asked_about(chat, words):
    chat.waits_until("08:00")
    chat.answer("mira", "pull ups 5x3 +20", "18:00")

    asked = chat.answer("mira", words, "18:01")
    assert "reps" in asked
    assert "added weight" in asked


@pytest.mark.parametrize("words", ["sorry, that was 22.5 kg", "sorry, that was 22.5", "apologies, it was 22.5"])
def test_a_value_that_can_only_be_a_load_is_put_right(chat, words):
    chat.waits_until("08:00")
    chat.answer("mira", "pull ups 5x3 +20", "18:00")

    assert "+22.5 kg" in chat.answer("mira", words, "18:01")


def test_an_excuse_without_a_value_is_talk(chat):
    chat.waits_until("08:00")

    assert chat.answer("mira", "sorry!", "18:01").startswith("👍")


@pytest.mark.parametrize("words", ["no wait, it was 22.5", "hang on, it was 22.5", "sorry, that was 22.5"])
def test_another_value_is_put_right_beside_an_open_question(chat, words):
    chat.waits_until("08:00")
    assert "“9”" in chat.answer("mira", "pull ups 4x4 +20, last set 9", "18:00")

    answer = chat.answer("mira", words, "18:01")
    assert "+22.5 kg" in answer
    assert "+20 kg" not in answer
    assert "“9”" in answer  # still to be answered
    pressed = chat.says("mira", None, "18:02", press="RPE 9")
    assert any("4×4 +22.5 kg, last RPE 9" in one["text"] for one in pressed)
