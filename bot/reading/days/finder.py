"""All the days that a message names, whatever they are for.

The common ones are worked out here, where dateparser is wrong ("the 20th", "am Dienstag", a weekday on that weekday) or
would make a message wait ("vor 3 Wochen"). Full dates with a year go to it as short cut-out spans (`parsed`).
"""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta
from functools import cached_property

from bot.reading.days.dates import dotted, dotted_range, slashed, worded
from bot.reading.days.day import Day, DayHits
from bot.reading.days.nearest import of_month
from bot.reading.days.relative import DAYS_OF, FARTHEST, end_of, last_weekend, relative, weekend, weekend_if
from bot.reading.days.spans import joined, linked
from bot.reading.days.weekdays import weekday, which_weekday
from bot.reading.lexicon import Hit
from bot.reading.little import little
from bot.reading.message import Message

DAY_TABLES = (
    "rel",
    "weekday",
    "short",
    "date",
    "feast",
    "ago",
    "ahead",
    "lasting",
    "vague",
    "week",
    "weekend",
    "length",
    "end_of",
    "rough",
    "whole_month",
)
HALF_A_YEAR = timedelta(days=183)


def _day(hits: DayHits, at: int) -> Day | None:
    token = hits.tokens[at]
    if token.kind == "date":
        try:
            exact = date.fromisoformat(token.text)
        except ValueError:
            return None
        return Day(at, at + 1, "exact", (exact, exact), (exact, exact))
    led = token.text in little("from_to") and at + 1 < len(hits.tokens)
    written = None
    if led or token.kind == "num":
        written = dotted_range(hits, at + led) or dotted(hits, at) or slashed(hits, at)
    if written is not None:
        return written
    for hit in hits.at.get(at, ()):
        if hit.table in DAY_TABLES or hit.table == "which":
            made = _made(hits, hit)
            if made is not None:
                return _week_of(hits, made)
    return None


def _week_of(hits: DayHits, day: Day) -> Day:
    """ "The week of June 7th": a date to come that names its week."""
    tokens = hits.tokens
    word = day.start - 1 - (day.start > 1 and tokens[day.start - 1].text in little("week_begun"))
    begun = word < day.start - 1 or tokens[day.start].text in little("week_begun")
    if day.kind not in ("date", "dom") or not day.ahead or word < 0 or not begun:
        return day
    if tokens[word].text not in little("week_word"):
        return day
    first = day.ahead[0]
    return replace(day, kind="range", back=None, ahead=(first, first + timedelta(days=6)))


def _whole_month(hits: DayHits, hit: Hit) -> Day | None:
    """ "Away in July": a month not half a year ahead, from today where it has begun."""
    named = (int(h.name) for at in range(hit.start, hit.end) for h in hits.at.get(at, ()) if h.table == "month")
    month = next(named, None)
    if month is None:
        return None
    first = date(hits.today.year + (month < hits.today.month), month, 1)
    if first - hits.today > HALF_A_YEAR:
        return None
    last = (first + timedelta(days=32)).replace(day=1) - timedelta(days=1)
    return Day(hit.start, hit.end, "month", None, (max(first, hits.today), last))


def _yesterday_told(hits: DayHits, at: int) -> bool:
    return any(hit.table == "rel" and hit.name == "-1" and hit.end <= at for hit in hits.hits)


def _made(hits: DayHits, hit: Hit) -> Day | None:
    today = hits.today
    if hit.table == "which":
        return which_weekday(hits, hit)
    if hit.table in ("weekday", "short"):
        return weekday(hits, hit, None)
    if hit.table == "rel":
        shift = int(hit.name)
        if hits.message.at_night:
            shift = 0 if shift == -1 else shift + 1 if shift < -1 else shift
        if shift == -1 and hits.message.tokens[hit.start].text in little("the") and _yesterday_told(hits, hit.start):
            shift = -2  # "yesterday pull-ups, the day before dips"
        # after midnight "tomorrow" could be the day begun or the next
        base = today
        found = base + timedelta(days=shift)
        return Day(hit.start, hit.end, "rel", (found, found), (found, found), None, shift)
    if hit.table == "feast":
        month, day = (int(part) for part in hit.name.split("-"))
        return hits.both(hit, "date", of_month(today, month, day, False), of_month(today, month, day, True))
    if hit.table in ("ago", "ahead"):
        return relative(hits, hit)
    if hit.table == "rough":
        return Day(hit.start, hit.end, "rough", None, None)  # "mid April", "Easter": nobody can say which day
    if hit.table == "lasting":
        count = (hits.numbers(hit) or [1])[0]
        began = today - timedelta(days=min(count, FARTHEST) * DAYS_OF[hit.name])
        return Day(hit.start, hit.end, "lasting", (began, today), (began, today))
    if hit.table == "whole_month":
        return _whole_month(hits, hit)
    if hit.table == "vague":
        weekend_told = weekend_if(hits, hit)
        return Day(hit.start, hit.end, "vague", last_weekend(hits) if weekend_told else None, weekend_told)
    if hit.table == "week":
        monday = today - timedelta(days=today.weekday()) + timedelta(days=7 * int(hit.name))
        first = max(today, monday)
        return Day(hit.start, hit.end, "week", None, (first, monday + timedelta(days=6)))
    if hit.table == "weekend":
        return Day(
            hit.start, hit.end, "weekend", None if int(hit.name) else last_weekend(hits), weekend(hits, int(hit.name))
        )
    if hit.table == "length":
        numbers = hits.numbers(hit)
        count = numbers[0] if numbers else 2 if hit.name == "pair" else 1
        if not 1 <= count <= FARTHEST:
            return None
        return Day(hit.start, hit.end, "length", None, None, None, None, count * DAYS_OF[hit.name])
    if hit.table == "end_of":
        return end_of(hits, hit)
    return worded(hits, hit)


class DayFinder(DayHits):
    """The days of one message."""

    @cached_property
    def days(self) -> list[Day]:
        """All days named, in order, each with the word that links it."""
        out: list[Day] = []
        leads, behind = little("from_to"), 0
        for at, token in enumerate(self.tokens):
            if at < behind or not (at in self.at or token.kind in ("num", "date") or token.text in leads):
                continue  # at most tokens no day may begin
            day = _day(self, at)
            if day is not None:
                out.append(day)
                behind = day.end
        return [linked(self, day) for day in joined(self, out)]


def named_days(message: Message) -> DayFinder:
    """Every day that a message names, whatever it is for; worked out once a message."""
    finder: DayFinder | None = message.notes.get("days")
    if finder is None:
        finder = message.notes["days"] = DayFinder(message)
    return finder
