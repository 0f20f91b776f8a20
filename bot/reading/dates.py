"""Days: the day trained, and the days that a move or an absence speaks of.

A report looks back for the nearest day of a name, a move or an absence ahead. Before 04:00 "today", "yesterday" and
no word at all mean the evening before, and "tomorrow" is asked. A day that cannot be known ("last week") is asked.
"""

from __future__ import annotations

import calendar
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, timedelta

from bot.reading.intents import ABSENCES, wishes
from bot.reading.lexicon import Hit
from bot.reading.message import Claim, Message
from bot.reading.phrases import phrases, sentence_bounds
from bot.reading.reading import Ask, Span
from bot.reading.tokens import Token

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
NEAR = 3
DAYS_OF = {"day": 1, "week": 7, "fortnight": 14, "month": 30}


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


def _of_month(today: date, month: int, day: int, ahead: bool) -> date | None:
    """The nearest such day of the year, looking back or ahead; up to eight years for a 29 February."""
    for step in range(9):
        found = _safe(today.year + (step if ahead else -step), month, day)
        if found is not None and ((found >= today) if ahead else (found <= today)):
            return found
    return None


def _day_of_month(today: date, day: int, ahead: bool) -> date | None:
    if not 1 <= day <= 31:
        return None
    month = today.replace(day=1)
    for _ in range(13):
        found = _safe(month.year, month.month, day)
        if found is not None and ((found >= today) if ahead else (found <= today)):
            return found
        month = (month + timedelta(days=32) if ahead else month - timedelta(days=1)).replace(day=1)
    return None


