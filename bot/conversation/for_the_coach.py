"""A question that the bot knows nothing of: it is offered to be passed on, and never waved through."""

from __future__ import annotations

from bot.conversation import asked_by_them, passing_on
from bot.conversation.answers import Said
from bot.conversation.desk import Buttons, Desk
from bot.conversation.placing import message_of
from bot.conversation.words import phrases, starts
from bot.reading.pain.words import body_words
from storage import questions

KIND = "pass"
FEWEST_WORDS = 3
MOST_CHARACTERS = 120


def is_one(text: str) -> bool:
    """Whether a message asks for something, or tells of a grief that a thumb up is no answer to."""
    asks = "?" in text or asked_by_them.begins_as_question(text)
    return is_sad(text) or (len(text.split()) >= FEWEST_WORDS and asks)


def offer(desk: Desk, text: str) -> tuple[str, Buttons]:
    """The offer, with its button; one that was not taken up lapses with the next."""
    questions.expire(desk.tx, desk.person, KIND, desk.now)
    asked = questions.ask(desk.tx, desk.person, KIND, desk.now, text=text, cause=desk.cause)
    say = desk.say
    key = "ask-pass-on"
    if is_sad(text):
        key = "ask-pass-on-sad"
    elif are_days(text):
        key = "ask-pass-on-days"
    elif _is_of_the_body(desk, text):
        key = "ask-pass-on-body"
    return say.say(key, coach=desk.coach.name), [(say.say("button-pass-on"), f"q:{asked}:{KIND}")]


def are_days(text: str) -> bool:
    """Whether a message wishes for other days of training for good: those are the coach's to set."""
    return len(text) <= MOST_CHARACTERS and bool(starts(text.casefold(), phrases("coachs_own")["days"]))


def is_sad(text: str) -> bool:
    """ "My dog died", and not "my phone died"."""
    said, known = text.casefold(), phrases("coachs_own")
    return bool(starts(said, known["sad"])) and not starts(said, known["things"])


def _is_of_the_body(desk: Desk, text: str) -> bool:
    """ "Should I ice my elbow", "is the shoulder thing bad": a place that hurts, or what people treat it with."""
    words = body_words(message_of(desk, text))
    return (words is not None and bool(words.sites)) or bool(starts(text.casefold(), phrases("treatment")["named"]))


def taken_up(desk: Desk, said: Said) -> str | None:
    """Pass the question on, where a button or a plain yes says so; None where nothing does."""
    asked = said.to
    if asked is None and said.text.strip(" .!").casefold() in phrases("agreed")["yes"]:
        asked = next(iter(questions.stood_open(desk.tx, desk.person, desk.said_at)), None)
    if asked is None or asked.kind != KIND or asked.id is None:
        return None
    questions.close(desk.tx, asked.id, desk.now)
    return passing_on.to_coach(desk, asked.text)
