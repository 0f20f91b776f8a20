"""Cut old notes into dated entries.

A line that begins with a date begins an entry; what follows, up to the next such line, belongs to it. Dates may be
written 2024-03-01, 1.3.2024, 01/03/2024, "Fri 1 March 2024", "March 1st, 2024"; without a year they take that of the
entry before, and the next one where the calendar would run back. What stands under a date that cannot be, or that is
another day as soon as day and month change places and only then in order with its neighbours, belongs to no day.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass, field
from datetime import date, timedelta
from typing import Any, Literal

DateOrder = Literal["DMY", "MDY"]

ISO = re.compile(r"(\d{4})-(\d{1,2})-(\d{1,2})(?!\d)")
NUMERIC = re.compile(r"(\d{1,2})([./])(\d{1,2})(?:\2(\d{4}|\d{2}))?(?![\dxX×@/])")
NAMED = re.compile(
    r"(?:(\d{1,2})(?:st|nd|rd|th|\.|º)?\s{1,3}(?:de\s)?([^\W\d_]{3,12})\.?|([^\W\d_]{3,12})\.?\s{1,3}(\d{1,2})(?:st|nd|rd|th)?)"
    r"(?:,?\s{1,3}(?:de\s)?(\d{4}))?(?!\d)"
)
WEEKDAY = re.compile(r"[^\W\d_]{2,12}\.?,?\s{1,3}(?=\d|[^\W\d_]{3,12}\.?\s{1,3}\d)")
BULLETS = " \t#*>-–—•="
LONGEST_HEADING = 60
FAR_OFF = timedelta(days=400)


@dataclass(frozen=True)
class Entry:
    """One day's note. `line` counts from 1 in the file; `text` is what follows the date, verbatim; `lines`: where each
    line of the text stands. `other`: the day that the date is with day and month changed."""

    line: int
    on: date
    text: str
    lines: tuple[int, ...] = field(default=(), compare=False)
    other: date | None = field(default=None, compare=False)

    def numbered(self) -> list[tuple[int, str]]:
        """The lines of the text with their numbers in the file."""
        parts = self.text.split("\n")
        return list(zip(self.lines or (self.line,) * len(parts), parts, strict=True))


@dataclass(frozen=True)
class Stray:
    """A line, or a piece of one, that is left out. `why` and `values` make the sentence that says so."""

    line: int
    text: str
    why: str = "no-date"
    values: dict[str, Any] = field(default_factory=dict)


@dataclass(frozen=True)
class Heading:
    """A date at the beginning of a line; the words after it start at `end`. `on`: None where there is no such day.
    `other`: the day it is, if any, with day and month changed."""

    on: date | None
    end: int
    other: date | None = None


class Headings:
    """Recognises dates at the beginning of lines, in the order they come."""

    def __init__(self, language: str, order: DateOrder) -> None:
        self.language, self.order = language, order
        self.last: date | None = None

    def at(self, line: str) -> Heading | None:
        """The date that the line begins with; None for a line without."""
        begin = len(line) - len(line.lstrip(BULLETS))
        weekday = WEEKDAY.match(line, begin)
        for start in {weekday.end() if weekday else begin, begin}:
            found = self._numeric(line, start) or self._named(line, start)
            if found:
                self.last = found.on or self.last
                return found
        return None

    def _numeric(self, line: str, start: int) -> Heading | None:
        iso = ISO.match(line, start)
        if iso:
            year, month, day = map(int, iso.groups())
            return Heading(_date(year, month, day), iso.end())
        plain = NUMERIC.match(line, start)
        if not plain:
            return None
        first, second = int(plain[1]), int(plain[3])
        day, month = (first, second) if self.order == "DMY" else (second, first)
        rest = line[plain.end() :]
        german = plain[2] == "." and rest.startswith(".")  # "5.11." is a day and nothing else
        if plain[4] is None and not german and not rest.startswith((":", " -", " –", " —")) and rest.strip():
            return None  # "5/3 pull-ups" is as likely sets as a day
        year_of = self._year if plain[4] is None else _year_given(plain[4])
        on, other = _in(year_of, month, day), None
        if plain[2] == "/" and day != month:
            other = _in(year_of, day, month)
        short = plain[4] is not None and len(plain[4]) == 2
        if on is not None and short and rest.strip() and self.last is not None and abs(on - self.last) > FAR_OFF:
            return None  # "12/10/10 pull-ups" are sets
        if on is None and other is None and (plain[4] is None or short):
            return None
        return Heading(on, plain.end() + german, other)

    def _named(self, line: str, start: int) -> Heading | None:
        named = NAMED.match(line, start)
        if not named or named.end() - start > LONGEST_HEADING:
            return None
        month = _month(named[2] or named[3], self.language)
        if month is None:
            return None
        day = int(named[1] or named[4])
        on = _in(_year_given(named[5]) if named[5] else self._year, month, day)
        return None if on is None and not named[5] else Heading(on, named.end())

    def _year(self, month: int, day: int) -> int | None:
        if self.last is None:
            return None
        same = _date(self.last.year, month, day)
        back = same is not None and same < self.last - timedelta(days=180)
        return self.last.year + back


def entries_from_notes(text: str, language: str, order: DateOrder = "DMY") -> Iterator[Entry | Stray]:
    """Every entry of a file of notes, and every line that belongs to none."""
    headings = Headings(language, order)
    lines = list(enumerate(text.splitlines(), 1))
    dated = [(number, line, headings.at(line)) for number, line in lines]
    faults = faults_of([heading for _, _, heading in dated if heading is not None])
    at = 0
    day: tuple[int, Heading] | None = None
    below: list[tuple[int, str]] = []
    for number, line, heading in dated:
        if heading is None:
            if day is not None:
                below.append((number, line))
            elif line.strip():
                yield Stray(number, line)
            continue
        yield from _entry(day, below)
        fault, at = faults[at], at + 1
        if fault is not None:
            yield Stray(number, line, fault, days_of(heading))
            day, below = None, []
        else:
            day, below = (number, heading), [(number, line[heading.end :].lstrip(" \t:,-–—"))]
    yield from _entry(day, below)


def _entry(day: tuple[int, Heading] | None, below: list[tuple[int, str]]) -> Iterator[Entry]:
    """What stands under a heading, without the empty lines at both ends."""
    while below and not below[0][1].strip():
        below = below[1:]
    while below and not below[-1][1].strip():
        below = below[:-1]
    if day is not None and day[1].on is not None and below:
        text = "\n".join(line for _, line in below).strip()
        yield Entry(day[0], day[1].on, text, tuple(number for number, _ in below), day[1].other)


def faults_of(headings: Sequence[Heading]) -> list[str | None]:
    """What is wrong with each date, as the file goes: "no-day"; "other-order", where it is a day only with day and
    month changed; "two-days", where both are days and only the other stands in order with its neighbours."""
    days = [one.on for one in headings if one.on is not None]
    sure = [one.on for one in headings if one.on is not None and one.other is None]
    forward = (sure or days)[-1] >= (sure or days)[0] if days else True
    afters: list[date | None] = [None]  # the next day that is sure, for each; from the end
    for one in reversed(headings[1:]):
        afters.append(one.on if one.on is not None and one.other is None else afters[-1])
    found: list[str | None] = []
    before: date | None = None
    for one, after in zip(headings, reversed(afters), strict=False):
        low, high = (before, after) if forward else (after, before)
        low, high = low or date.min, high or date.max
        fault = None
        if one.on is None:
            fault = "no-day" if one.other is None else "other-order"
        elif one.other is not None and low <= one.other <= high and not low <= one.on <= high:
            fault = "two-days"
        else:
            before = one.on
        found.append(fault)
    return found


def days_of(heading: Heading) -> dict[str, Any]:
    """The days that a date may be, for the sentence that leaves it out."""
    return {name: day for name, day in (("read", heading.on), ("other", heading.other)) if day is not None}


def _month(word: str, language: str) -> int | None:
    """1 to 12 for a month's name or its beginning, in the language or in English."""
    from babel.dates import get_month_names

    wanted = word.casefold()
    for tongue in (language, "en"):
        for number, name in get_month_names("wide", locale=tongue).items():
            if len(wanted) >= 3 and name.casefold().startswith(wanted):
                return int(number)
    return 9 if wanted == "sept" else None


def _in(year_of: Callable[[int, int], int | None], month: int, day: int) -> date | None:
    year = year_of(month, day)
    return None if year is None else _date(year, month, day)


def _year_given(digits: str) -> Callable[[int, int], int]:
    year = int(digits) + (2000 if len(digits) == 2 else 0)
    return lambda _month, _day: year


def _date(year: int, month: int, day: int) -> date | None:
    try:
        return date(year, month, day)
    except ValueError:
        return None
