"""Two days with a word of range between are one span; the word before a day links it."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta

from bot.reading.better import put_right
from bot.reading.days.day import Day, DayHits
from bot.reading.days.nearest import day_of_month, of_month
from bot.reading.little import little

LINK = 6  # tokens of the longest words that link a day: "back in the country on"
ANEW = ("until", "range", "from", "since")  # words that begin a day of its own
LEAST_APART = 3  # tokens between a week and its weekday
LED = ("weekday", "rel", "date", "which", "link")  # behind "back" it is theirs: "off on Friday, back Monday"


def joined(hits: DayHits, days: list[Day]) -> list[Day]:
    """ "Friday to Sunday", "from April 3 through April 10": two days with a word of range between are one span."""
    out: list[Day] = []
    for day in days:
        last = out[-1] if out else None
        put = _other_end(hits, last, day) if last is not None and last.kind == "range" else None
        if put is not None:
            out[-1] = put
            continue
        if last is not None and last.back and put_right(hits.message, last.end, day.start):
            meant = last.back[0] - timedelta(days=1)  # "yesterday, no, the day before"
            out[-1] = (
                replace(day, start=last.start, back=(meant, meant), ahead=(meant, meant))
                if hits.has("before", day.start, day.end)
                else replace(day, start=last.start)
            )
            continue
        named = _of_week(hits, last, day) if last is not None and last.kind == "week" else None
        if named is not None:
            out[-1] = named
            continue
        if last is not None and last.kind == "weekday" and day.kind in ("dom", "date", "exact"):
            between = hits.tokens[last.end : day.start]
            # "krank bis Sonntag, ab dem 24. wieder da": another day
            until = any(h.table == "link" and h.name in ANEW for h in hits.at.get(day.start, ()))
            if not until and (not between or (len(between) == 1 and between[0].text in little("after_weekday"))):
                out[-1] = replace(day, start=last.start)  # "Monday the 1st"
                continue
        if (
            last is not None
            and last.kind != "range"
            and day.kind not in ("length", "vague", "week")
            and last.kind not in ("length", "vague", "week")
        ):
            link = next(
                (
                    h
                    for h in hits.at.get(last.end, ())
                    if h.table == "link" and h.name == "range" and h.end == day.start
                ),
                None,
            )
            if link is not None and "bad" in (last.kind, day.kind):
                out[-1] = Day(last.start, day.end, "bad", None, None)  # "30 February to 3 March"
                continue
            back_to = day.kind == "rel" and last.ahead and day.ahead and day.ahead[1] < last.ahead[0]
            if link is not None and back_to:
                out.append(day)  # "Sunday's to tomorrow": no span, a move
                continue
            tight = _tight(hits, last, day)
            begins = any(h.table == "link" and h.name in ANEW for h in hits.at.get(day.start, ()))
            if begins and hits.tokens[last.end].text == ",":
                out.append(day)  # "krank seit Sonntag, ab dem 24. wieder da"
                continue
            if tight or (link is not None and hits.tokens[last.end].text not in little("no_range")):
                ahead = back = None
                if last.ahead and day.ahead:
                    first = last.ahead[0]
                    to = day.ahead[1]
                    if to < first:
                        to = _after(day, first)
                    ahead = (first, to)
                if last.back and day.back:
                    to = day.back[1]
                    first = last.back[0]
                    if first > to:
                        first = first - timedelta(days=7) if day.kind == "weekday" else first
                    back = (first, to)
                out[-1] = Day(last.start, day.end, "range", back, ahead)
                continue
        out.append(day)
    return out


def _of_week(hits: DayHits, last: Day, day: Day) -> Day | None:
    """ "Nächste Woche Mittwoch", "next week on Wednesday": the weekday of the week named right before it."""
    between = hits.tokens[last.end : day.start]
    beside = all(token.text in little("before_weekday") for token in between) and len(between) < LEAST_APART
    if day.kind != "weekday" or last.ahead is None or day.ahead is None or not beside:
        return None
    monday = last.ahead[0] - timedelta(days=last.ahead[0].weekday())
    meant = monday + timedelta(days=day.ahead[0].weekday())
    return replace(day, start=last.start, back=None, ahead=(meant, meant))


def _other_end(hits: DayHits, last: Day, day: Day) -> Day | None:
    """ "Friday to Saturday, sorry, Sunday": the span whose second day is put right."""
    if last.ahead is None or day.ahead is None or day.ahead[0] < last.ahead[0]:
        return None
    if not put_right(hits.message, last.end, day.start):
        return None
    return replace(last, end=day.end, back=None, ahead=(last.ahead[0], day.ahead[0]))


def _tight(hits: DayHits, last: Day, day: Day) -> bool:
    """ "Fri-Sun", of which the hyphen is no token."""
    gap = hits.tokens[day.start].start - hits.tokens[last.end - 1].end
    named = last.kind == day.kind == "weekday"
    return named and last.end == day.start and gap == 1 and not hits.tokens[day.start].space


def _after(day: Day, first: date) -> date:
    """The day named, as the first one that is not before `first`."""
    assert day.ahead is not None
    to = day.ahead[1]
    if day.kind == "weekday":
        return to + timedelta(days=7 * (((first - to).days + 6) // 7))
    if day.kind == "dom":
        return day_of_month(first, to.day, True) or to
    return of_month(first, to.month, to.day, True) or to


def linked(hits: DayHits, day: Day) -> Day:
    """The word before a day: until, since, from, back on, to, instead of; "am Mittwoch zurück" has it behind."""
    behind = next((h for h in hits.at.get(day.end, ()) if h.table == "link" and h.name == "back"), None)
    comes_back = behind is not None and day.kind in ("dom", "date", "weekday", "rel")
    if comes_back and behind is not None and not any(h.table in LED for h in hits.at.get(behind.end, ())):
        return replace(day, link="back")
    for width in range(LINK, 0, -1):
        start = day.start - width
        if start < 0:
            continue
        best = next(
            (
                h
                for h in hits.at.get(start, ())
                if h.table == "link"
                and h.name != "range"
                and h.name != "on"
                and h.name != "than"
                and h.name != "cause"
                and (
                    day.start <= h.end < day.end
                    or (
                        h.end == day.start - 1
                        and h.name != "to"
                        and any(
                            o.table == "link" and o.name == "on" and o.end == day.start for o in hits.at.get(h.end, ())
                        )
                    )
                    or (h.end == day.start - 1 and hits.tokens[h.end].text in little("article"))
                )
            ),
            None,
        )
        if best is not None:
            name = best.name
            return Day(day.start, day.end, day.kind, day.back, day.ahead, name, day.shift, day.days)
    if comes_back:
        return replace(day, link="back")
    inner = hits.tokens[day.start].text
    if day.kind in ("dom", "range", "date"):
        named = next(
            (
                h.name
                for h in hits.at.get(day.start, ())
                if h.table == "link" and h.name in ("until", "since", "from", "to") and h.end <= day.end
            ),
            None,
        )
        if named and inner not in little("article"):
            return Day(day.start, day.end, day.kind, day.back, day.ahead, named, day.shift, day.days)
    return day
