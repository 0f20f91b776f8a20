"""Who waits for the coach: the weekly message quotes it, and one tap settles it."""

from __future__ import annotations

import pytest

from bot.conversation.coach_waiting import LONGEST
from tests.bot.conversation.conftest import MONDAY, Chat, athlete

LATER = "2027-01-13"  # the second Wednesday: two sessions without a word


def summary(chat, at="19:00", day=MONDAY):
    return chat.says("coach", "summary", at, day)[-1]


def press(chat, label, at, day=MONDAY):
    return chat.says("coach", None, at, day, press=label)


def test_a_message_that_waits_is_quoted_with_its_day(chat):
    chat.answer("mira", "tell the coach my grip feels weak", "18:00")

    assert "Mira: wrote on Mon 4 Jan: “tell the coach my grip feels weak”" in summary(chat)["text"]


def test_of_several_the_newest_are_quoted_and_all_are_counted(chat):
    for minute, words in enumerate(("my grip feels weak", "my belt broke", "the hall is cold")):
        chat.answer("mira", f"tell the coach {words}", f"18:0{minute}")
    shown = summary(chat)["text"]

    assert "3 messages wait for your answer since Mon 4 Jan" in shown
    assert "belt broke" in shown
    assert "hall is cold" in shown
    assert "grip" not in shown


def test_a_long_message_is_cut_at_a_word(chat):
    chat.answer("mira", "tell the coach " + "very long words " * 40, "18:00")
    shown = summary(chat)["text"]

    assert " …”" in shown
    assert len(shown) < LONGEST + 200


def test_one_tap_settles_what_needs_no_answer(chat):
    chat.answer("mira", "tell the coach thanks", "18:00")
    assert summary(chat)["buttons"] == ["No answer needed: Mira"]
    (told,) = press(chat, "No answer needed: Mira", "19:01")[:1]

    assert told["text"] == "Mira: one message needs no answer."
    assert "Nobody needs you" in summary(chat, "19:02")["text"]


def test_what_came_after_the_summary_is_not_settled_unseen(chat):
    chat.answer("mira", "tell the coach thanks", "18:00")
    summary(chat)
    chat.answer("mira", "tell the coach my elbow strap broke", "19:01")
    press(chat, "No answer needed: Mira", "19:02")

    assert "strap broke" in summary(chat, "19:03")["text"]


@pytest.mark.parametrize(("language", "words"), [("en", "Inês asks"), ("de", "Inês fragt"), ("es", "Inês pregunta")])
def test_one_tap_asks_who_is_silent_once_a_day_in_their_language(language, words):
    chat = Chat(athlete("tom", language=language))
    chat.waits_until("07:00")
    chat.waits_until("09:00", LATER)
    assert summary(chat, "09:01", LATER)["buttons"] == ["Ask how it goes: Tom"]
    first = press(chat, "Ask how it goes: Tom", "09:02", LATER)
    again = press(chat, "Ask how it goes: Tom", "09:03", LATER)
    chat.close()

    assert [one["text"].startswith(words) for one in first if one["to"] == "tom"] == [True]
    assert not [one for one in again if one["to"] == "tom"]


def test_who_has_answered_meanwhile_is_not_asked():
    chat = Chat(athlete("tom"))
    chat.waits_until("07:00")
    chat.waits_until("09:00", LATER)
    summary(chat, "09:01", LATER)
    chat.answer("tom", "sorry, was travelling, pull-ups 4x4 +10", "09:02", LATER)
    told = press(chat, "Ask how it goes: Tom", "09:03", LATER)
    chat.close()

    assert not [one for one in told if one["to"] == "tom"]
