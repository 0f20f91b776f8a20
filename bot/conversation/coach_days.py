"""Days in the coach's orders: "on thursday", "until 1 march", "3 weeks"."""

from __future__ import annotations

import re
from collections.abc import Sequence
from datetime import date, timedelta
from functools import lru_cache

from bot.conversation.coach_vocabulary import marks, plain, vocabulary
from bot.wording.catalogue import FALLBACK, languages

SUNDAY = 6
DAYS_OF = {"day": 1, "week": 7, "month": 30}
ISO = re.compile(r"\d{4}-\d{2}-\d{2}")
ORDINAL = re.compile(r"\d{1,2}(?:st|nd|rd|th|º)?")
YEAR = re.compile(r"20\d\d")


@lru_cache(maxsize=8)
def spans(language: str) -> re.Pattern[str]:
    """ "3 weeks", "3w": the number, then the word in the group of its unit."""
    units, letters = vocabulary(language, "spans").items(), vocabulary(language, "span_letters")
    named = "|".join(
        f"(?P<{unit}>(?:{'|'.join(map(re.escape, stems))})\\w*|(?:{'|'.join(map(re.escape, letters[unit]))})(?!\\w))"
        for unit, stems in units
    )
    return re.compile(rf"(?<![\d.,])(?P<count>\d{{1,3}})\s*(?:{named})", re.IGNORECASE)


@lru_cache(maxsize=8)
def _counted(language: str) -> tuple[re.Pattern[str], dict[str, str]]:
    """ "The next two weeks": the number in words in the group "count", before the word of a span."""
    figures = {word: figure for figure, words in vocabulary(language, "counts").items() for word in words}
    stems = "|".join(re.escape(stem) for stems in vocabulary(language, "spans").values() for stem in stems)
    counts = "|".join(sorted(map(re.escape, figures), key=len, reverse=True))
    coming = "|".join(sorted(map(re.escape, vocabulary(language, "words")["coming"]), key=len, reverse=True))
    return re.compile(
        rf"(?<!\w)(?:(?:{coming})\s+(?=(?:{counts}|\d+)\s))?(?P<count>{counts}|\d+)\s+(?=(?:{stems}))", re.IGNORECASE
    ), figures


def in_figures(text: str, language: str) -> str:
    """The text with the numbers of its spans in figures: "for the next two weeks" is "for 2 weeks"."""
    pattern, figures = _counted(language)
    return pattern.sub(lambda found: f"{figures.get(found['count'].casefold(), found['count'])} ", text)


@lru_cache(maxsize=8)
def weekdays(language: str) -> dict[str, int]:
    """Names and short names of days, with their accents and as thumbs type them; the whole names of every language
    here too, for a coach may write to one athlete as to another."""
    from babel.dates import get_day_names

    found: dict[str, int] = {}
    own = tuple(dict.fromkeys((language.split("-")[0], FALLBACK)))
    for name in (*own, *sorted(languages() - set(own))):
        for width in ("wide", "abbreviated") if name in own else ("wide",):
            for number, word in get_day_names(width, locale=name).items():
                for written in (word.casefold().rstrip("."), plain(word).rstrip(".")):
                    found.setdefault(written, number)
    for day, words in vocabulary(language, "days").items():
        found.update(dict.fromkeys(words, int(day)))
    return found


@lru_cache(maxsize=8)
def month_numbers(language: str) -> dict[str, int]:
    """Names and short names of months, of the language and of English."""
    from babel.dates import get_month_names

    found: dict[str, int] = {}
    for name in dict.fromkeys((language.split("-")[0], FALLBACK)):
        for width in ("wide", "abbreviated"):
            for number, word in get_month_names(width, locale=name).items():
                for written in (word.casefold().rstrip("."), plain(word).rstrip(".")):
                    found.setdefault(written, number)
    return found


def months(language: str) -> frozenset[str]:
    return frozenset(month_numbers(language))


def without_days(text: str, language: str) -> str:
    """The text without the numbers of days: "14 january", "march 1"."""
    named = "|".join(sorted(map(re.escape, months(language)), key=len, reverse=True))
    return re.sub(
        rf"(?i)\b(?:\d{{1,2}}(?:st|nd|rd|th|\.)?\s*(?:de\s+)?(?:{named})|(?:{named})\s+\d{{1,2}}(?:st|nd|rd|th)?)\b"
        r"(?:,?\s+(?:de\s+)?20\d\d\b)?",
        " ",
        text,
    )