class _Finder:
    """The days of one message."""

    def __init__(self, message: Message) -> None:
        self.message = message
        self.tokens = message.tokens
        self.today = message.today
        self.hits = message.hits("dates")
        self.at: dict[int, list[Hit]] = {}
        for hit in self.hits:
            self.at.setdefault(hit.start, []).append(hit)

    def has(self, table: str, at: int, end: int | None = None) -> Hit | None:
        return next((h for h in self.at.get(at, ()) if h.table == table and (end is None or h.end <= end)), None)

    def days(self) -> list[Day]:
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
        dotted = self._dotted(at)
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
        if before not in ("\n", ".", "am", "vom", "bis", "zum", "ab", "seit", "den"):
            return None
        day, month = (int(part or 0) for part in token.text.split("."))
        if not (1 <= day <= 31 and 1 <= month <= 12 and len(token.text) >= 3):
            return None
        back, ahead = _of_month(self.today, month, day, False), _of_month(self.today, month, day, True)
        if back is None or ahead is None:
            return None
        return Day(at, at + 2, "date", (back, back), (ahead, ahead))

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
            return self._both(hit, "date", _of_month(today, month, day, False), _of_month(today, month, day, True))
        if hit.table in ("ago", "ahead"):
            numbers = self._numbers(hit)
            count = numbers[0] if numbers else 1
            if not 0 <= count <= 400:
                return None
            step = timedelta(days=count * DAYS_OF[hit.name] * (1 if hit.table == "ahead" else -1))
            return self._both(hit, "date" if hit.table == "ahead" else "ago", today + step, today + step)
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
            count = (
                numbers[0]
                if numbers
                else (
                    2
                    if hit.end - hit.start >= 2
                    and hit.name == "day"
                    and "couple" in self.message.span(hit.start, hit.end).lower()
                    else 1
                )
            )
            if not 1 <= count <= 400:
                return None
            return Day(hit.start, hit.end, "length", None, None, None, None, count * DAYS_OF[hit.name])
        if hit.table == "end_of":
            return self._end_of(hit)
        return self._date(hit)

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
        opens = before is None or before.text in ",;\n.&/-" or before.text in ("und", "and", "y")
        linked = before is not None and any(h.table in ("link", "which") and h.end == hit.start for h in self.hits)
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
        others = any(h.table in ("short", "weekday") and h.start != hit.start for h in self.hits)
        return opens and others and after is not None and after.kind in ("word", "num")

    def _other_day(self, hit: Hit) -> bool:
        return any(h.table == "weekday" and h.start != hit.start for h in self.hits)

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
        year = None
        if (
            end < len(self.tokens)
            and self.tokens[end].value is not None
            and 2000 <= (self.tokens[end].value or 0) <= 2100
            and len(self.tokens[end].text) == 4
        ):
            year, end = int(self.tokens[end].value or 0), end + 1
        today = self.today
        if hit.name == "of_month_range":
            if len(numbers) < 2:
                return None
            if month is None:
                first, last = _day_of_month(today, numbers[0], True), _day_of_month(today, numbers[0], False)
                ahead_to = _day_of_month(first, numbers[1], True) if first else None
                back_to = _day_of_month(last, numbers[1], True) if last else None
                return Day(
                    hit.start,
                    end,
                    "range",
                    (last, back_to) if last and back_to else None,
                    (first, ahead_to) if first and ahead_to else None,
                )
            to = _of_month(today, month, numbers[1], True)
            if to is None:
                return None
            start = _safe(to.year if numbers[0] <= numbers[1] else to.year, month, numbers[0])
            past = _of_month(today, month, numbers[0], False)
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
                exact = _safe(year, month, day)
                return Day(hit.start, end, "exact", (exact, exact), (exact, exact)) if exact else None
            return self._both(hit, "date", _of_month(today, month, day, False), _of_month(today, month, day, True))
        day = numbers[0] if numbers else 1
        of = hit.end + 1 if hit.end < len(self.tokens) and self.tokens[hit.end].text in ("de", ".", "of") else hit.end
        if any(h.table == "month" for h in self.at.get(of, ())):
            return None  # "until 1 May": the longer one, from the number on
        if day > 31 and hit.end - hit.start > 1 and self.tokens[hit.end - 1].kind == "word":
            return Day(hit.start, hit.end, "bad", None, None)
        whole = self.tokens[hit.end - 1]
        if whole.value is not None and whole.value != int(whole.value):
            return None
        return self._both(hit, "dom", _day_of_month(today, day, False), _day_of_month(today, day, True))

    def _ranges(self, days: list[Day]) -> list[Day]:
        """ "Friday to Sunday", "from April 3 through April 10": two days with a word of range between are one span."""
        out: list[Day] = []
        for day in days:
            last = out[-1] if out else None
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
                if link is not None and self.tokens[last.end].text not in (
                    ",",
                    "and",
                    "und",
                    "y",
                    "&",
                    "/",
                    "or",
                    "oder",
                    "o",
                    "e",
                    "ni",
                ):
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
            return _day_of_month(first, to.day, True) or to
        return _of_month(first, to.month, to.day, True) or to

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
                        or (
                            h.end == day.start - 1
                            and self.tokens[h.end].text in ("the", "el", "dem", "den", "on", "am")
                        )
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
            if named and inner not in ("the", "el"):
                return Day(day.start, day.end, day.kind, day.back, day.ahead, named, day.shift, day.days)
        return day


def find_dates(message: Message) -> list[Claim]:
    """Claims `day` (a day trained), `span` (the days of a move or an absence) and `noise` (days of other things)."""
    finder = _Finder(message)
    days = finder.days()
    found = wishes(message)
    absent = {name: found[name] for name in ABSENCES if name in found}
    claims: list[Claim] = []
    used: set[int] = set()
    if absent:
        span, taken, ask = _span(message, finder, days, absent, bool(found.get("resume")))
        used = {day.start for day in taken}
        for day in taken:
            claims.append(Claim(day.start, day.end, "noise", None))
        if span is not None or ask is not None:
            claims.append(Claim(0, 0, "span", span, ask))
    bounds = sentence_bounds(message.tokens)
    wanted = bool(set(found) - {"report"})
    for day in days:
        if day.start in used:
            continue
        claim = _trained(message, finder, day, bounds, wanted, absent)
        if claim is not None:
            claims.append(claim)
    trained = [claim for claim in claims if claim.kind == "day" and claim.value is not None]
    if len(trained) > 1:
        # "did today's sets last night": the plan is today's, the training was not
        plans = {id(c) for c in trained if c.value == message.today and "'s" in message.span(c.start, c.end)}
        claims = [Claim(c.start, c.end, "noise", None) if id(c) in plans else c for c in claims]
    return claims


