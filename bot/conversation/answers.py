"""What a message or a press answers: the question asked last that it fits, or none."""

from __future__ import annotations

import re
from dataclasses import dataclass, replace
from datetime import date, time

from bot.conversation import (
    asking,
    mind_changed,
    moves,
    one_more,
    open_sets,
    pain_anew,
    pain_compared,
    pain_none,
    pain_questions,
    said_instead,
    swap_wishes,
    travels,
    whose,
)
from bot.conversation.desk import Buttons, Desk
from bot.conversation.followups import told_on
from bot.conversation.placing import context_of, read_alone, read_by_plan
from bot.reading.mending.value_alone import ValueAlone, value_alone
from bot.reading.reading import Reading
from storage import questions
from storage.questions import Question

NUMBER_ALONE = re.compile(r"\s*(\d{1,3}(?:[.,]\d{1,2})?)(?:\s*/\s*10)?\s*")
DIGITS = re.compile(r"\d+(?:[.,]\d+)?")
LOAD_IN_TALK = re.compile(
    r"(?<![\d.,:])(?:\+\s?\d|\d{1,3}(?:[.,](?:25|5|75)(?!\d)|\s?(?:kg|lbs?)\b)|\d{2,3}[.,]\d(?!\d))", re.IGNORECASE
)
MOST_PAIN = 10
PAIN = pain_questions.QUESTION
NUDGED = {"done": "done as planned", "missed": "missed today", "tomorrow": "move today to tomorrow"}
EVENING = time(22)
COMPLETE = {
    asking.KIND: asking.completed,
    moves.KIND: moves.completed,
    open_sets.KIND: open_sets.completed,
    said_instead.KIND: said_instead.completed,
    travels.KIND: travels.completed,
}


@dataclass(frozen=True)
class Said:
    """Words, and the question they answer where a button named it; when they were said, the desk knows."""

    text: str
    to: Question | None = None


@dataclass(frozen=True)
class Understood:
    """`pain`: the question for pain that scores without a place belong to."""

    reading: Reading
    text: str
    pain: Question | None
    completes: str | None = None  # the kind of question that these words answer
    asks: tuple[str, Buttons] | None = None  # what is asked back at once, nothing being sure
    changes: mind_changed.Change | None = None  # what was agreed before, and is to be otherwise
    swaps: bool = False  # one movement is wished for in the place of another


def number_alone(text: str) -> float | None:
    found = NUMBER_ALONE.fullmatch(text)
    return float(found[1].replace(",", ".")) if found else None


def number_in(text: str) -> str:
    """The number that a message is about, as written; the whole of it where it is one in letters."""
    found = DIGITS.search(text)
    return found[0] if found else text.strip()


