"""The coach's short commands, as data: who, what, with which numbers and days.

"mira 4x3 at 17.5 on thursday", "mira hold rung 3 weeks", "tell mira: …". The words themselves are in the catalogue
folder (`coach.toml`), by language.
"""

from __future__ import annotations

import re
import tomllib
import unicodedata
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from functools import lru_cache
from pathlib import Path

from bot.wording.catalogue import CATALOGUES, FALLBACK, languages

SCHEME = re.compile(r"(?<!\d)(\d{1,2})\s*[x×*]\s*(\d{1,2})(?!\d)")
NUMBER = re.compile(r"[+@]?\s*(\d{1,3}(?:[.,]\d{1,2})?)\s*(kg|lbs?|lb)?(?![\w.,]*\d)")
NO_LOAD = re.compile(r"(?<=\s)(?:-\s*\d+(?:[.,]\d+)?|@\s*(?:10|[6-9](?:[.,]5)?)(?![\d.,]*\s*(?:kg|lb))(?!\d))(?=\s)")
DAYLESS = frozenset({"undo", "unlock", "restart", "approve", "decline", "resume", "seen"})  # orders of now
SUNDAY = 6
DAYS_OF = {"day": 1, "week": 7, "month": 30}
LEFT_OUT = re.compile(r" (?:no|keine|kein|sin) ([^\d\W].*)")
ISO = re.compile(r"\d{4}-\d{2}-\d{2}")


@dataclass(frozen=True)
class Command:
    """`rest`: the words after the verb (or after the colon), verbatim."""

    verb: str
    handle: str | None
    rest: str
    scheme: tuple[int, int] | None = None
    load: float | None = None
    unit: str | None = None
    day: date | None = None
    until: date | None = None
    over: tuple[str, ...] = ()  # words that are neither the verb nor the name, nor small
    movement: str | None = None  # of sets that are not the main lift's
    odd: tuple[str, ...] = ()  # what an order may not have beside it: words, numbers and days nobody understood


@lru_cache(maxsize=32)
def vocabulary(language: str, table: str = "verbs") -> dict[str, list[str]]:
    """Verb (or, of table "words", mark of time) to phrases, the language's own and the English ones."""
    found: dict[str, list[str]] = {}
    for name in dict.fromkeys((FALLBACK, language.split("-")[0])):
        path = Path(CATALOGUES) / name / "coach.toml"
        if path.is_file():
            for verb, phrases in tomllib.loads(path.read_text(encoding="utf-8"))[table].items():
                found.setdefault(verb, []).extend(" ".join(_words(phrase)) or phrase for phrase in phrases)
    return found


@lru_cache(maxsize=8)
def spans(language: str) -> re.Pattern[str]:
    """ "3 weeks": the number, then the word in the group of its unit."""
    units = vocabulary(language, "spans").items()
    named = "|".join(f"(?P<{unit}>{'|'.join(map(re.escape, stems))})" for unit, stems in units)
    return re.compile(rf"(?P<count>\d{{1,2}})\s*(?:{named})\w*", re.IGNORECASE)


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
                for written in (word.casefold().rstrip("."), _plain(word).rstrip(".")):
                    found.setdefault(written, number)
    return found