def _of_a_month(message: Message, finder: _Finder, day: Day, sentence: tuple[int, int]) -> bool:
    """Whether "the 3rd" is a day: "on the 3rd", "am 3.", or first in its sentence; "missed the 4th" is a rep."""
    tokens = message.tokens
    first = tokens[day.start].text
    if first == "el" and day.end - day.start > 2 and day.start == sentence[0]:
        return True  # "el día 3"
    after = tokens[day.end] if day.end < len(tokens) else None
    if after is not None and (
        after.text in ("%", "x", "/") or any(h.start == day.end for h in message.hits("body") if h.name == "rep_like")
    ):
        return False
    worded = tokens[day.end - 1].kind == "word" or tokens[day.end - 1].text == "."
    if first in ("on", "am", "vom") and worded:
        return True
    if day.start == sentence[0] and after is not None and (after.text == ":" or (worded and first == "the")):
        return True
    before = tokens[day.start - 1].text if day.start else ""
    return (worded and before in ("of", "from", "for", "on", "am", "vom")) or (
        first == "el" and day.start == sentence[0] and after is not None and after.kind == "word"
    )


def _clause(tokens: Sequence[Token], at: int, bounds: tuple[int, int]) -> tuple[int, int]:
    start = at
    while start > bounds[0] and tokens[start - 1].text not in ",;":
        start -= 1
    end = at
    while end < bounds[1] and tokens[end].text not in ",;":
        end += 1
    return start, end


def _trained(
    message: Message,
    finder: _Finder,
    day: Day,
    bounds: list[tuple[int, int]],
    wanted: bool,
    absent: dict[str, list[Hit]],
) -> Claim | None:
    """What a day named means for a report: the day trained, a question, or nothing."""
    tokens = message.tokens
    sentence = next(((a, b) for a, b in bounds if a <= day.start < b), (0, len(tokens)))
    noise = Claim(day.start, day.end, "noise", None)
    if day.kind == "bad":
        return Claim(day.start, day.end, "day", None, Ask("performed_on", message.span(day.start, day.end)))
    if day.kind == "dom" and not _of_a_month(message, finder, day, sentence):
        return None
    if day.kind in ("length", "end", "week", "weekend"):
        return noise if day.kind != "length" or day.days else None
    before = tokens[day.start - 1].text if day.start else ""
    if day.link in ("since", "open", "until", "back", "same") or (
        finder.has("link", day.start - 1)
        and day.kind == "vague"
        and any(h.name == "than" and h.end == day.start for h in finder.at.get(day.start - 1, ()) if h.table == "link")
        and before not in ("from", "von", "de")
    ):
        return noise
    clause = _clause(tokens, day.start, sentence)
    for at in range(max(clause[0], day.start - 4), day.start - 1):
        hit = next(
            (h for h in finder.at.get(at, ()) if h.table == "link" and h.name == "cause" and h.end < day.start), None
        )
        if (
            hit is not None
            and day.start - hit.end <= NEAR
            and not any(t.value is not None for t in tokens[hit.end : day.start])
            and at > clause[0]
        ):
            return noise
    numbers = [a for a in range(*sentence) if tokens[a].value is not None and not day.start <= a < day.end]
    other = any(
        h.table == "other"
        and h.name == "word"
        and clause[0] <= h.start < clause[1]
        and not day.start <= h.start < day.end
        for h in finder.hits
    )
    told = any(h.table == "other" and h.name == "report" and clause[0] <= h.start < clause[1] for h in finder.hits)
    rows = any(
        tokens[a].text == "x"
        or (
            tokens[a].kind == "num"
            and a + 2 < len(tokens)
            and tokens[a + 1].text in ("x", ",", "/")
            and tokens[a + 2].value is not None
        )
        for a in range(*clause)
    )
    if day.kind == "vague":
        named = any(one.back for one in finder.days() if one.kind not in ("vague", "length"))
        asked = (numbers or told) and not other and not absent and not named
        return (
            Claim(day.start, day.end, "day", None, Ask("performed_on", message.span(day.start, day.end)))
            if asked
            else noise
        )
    if other and not told and not rows:
        return noise
    if day.back is None:
        return noise
    if day.shift is not None and day.shift > 0:
        return noise
    when = day.back[1]
    if when > message.today:
        if day.kind == "exact":
            return Claim(day.start, day.end, "day", None, Ask("performed_on", message.span(day.start, day.end)))
        return noise
    return Claim(day.start, day.end, "day", when)


