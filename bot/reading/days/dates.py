"""Dates: "28.02.", "14/2", "3rd of March 2026", "from the 3rd to the 8th"."""

from __future__ import annotations

from datetime import date

from bot.reading.days.day import Day, DayHits
from bot.reading.days.nearest import day_of, day_of_month, of_month
from bot.reading.lexicon import Hit
from bot.reading.little import little
from bot.reading.parsed import parsed

MOST_DAYS, MOST_MONTHS, CENTURY = 31, 12, 2000
JUST_PAST = 14  # days
LEAP_YEAR = 2028
LAST_DAYS = range(30, 32)  # that some months lack

LONG_PAST = 45  # days; of a training so long past, or a plan so far ahead, nobody tells by day and month alone


def dotted_range(hits: DayHits, at: int) -> Day | None:
    """ "14. bis 20.6.", "14.-20.6." """
    token = hits.tokens[at]
    if token.kind != "num" or not token.value or token.value % 1 or token.value > 31 or at + 3 >= len(hits.tokens):
        return None
    link = at + 2 if hits.tokens[at + 1].text == "." else at + 1
    if hits.tokens[link].text not in little("range") or (link == at + 1 and hits.tokens[link].text == "-"):
        return None
    last = dotted(hits, link + 1, ranged=True)
    if last is None or last.ahead is None or last.back is None:
        return None
    ahead, back = (day_of(to.year, to.month, int(token.value)) for to in (last.ahead[1], last.back[1]))
    if ahead is None or back is None or ahead > last.ahead[1]:
        return None
    return Day(at, last.end, "range", (back, last.back[1]), (ahead, last.ahead[1]))


def dotted(hits: DayHits, at: int, ranged: bool = False) -> Day | None:
    """ "28.02."; `ranged`: behind "14. bis", where no other word need lead it."""
    token = hits.tokens[at]
    after = hits.tokens[at + 1] if at + 1 < len(hits.tokens) else None
    if token.kind != "num" or after is None or after.text != "." or after.space or token.text.count(".") != 1:
        return None
    before = hits.tokens[at - 1].text if at else "\n"
    gone = hits.of_an_absence(at)
    if before not in little("before_dotted") and not ranged and not gone:
        return None
    day, month = (int(part or 0) for part in token.text.split("."))
    if not (1 <= day <= 31 and 1 <= month <= 12 and len(token.text) >= 3):
        return None
    if _is_lacking(month, day):
        return Day(at, at + 2, "bad", None, None)  # "vom 31.4. bis 3.5."
    back, ahead = of_month(hits.today, month, day, False), of_month(hits.today, month, day, True)
    if back is None or ahead is None:
        return None
    far = (hits.today - back).days > LONG_PAST and (ahead - hits.today).days > LONG_PAST
    if far and not ranged and not gone and at and (month == 5 or len(token.text) < len("17.5")):
        return None  # "pull-ups. 17.5. 4,4,4": no day that anyone tells of, a plate more than 15
    return Day(at, at + 2, "date", (back, back), (ahead, ahead))


def slashed(hits: DayHits, at: int) -> Day | None:
    """ "14/2 pull-ups", at the head of a line, "14/2/2027" anywhere; "3/2" is left and right."""
    told = day_and_month(hits, at)
    heads = at == 0 or hits.tokens[at - 1].text == "\n"
    gone = hits.of_an_absence(at)
    if told is None or not (heads or gone):
        return None
    day, month, end = told
    if gone and _is_lacking(month, day):
        return Day(at, end, "bad", None, None)
    if gone:
        return Day(at, end, "date", *_both_ways(hits, month, day))
    after = hits.tokens[end] if end < len(hits.tokens) else None
    with_year = end > at + 3
    back, ahead = (of_month(hits.today, month, day, way) for way in (False, True))
    near = back is not None and day > MOST_MONTHS and (hits.today - back).days <= JUST_PAST
    parted = False  # "14/5, dips", not "14/12, 13/11"
    if after is not None and near and after.text in (",", "-", ";") and end + 1 < len(hits.tokens):
        parted = after.text == "-" or hits.tokens[end + 1].kind == "word"
    if after is None or (after.text not in (":", "\n") and after.kind != "word" and not parted):
        return None
    alone = after.text == "\n" and back is not None and (hits.today - back).days <= JUST_PAST
    if not with_year and day <= MOST_MONTHS and not alone:
        return None  # "5/4 archers" is left and right; alone on its line, and just past, it heads a day
    return Day(at, end, "date", (back, back), (ahead, ahead)) if back and ahead else None


def _both_ways(hits: DayHits, month: int, day: int) -> tuple[tuple[date, date] | None, tuple[date, date] | None]:
    back, ahead = (of_month(hits.today, month, day, way) for way in (False, True))
    return (back, back) if back else None, (ahead, ahead) if ahead else None


def day_and_month(hits: DayHits, at: int) -> tuple[int, int, int] | None:
    """Day and month of "14/2" or, of this year or the last, "14/2/27", and the place after; None where it is none."""
    tokens = hits.tokens
    if at + 2 >= len(tokens) or tokens[at + 1].text not in ("/", "-"):
        return None
    day, month, end = tokens[at].value, tokens[at + 2].value, at + 3
    if tokens[at].kind != "num" or day is None or month is None or tokens[at + 2].space:
        return None
    if not 1 <= day <= MOST_DAYS or not 1 <= month <= MOST_MONTHS or day % 1 or month % 1:
        return None
    if end < len(tokens) and tokens[end].text == tokens[at + 1].text:
        year = tokens[end + 1].value if end + 1 < len(tokens) else None
        if year is None or hits.today.year - (year if year > CENTURY else year + CENTURY) not in (0, 1):
            return None
        end += 2
    elif tokens[at + 1].text == "-":
        return None  # "5-4": reps
    return int(day), int(month), end