def parse(text: str, names: Sequence[tuple[str, str]], language: str, today: date) -> Command | None:
    """The command in a coach's message; None where no verb of ours is in it.

    Args:
        names: Handle and name of each of the coach's athletes.
        today: The coach's day, from which "thursday" and "3 weeks" count.
    """
    stripped = text.strip().lstrip("/").strip()
    head, colon, after = stripped.partition(":")
    where = head if colon else stripped
    folded = f" {' '.join(_words(where))} "
    handle = _handle(folded, names)
    if handle is not None:
        for word in {handle, *(name.casefold() for own, name in names if own == handle)}:
            folded = folded.replace(f" {word} ", " ", 1)
    told = _told(folded, language) if handle is not None else None
    if told is not None:
        return Command("tell", handle, after.strip() if colon else _after(where, told, handle, names))
    week = next((words for words in vocabulary(language, "words")["this_week"] if f" {words} " in folded), None)
    ahead = next((words for words in vocabulary(language, "words")["next_week"] if f" {words} " in folded), None)
    plain = folded.replace(f" {week} ", " ", 1).replace(f" {ahead} ", " ", 1)
    verb, phrase = _verb(plain, language)  # "lock 12.5 this week" is a lock
    if verb is None and (week is not None or ahead is not None):
        verb, phrase = _verb(folded, language)
    scheme = SCHEME.search(where)
    if verb is None and scheme is not None and handle is not None:
        verb = "sets"
    if verb is None:
        if handle is not None and after.strip():
            verb = "tell"
        elif handle is not None and not folded.strip():
            verb = "card"
        else:
            return None
    rest = after.strip() if colon else _after(where, phrase, handle, names)
    left_out = LEFT_OUT.search(folded) if handle is not None and verb in ("decline", "week") else None
    if left_out is not None and folded.strip() != phrase:
        verb, rest = "exclude", left_out[1]  # "tom no dips this week"
    numbers = SCHEME.sub(" ", where)
    until = _until(folded, today, language)
    day = None if until is not None else _day(folded, today, language)
    if until is None and week is not None and verb != "week":
        until, day = today + timedelta(days=SUNDAY - today.weekday()), None
    if verb == "move":
        day, until = _from_to(folded, today, language)
    if verb == "deload" and ahead is not None:
        folded, day = folded.replace(f" {ahead} ", " ", 1), today + timedelta(days=7 - today.weekday())
    numbers = _without_days(spans(language).sub(" ", ISO.sub(" ", numbers)), language)
    load, unit = _load(numbers)
    odd = _odd(folded, phrase, language, numbers)
    if verb in ("move", "deload"):
        odd = tuple(word for word in odd if word not in _marks(language, "from"))
    beside = folded.replace(f" {phrase} ", " ", 1)
    lost = until is None and day is None and _names_a_day(beside, language)
    dated = verb in DAYLESS and (day is not None or until is not None)
    if "?" in where or lost or dated:
        odd = odd or (where.strip(),)
    return Command(
        verb,
        handle,
        rest,
        (int(scheme[1]), int(scheme[2])) if scheme else None,
        load,
        unit,
        day,
        until,
        _over(folded, phrase, language),
        odd=odd,
    )


def _told(folded: str, language: str) -> str | None:
    """The words of "tell" at the head of a message: what follows is for the athlete, whatever is in it."""
    phrases = [phrase for phrase in vocabulary(language)["tell"] if folded.startswith(f" {phrase} ")]
    if any(folded.startswith(f" {phrase} ") for phrase in vocabulary(language)["tell_all"]):
        return None
    return max(phrases, key=len, default=None)


def _odd(folded: str, phrase: str, language: str, numbers: str) -> tuple[str, ...]:
    """What stands beside an order and is not part of one: "restart when the doctor says so", "at -10", "4x3 @8"."""
    known = {word for mark in ("filler", "until", "today", "tomorrow") for word in _marks(language, mark)}
    known |= set(weekdays(language)) | months(language)
    rest = spans(language).sub(" ", folded.replace(f" {phrase} ", " ", 1)).split()
    for span in vocabulary(language, "words")["this_week"]:
        known |= set(span.split()) if f" {span} " in folded else set()
    words = tuple(word for word in rest if word not in known and not re.match(r"[+@]?\d", word))
    odd = (match[0].strip() for match in NO_LOAD.finditer(f" {numbers} "))
    return tuple(dict.fromkeys((*words, *odd)))


def _marks(language: str, mark: str) -> list[str]:
    return [word for phrase in vocabulary(language, "words").get(mark, []) for word in phrase.split()]


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
    return frozenset(written for word in found for written in (word.casefold().rstrip("."), _plain(word).rstrip(".")))


