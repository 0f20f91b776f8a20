"""Days told from today: "three weeks ago", "next weekend", "until the end of the month"."""

from __future__ import annotations

import calendar
import math
from datetime import date, timedelta

from bot.reading.days.day import Day, DayHits
from bot.reading.lexicon import Hit
from bot.reading.little import little

FARTHEST = 400  # days
DAYS_OF = {"day": 1, "pair": 1, "week": 7, "fortnight": 14, "month": 30}
MONTHS_OF = {"month": 1, "year": 12}


def relative(hits: DayHits, hit: Hit) -> Day | None:
    """ "three weeks ago", "in 10 Tagen", "hace dos meses"."""
    count = next((t.value for t in hits.tokens[hit.start : hit.end] if t.value is not None), 1.0)
    if count * DAYS_OF.get(hit.name, 365) > FARTHEST:
        return None  # "three years ago" is a tale
    ahead = hit.table == "ahead"
    found = _away(hits.today, count if ahead else -count, hit.name)
    if found is None:
        return Day(hit.start, hit.end, "bad", None, None)
    return hits.both(hit, "date" if ahead else "ago", found, found)


def _away(today: date, count: float, unit: str) -> date | None:
    """The day so many of a unit away; of months and years only whole ones name a day, of the last the last there is."""
    if unit not in MONTHS_OF:
        return today + timedelta(days=math.ceil(count * DAYS_OF[unit]))
    if count % 1:
        return None
    month = today.year * 12 + today.month - 1 + int(count) * MONTHS_OF[unit]
    year, month = month // 12, month % 12 + 1
    return date(year, month, min(today.day, calendar.monthrange(year, month)[1]))


def weekend(hits: DayHits, which: int) -> tuple[date, date]:
    saturday = hits.today - timedelta(days=hits.today.weekday()) + timedelta(days=5 + 7 * which)
    return max(hits.today, saturday), saturday + timedelta(days=1)


def last_weekend(hits: DayHits) -> tuple[date, date]:
    """The weekend gone by; of one that has begun the days up to today."""
    saturday = hits.today - timedelta(days=(hits.today.weekday() - 5) % 7)
    return saturday, min(hits.today, saturday + timedelta(days=1))


def weekend_if(hits: DayHits, hit: Hit) -> tuple[date, date] | None:
    return (
        weekend(hits, 0)
        if any(h.table == "weekend" and h.end <= hit.end for h in hits.at.get(hit.start, ()))
        or any(h.table == "weekend" for a in range(hit.start, hit.end) for h in hits.at.get(a, ()))
        else None
    )


def end_of(hits: DayHits, hit: Hit) -> Day | None:
    today = hits.today
    if hit.name == "until_month":
        return _until_month(hits, hit)
    if hit.name == "month":
        last = today.replace(day=calendar.monthrange(today.year, today.month)[1])
    elif hit.name == "named":
        month = next(
            (int(h.name) for a in range(hit.start, hit.end) for h in hits.at.get(a, ()) if h.table == "month"), 0
        )
        if not month:
            return None
        year = today.year if month >= today.month else today.year + 1
        last = date(year, month, calendar.monthrange(year, month)[1])
    else:
        last = today + timedelta(days=6 - today.weekday() + (7 if hit.name == "next_week" else 0))
    return Day(hit.start, hit.end, "end", (last, last), (last, last))


def _until_month(hits: DayHits, hit: Hit) -> Day | None:
    """ "Until April": to the last day of March; "until April 3" is a date."""
    after = hits.tokens[hit.end] if hit.end < len(hits.tokens) else None
    counted = after is not None and (after.value is not None or after.text in little("the"))
    at = hit.end - 1
    month = next((int(one.name) for one in hits.at.get(at, ()) if one.table == "month"), 0)
    if counted or not month:
        return None
    first = date(hits.today.year + (month <= hits.today.month), month, 1)
    last = first - timedelta(days=1)
    return Day(hit.start, hit.end, "end", (last, last), (last, last))
