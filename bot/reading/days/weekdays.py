"""Weekdays: "Tuesday", "last Tue", "am Dienstag", also short ones that may be other words ("Do", "sat")."""

from __future__ import annotations

from datetime import timedelta

from bot.reading.days.dates import day_and_month
from bot.reading.days.day import Day, DayHits
from bot.reading.days.nearest import day_of_month, of_month, weekday_ahead, weekday_back
from bot.reading.lexicon import Hit
from bot.reading.little import little

MOST_TO_WORK = 3  # words from a number to what it counts: "5 strict ring dips"
LEAST_ROW, MOST_ROW = 2, 7  # days told one behind the other
JUST_PAST, SOON = timedelta(days=31), timedelta(days=14)  # a weekday with a date farther away is no date


def which_weekday(hits: DayHits, hit: Hit) -> Day | None:
    """ "last Tuesday", "nächsten Montag"."""
    after = next((h for h in hits.at.get(hit.end, ()) if h.table in ("weekday", "short")), None)
    return weekday(hits, after, hit) if after is not None else None


def weekday(hits: DayHits, hit: Hit, which: Hit | None) -> Day | None:
    if hit.table == "short" and which is None and (hits.no_weekday(hit) or not _strong(hits, hit)):
        return None
    if hit.table == "short" and hits.no_weekday(hit) and hits.message.span(hit.start, hit.end).islower():
        return None  # "der letzte so eine 9"
    start, end = (which.start if which else hit.start), hit.end
    of_day = hits.has("of_day", end)
    if of_day is not None:
        end = of_day.end
    name = which.name if which else None
    whose = hits.tokens[end - 1].text.endswith("'s")  # "Monday's last set"
    behind = None if whose or hits.has("other_week", end) else hits.has("which", end)
    if behind is not None and name is None and hits.has("weekday", behind.end) is None:
        name, end = behind.name, behind.end
    number, today = int(hit.name), hits.today
    back = weekday_back(today, number, before=name == "last")
    ahead = weekday_ahead(today, number, after=name == "next")
    other = hits.has("other_week", end)
    if other is not None and which is None:
        monday = today - timedelta(days=today.weekday()) + timedelta(days=int(other.name))
        back = ahead = monday + timedelta(days=number)
        end = other.end
    dated = _with_date(hits, start, end, number) if other is None and which is None else None
    if dated is not None:
        return dated
    if name == "last":
        ahead = back
    if name == "next" and other is None:
        return Day(start, end, "weekday", None, (ahead, ahead))
    return Day(start, end, "weekday", (back, back), (ahead, ahead))


def _with_date(hits: DayHits, start: int, end: int, number: int) -> Day | None:
    """ "Thursday 16/9": the date is that weekday's, or stands alone on its line and is asked."""
    at = end
    while at < len(hits.tokens) and (hits.tokens[at].text == "," or hits.tokens[at].text in little("article")):
        at += 1
    told = day_and_month(hits, at)
    if told is None:
        return _with_number(hits, start, at, number)
    day, month, after = told
    near = [of_month(hits.today, month, day, way) for way in (False, True)]
    same = [one for one in near if one and one.weekday() == number and -JUST_PAST <= one - hits.today <= SOON]
    if same:
        return Day(start, after, "weekday", (same[0], same[0]), (same[0], same[0]))
    heads = start == 0 or hits.tokens[start - 1].text == "\n"
    alone = after >= len(hits.tokens) or hits.tokens[after].text in ("\n", ":")
    return Day(start, after, "bad", None, None) if heads and alone else None


def _with_number(hits: DayHits, start: int, at: int, number: int) -> Day | None:
    """ "Monday 17: dips 3x8", "Montag den 17. Dips 3x8": the day of a month that is that weekday.

    Where work stands right behind the number ("Monday 17 dips") it counts that, unless it is told as an ordinal.
    """
    token = hits.tokens[at] if at < len(hits.tokens) else None
    if token is None or token.kind != "num" or token.spelled or (token.value or 0) != int(token.value or 0):
        return None
    near = [day_of_month(hits.today, int(token.value or 0), way) for way in (False, True)]
    same = [one for one in near if one and one.weekday() == number and -JUST_PAST <= one - hits.today <= SOON]
    after = hits.tokens[at + 1 : at + 3]
    ordinal = bool(after) and not after[0].space and after[0].text in little("ordinal_ending")
    apart = hits.tokens[at - 1].text == ","  # "missed Tuesday, 2 exams"
    if not same or (not ordinal and (apart or _counts_work(hits, at + 1))):
        return None
    return Day(start, at + 1 + ordinal, "weekday", (same[0], same[0]), (same[0], same[0]))