def _without_days(text: str, language: str) -> str:
    """The text without the numbers of days: "14 january", "march 1"."""
    named = "|".join(sorted(map(re.escape, months(language)), key=len, reverse=True))
    return re.sub(
        rf"(?i)\b\d{{1,2}}(?:st|nd|rd|th|\.)?\s*(?:de\s+)?(?:{named})\b|\b(?:{named})\s+\d{{1,2}}\b", " ", text
    )


def _names_a_day(folded: str, language: str) -> bool:
    """Whether words for a day are there, though no day came of them: "until 29 february"."""
    words = set(folded.split())
    return bool(words & months(language)) or any(
        f" {mark} " in folded for mark in _marks(language, "until") if mark != "to"
    )


def _over(folded: str, phrase: str, language: str) -> tuple[str, ...]:
    """The words that nobody has understood."""
    small = set(vocabulary(language, "words").get("small", ()))
    rest = folded.replace(f" {phrase} ", " ", 1).split()
    return tuple(word for word in rest if word not in small and not word[0].isdigit())


def _from_to(folded: str, today: date, language: str) -> tuple[date | None, date | None]:
    """ "move thursday to friday": the first such day from today, and the first day of the other name around it."""
    days = [day for word in folded.split() if (day := _day(f" {word} ", today, language)) is not None]
    return (days[0], days[1]) if len(days) > 1 else (None, None)


def _plain(word: str) -> str:
    return "".join(sign for sign in unicodedata.normalize("NFD", word.casefold()) if not unicodedata.combining(sign))


def _words(text: str) -> list[str]:
    bare = (word.strip(",.;!?()").casefold() for word in text.split())
    return [word.removesuffix("'s").removesuffix("\u2019s") for word in bare if word]


def _handle(folded: str, names: Sequence[tuple[str, str]]) -> str | None:
    """The one athlete named; None where none is, where two are, or where a name is of two."""
    found = [
        (folded.find(f" {word.casefold()} "), len(word), handle)
        for handle, name in names
        for word in {handle, name}
        if f" {word.casefold()} " in folded
    ]
    meant = {
        handle
        for at, length, handle in found
        if not any(start <= at and at + length <= start + long and long > length for start, long, _ in found)
    }
    return meant.pop() if len(meant) == 1 else None


def _verb(folded: str, language: str) -> tuple[str | None, str]:
    """The verb whose longest phrase is there."""
    best: tuple[str | None, str] = (None, "")
    for verb, phrases in vocabulary(language).items():
        for phrase in phrases:
            if f" {phrase} " in folded and len(phrase) > len(best[1]):
                best = (verb, phrase)
    return best


def _after(where: str, phrase: str, handle: str | None, names: Sequence[tuple[str, str]]) -> str:
    """The words that are neither the verb nor the name."""
    drop = set(phrase.split())
    if handle is not None:
        drop |= {handle} | {word for own, name in names if own == handle for word in name.casefold().split()}
    return " ".join(word for word in where.split() if word.strip(",.;!?").casefold() not in drop)


def _load(text: str) -> tuple[float | None, str | None]:
    found = list(NUMBER.finditer(text))
    if not found:
        return None, None
    best = next((match for match in found if match[2]), found[0])
    unit = "lb" if best[2] and best[2].startswith("lb") else best[2]
    return float(best[1].replace(",", ".")), unit


def _until(folded: str, today: date, language: str) -> date | None:
    span = spans(language).search(folded)
    if span:
        days = next(days for unit, days in DAYS_OF.items() if span[unit])
        return today + timedelta(days=int(span["count"]) * days)
    marks = vocabulary(language, "words").get("until", [])
    for mark in marks:
        _, found, after = folded.partition(f" {mark} ")
        if found:
            return _day(f" {after}", today, language)
    return None


def _day(folded: str, today: date, language: str) -> date | None:
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
        if found:
            return _next_of(found[0], today)
    return None


def _next_of(day: date, today: date) -> date | None:
    """The day, or the same day of the next year; None where that year has none."""
    if day >= today:
        return day
    try:
        return day.replace(year=day.year + 1)
    except ValueError:
        return None
