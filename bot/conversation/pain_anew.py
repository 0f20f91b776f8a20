"""A score of pain put right at once, in so many words: "actually 2", "doch nur 2", right after "elbow 4"."""

from __future__ import annotations

import re
from dataclasses import replace
from datetime import timedelta

from bot.conversation.desk import Desk
from bot.conversation.placing import read_alone
from bot.conversation.words import phrases
from bot.reading.reading import PainRead, Reading
from planner.facts import PainAnswer
from storage import facts

MOST = 10
NUMBER = re.compile(r"\d{1,2}(?:[.,]5)?(?:\s*/\s*10)?")
FRESH = timedelta(hours=12)


def put_right(desk: Desk, text: str) -> Reading | None:
    """The newest score with the number that is said instead; None where the words are none of this, or it was no pain.

    What the newest message brought must be that one score: "only 4" after a report may as well be repetitions.
    """
    score = _said_instead(text)
    if score is None:
        return _of_the_place(desk, text)
    told = _newest_alone(desk)
    if told is None or told.fact is None or told.score == score:
        return None
    return in_place_of(desk, told.fact, score)


def _of_the_place(desk: Desk, text: str) -> Reading | None:
    """ "Actually elbow 2": of the place that is named, where it has a score of the last hours."""
    if not any(word in phrases("anew")["cue"] for word in _words(text)):
        return None
    recent = [one for one in desk.record.pain if one.score is not None and desk.said_on - one.on <= FRESH]
    if not recent:
        return None
    alone = read_alone(desk, text)
    if alone.sets or alone.red_flags or len(alone.pain) != 1 or alone.performed_on not in (None, desk.said_on):
        return None
    (now,) = alone.pain
    here = [
        one for one in recent if now.site == one.site and now.side in (None, one.side) and now.when in (None, one.when)
    ]
    told = max(here, key=lambda one: one.fact or 0, default=None)
    if told is None or told.fact is None or now.site is None or now.score in (None, told.score):
        return None
    return in_place_of(desk, told.fact, now.score)


def in_place_of(desk: Desk, fact: int, score: float) -> Reading | None:
    """The told pain with another score; what was told is taken back. None where it stands no longer."""
    told = next((one for one in desk.record.pain if one.fact == fact), None)
    if told is None:
        return None
    facts.withdraw(desk.tx, "pain", fact, desk.now, by=desk.cause)
    desk.forget()
    entry = PainRead(told.site, told.side, score, told.when)
    return replace(Reading(("pain",)), pain=(entry,), performed_on=told.on, language=desk.athlete.language)


def _words(text: str) -> list[str]:
    found: list[str] = re.findall(r"[^\W\d]+(?:'[^\W\d]+)?", text.casefold().replace("’", "'"))
    return found


def newest(desk: Desk) -> list[PainAnswer]:
    """The scores that the newest message brought, whatever came with them."""
    cause = facts.last_cause(desk.tx, desk.id)
    brought = facts.caused_by(desk.tx, desk.id, cause) if cause is not None else []
    own = {fact for kind, fact in brought if kind == "pain"}
    told = [one for one in desk.record.pain if one.fact in own and one.score is not None]
    return [one for one in told if desk.said_on - one.on <= FRESH]


def _said_instead(text: str) -> float | None:
    """The number of a message that is one number and words that put something right."""
    numbers = NUMBER.findall(text)
    if len(numbers) != 1:
        return None
    words = _words(NUMBER.sub(" ", text, count=1))
    anew, small = phrases("anew")["cue"], phrases("anew")["small"]
    if not any(word in anew for word in words) or not all(word in anew or word in small for word in words):
        return None
    score = float(numbers[0].partition("/")[0].strip().replace(",", "."))
    return score if score <= MOST else None


def _newest_alone(desk: Desk) -> PainAnswer | None:
    cause = facts.last_cause(desk.tx, desk.id)
    alone = cause is not None and len(facts.caused_by(desk.tx, desk.id, cause)) == 1
    return next(iter(newest(desk)), None) if alone else None