def understood(desk: Desk, said: Said) -> Understood | None:
    """The reading, of an earlier message where this one completes it. None: a number that answers nothing.

    A number alone answers what was asked last: for pain, for reps, or what an earlier message meant.
    """
    if said.to is None and (told := whose.asked(desk, said.text)) is not None:
        return Understood(told, said.text, None)
    if said.to is None and (more := one_more.told(desk, said.text)) is not None:
        return Understood(more, said.text, None)  # "noch einer" is no score of the pain that is asked for
    if said.to is None and swap_wishes.is_one(desk, said.text):
        return _swap(desk, said.text)
    if said.to is None and (changed := mind_changed.meant(desk, said.text)) is not None:
        # Before all that is asked: "no, rather Tuesday" is no "no pain", and the name of no movement.
        return Understood(Reading(("move",)), said.text, None, changes=changed)
    pain = said.to if said.to is not None and said.to.kind == PAIN else pain_questions.open_question(desk)
    context = context_of(desk, desk.said_at)
    open_ones = questions.stood_open(desk.tx, desk.person, desk.said_at) if said.to is None else [said.to]
    open_ones = [one for one in open_ones if one.kind in COMPLETE or (pain is not None and one.id == pain.id)]
    if pain is not None and said.to is None and open_ones[0].id == pain.id:
        if (each := pain_questions.all_at_once(pain, said.text)) is not None:
            return Understood(replace(each, language=context.language or "en"), said.text, pain)
        if (none := pain_none.told(desk, pain, said.text)) is not None:
            return Understood(none, said.text, pain)
        if pain_none.is_vague(said.text):
            return Understood(Reading(("pain",)), said.text, pain, asks=pain_none.ask_again(desk, pain))
        if pain_compared.is_without_number(said.text):
            return Understood(Reading(("pain",)), said.text, pain, asks=pain_compared.ask_again(desk, pain))
        said = replace(said, text=pain_compared.as_score(desk, pain, said.text))
    alone = value_alone(said.text, context) if said.to is None else None
    if alone is not None and pain is not None and _can_be_score(alone):
        said = replace(said, text=alone.span)  # "ok 2", "thanks, 0"
    number = number_alone(said.text)
    to_pain = number is not None and number <= MOST_PAIN and any(one.kind == PAIN for one in open_ones)
    for question in open_ones:
        if question.kind == PAIN:
            if number is not None and number <= MOST_PAIN:
                break
            continue
        if whose.is_of_nobody_here(desk, question, said.text):
            return Understood(Reading(("smalltalk",)), said.text, None, asks=(desk.say.say("whose-not-noted"), []))
        if to_pain and asking.is_another_number(question, said.text):
            continue
        whole = COMPLETE[question.kind](desk, question, said.text)
        if whole is not None:
            return Understood(*whole, pain, question.kind)
    else:
        if number is not None and alone is None:
            return None
    dated = mind_changed.other_day(desk, said.text) if said.to is None else None
    if dated is not None:
        return Understood(dated, said.text, None)
    anew = pain_anew.put_right(desk, said.text) if number is None and said.to is None else None
    if anew is not None:
        return Understood(anew, said.text, None)
    reading = read_by_plan(desk, said.text, context)
    if alone is not None and said_instead.is_left_open(reading):
        return _value(desk, said, alone, reading, pain)
    if reading.intents == ("smalltalk",) and LOAD_IN_TALK.search(said.text):
        return None  # "see you tomorrow, 22.5": a number that looks like a load is never talk
    if pain is not None and "score" in pain.data and not reading.pain and not reading.sets:
        # The place of a score was asked for: a place alone is no pain until the score stands beside it.
        placed = read_by_plan(desk, f"{said.text} {pain.data['score']:g}/10", context)
        reading = placed if any(one.site is not None for one in placed.pain) else reading
    if pain is None and len(said.text.split()) == 1 and any(one.site is None and one.score for one in reading.pain):
        return None  # a number in letters
    return Understood(reading, said.text, pain)


def _swap(desk: Desk, text: str) -> Understood:
    """A wish for other movements, and what is told beside it of what there is to train with and of pain."""
    told = read_alone(desk, text)
    intents = ("for_coach", *(one for one in told.intents if one in ("equipment", "pain")))
    beside = replace(told, intents=intents, sets=(), dates=None, correction=None, ask=(), unread=())
    return Understood(beside, text, None, swaps=True)


def _can_be_score(alone: ValueAlone) -> bool:
    return alone.value <= MOST_PAIN and not alone.puts_right and not alone.named


def _value(desk: Desk, said: Said, alone: ValueAlone, reading: Reading, pain: Question | None) -> Understood | None:
    """A value and nothing else of weight: of the last report where it fits there; None: it is of nothing known."""
    found = said_instead.changes(desk, alone)
    settled = reading.correction is not None or bool(reading.sets)  # by the words or by the movement told last
    of_pain = any(one.pain is not None for one in found)
    if settled and (not found or (reading.ask and not of_pain and len({one.movement for one in found}) == 1)):
        return Understood(reading, said.text, pain)
    if not found:
        return None
    if len(found) == 1 and said_instead.is_sure(found[0], alone) and number_alone(said.text) is None:
        return Understood(replace(found[0].reading, language=reading.language), said.text, pain)
    return Understood(reading, said.text, pain, asks=said_instead.ask(desk, alone, found, said.text))


def pressed(desk: Desk, data: str) -> Said | None:
    """The words a button stands for: "q:17:3" is 3 to question 17. None: forged, or its time is over."""
    kind, _, rest = data.partition(":")
    which, _, words = rest.partition(":")
    if kind == "q" and which.isdecimal() and len(which) < 18:
        question = questions.find(desk.tx, desk.person, int(which))
        return Said(words, question) if question is not None and _answerable(desk, question) else None
    if kind == "n" and words in NUDGED:
        return _nudged(desk, which, words)
    return None


def _answerable(desk: Desk, question: Question) -> bool:
    if question.kind == PAIN:
        return desk.said_at - question.asked_at <= pain_questions.ANSWERABLE
    return question.answered_at is None and question.expired_at is None


def _nudged(desk: Desk, day: str, words: str) -> Said | None:
    """A nudge's button is said on its day, whenever it is pressed."""
    try:
        asked_on = date.fromisoformat(day)
    except ValueError:
        return None
    over = asked_on < desk.said_on and words == "tomorrow"
    if over or asked_on > desk.said_on or told_on(desk, asked_on):
        return None
    if asked_on != desk.said_on:
        desk.said_at = desk.moment(asked_on, EVENING)
    return Said(NUDGED[words])
