"""Days named in a message: weekdays, dates, feasts, "yesterday", "until the 3rd", lengths, what links them.

The common ones are worked out here, where dateparser is wrong ("the 20th", "am Dienstag", a weekday on that weekday).
Full dates with a year and relative spans ("vor 3 Wochen") go to dateparser as short cut-out spans (`parsed`).
"""

from __future__ import annotations

import calendar
from dataclasses import dataclass, replace
from datetime import date, timedelta
from functools import cached_property

from bot.reading.lexicon import Hit
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.parsed import parsed

DAY_TABLES = (
    "rel",
    "weekday",
    "short",
    "date",
    "feast",
    "ago",
    "ahead",
    "vague",
    "week",
    "weekend",
    "length",
    "end_of",
)
MOST_HANDED_OVER = 12  # relative days a message may have worked out
FARTHEST = 400  # days
DAYS_OF = {"day": 1, "pair": 1, "week": 7, "fortnight": 14, "month": 30}


@dataclass(frozen=True)
class Day:
    """A day or days named at tokens [start, end). `back` and `ahead`: what they are, looking back and ahead."""

    start: int
    end: int
    kind: str  # rel, weekday, date, range, length, week, weekend, vague
    back: tuple[date, date] | None
    ahead: tuple[date, date] | None
    link: str | None = None  # until, since, from, back, to, instead
    shift: int | None = None  # days from today, of "yesterday"
    days: int = 0  # of a length


def _weekday_back(today: date, weekday: int, before: bool = False) -> date:
    gap = (today.weekday() - weekday) % 7
    return today - timedelta(days=gap or (7 if before else 0))


def _weekday_ahead(today: date, weekday: int, after: bool = False) -> date:
    gap = (weekday - today.weekday()) % 7
    return today + timedelta(days=gap or (7 if after else 0))


def _safe(year: int, month: int, day: int) -> date | None:
    try:
        return date(year, month, day)
    except ValueError:
        return None


def of_month(today: date, month: int, day: int, ahead: bool) -> date | None:
    """The nearest such day of the year, looking back or ahead; up to eight years for a 29 February."""
    for step in range(9):
        found = _safe(today.year + (step if ahead else -step), month, day)
        if found is not None and ((found >= today) if ahead else (found <= today)):
            return found
    return None


def day_of_month(today: date, day: int, ahead: bool) -> date | None:
    if not 1 <= day <= 31:
        return None
    month = today.replace(day=1)
    for _ in range(13):
        found = _safe(month.year, month.month, day)
        if found is not None and ((found >= today) if ahead else (found <= today)):
            return found
        month = (month + timedelta(days=32) if ahead else month - timedelta(days=1)).replace(day=1)
    return None