def without_spans(text: str, language: str) -> str:
    """The text without "this week", "for 3 weeks" and "until 1 march", which say how long and not what."""
    words = in_figures(text, language).split()
    until = next((at for at, word in enumerate(words) if word.casefold() in marks(language, "until")), len(words))
    left = spans(language).sub(" ", " ".join(words[:until]))
    for span in sorted(vocabulary(language, "words")["this_week"], key=len, reverse=True):
        left = re.sub(rf"(?i)(?<!\w){re.escape(span)}(?!\w)", " ", left)
    named, filler = left.split(), marks(language, "filler")
    while named and named[-1].casefold() in filler:
        named.pop()
    return " ".join(named)


def names_a_day(folded: str, language: str) -> bool:
    """Whether words for a day are there, though no day came of them: "until 29 february"."""
    words = set(folded.split())
    return bool(words & months(language)) or any(
        f" {mark} " in folded for mark in marks(language, "until") if mark != "to"
    )


def from_to(folded: str, today: date, language: str) -> tuple[date | None, date | None]:
    """ "move thursday to friday": the first such day from today, and the first day of the other name around it; of one
    day alone, that to which."""
    days = [day for word in folded.split() if (day := day_of(f" {word} ", today, language)) is not None]
    return (days[0], days[1]) if len(days) > 1 else (None, days[0] if days else None)


def until_of(folded: str, today: date, language: str) -> date | None:
    span = spans(language).search(folded)
    if span and int(span["count"]):
        days = next(days for unit, days in DAYS_OF.items() if span[unit])
        return today + timedelta(days=int(span["count"]) * days)
    marks = vocabulary(language, "words").get("until", [])
    for mark in marks:
        _, found, after = folded.partition(f" {mark} ")
        if found:
            day = day_of(f" {after}", today, language) or _month_of(after, today, language)
            # "Until Monday", said on a Monday: not until today.
            again = day == today and after.split()[0] in weekdays(language)
            return today + timedelta(weeks=1) if again else day
    return None


def _month_of(after: str, today: date, language: str) -> date | None:
    """ "until march": until it begins."""
    word = after.split()[0] if after.strip() else ""
    number = month_numbers(language).get(word)
    return _next_of(date(today.year, number, 1), today) if number is not None else None


def day_of(folded: str, today: date, language: str) -> date | None:
    """The day that is named; of several, the one with a date before a weekday."""
    named = days_named(folded, today, language)
    return next((day for day, words in named if " " in words or ISO.fullmatch(words)), named[0][0] if named else None)


def days_named(folded: str, today: date, language: str) -> list[tuple[date, str]]:
    """Every day that is named, with its words; a weekday beside its own date is no other day."""
    words, found, at = folded.split(), list[tuple[date, str]](), 0
    while at < len(words):
        day, count = _day_at(words, at, today, language)
        if day is not None:
            found.append((day, " ".join(words[at : at + count])))
        at += count
    dated = {day.weekday() for day, said in found if said.split()[0] not in weekdays(language)}
    return [one for one in found if one[1] not in weekdays(language) or one[0].weekday() not in dated]


def _day_at(words: Sequence[str], at: int, today: date, language: str) -> tuple[date | None, int]:
    """The day that begins with a word, and how many words it has."""
    word = words[at]
    if ISO.fullmatch(word):
        try:
            return date.fromisoformat(word), 1
        except ValueError:
            return None, 1
    dated = _dated(words[at : at + 3], today, language)
    if dated is not None:
        return dated
    if word in weekdays(language):
        return today + timedelta(days=(weekdays(language)[word] - today.weekday()) % 7), 1
    if word in vocabulary(language, "words").get("today", []):
        return today, 1
    if word in vocabulary(language, "words").get("tomorrow", []):
        return today + timedelta(days=1), 1
    return None, 1


def _dated(words: Sequence[str], today: date, language: str) -> tuple[date | None, int] | None:
    """ "1 march", "march 1", "1 de marzo", "1 march 2027"."""
    from bot.importing.entries import Headings

    if not any(ORDINAL.fullmatch(word) for word in words[:2]) or not months(language) & set(words):
        return None
    for count in range(len(words), 1, -1):
        reader = Headings(language.split("-")[0], "DMY")
        reader.last = today
        found = reader.at(" ".join(words[:count]))
        if found and found.on is not None:
            with_year = YEAR.fullmatch(words[count - 1])
            return found.on if with_year else _next_of(found.on, today), count
    return None


def _next_of(day: date, today: date) -> date | None:
    """The day, or the same day of the next year; None where that year has none."""
    if day >= today:
        return day
    try:
        return day.replace(year=day.year + 1)
    except ValueError:
        return None
