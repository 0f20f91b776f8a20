"""A question that nobody here knows: offered to be passed on, never answered with a thumb up."""

from __future__ import annotations

import pytest


@pytest.mark.parametrize(
    "words", ["what should I eat before it?", "what grip should I use?", "is it ok to have a beer?"]
)
def test_a_question_is_offered_to_the_coach_and_a_button_passes_it_on(chat, words):
    chat.waits_until("08:00")
    offered = chat.says("mira", words, "09:00")[-1]
    assert offered["buttons"] == ["Pass it on"]
    assert not chat.to_coach()

    told = chat.says("mira", None, "09:01", press="Pass it on")
    assert any(one["to"] == "coach" and words in one["text"] for one in told)


def test_a_plain_yes_passes_it_on(chat):
    chat.waits_until("08:00")
    chat.answer("mira", "what grip should I use?", "09:00")
    assert chat.answer("mira", "yes please", "09:01") == "Passed on to your coach."


def test_a_yes_to_nothing_passes_nothing_on(chat):
    chat.waits_until("08:00")
    chat.answer("mira", "yes please", "09:01")
    assert not chat.to_coach()


def test_known_questions_are_answered(chat):
    chat.waits_until("08:00")
    for words in ("what's on today?", "why less weight today?", "how far am I from the next rung?"):
        assert "pass it on" not in chat.answer("mira", words, "09:00")


def test_an_answer_that_names_no_day_takes_nobody_away(chat):
    chat.waits_until("08:00")
    assert "which days" in chat.answer("mira", "missed the last two sessions", "09:00")
    chat.answer("mira", "nope all good", "09:01")
    assert not chat.record().absences
    assert not chat.record().moves


def test_a_weight_beyond_belief_is_not_waved_through(chat):
    chat.waits_until("08:00")
    assert "71.8" in chat.answer("mira", "oh and 71.8 on the scale this morning", "09:00")


@pytest.mark.parametrize(
    ("language", "words", "said"),
    [
        ("en", "I want to swap the dips for pushups", "is Inês's to decide"),
        ("en", "can I do chin-ups instead of pull-ups?", "is Inês's to decide"),
        ("en", "chins instead of pull ups today ok?", "is Inês's to decide"),
        ("en", "can I swap the archers for something else, rings are away", "is Inês's to decide"),
        ("en", "I'd rather do chin-ups than pull-ups", "is Inês's to decide"),
        ("de", "ich würde lieber Liegestütze statt Klimmzüge machen", "entscheidet Inês"),
        ("de", "Klimmzüge bitte durch Chin-ups ersetzen", "entscheidet Inês"),
        ("es", "quiero cambiar los fondos por flexiones", "lo decide Inês"),
    ],
)
def test_a_wish_for_other_movements_is_the_coach_s(of_language, language, words, said):
    chat = of_language(language)
    chat.waits_until("08:00")
    before = len(chat.record().sessions)

    assert said in chat.answer("mira", words, "09:00")
    assert words in chat.to_coach()[-1]["text"]
    assert len(chat.record().sessions) == before


@pytest.mark.parametrize(
    "words",
    ["chin-ups 4x4 +10 instead of pull-ups", "did chin-ups instead of pull-ups", "can I do pull-ups on friday?"],
)
def test_what_was_done_or_moves_is_no_wish_for_other_movements(chat, words):
    chat.waits_until("08:00")

    assert "to decide" not in chat.answer("mira", words, "09:00")


@pytest.mark.parametrize(
    ("language", "words"),
    [
        ("en", "how much should I rest between sets"),
        ("en", "can you make it lighter next time"),
        ("de", "wie atme ich dabei richtig"),
        ("es", "cuánto descanso entre series"),
    ],
)
def test_a_question_needs_no_question_mark(of_language, language, words):
    chat = of_language(language)
    chat.waits_until("08:00")
    chat.answer("mira", words, "09:00")

    assert chat.heard[-1]["buttons"]


def test_who_pauses_is_not_passed_on(chat):
    chat.waits_until("08:00")

    assert "Passed on" not in chat.answer("mira", "pausing for a week", "09:00")
    assert not chat.to_coach()
