"""A session goes to another day: told to, or asked whether it may.

Where it does not fit nothing is moved, whoever says so, and the nearest day that would fit is offered. Who asks for
leave ("can I train tomorrow instead of Thursday?") is told how to take it back; who asks for advice ("should I …?")
decides on the answer.
"""

from __future__ import annotations

from datetime import date

from bot.conversation import asked_by_them
from bot.conversation.desk import Buttons, Desk
from bot.conversation.outcomes import is_done, nearest_that_fits, outcome
from bot.conversation.words import phrases
from bot.reading.reading import Reading, Span
from planner.facts import Move
from storage import questions

KIND = "move"


def move(desk: Desk, reading: Reading, text: str) -> tuple[str, Buttons]:
    """The answer, and a button where it offers something."""
    say = desk.say
    if reading.dates is None or reading.dates.start is None or reading.dates.end is None:
        return say.say("move-unclear"), []
    since, until = reading.dates.start, reading.dates.end
    if is_done(desk, since):
        return f"{say.say('move-done-already', day=say.day(since))} {next_training(desk)}".strip(), []
    if since == until:
        return f"{say.say('move-stays', day=say.day(since))} {next_training(desk)}".strip(), []
    if not desk.plan(since).sets and not _was_planned(desk, since):
        return say.say("move-nothing", day=say.day(since)), []
    if asked_by_them.asks_for_advice(text):
        return _advice(desk, since, until)
    if not outcome(desk, since, until).fits:
        return _no_room(desk, since, until)
    if not asked_by_them.asks(text):
        return carry_out(desk, since, until), []
    return " ".join((say.say("move-granted"), carry_out(desk, since, until), say.say("can-be-undone"))), []


def carry_out(desk: Desk, since: date, until: date) -> str:
    """Move the session of `since` to where it fits, and say what came of it."""
    say, found = desk.say, outcome(desk, since, until)
    desk.add(Move(desk.said_on, since, until))
    done = say.say("move-done", since=say.day(since), until=say.day(until))
    return " ".join((done, *found.besides_in_words(say), next_training(desk))).strip()


def next_training(desk: Desk) -> str:
    following = desk.review.next_training_on
    return desk.say.say("next-training", day=desk.say.long_day(following)) if following else ""


def completed(desk: Desk, question: questions.Question, answer: str) -> tuple[Reading, str] | None:
    """The move that was offered, where a button or a plain yes takes it up; None where the words are neither."""
    if answer != KIND and answer.strip(" .!").casefold() not in phrases("agreed")["yes"]:
        return None
    assert question.id is not None
    questions.close(desk.tx, question.id, desk.now)
    since, until = (date.fromisoformat(question.data[end]) for end in ("since", "until"))
    return Reading(("move",), dates=Span(since, until), language=desk.athlete.language), ""


def _advice(desk: Desk, since: date, until: date) -> tuple[str, Buttons]:
    found, say = outcome(desk, since, until), desk.say
    if not found.fits:
        return _no_room(desk, since, until)
    would = [say.say("move-would-fit", since=say.day(since), until=say.day(until)), *found.besides_in_words(say)]
    return " ".join((*would, say.say("move-shall-i"))), offer(desk, since, until)


def _no_room(desk: Desk, since: date, until: date) -> tuple[str, Buttons]:
    say = desk.say
    told = say.say("move-would-not-fit", since=say.day(since), until=say.day(until))
    other = nearest_that_fits(desk, since, until)
    if other is None:
        return told, []
    return f"{told} {say.say('move-other-day', day=say.day(other))}", offer(desk, since, other)


def offer(desk: Desk, since: date, until: date) -> Buttons:
    """The button; an offer that was not taken up lapses with the next."""
    questions.expire(desk.tx, desk.person, KIND, desk.now)
    data = {"since": since.isoformat(), "until": until.isoformat()}
    asked = questions.ask(desk.tx, desk.person, KIND, desk.now, cause=desk.cause, data=data)
    return [(desk.say.say("button-move", day=desk.say.day(until)), f"q:{asked}:{KIND}")]


def _was_planned(desk: Desk, day: date) -> bool:
    sent = desk.record.sent_by_day.get(day)
    return sent is not None and bool(sent.sets)