def _span(
    message: Message, finder: _Finder, days: list[Day], absent: dict[str, list[Hit]], resumed: bool
) -> tuple[Span | None, list[Day], Ask | None]:
    """The days that the wish to move, or the absence, speaks of."""
    hits = [hit for own in absent.values() for hit in own]
    bounds = sentence_bounds(message.tokens)
    spoken = {b for b in bounds for hit in hits if b[0] <= hit.start < b[1]}
    near = [day for day in days if any(a <= day.start < b for a, b in spoken)]
    if not near and len(bounds) > 1 and {"missed"} != set(absent):
        near = [
            day
            for day in days
            if day.kind in ("range", "length", "date", "dom") or day.link in ("until", "back", "from")
        ]
    near = [day for day in near if day.kind != "vague" or day.ahead]
    if message.at_night:
        asked = next((day for day in near if day.shift is not None and day.shift > 0), None)
        if asked is not None:
            return None, near, Ask("dates", message.span(asked.start, asked.end))
    if "move" in absent:
        moved, taken = _move(message, near, absent)
        return moved, taken, None if moved is not None and moved.end is not None else _where_to(message, taken, absent)
    if "pause" in absent:
        return (*_open(message, near, "pause"), None)
    if "ill" in absent and "away" in absent:
        later = min(hit.start for hit in absent["away"])
        coming = [day for day in near if day.start > later and day.link not in ("since",)]
        if coming and min(hit.start for hit in absent["ill"]) < later:
            return (*_open(message, coming, "away"), None)
    if "ill" in absent:
        return (*_ill(message, near, resumed, absent), None)
    if "away" in absent:
        return (*_open(message, near, "away"), None)
    return (*_missed(message, near, finder), None)


def _ahead(day: Day) -> tuple[date, date]:
    found = day.ahead or day.back
    assert found is not None
    return found


def _move(message: Message, days: list[Day], absent: dict[str, list[Hit]]) -> tuple[Span | None, list[Day]]:
    named = [
        day
        for day in days
        if day.kind in ("rel", "weekday", "date", "dom", "exact", "week", "weekend", "range")
        and (day.ahead or day.back)
    ]
    today = message.today
    if not named:
        lengths = [day for day in days if day.kind == "length"]
        if lengths:
            return Span(today, today + timedelta(days=lengths[0].days)), lengths
        return (Span(today, None), []) if False else (None, [])
    missed = "missed" in absent

    def first(day: Day) -> date:
        if missed and day.kind == "weekday" and day.back:
            return day.back[0]
        return _ahead(day)[0]

    if len(named) == 1:
        day = named[0]
        if day.kind == "range" and day.ahead:
            return Span(day.ahead[0], day.ahead[1]), named
        if day.link == "to" or (
            day.shift is not None and day.shift > 0 and day.link != "from" and not _possessed(message, day)
        ):
            if _named_object(message, day) and day.link != "to":
                return Span(first(day), None), named
            return Span(today, first(day)), named
        if day.shift is not None and day.shift < 0:
            return Span(first(day), None), named
        if day.link == "instead":
            return Span(first(day), None), named
        if _named_object(message, day):
            return Span(first(day), None), named
        if day.shift == 0:
            return Span(today, None), named
        return Span(today, first(day)), named
    one, two = named[0], named[1]
    if two.link == "instead" or (one.link == "to" and two.link == "from"):
        one, two = two, one
    start = first(one)
    end = _ahead(two)[0]
    if end < start and two.kind == "weekday":
        end = start + timedelta(days=(end - start).days % 7)
    return Span(start, end), named


def _where_to(message: Message, taken: list[Day], absent: dict[str, list[Hit]]) -> Ask:
    """A move without its new day is asked, by the day moved or by the words of the wish."""
    if taken:
        return Ask("dates", message.span(taken[0].start, taken[0].end))
    hit = max(absent["move"], key=lambda hit: hit.end - hit.start)
    return Ask("dates", message.span(hit.start, hit.end))


def _possessed(message: Message, day: Day) -> bool:
    return "'s" in message.span(day.start, day.end)


def _named_object(message: Message, day: Day) -> bool:
    """ "move Thursday", "Thursday's session": the day is what is moved, not where to."""
    if _possessed(message, day) or day.link == "from":
        return True
    before = message.tokens[day.start - 1] if day.start else None
    if before is None:
        return False
    moves = phrases("intents", message.language, "want").at(message.tokens, day.start - 1)
    return any(hit.name == "move" for hit in moves)


