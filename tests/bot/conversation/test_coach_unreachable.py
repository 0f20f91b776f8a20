"""A coach whose chat is blocked: what is owed to them waits, and athletes are told the truth."""

import pytest

from bot.channels.rehearsal import CHANNEL
from bot.clock import SystemClock
from storage import chats, outbox
from storage.persons import Who

SIGN = {
    "en": ("I heard a loud pop in my elbow", "I could not reach your coach", "Your coach knows"),
    "de": ("Es hat laut im Ellbogen geknallt", "Deinen Coach konnte ich nicht erreichen", "Dein Coach weiß Bescheid"),
    "es": ("sentí un chasquido fuerte en el codo", "No pude contactar con tu coach", "Tu coach lo sabe"),
}


def block(chat, at, blocked=True):
    chat.waited("coach", "", at, at, kind="member", blocked=blocked)


@pytest.mark.parametrize("language", SIGN)
def test_a_warning_sign_waits_for_a_coach_who_is_blocked_and_the_athlete_is_told(of_language, language):
    words, unreached, known = SIGN[language]
    chat = of_language(language)
    block(chat, "2027-01-04T09:00")
    answer = chat.answer("mira", words, "09:10")
    assert unreached in answer
    assert known not in answer
    assert not [one for one in chat.to_coach() if "training is stopped" in one["text"]]
    block(chat, "2027-01-07T09:00", False)
    assert len([one for one in chat.to_coach() if "training is stopped" in one["text"]]) == 1


@pytest.mark.parametrize("language", SIGN)
def test_with_a_coach_who_can_be_reached_nothing_changes(of_language, language):
    words, unreached, known = SIGN[language]
    answer = of_language(language).answer("mira", words, "09:10")
    assert known in answer
    assert unreached not in answer


@pytest.mark.parametrize(
    "words",
    [
        "tell the coach my grip feels weak",
        "elbow 7/10 after training",
        "stop sending me messages",
        "my doctor says I should not hang for two weeks",
    ],
)
def test_nobody_is_told_that_the_coach_knows_who_does_not(chat, words):
    block(chat, "2027-01-04T09:00")
    answer = chat.answer("mira", words, "09:10")
    assert "I could not reach your coach" in answer
    assert "assed" not in answer
    assert "coach knows" not in answer


def test_words_for_the_coach_outlast_days_of_being_blocked(chat):
    block(chat, "2027-01-04T09:00")
    chat.answer("mira", "tell the coach my grip feels weak", "09:10")
    chat.waits_until("09:00", "2027-01-09")
    block(chat, "2027-01-09T09:10", False)
    assert len([one for one in chat.to_coach() if "my grip feels weak" in one["text"]]) == 1


def test_a_coach_who_writes_can_be_reached_again(chat):
    block(chat, "2027-01-04T09:00")
    chat.answer("mira", SIGN["en"][0], "09:10")
    chat.answer("coach", "help", "09:20")
    assert [one for one in chat.to_coach() if "training is stopped" in one["text"]]


def test_what_waits_at_a_blocked_chat_goes_to_a_new_one_once(chat):
    block(chat, "2027-01-04T09:00")
    chat.answer("mira", SIGN["en"][0], "09:10")
    now = SystemClock().now()
    with chat.store.transaction() as tx:
        chats.bind_chat(tx, CHANNEL, "second", Who("coach", 1), now)
        outbox.hand_over(tx, Who("coach", 1), now)
        outbox.hand_over(tx, Who("coach", 1), now)
    with chat.store.reading() as tx:
        owed = [one.address for one in outbox.posted_since(tx, 0, "", 1) if "training is stopped" in one.text]
    assert owed == ["second"]


def test_a_second_chat_of_the_coach_gets_what_stands_and_the_old_one_nothing_twice(chat):
    chat.answer("mira", "elbow 7/10 after training", "18:00")
    chat.waits_until("12:00", "2027-01-05")
    before = [one["text"] for one in chat.to_coach()]
    standing = [text for text in before if "7/10" in text]
    assert len(standing) == 1
    now = SystemClock().now()
    with chat.store.transaction() as tx:
        chats.bind_chat(tx, CHANNEL, "second", Who("coach", 1), now)
    chat.waits_until("12:00", "2027-01-07")
    with chat.store.reading() as tx:
        told = [one.address for one in outbox.posted_since(tx, 0, "", 1) if one.text in standing]
    assert sorted(told) == ["coach", "second"]
