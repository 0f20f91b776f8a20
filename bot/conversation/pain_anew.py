"""A score of pain put right at once, in so many words: "actually 2", "doch nur 2", right after "elbow 4"."""

from __future__ import annotations

import re
from dataclasses import replace
from datetime import timedelta

from bot.conversation.desk import Desk
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
        return None
    told = _newest_alone(desk)
    if told is None or told.fact is None or told.score == score:
        return None
    facts.withdraw(desk.tx, "pain", told.fact, desk.now)
    desk.forget()
    entry = PainRead(told.site, told.side, score, told.when)
    return replace(Reading(("pain",)), pain=(entry,), language=desk.athlete.language)


def _said_instead(text: str) -> float | None:
    """The number of a message that is one number and words that put something right."""
    numbers = NUMBER.findall(text)
    if len(numbers) != 1:
        return None
    words = re.findall(r"[^\W\d]+(?:['’][^\W\d]+)?", NUMBER.sub(" ", text.casefold(), count=1).replace("’", "'"))
    anew, small = phrases("anew")["cue"], phrases("anew")["small"]
    if not any(word in anew for word in words) or not all(word in anew or word in small for word in words):
        return None
    score = float(numbers[0].partition("/")[0].strip().replace(",", "."))
    return score if score <= MOST else None


def _newest_alone(desk: Desk) -> PainAnswer | None:
    cause = facts.last_cause(desk.tx, desk.id)
    brought = facts.caused_by(desk.tx, desk.id, cause) if cause is not None else []
    if len(brought) != 1 or brought[0][0] != "pain":
        return None
    found = next((one for one in desk.record.pain if one.fact == brought[0][1]), None)
    return found if found is not None and desk.said_on - found.on <= FRESH else None
