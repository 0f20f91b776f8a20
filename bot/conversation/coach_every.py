"""Orders for a day of each week, "every monday": which days are meant, and how long it goes on."""

from __future__ import annotations

from datetime import date, timedelta

from bot.conversation.coach_days import weekdays
from bot.conversation.coach_vocabulary import marks, vocabulary
from planner.plan import BlockPosition

DAYS = 7
WEEK = timedelta(days=DAYS)
WEEKS_ALONE = 4  # without a block to go by; common practice, no source
MOST_DAYS = 30
SHORTEST = 5  # letters of a day's whole name


def every_of(folded: str, language: str) -> tuple[frozenset[int], str]:
    """The weekdays (Monday 0) that are named as those of every week, and the words without them."""
    words, named, left = folded.split(), set[int](), list[str]()
    at = 0
    while at < len(words):
        count = _mark_at(words, at, language)
        end = at + count
        while count and end < len(words) and (words[end] in weekdays(language) or _goes_on(words, end, language)):
            if words[end] in weekdays(language):
                named.add(weekdays(language)[words[end]])
            end += 1
        if count and end > at + count:
            at = end
            continue
        plural = words[at].removesuffix("s")
        if plural != words[at] and len(plural) > SHORTEST and words[at] not in weekdays(language):
            day = weekdays(language).get(plural)
        else:
            day = None
        if day is not None:  # "mondays"
            named.add(day)
        else:
            left.append(words[at])
        at += 1
    return (frozenset(named), f" {' '.join(left)} ") if named else (frozenset(), folded)


def _mark_at(words: list[str], at: int, language: str) -> int:
    """How many words of a mark stand here: "every", "todos los"."""
    phrases = [phrase.split() for phrase in vocabulary(language, "words")["every"]]
    return max((len(phrase) for phrase in phrases if words[at : at + len(phrase)] == phrase), default=0)


def _goes_on(words: list[str], at: int, language: str) -> bool:
    """ "and" between two days."""
    return words[at] in marks(language, "and") and at + 1 < len(words) and words[at + 1] in weekdays(language)


def days(meant: frozenset[int], since: date, until: date | None, block: BlockPosition | None) -> list[date]:
    """The days of an order for every week; without an end those of the block's loading weeks, or, where none of them
    is ahead, of the next block's: a deload is not ordered away by the way."""
    first, last = since, until
    if last is None and block is not None:
        loading = block.loading_weeks * WEEK
        last = block.starts_on + loading - timedelta(days=1)
        if block.deload or not _between(meant, first, last):
            first, last = block.ends_on + timedelta(days=1), block.ends_on + loading
    return _between(meant, first, last or since + WEEKS_ALONE * WEEK - timedelta(days=1))[:MOST_DAYS]


def _between(meant: frozenset[int], first: date, last: date) -> list[date]:
    ahead = (first + timedelta(number) for number in range((last - first).days + 1))
    return [day for day in ahead if day.weekday() in meant]
