"""Days in the coach's orders: "on thursday", "until 1 march", "3 weeks"."""

from __future__ import annotations

import re
from datetime import date, timedelta
from functools import lru_cache

from bot.conversation.coach_vocabulary import marks, plain, vocabulary
from bot.wording.catalogue import FALLBACK, languages

SUNDAY = 6
DAYS_OF = {"day": 1, "week": 7, "month": 30}
ISO = re.compile(r"\d{4}-\d{2}-\d{2}")


@lru_cache(maxsize=8)
def spans(language: str) -> re.Pattern[str]:
    """ "3 weeks": the number, then the word in the group of its unit."""
    units = vocabulary(language, "spans").items()
    named = "|".join(f"(?P<{unit}>{'|'.join(map(re.escape, stems))})" for unit, stems in units)
    return re.compile(rf"(?<![\d.,])(?P<count>\d{{1,3}})\s*(?:{named})\w*", re.IGNORECASE)


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
    return found


@lru_cache(maxsize=8)
def months(language: str) -> frozenset[str]:
    """Names and short names of months, of the language and of English."""
    from babel.dates import get_month_names

    own = dict.fromkeys((language.split("-")[0], FALLBACK))
    found = (
        word
        for name in own
        for width in ("wide", "abbreviated")
        for word in get_month_names(width, locale=name).values()
    )
    return frozenset(written for word in found for written in (word.casefold().rstrip("."), plain(word).rstrip(".")))


def without_days(text: str, language: str) -> str:
    """The text without the numbers of days: "14 january", "march 1"."""
    named = "|".join(sorted(map(re.escape, months(language)), key=len, reverse=True))
    return re.sub(
        rf"(?i)\b\d{{1,2}}(?:st|nd|rd|th|\.)?\s*(?:de\s+)?(?:{named})\b|\b(?:{named})\s+\d{{1,2}}\b", " ", text
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
    if span:
        days = next(days for unit, days in DAYS_OF.items() if span[unit])
        return today + timedelta(days=int(span["count"]) * days)
    marks = vocabulary(language, "words").get("until", [])
    for mark in marks:
        _, found, after = folded.partition(f" {mark} ")
        if found:
            return day_of(f" {after}", today, language)
    return None


def day_of(folded: str, today: date, language: str) -> date | None:
    iso = ISO.search(folded)
    if iso:
        try:
            return date.fromisoformat(iso[0])
        except ValueError:
            return None
    named = _named_day(folded, today, language)
    if named is not None:
        return named
    for word in folded.split():
        if word in weekdays(language):
            return today + timedelta(days=(weekdays(language)[word] - today.weekday()) % 7)
        if word in vocabulary(language, "words").get("today", []):
            return today
        if word in vocabulary(language, "words").get("tomorrow", []):
            return today + timedelta(days=1)
    return None


def _named_day(folded: str, today: date, language: str) -> date | None:
    """ "1 march", "march 1"."""
    from bot.importing.entries import Headings

    words = folded.split()
    for at in range(len(words) - 1):
        reader = Headings(language.split("-")[0], "DMY")
        reader.last = today
        found = reader.at(" ".join(words[at : at + 3])) or reader.at(" ".join(words[at : at + 2]))
        if found and not words[at].isdigit() | words[at + 1].isdigit():
            continue
        if found and found.on is not None:
            return _next_of(found.on, today)
    return None


def _next_of(day: date, today: date) -> date | None:
    """The day, or the same day of the next year; None where that year has none."""
    if day >= today:
        return day
    try:
        return day.replace(year=day.year + 1)
    except ValueError:
        return None