class DayFinder:
    """The days of one message."""

    def __init__(self, message: Message) -> None:
        self.message = message
        self.tokens = message.tokens
        self.today = message.today
        self.hits = message.hits("dates")
        self.at: dict[int, list[Hit]] = {}
        for hit in self.hits:
            self.at.setdefault(hit.start, []).append(hit)
        self.handed_over = 0
        self._short_or_named = [hit for hit in self.hits if hit.table in ("short", "weekday")]
        self._leading = {hit.end for hit in self.hits if hit.table in ("link", "which")}

    def has(self, table: str, at: int, end: int | None = None) -> Hit | None:
        return next((h for h in self.at.get(at, ()) if h.table == table and (end is None or h.end <= end)), None)

    @cached_property
    def days(self) -> list[Day]:
        """All days named, in order, each with the word that links it."""
        out: list[Day] = []
        at = 0
        while at < len(self.tokens):
            day = self._day(at)
            if day is None:
                at += 1
                continue
            out.append(day)
            at = max(day.end, at + 1)
        return [self._linked(day) for day in self._ranges(out)]

    def _day(self, at: int) -> Day | None:
        token = self.tokens[at]
        if token.kind == "date":
            try:
                exact = date.fromisoformat(token.text)
            except ValueError:
                return None
            return Day(at, at + 1, "exact", (exact, exact), (exact, exact))
        dotted = self._dotted(at) or self._slashed(at)
        if dotted is not None:
            return dotted
        for hit in self.at.get(at, ()):
            if hit.table in DAY_TABLES or hit.table == "which":
                made = self._made(hit)
                if made is not None:
                    return made
        return None

    def _dotted(self, at: int) -> Day | None:
        """ "28.02." """
        token = self.tokens[at]
        after = self.tokens[at + 1] if at + 1 < len(self.tokens) else None
        if token.kind != "num" or after is None or after.text != "." or after.space or token.text.count(".") != 1:
            return None
        before = self.tokens[at - 1].text if at else "\n"
        if before not in little("before_dotted"):
            return None
        day, month = (int(part or 0) for part in token.text.split("."))
        if not (1 <= day <= 31 and 1 <= month <= 12 and len(token.text) >= 3):
            return None
        back, ahead = of_month(self.today, month, day, False), of_month(self.today, month, day, True)
        if back is None or ahead is None:
            return None
        return Day(at, at + 2, "date", (back, back), (ahead, ahead))

    def _slashed(self, at: int) -> Day | None:
        """ "14/2 pull-ups", at the head of a line; "3/2" is left and right."""
        tokens = self.tokens
        if at + 3 >= len(tokens) or (at and tokens[at - 1].text != "\n") or tokens[at + 1].text != "/":
            return None
        day, month = tokens[at].value, tokens[at + 2].value
        if day is None or month is None or not 12 < day <= 31 or not 1 <= month <= 12 or day % 1 or month % 1:
            return None
        if tokens[at + 3].text != ":" and tokens[at + 3].kind != "word":
            return None
        back, ahead = (of_month(self.today, int(month), int(day), way) for way in (False, True))
        return Day(at, at + 3, "date", (back, back), (ahead, ahead)) if back and ahead else None

    def _numbers(self, hit: Hit) -> list[int]:
        return [
            int(t.value) for t in self.tokens[hit.start : hit.end] if t.value is not None and t.value == int(t.value)
        ]

    def _made(self, hit: Hit) -> Day | None:
        today = self.today
        if hit.table == "which":
            return self._which(hit)
        if hit.table in ("weekday", "short"):
            return self._weekday(hit, None)
        if hit.table == "rel":
            shift = int(hit.name)
            if self.message.at_night:
                shift = 0 if shift == -1 else shift + 1 if shift < -1 else shift
            # after midnight "tomorrow" could be the day begun or the next
            base = today
            found = base + timedelta(days=shift)
            return Day(hit.start, hit.end, "rel", (found, found), (found, found), None, shift)
        if hit.table == "feast":
            month, day = (int(part) for part in hit.name.split("-"))
            return self._both(hit, "date", of_month(today, month, day, False), of_month(today, month, day, True))
        if hit.table in ("ago", "ahead"):
            return self._relative(hit)
        if hit.table == "vague":
            return Day(hit.start, hit.end, "vague", None, self._weekend_if(hit))
        if hit.table == "week":
            monday = today - timedelta(days=today.weekday()) + timedelta(days=7 * int(hit.name))
            first = max(today, monday)
            return Day(hit.start, hit.end, "week", None, (first, monday + timedelta(days=6)))
        if hit.table == "weekend":
            return Day(hit.start, hit.end, "weekend", None, self._weekend(int(hit.name)))
        if hit.table == "length":
            numbers = self._numbers(hit)
            count = numbers[0] if numbers else 2 if hit.name == "pair" else 1
            if not 1 <= count <= FARTHEST:
                return None
            return Day(hit.start, hit.end, "length", None, None, None, None, count * DAYS_OF[hit.name])
        if hit.table == "end_of":
            return self._end_of(hit)
        return self._date(hit)

    def _relative(self, hit: Hit) -> Day | None:
        """ "three weeks ago", "in 10 Tagen", "hace dos meses": dateparser's, as long as the way round is right."""
        self.handed_over += 1
        if self.handed_over > MOST_HANDED_OVER:
            return Day(hit.start, hit.end, "vague", None, None)
        words = [f"{t.value:g}" if t.value is not None else t.text for t in self.tokens[hit.start : hit.end]]
        found = parsed(" ".join(words), self.message.language, self.today)
        ahead = hit.table == "ahead"
        if found is not None and abs((found - self.today).days) > FARTHEST:
            return None  # "three years ago" is a tale
        if found is None or (found < self.today if ahead else found > self.today):
            return Day(hit.start, hit.end, "bad", None, None)
        return self._both(hit, "date" if ahead else "ago", found, found)

    def _both(self, hit: Hit, kind: str, back: date | None, ahead: date | None) -> Day | None:
        if back is None and ahead is None:
            return None
        return Day(hit.start, hit.end, kind, (back, back) if back else None, (ahead, ahead) if ahead else None)

    def _weekend(self, which: int) -> tuple[date, date]:
        saturday = self.today - timedelta(days=self.today.weekday()) + timedelta(days=5 + 7 * which)
        return max(self.today, saturday), saturday + timedelta(days=1)

    def _weekend_if(self, hit: Hit) -> tuple[date, date] | None:
        return (
            self._weekend(0)
            if any(h.table == "weekend" and h.end <= hit.end for h in self.at.get(hit.start, ()))
            or any(h.table == "weekend" for a in range(hit.start, hit.end) for h in self.at.get(a, ()))
            else None
        )

    def _which(self, hit: Hit) -> Day | None:
        """ "last Tuesday", "nächsten Montag"."""
        after = next((h for h in self.at.get(hit.end, ()) if h.table in ("weekday", "short")), None)
        return self._weekday(after, hit) if after is not None else None

    def _weekday(self, hit: Hit, which: Hit | None) -> Day | None:
        if hit.table == "short" and which is None and not self._strong(hit):
            return None
        start, end = (which.start if which else hit.start), hit.end
        of_day = self.has("of_day", end)
        if of_day is not None:
            end = of_day.end
        name = which.name if which else None
        behind = self.has("which", end)
        if behind is not None and name is None and self.has("weekday", behind.end) is None:
            name, end = behind.name, behind.end
        weekday, today = int(hit.name), self.today
        back = _weekday_back(today, weekday, before=name == "last")
        ahead = _weekday_ahead(today, weekday, after=name == "next")
        other = self.has("other_week", end)
        if other is not None and which is None:
            monday = today - timedelta(days=today.weekday()) + timedelta(days=int(other.name))
            back = ahead = monday + timedelta(days=weekday)
            end = other.end
        if name == "last":
            ahead = back
        if name == "next" and other is None:
            return Day(start, end, "weekday", None, (ahead, ahead))
        return Day(start, end, "weekday", (back, back), (ahead, ahead))

    def _strong(self, hit: Hit) -> bool:
        """Whether "Do", "sat", "mar" is a day: a colon behind it, or a capital and a place where days stand."""
        said = self.message.span(hit.start, hit.end)
        after = self.tokens[hit.end] if hit.end < len(self.tokens) else None
        before = self.tokens[hit.start - 1] if hit.start else None
        opens = before is None or before.text in ",;\n.&/-" or before.text in little("and")
        linked = before is not None and hit.start in self._leading
        if after is not None and after.text == ":" and (opens or linked):
            return True
        heads = before is None or before.text == "\n"
        if heads and after is not None and after.text in "-~|" and said[:1].isupper():
            return True  # "Sat - chins 4x5", a line of a log
        if len(said) > 2 and hit.name in ("5", "6", "2") and linked:
            return True
        if not said[:1].isupper():
            return len(said) >= 3 and opens and after is not None and after.kind == "word" and self._other_day(hit)
        if after is not None and after.text == "." and not after.space and hit.end + 1 < len(self.tokens):
            return opens
        if linked:
            return True
        others = any(h.start != hit.start for h in self._short_or_named)
        return opens and others and after is not None and after.kind in ("word", "num")

    def _other_day(self, hit: Hit) -> bool:
        named = any(h.table == "weekday" and h.start != hit.start for h in self._short_or_named)
        # "sat pull-ups 5x5, sun dips 5x5"
        both = any(h.start != hit.start for h in self._short_or_named) and bool(self.message.movement_hits[hit.end])
        return named or both

    def _end_of(self, hit: Hit) -> Day | None:
        today = self.today
        if hit.name == "month":
            last = today.replace(day=calendar.monthrange(today.year, today.month)[1])
        elif hit.name == "named":
            month = next(
                (int(h.name) for a in range(hit.start, hit.end) for h in self.at.get(a, ()) if h.table == "month"), 0
            )
            if not month:
                return None
            year = today.year if month >= today.month else today.year + 1
            last = date(year, month, calendar.monthrange(year, month)[1])
        else:
            last = today + timedelta(days=6 - today.weekday() + (7 if hit.name == "next_week" else 0))
        return Day(hit.start, hit.end, "end", (last, last), (last, last))

    def _date(self, hit: Hit) -> Day | None:
        numbers = self._numbers(hit)
        month = next(
            (int(h.name) for a in range(hit.start, hit.end) for h in self.at.get(a, ()) if h.table == "month"), None
        )
        end = hit.end
        year, end = self._year(end)
        today = self.today
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
            to = of_month(today, month, numbers[1], True)
            if to is None:
                return None
            start = _safe(to.year, month, numbers[0])
            past = of_month(today, month, numbers[0], False)
            past_to = _safe(past.year, month, numbers[1]) if past else None
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
                exact = self._of_year(hit, day, year)
                return Day(hit.start, end, "exact", (exact, exact), (exact, exact)) if exact else None
            return self._both(hit, "date", of_month(today, month, day, False), of_month(today, month, day, True))
        if not numbers and any(t.value is not None for t in self.tokens[hit.start : hit.end]):
            return None  # "am 14.2.": day and month in one number
        day = numbers[0] if numbers else 1
        of = (
            hit.end + 1
            if hit.end < len(self.tokens) and self.tokens[hit.end].text in little("before_month")
            else hit.end
        )
        if any(h.table == "month" for h in self.at.get(of, ())):
            return None  # "until 1 May": the longer one, from the number on
        if day > 31 and hit.end - hit.start > 1 and self.tokens[hit.end - 1].kind == "word":
            return Day(hit.start, hit.end, "bad", None, None)
        whole = self.tokens[hit.end - 1]
        if whole.value is not None and whole.value != int(whole.value):
            return None
        return self._both(hit, "dom", day_of_month(today, day, False), day_of_month(today, day, True))

    def _year(self, at: int) -> tuple[int | None, int]:
        """The year behind a date ("March 3, 2027", "3 de marzo de 2027"), and where the date then ends."""
        start = at + 1 if at < len(self.tokens) and self.tokens[at].text in little("before_year") else at
        if start < len(self.tokens):
            token = self.tokens[start]
            if token.value is not None and len(token.text) == 4 and 2000 <= token.value <= 2100:
                return int(token.value), start + 1
        return None, at

    def _of_year(self, hit: Hit, day: int, year: int) -> date | None:
        """ "3rd of March 2026": dateparser's, when day and year are those of the words."""
        name = next((h for a in range(hit.start, hit.end) for h in self.at.get(a, ()) if h.table == "month"), None)
        if name is None:
            return None
        found = parsed(f"{day} {self.tokens[name.start].text} {year}", self.message.language, self.today)
        if found is None:
            return _safe(year, int(name.name), day)  # a name that dateparser does not know: "Jänner"
        return found if (found.day, found.year) == (day, year) else None

    def _ranges(self, days: list[Day]) -> list[Day]:
        """ "Friday to Sunday", "from April 3 through April 10": two days with a word of range between are one span."""
        out: list[Day] = []
        for day in days:
            last = out[-1] if out else None
            if last is not None and last.kind == "weekday" and day.kind in ("dom", "date", "exact"):
                between = self.tokens[last.end : day.start]
                until = any(h.table == "link" and h.name in ("until", "range") for h in self.at.get(day.start, ()))
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
                        for h in self.at.get(last.end, ())
                        if h.table == "link" and h.name == "range" and h.end == day.start
                    ),
                    None,
                )
                if link is not None and self.tokens[last.end].text not in little("no_range"):
                    ahead = back = None
                    if last.ahead and day.ahead:
                        first = last.ahead[0]
                        to = day.ahead[1]
                        if to < first:
                            to = self._after(day, first)
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

    def _after(self, day: Day, first: date) -> date:
        """The day named, as the first one that is not before `first`."""
        assert day.ahead is not None
        to = day.ahead[1]
        if day.kind == "weekday":
            return to + timedelta(days=7 * (((first - to).days + 6) // 7))
        if day.kind == "dom":
            return day_of_month(first, to.day, True) or to
        return of_month(first, to.month, to.day, True) or to

    def _linked(self, day: Day) -> Day:
        """The word before a day: until, since, from, back on, to, instead of."""
        for width in (4, 3, 2, 1):
            start = day.start - width
            if start < 0:
                continue
            best = next(
                (
                    h
                    for h in self.at.get(start, ())
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
                                o.table == "link" and o.name == "on" and o.end == day.start
                                for o in self.at.get(h.end, ())
                            )
                        )
                        or (h.end == day.start - 1 and self.tokens[h.end].text in little("article"))
                    )
                ),
                None,
            )
            if best is not None:
                name = best.name
                return Day(day.start, day.end, day.kind, day.back, day.ahead, name, day.shift, day.days)
        behind = next((h for h in self.at.get(day.end, ()) if h.table == "link" and h.name == "back"), None)
        if behind is not None and day.kind in ("dom", "date", "weekday", "rel"):
            return Day(day.start, day.end, day.kind, day.back, day.ahead, "back", day.shift, day.days)
        inner = self.tokens[day.start].text
        if day.kind in ("dom", "range", "date"):
            named = next(
                (
                    h.name
                    for h in self.at.get(day.start, ())
                    if h.table == "link" and h.name in ("until", "since", "from", "to") and h.end <= day.end
                ),
                None,
            )
            if named and inner not in little("article"):
                return Day(day.start, day.end, day.kind, day.back, day.ahead, named, day.shift, day.days)
        return day


def named_days(message: Message) -> DayFinder:
    """Every day that a message names, whatever it is for; worked out once a message."""
    finder: DayFinder | None = message.notes.get("days")
    if finder is None:
        finder = message.notes["days"] = DayFinder(message)
    return finder
