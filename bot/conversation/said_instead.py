"""A value told alone after a report: "that was 22.5", "ok 22.5". Put right where it fits one value; else asked."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import asdict, dataclass
from datetime import timedelta

from bot.conversation import pain_anew, told_anew
from bot.conversation.asking import plant_expiry
from bot.conversation.desk import Buttons, Desk
from bot.conversation.placing import message_of
from bot.conversation.reasons import place
from bot.reading.lexicon import book
from bot.reading.mending.fields import NEAR_BODY
from bot.reading.mending.value_alone import ValueAlone
from bot.reading.movements import find_movements
from bot.reading.pain.words import body_words
from bot.reading.reading import Correction, Reading
from planner.facts import Session, WorkSet
from storage import facts, questions

KIND = "value"
WITHIN = timedelta(days=1)
TIMES = 3  # a load told instead is at most so many times the one told first, or so small a part of it
MOST_CHOICES = 6
MOST_PAIN = 10
SAME = 0.06
ASKED = {"sets", "movement", "load_kg", "reps", "bodyweight_kg"}  # doubts that a value alone leaves
MEANT_BY = {"load": "load_kg", "reps": "reps", "effort": "rpe", "seconds": "hold_s"}  # an answer's words


@dataclass(frozen=True)
class Change:
    """One value of what was told last, and what it would be instead. `pain`: the fact whose score it is."""

    field: str
    movement: str
    was: float | None
    now: float
    pain: int | None = None

    @property
    def reading(self) -> Reading:
        which = "last" if self.field == "rpe" else "all"
        return Reading(
            ("correction",), correction=Correction(self.field, self.was, self.now, self.movement, None, which)
        )


def is_sure(change: Change, alone: ValueAlone) -> bool:
    """Whether the one value that it can be is put right unasked: a load in place of a load, or with its unit."""
    return change.field == "load_kg" and bool(change.was or alone.named or alone.value != int(alone.value))


def is_left_open(reading: Reading) -> bool:
    """Whether a reading of a value alone says not for sure what it is of."""
    if any(one.reps is not None or one.hold_s is not None for one in reading.sets):
        return "correction" in reading.intents and reading.correction is None  # of the one movement told last
    if reading.correction is not None:
        made = reading.correction
        return made.movement is None and made.side is None and made.was is None and made.which == "all"
    asked = {doubt.about for doubt in reading.ask}
    wanted = set(reading.intents) - {"report", "bodyweight"} if asked else set(reading.intents)
    return asked <= ASKED and wanted <= {"smalltalk", "unknown"} and reading.bodyweight_kg is None and not reading.pain


def changes(desk: Desk, alone: ValueAlone) -> list[Change]:
    """What the value can be of: the pain that the newest message told, and the last report of the day before."""
    pains = list(_scores(desk, alone))
    return [*pains, *_of_the_report(desk, alone)][: MOST_CHOICES if pains else None]


def _scores(desk: Desk, alone: ValueAlone) -> Iterator[Change]:
    for told in pain_anew.newest(desk) if alone.value <= MOST_PAIN and not alone.named else ():
        if told.score != alone.value:
            yield Change("score", "", told.score, alone.value, told.fact)


def _of_the_report(desk: Desk, alone: ValueAlone) -> list[Change]:
    session = _last_report(desk)
    if session is None:
        return []
    found = list(_loads(desk, session.sets, alone)) if "load_kg" in alone.fields else []
    names = list(dict.fromkeys(work.movement for work in session.sets))
    for field in ("reps", "hold_s"):
        for name in names if field in alone.fields else ():
            told = {getattr(work, field) for work in session.sets if work.movement == name}
            was = next(iter(told)) if len(told) == 1 else None
            if was is not None and alone.value <= TIMES * was:
                found.append(Change(field, name, was, alone.value))
    if "rpe" in alone.fields and len(names) == 1:
        found.append(Change("rpe", names[0], None, alone.value))
    as_told = [one for one in found if one.was is not None and abs(one.was - one.now) <= SAME]
    found = as_told[:1] or found  # said again: it reads so already, and that is the answer
    return found if len(found) <= MOST_CHOICES else []


def ask(desk: Desk, alone: ValueAlone, found: Sequence[Change], text: str) -> tuple[str, Buttons]:
    """The question which value it is, with a button for each."""
    questions.expire(desk.tx, desk.person, KIND, desk.now)
    data = {"sent_at": desk.said_at.isoformat(), "changes": [asdict(one) for one in found]}
    asked = questions.ask(desk.tx, desk.person, KIND, desk.now, text=text, span=alone.span, cause=desk.cause, data=data)
    plant_expiry(desk)
    buttons = [(_label(desk, one), f"q:{asked}:#{at}") for at, one in enumerate(found)]
    return desk.say.say("ask-value", span=alone.span), buttons


def completed(desk: Desk, question: questions.Question, answer: str) -> tuple[Reading, str] | None:
    """The correction that a button or a few words choose, or sets told anew; None where the words are neither."""
    found = [Change(**one) for one in question.data["changes"]]
    if answer.startswith("#") and answer[1:].isdecimal():
        chosen = _read(desk, found[int(answer[1:])]) if int(answer[1:]) < len(found) else None
    else:
        named = _named(desk, found, answer)
        chosen = _read(desk, named[0]) if len(named) == 1 else told_anew.in_place_of_old(desk, answer)
    if chosen is None:
        return None
    assert question.id is not None
    questions.close(desk.tx, question.id, desk.now)
    return chosen, question.text


def _read(desk: Desk, change: Change) -> Reading | None:
    return change.reading if change.pain is None else pain_anew.in_place_of(desk, change.pain, change.now)


def _named(desk: Desk, found: Sequence[Change], answer: str) -> list[Change]:
    """The changes that an answer of a few words speaks of: "reps", "the dips", "weight of the pull-ups"."""
    message = message_of(desk, answer)
    if any(token.value is not None for token in message.tokens):
        return []
    site = _site_named(desk, found, answer)
    if site:
        return site
    moves = {one.movement for one in find_movements(message)}
    kinds = {MEANT_BY.get(hit.name) for hit in book(message.language, "answers").find(message.tokens)} - {None}
    if not moves and not kinds:
        return []
    return [one for one in found if (not moves or one.movement in moves) and (not kinds or one.field in kinds)]


def _site_named(desk: Desk, found: Sequence[Change], answer: str) -> list[Change]:
    """The scores whose place an answer names: "the elbow", "pain"."""
    message = message_of(desk, answer)
    scores = [one for one in found if one.pain is not None]
    words = body_words(message)
    if words is None or not scores:
        return []
    told = {one.fact: one for one in desk.record.pain}
    if not (words.sites or words.sides or words.pain_words):
        return []
    sites, sides = {hit.name for hit in words.sites}, set(words.sides.values())
    fitting = [told[one.pain] for one in scores if one.pain in told]
    kept = {one.fact for one in fitting if (not sites or one.site in sites) and (not sides or one.side in sides)}
    return [one for one in scores if one.pain in kept]


def _last_report(desk: Desk) -> Session | None:
    """The report that was told last, where that is no more than a day before."""
    reports = [one for one in desk.record.sessions if one.sets and not one.is_test and one.fact is not None]
    last = max(reports, key=lambda one: one.fact or 0, default=None)
    told_at = facts.said_at(desk.tx, "session", last.fact) if last is not None and last.fact is not None else None
    return last if told_at is not None and abs(desk.said_at - told_at) <= WITHIN else None


def _loads(desk: Desk, sets: Sequence[WorkSet], alone: ValueAlone) -> Iterator[Change]:
    loaded = list(dict.fromkeys((work.movement, work.load_kg) for work in sets if work.load_kg > 0))
    for movement, was in loaded:
        if was <= TIMES * alone.kg and alone.kg <= TIMES * was:
            yield Change("load_kg", movement, was, alone.kg)
    body = desk.review.bodyweight_kg
    of_body = body is not None and abs(alone.kg - body) <= NEAR_BODY * body
    names = {work.movement for work in sets}
    if not loaded and len(names) == 1 and not of_body:
        yield Change("load_kg", next(iter(names)), 0.0, alone.kg)


def _label(desk: Desk, change: Change) -> str:
    say = desk.say
    if change.pain is not None:
        told = next(one for one in desk.record.pain if one.fact == change.pain)
        where = place(told.site, told.side, say) if told.site else say.say("pain-somewhere")
        was, now = (say.number(one) for one in (change.was or 0.0, change.now))
        return say.say("choice-value-score", place=where, was=was, now=now)
    movement = say.movement(change.movement)
    if change.field == "load_kg":
        was, now = (say.load(one) for one in (change.was or 0.0, change.now))
        return say.say("choice-value-load", movement=movement, was=was, now=now)
    if change.field in ("reps", "hold_s"):
        was, now = (say.number(one) for one in (change.was or 0.0, change.now))
        return say.say(f"choice-value-{change.field}", movement=movement, was=was, now=now)
    return say.say("choice-value-effort", movement=movement, now=say.number(change.now))