def _open(message: Message, days: list[Day], kind: str) -> tuple[Span | None, list[Day]]:
    """An absence ahead: from a day or today, to a day, a length, or open."""
    today = message.today
    start: date | None = None
    end: date | None = None
    for day in days:
        if day.kind == "range" and day.ahead:
            start, end = day.ahead
        elif day.link == "back" and day.ahead:
            end = _ahead(day)[0] - timedelta(days=1)
        elif day.kind == "end" and day.ahead:
            end = day.ahead[1]
        elif day.link == "until" and day.ahead:
            end = _later(day, start or today)
        elif day.kind == "length":
            continue
        elif day.link == "since" and day.back:
            start = day.back[0]
        elif day.kind in ("week", "weekend", "vague") and day.ahead:
            if start is None:
                start, end = day.ahead
        elif day.ahead:
            first = _ahead(day)[0]
            if start is None:
                start = first
                if (
                    day.link != "from"
                    and day.kind in ("weekday", "rel", "dom", "date", "exact")
                    and kind == "away"
                    and day.shift != 0
                ):
                    end = end if day.link == "from" else end
            elif end is None:
                end = _later(day, start)
    for day in days:
        if day.kind == "length" and end is None:
            start = start or today
            end = start + timedelta(days=day.days - 1)
    if start is None:
        start = today
    if end is not None and end < start:
        start = min(today, end)
    return Span(start, end), days


def _later(day: Day, first: date) -> date:
    end = _ahead(day)[1]
    if end < first and day.kind == "weekday":
        end += timedelta(days=7 * (((first - end).days + 6) // 7))
    elif end < first and day.kind == "dom":
        end = _day_of_month(first, end.day, True) or end
    return end


def _ill(
    message: Message, days: list[Day], resumed: bool, absent: dict[str, list[Hit]]
) -> tuple[Span | None, list[Day]]:
    today = message.today
    start: date | None = None
    end: date | None = None
    only_today = False
    over = any(hit.name == "back_to_health" for hit in message.hits("intents", "past"))
    taken: list[Day] = []
    for day in days:
        if day.kind == "range" and (day.back or day.ahead):
            was = day.back if day.back and day.back[1] <= today else day.ahead or day.back
            assert was is not None
            start, end = was
        elif day.link in ("until", "back") and day.ahead:
            end = _ahead(day)[1] if day.link == "until" else _ahead(day)[0] - timedelta(days=1)
        elif day.kind == "end" and day.ahead:
            end = day.ahead[1]
        elif day.kind == "week":
            start = today - timedelta(days=today.weekday())
            end = today - timedelta(days=1) if resumed else end
        elif day.kind == "length":
            continue
        elif day.shift == 0:
            only_today = True
        elif day.shift is not None and day.shift > 0:
            end = _ahead(day)[1]
        elif day.back and day.kind != "vague":
            if start is None or day.link in ("since", "open"):
                start = day.back[0]
            if over and day.link not in ("since", "open") and len(days) > 1:
                end = max(end or day.back[1], day.back[1])
        else:
            continue
        taken.append(day)
    if start is None and end is None:
        return (Span(today, today) if only_today and "missed" in absent else Span(today, None)), taken
    return Span(start or today, end), taken


def _missed(message: Message, days: list[Day], finder: _Finder) -> tuple[Span | None, list[Day]]:
    today = message.today
    future = any(h.name == "missed_future" for h in message.hits("intents", "past"))
    found: list[date] = []
    taken: list[Day] = []
    for day in days:
        if day.link in ("since", "open", "back", "until") or day.kind in ("length", "vague", "bad"):
            continue
        span = (
            day.back
            if (day.back and not future) or (day.shift is not None and day.shift <= 0)
            else day.ahead or day.back
        )
        if span is None:
            span = day.ahead
        if span is None:
            continue
        found.extend(span)
        taken.append(day)
    if not found:
        return Span(today, today), taken
    return Span(min(found), max(found)), taken


def named_days(message: Message) -> list[Day]:
    """Every day that a message names, whatever it is for."""
    return _Finder(message).days()
