"""Cut old notes into dated entries.

A line that begins with a date begins an entry; what follows, up to the next such line, belongs to it. Dates may be
written 2024-03-01, 1.3.2024, 01/03/2024, "Fri 1 March 2024", "March 1st, 2024"; without a year they take that of the
entry before, and the next one where the calendar would run back.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date, timedelta
from typing import Literal

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


@dataclass(frozen=True)
class Entry:
    """One day's note. `line` counts from 1 in the file; `text` is what follows the date, verbatim."""

    line: int
    on: date
    text: str


@dataclass(frozen=True)
class Stray:
    """A line that stands before any date, or whose date cannot be."""

    line: int
    text: str


class Headings:
    """Recognises dates at the beginning of lines, in the order they come."""

    def __init__(self, language: str, order: DateOrder) -> None:
        self.language, self.order = language, order
        self.last: date | None = None

    def at(self, line: str) -> tuple[date, int] | None:
        """The date that the line begins with and where the words after it start; None for a line without."""
        begin = len(line) - len(line.lstrip(BULLETS))
        weekday = WEEKDAY.match(line, begin)
        for start in {weekday.end() if weekday else begin, begin}:
            found = self._numeric(line, start) or self._named(line, start)
            if found:
                self.last = found[0]
                return found
        return None

    def _numeric(self, line: str, start: int) -> tuple[date, int] | None:
        iso = ISO.match(line, start)
        if iso:
            year, month, day = map(int, iso.groups())
            return _dated(year, month, day, iso.end())
        plain = NUMERIC.match(line, start)
        if not plain:
            return None
        first, second = int(plain[1]), int(plain[3])
        day, month = (first, second) if self.order == "DMY" else (second, first)
        if (
            plain[4] is None
            and not line[plain.end() :].startswith((":", " -", " –", " —"))
            and line[plain.end() :].strip()
        ):
            return None  # "5/3 pull-ups" is as likely sets as a day
        if plain[4] is not None:
            return _dated(int(plain[4]) + (2000 if len(plain[4]) == 2 else 0), month, day, plain.end())
        guessed = self._year(month, day)
        return None if guessed is None else _dated(guessed, month, day, plain.end())

    def _named(self, line: str, start: int) -> tuple[date, int] | None:
        named = NAMED.match(line, start)
        if not named or named.end() - start > LONGEST_HEADING:
            return None
        month = _month(named[2] or named[3], self.language)
        if month is None:
            return None
        day = int(named[1] or named[4])
        year = int(named[5]) if named[5] else self._year(month, day)
        return None if year is None else _dated(year, month, day, named.end())

    def _year(self, month: int, day: int) -> int | None:
        if self.last is None:
            return None
        same = _dated(self.last.year, month, day, 0)
        back = same is not None and same[0] < self.last - timedelta(days=180)
        return self.last.year + back


def entries_from_notes(text: str, language: str, order: DateOrder = "DMY") -> Iterator[Entry | Stray]:
    """Every entry of a file of notes, and every line that belongs to none."""
    headings = Headings(language, order)
    on: date | None = None
    began, lines = 0, []
    for number, line in enumerate(text.splitlines(), 1):
        heading = headings.at(line)
        if heading is None:
            if on is not None:
                lines.append(line)
            elif line.strip():
                yield Stray(number, line)
            continue
        if on is not None and any(part.strip() for part in lines):
            yield Entry(began, on, "\n".join(lines).strip())
        on, began, lines = heading[0], number, [line[heading[1] :].lstrip(" \t:,-–—")]
    if on is not None and any(part.strip() for part in lines):
        yield Entry(began, on, "\n".join(lines).strip())


def _month(word: str, language: str) -> int | None:
    """1 to 12 for a month's name or its beginning, in the language or in English."""
    from babel.dates import get_month_names

    wanted = word.casefold()
    for tongue in (language, "en"):
        for number, name in get_month_names("wide", locale=tongue).items():
            if len(wanted) >= 3 and name.casefold().startswith(wanted):
                return int(number)
    return 9 if wanted == "sept" else None


def _dated(year: int, month: int, day: int, end: int) -> tuple[date, int] | None:
    try:
        return date(year, month, day), end
    except ValueError:
        return None