def _counts_work(hits: DayHits, at: int) -> bool:
    """Whether what stands here makes a count or a load of the number before it."""
    token = hits.tokens[at] if at < len(hits.tokens) else None
    if token is None or token.kind == "nl" or token.text in (":", ")", ";"):
        return False
    if token.text == ",":
        return at + 1 < len(hits.tokens) and hits.tokens[at + 1].value is not None
    grammar = hits.message.beginning("grammar")[at]
    if any(hit.name in ("got", "own", "done", "me") for hit in grammar):
        return False  # "el lunes 17 hice fondos"
    known = {hit.table for hit in grammar}
    named = any(hits.message.beginning("movements")[at : at + MOST_TO_WORK])
    return token.kind != "word" or named or bool(known & {"unit", "sets", "reps", "times", "count", "flag"})


def _strong(hits: DayHits, hit: Hit) -> bool:
    """Whether "Do", "sat", "mar" is a day: a colon behind it, or a capital and a place where days stand."""
    said = hits.message.span(hit.start, hit.end)
    after = hits.tokens[hit.end] if hit.end < len(hits.tokens) else None
    before = hits.tokens[hit.start - 1] if hit.start else None
    opens = before is None or before.text in ",;:\n.&/-" or before.text in little("and")
    led = before is not None and hit.start in hits.leading
    if after is not None and after.text == ":" and (opens or led):
        return True
    heads = before is None or before.text == "\n"
    if heads and after is not None and after.text in "-~|;" and said[:1].isupper():
        return True  # "Sat - chins 4x5", a line of a log
    if heads and after is not None and after.text in ",\n" and said[:1].isupper() and not hits.no_weekday(hit):
        return True  # "Mo, Dips 3x8", not "So, Haken dran"
    if len(said) > 2 and hit.name in ("5", "6", "2") and led:
        return True
    behind_another = hit.start in hits.ends_of_days and not hits.tokens[hit.start].space
    before_another = hit.end in hits.starts_of_days and not hits.tokens[hit.end].space
    if behind_another or before_another:
        return True  # "Fri-Sun"
    if _in_a_row(hits, hit):
        return True  # "fri sat sun"
    if not said[:1].isupper():
        told = after is not None and (after.kind == "word" or _scheme(hits, hit.end))
        return len(said) >= 3 and opens and told and _other_day(hits, hit)
    if after is not None and after.text == "." and not after.space and hit.end + 1 < len(hits.tokens):
        return opens
    if led:
        return True
    others = any(h.start != hit.start for h in hits.short_or_named)
    return opens and others and after is not None and after.kind in ("word", "num")


def _in_a_row(hits: DayHits, hit: Hit) -> bool:
    """Whether the weekdays right before and behind follow one another, a weekday that is no other word among them."""
    row = [hit]
    for step in (-1, 1):
        while len(row) < MOST_ROW:
            edge = row[0].start - 1 if step < 0 else row[-1].end
            found = (h for h in hits.at.get(edge, ()) if h.table in ("short", "weekday"))
            near = next((h for h in found if step > 0 or h.end == row[0].start), None)
            if near is None or (int(near.name) - int((row[0] if step < 0 else row[-1]).name)) % 7 != step % 7:
                break
            row = [near, *row] if step < 0 else [*row, near]
    return len(row) > LEAST_ROW or (len(row) == LEAST_ROW and any(h.table == "weekday" for h in row))


def _other_day(hits: DayHits, hit: Hit) -> bool:
    named = any(h.table == "weekday" and h.start != hit.start for h in hits.short_or_named)
    # "sat pull-ups 5x5, sun dips 5x5"
    # "mon 5x3 pull-ups; wed 4x6 pull-ups"
    trained = bool(hits.message.beginning("movements")[hit.end]) or _scheme(hits, hit.end)
    return named or (trained and any(h.start != hit.start for h in hits.short_or_named))


def _scheme(hits: DayHits, at: int) -> bool:
    """Whether "5x3" or the like stands here."""
    told = hits.tokens[at : at + 3]
    return len(told) == 3 and told[1].text in little("times") and told[0].kind == told[2].kind == "num"