def worded(hits: DayHits, hit: Hit) -> Day | None:
    numbers = hits.numbers(hit)
    month = next(
        (int(h.name) for a in range(hit.start, hit.end) for h in hits.at.get(a, ()) if h.table == "month"), None
    )
    end = hit.end
    year, end = _year(hits, end)
    today = hits.today
    if hit.name == "of_month_range":
        if len(numbers) < 2:
            return None
        if month is None:
            first, last = day_of_month(today, numbers[0], True), day_of_month(today, numbers[0], False)
            ahead_to = day_of_month(first, numbers[1], True) if first else None
            back_to = day_of_month(last, numbers[1], True) if last else None
            return Day(
                hit.start,
                end,
                "range",
                (last, back_to) if last and back_to else None,
                (first, ahead_to) if first and ahead_to else None,
            )
        if any(_is_lacking(month, number) for number in numbers[:2]):
            return Day(hit.start, end, "bad", None, None)
        to = of_month(today, month, numbers[1], True)
        if to is None:
            return None
        start = day_of(to.year, month, numbers[0])
        past = of_month(today, month, numbers[0], False)
        past_to = day_of(past.year, month, numbers[1]) if past else None
        return Day(
            hit.start, end, "range", (past, past_to) if past and past_to else None, (start, to) if start else None
        )
    if hit.name == "of_month":
        if month is None and len(numbers) == 2:
            month = numbers[1] if 1 <= numbers[1] <= 12 else None
        day = numbers[0] if numbers else 1
        if month is None:
            return None
        if year is not None:
            exact = _of_year(hits, hit, day, year)
            return Day(hit.start, end, "exact", (exact, exact), (exact, exact)) if exact else None
        if _is_lacking(month, day):
            return Day(hit.start, end, "bad", None, None)  # "31 February"
        return hits.both(hit, "date", of_month(today, month, day, False), of_month(today, month, day, True))
    if not numbers and any(t.value is not None for t in hits.tokens[hit.start : hit.end]):
        return None  # "am 14.2.": day and month in one number
    if hits.gone and day_and_month(hits, hit.end - 1) is not None:
        return None  # "fuera del 28/2 al 3/3": the longer ones, from the number on
    if _counts(hits, hit) or (hit.name == "plain_day" and _at_work(hits, hit)):
        return None
    day = numbers[0] if numbers else 1
    of = hit.end + 1 if hit.end < len(hits.tokens) and hits.tokens[hit.end].text in little("before_month") else hit.end
    if any(h.table == "month" for h in hits.at.get(of, ())):
        return None  # "until 1 May": the longer one, from the number on
    if day > 31 and hit.end - hit.start > 1 and hits.tokens[hit.end - 1].kind == "word":
        return Day(hit.start, hit.end, "bad", None, None)
    whole = hits.tokens[hit.end - 1]
    if whole.value is not None and whole.value != int(whole.value):
        return None
    return hits.both(hit, "dom", day_of_month(today, day, False), day_of_month(today, day, True))


def _is_lacking(month: int, day: int) -> bool:
    """Whether a month never has the day: "31 February"."""
    return day in LAST_DAYS and day_of(LEAP_YEAR, month, day) is None


def _counts(hits: DayHits, hit: Hit) -> bool:
    """ "on the 3rd floor", "for the 3rd time", "mum's 60th": the number counts something else than days."""
    at = next((at for at in range(hit.start, hit.end) if hits.tokens[at].value is not None), hit.end)
    owned = bool(at) and any(hits.tokens[at - 1].text.endswith(mark) for mark in little("owner"))
    led = {token.text for token in hits.tokens[max(0, at - 3) : at]}
    of_set = not led.isdisjoint(little("before_set"))  # "the third rep on the 4th"
    return owned or of_set or hits.has("no_date", at) is not None


def _at_work(hits: DayHits, hit: Hit) -> bool:
    """ "Stuck at work until 9": an hour."""
    before = {token.text for token in hits.tokens[max(0, hit.start - 3) : hit.start]}
    return not before.isdisjoint(little("by_the_clock"))


def _year(hits: DayHits, at: int) -> tuple[int | None, int]:
    """The year behind a date ("March 3, 2027", "3 de marzo de 2027"), and where the date then ends."""
    start = at + 1 if at < len(hits.tokens) and hits.tokens[at].text in little("before_year") else at
    if start < len(hits.tokens):
        token = hits.tokens[start]
        if token.value is not None and len(token.text) == 4 and 2000 <= token.value <= 2100:
            return int(token.value), start + 1
    return None, at


def _of_year(hits: DayHits, hit: Hit, day: int, year: int) -> date | None:
    """ "3rd of March 2026": dateparser's, when day and year are those of the words."""
    name = next((h for a in range(hit.start, hit.end) for h in hits.at.get(a, ()) if h.table == "month"), None)
    if name is None:
        return None
    found = parsed(f"{day} {hits.tokens[name.start].text} {year}", hits.message.language, hits.today)
    if found is None:
        return day_of(year, int(name.name), day)  # a name that dateparser does not know: "Jänner"
    return found if (found.day, found.year) == (day, year) else None
