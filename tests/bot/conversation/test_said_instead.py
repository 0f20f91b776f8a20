"""A value told alone after a report puts the one value right that it fits, or is asked about; it is never talk."""

from __future__ import annotations

import pytest

from tests.bot.conversation.conftest import Chat

TUESDAY, WEDNESDAY = "2027-01-05", "2027-01-06"
REPORT = {"en": "pull ups 5x3 +20", "de": "Klimmzüge 5x3 +20", "es": "dominadas 5x3 +20"}


def loads(chat: Chat, movement: str = "pull_up") -> list[float]:
    told = [one for one in chat.record().sessions if not one.is_test]
    return [work.load_kg for one in told for work in one.sets if work.movement == movement]


@pytest.mark.parametrize(
    ("language", "words"),
    [
        ("en", "that was 22.5"),
        ("en", "actually 22.5"),
        ("en", "it was 22.5 kg"),
        ("en", "ok 22.5"),
        ("en", "sorry, the load was 22.5"),
        ("en", "nice, 22.5!"),
        ("en", "that was 22"),
        ("de", "das war 22,5"),
        ("de", "eigentlich 22,5"),
        ("de", "es waren 22,5 kg"),
        ("de", "ok 22,5"),
        ("de", "sorry, das Gewicht war 22,5"),
        ("es", "eran 22,5"),
        ("es", "en realidad 22,5"),
        ("es", "fueron 22,5 kg"),
        ("es", "vale 22,5"),
        ("es", "perdón, el lastre era 22,5"),
    ],
)
@pytest.mark.parametrize(("day", "at"), [("2027-01-04", "18:01"), (TUESDAY, "07:40")])
def test_the_one_load_it_fits_is_put_right_within_a_day(of_language, language, words, day, at):
    chat = of_language(language)
    chat.answer("mira", REPORT[language], "18:00")
    said = chat.answer("mira", words, at, day)

    now = 22.0 if words.endswith(" 22") else 22.5
    assert f"5×3 +{chat_number(now, language)} kg" in said
    assert loads(chat) == [now] * 5


def chat_number(value: float, language: str) -> str:
    return f"{value:g}" if language == "en" else f"{value:g}".replace(".", ",")


def test_two_loaded_movements_are_asked_about_and_a_button_settles_it(chat):
    chat.answer("mira", "pull ups 5x3 +20, dips 3x8 +10", "18:00")
    asked = chat.says("mira", "that was 22.5", "18:01")[-1]
    assert asked["buttons"] == ["pull-ups: 20 kg → 22.5 kg", "dips: 10 kg → 22.5 kg"]

    chat.says("mira", None, "18:02", press="pull-ups: 20 kg → 22.5 kg")
    assert loads(chat) == [22.5] * 5
    assert loads(chat, "dip") == [10.0] * 3


@pytest.mark.parametrize("answer", ["the pull-ups", "pull-ups 5x3 +22.5"])
def test_the_movement_or_the_sets_anew_settle_it_too(chat, answer):
    chat.answer("mira", "pull ups 5x3 +20, dips 3x8 +10", "18:00")
    chat.answer("mira", "sorry, that was 22.5", "18:01")
    chat.answer("mira", answer, "18:02")
    assert loads(chat) == [22.5] * 5


def test_what_reads_so_already_is_said_to(chat):
    chat.answer("mira", "pull ups 5x3 +20, dips 3x8 +10", "18:00")
    assert "already reads" in chat.answer("mira", "ok 20", "18:01")


def test_a_set_without_weight_beside_it_keeps_none(chat):
    chat.answer("mira", "pull-ups 1x3 bodyweight, then pull-ups 5x3 +20", "18:00")
    chat.answer("mira", "actually 22.5", "18:01")
    assert loads(chat) == [0.0, *[22.5] * 5]


def test_what_can_be_reps_or_effort_is_asked_about(chat):
    chat.answer("mira", "pull ups 5x6 +15", "18:00")
    asked = chat.says("mira", "that was 7", "18:01")[-1]
    assert asked["buttons"] == ["pull-ups: 15 kg → 7 kg", "pull-ups: 6 → 7 reps", "pull-ups: last set RPE 7"]
    assert "last RPE 7" in chat.says("mira", None, "18:02", press="pull-ups: last set RPE 7")[-1]["text"]


def test_seconds_of_a_hold_are_no_load(chat):
    chat.answer("mira", "L-sit 3x20s", "18:00")
    assert "L-sit: 20 → 25 s" in chat.says("mira", "that was 25", "18:01")[-1]["buttons"]
    assert "L-sit 3×25 s" in chat.answer("mira", "seconds", "18:02")


@pytest.mark.parametrize("words", ["ok see you tomorrow, 22.5", "cheers mate, 25 kg"])
def test_a_number_that_looks_like_a_load_is_never_talk(chat, words):
    assert "“2" in chat.answer("mira", words, "18:01")


def test_reps_are_never_changed_unasked(chat):
    chat.answer("mira", "pull ups 5x3 +20", "18:00")
    assert chat.says("mira", "that was 4", "18:01")[-1]["buttons"] == ["pull-ups: 3 → 4 reps"]
    assert "5×4 +20 kg" in chat.answer("mira", "reps", "18:02")


@pytest.mark.parametrize("words", ["ok 22.5", "that was 22.5", "thanks, 22"])
@pytest.mark.parametrize("day", ["2027-01-04", WEDNESDAY])
def test_without_a_report_of_the_last_day_it_is_asked_what_it_is_of(chat, words, day):
    if day == WEDNESDAY:
        chat.answer("mira", "pull ups 5x3 +20", "18:00")
    assert chat.answer("mira", words, "18:01", day).startswith("“22")
    assert 22.5 not in loads(chat)


def test_a_score_with_a_small_word_answers_the_question_for_pain(chat):
    chat.answer("mira", "pull ups 5x3 +20", "18:00")
    chat.answer("mira", "ok 2", "18:01")
    assert [one.score for one in chat.record().pain] == [2.0]


@pytest.mark.parametrize("words", ["see you at 18", "happy 2027!", "my cat is 15 today"])
def test_talk_with_a_number_of_its_own_stays_talk(chat, words):
    chat.answer("mira", "pull ups 5x3 +20", "18:00")
    assert chat.answer("mira", words, "18:01").startswith("👍")


def test_a_bodyweight_is_no_load(chat):
    chat.answer("mira", "pull ups 5x3", "18:00")
    chat.answer("mira", "it was 62.5 kg", "18:01")
    assert 62.5 not in loads(chat)
