"""Pain told by what it was: "same", "still 3", "worse", in answer to the question for it."""

from __future__ import annotations

import re

from bot.conversation.desk import Buttons, Desk
from bot.conversation.pain_questions import buttons_of, place_in_words
from bot.conversation.words import phrases
from storage.questions import Question

WORDS = re.compile(r"\d+(?:[.,]\d+)?|[^\W\d_]+")
MOST_PAIN = 10


def as_score(desk: Desk, asked: Question, text: str) -> str:
    """The number that words stand for: that of the place's last score, or the one beside "still". Else the words."""
    said: list[str] = WORDS.findall(text.casefold())
    known = phrases("compared")
    numbers = [word for word in said if word[0].isdigit()]
    others = {word for word in said if not word[0].isdigit()}
    small = {*known["small"], *known["same"]}
    if not others or not others <= small or "/" in text:
        return text
    if len(numbers) == 1 and float(numbers[0].replace(",", ".")) <= MOST_PAIN:
        return numbers[0]
    score = _last_score(desk, asked) if not numbers and others & set(known["same"]) else None
    return text if score is None else f"{score:g}"


def is_without_number(text: str) -> bool:
    """ "Worse", "much better today": pain, but no score."""
    said, known = set(WORDS.findall(text.casefold())), phrases("compared")
    return bool(said & set(known["other"])) and said <= {*known["small"], *known["other"]}


def ask_again(desk: Desk, asked: Question) -> tuple[str, Buttons]:
    """The question once more, for the number."""
    assert asked.id is not None
    where = place_in_words(asked, desk.say)
    return desk.say.say("ask-pain-score", place=where), buttons_of(asked.id, desk.say)


def _last_score(desk: Desk, asked: Question) -> float | None:
    """The newest score of the place that is asked about; without a place, of any."""
    site, side = asked.data.get("site"), asked.data.get("side")
    told = [one for one in desk.record.pain if one.score is not None and site in (None, one.site)]
    told = [one for one in told if side in (None, one.side)]
    return told[-1].score if told else None
