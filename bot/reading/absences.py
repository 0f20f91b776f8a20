"""The days that a move or an absence speaks of: from when, until when, or open."""

from __future__ import annotations

import itertools
from datetime import date, timedelta

from bot.reading.days import Day, day_of_month, named_days
from bot.reading.lexicon import Hit
from bot.reading.little import little
from bot.reading.message import Message, read_message
from bot.reading.moves import (
    ahead,
    moved,
    moved_before,
    named_object,
    of_move,
    possessed,
    said,
    same_day,
    to_come,
    where_to,
)
from bot.reading.phrases import sentence_bounds
from bot.reading.reading import Ask, Context, Span

QUOTED = 80  # characters of a message quoted where no words of it stand for the doubt
CLAUSE_ENDS = frozenset(",;.!?\n")
LINKED = ("until", "back", "since", "from", "open")
NO_DAY = ("rough", "bad")  # "mid April", "30 February": nobody can say which day
LONG_AGO = timedelta(days=183)  # half a year
SINGLE = ("rel", "weekday", "date", "dom", "exact")
PARTS = frozenset({",", ";", "-", "?", "¿"}) | little("but")


def span_of(
    message: Message, days: list[Day], absent: dict[str, list[Hit]], resumed: bool
) -> tuple[Span | None, list[Day], Ask | None]:
    """The days that the wish to move, or the absence, speaks of."""
    hits = [hit for own in absent.values() for hit in own]
    bounds = message.sentences
    spoken = {b for b in bounds for hit in hits if b[0] <= hit.start < b[1]}
    near = [day for day in days if any(a < day.end and day.start < b for a, b in spoken)]
    if not near and len(bounds) > 1 and {"missed"} != set(absent):
        near = [
            day
            for day in days
            if day.kind in ("range", "length", "date", "dom")
            or day.link in ("until", "back", "from")
            or ("ill" in absent and day.shift == 0 and not day.link)  # "Not today. Migraine."
        ]
    near = [day for day in near if day.kind != "vague" or day.ahead]
    ranges = [day for day in days if day.kind == "range" and day.ahead]
    if "away" in absent and "move" not in absent and ranges and any(day.kind == "range" for day in near):
        near = [
            *(day for day in near if day.kind != "range"),
            ranges[-1],
        ]  # "from the 1st … now it's the 3rd to the 9th"
    only = near[0] if "move" in absent and len(near) == 1 and near[0].kind == "weekday" else None
    if only is not None and (
        only.link == "to" or "missed" in absent or to_come(message) or not named_object(message, only)
    ):
        near = [*moved_before(message, days, only, bounds), *near]
    if "move" in absent:
        near = of_move(message, near, absent["move"], bounds)
    if message.at_night:
        asked = next((day for day in near if day.shift is not None and day.shift > 0), None)
        if asked is not None:
            return None, near, Ask("dates", message.span(asked.start, asked.end))
    unknown = next((day for day in near if day.kind in NO_DAY), None)
    if unknown is not None:
        return None, near, Ask("dates", message.span(unknown.start, unknown.end))  # "pause until mid April"
    if "move" in absent:
        to, taken = moved(message, near, absent)
        return to, taken, None if to is not None and to.end is not None else where_to(message, taken, absent)
    if "pause" in absent:
        return (*_open(message, near), None)
    if "ill" in absent and not any(day.link in ("until", "back") for day in near):
        near = [
            *near,
            *(day for day in days if day.link in ("until", "back") and day not in near),
        ]  # "Out until Friday"
    if "ill" in absent and "away" in absent:
        later = min(hit.start for hit in absent["away"])
        coming = [day for day in near if day.start > later and day.link not in ("since",)]
        if coming and min(hit.start for hit in absent["ill"]) < later:
            return (*_open(message, coming), None)
    if "ill" in absent:
        off = _named_off(message, near, absent)
        if off and _two_ways(message, off[0]):
            return None, off, Ask("dates", message.span(off[0].start, off[-1].end))
        return (*_open(message, off), None) if off else (*_ill(message, near, resumed), None)
    if "away" in absent:
        near = _of_the_clause(message, near, absent["away"])
        gone, taken = _open(message, near)
        if gone is not None and gone.end is None and _that_day_alone(message, near):
            gone = Span(gone.start, gone.start)
        return gone, taken, None
    if not any(day.back or day.ahead for day in near) and said(message, "counted"):
        return None, near, Ask("dates", message.text.strip()[:QUOTED])  # "missed the last two sessions"
    apart = _told_apart(message, near, absent)
    if apart is not None:
        return None, near, apart
    return (*_missed(message, _of_the_clause(message, near, absent.get("missed", []))), None)


def days_spoken_of(text: str, context: Context) -> Span | None:
    """The days to come that a message speaks of, whatever it wishes: "next week I only have rings"."""
    message = read_message(text, context)
    coming = [day for day in named_days(message).days if day.ahead]
    if not coming:
        return None
    span, taken = _open(message, coming)
    if span is not None and span.end is None and _that_day_alone(message, taken):
        return Span(span.start, span.start)
    return span


def _of_the_clause(message: Message, days: list[Day], hits: list[Hit]) -> list[Day]:
    """ "played football yesterday, no training today": where a wish has days in its own clause, these and what goes on
    with them; days told before are of other things."""
    if len(days) < 2:
        return days
    clauses = _reasoned(message, days, _clauses(message))
    own = {clause for clause in clauses for hit in hits if hit.start < clause[1] and clause[0] < hit.end}
    plain = [day for day in days if day.link not in LINKED and day.kind not in ("length", "vague")]
    first = next((day.start for day in plain if any(a <= day.start < b for a, b in own)), None)
    if first is None:
        bound = any(day.link in LINKED and any(a <= day.start < b for a, b in own) for day in days)
        return [day for day in days if day not in plain or not bound or (day.shift or 0) >= 0]
    low = min(a for a, _ in own)
    kept = [day for day in days if day.start >= low or day.link in LINKED or _nothing_else(message, day, days, clauses)]
    later = [day for day in kept if day.start > first]
    alone = "missed" in {hit.name for hit in hits}
    return [
        day
        for day in kept
        if day not in later
        or not (alone or (day.shift is not None and day.shift < 0))
        or day.link in LINKED
        or any(a <= day.start < b for a, b in own)
        or _nothing_else(message, day, days, clauses)
    ]


def _clauses(message: Message) -> list[tuple[int, int]]:
    cuts = [at for at, token in enumerate(message.tokens) if token.text in CLAUSE_ENDS]
    return [*zip([0, *(at + 1 for at in cuts)], [*cuts, len(message.tokens)], strict=True)]


def _reasoned(message: Message, days: list[Day], clauses: list[tuple[int, int]]) -> list[tuple[int, int]]:
    """The clauses, cut where a reason begins or what came of it: "did it yesterday since I'm travelling today"."""
    joins = {*message.book("prose").named("because"), *little("so_then")}
    named = {at for day in days for at in range(day.start, day.end)}
    cuts = [at for at, token in enumerate(message.tokens) if token.text in joins and at not in named]
    out: list[tuple[int, int]] = []
    for low, high in clauses:
        ends = [at for at in cuts if low < at < high]
        out += zip([low, *ends], [*ends, high], strict=True)
    return out


def _nothing_else(message: Message, day: Day, days: list[Day], clauses: list[tuple[int, int]]) -> bool:
    """Whether a clause is nothing but days: the middle of "missed Monday, Tuesday and Friday"."""
    low, high = next(((a, b) for a, b in clauses if a <= day.start < b), (day.start, day.end))
    if any(token.text in little("too") for token in message.tokens[low:high]):
        return True  # "can't do Friday, Saturday also not"
    named = {at for one in days for at in range(one.start, one.end)}
    small = little("and", "or", "too", "the", "article")
    return all(at in named or message.tokens[at].text in small for at in range(low, high))


def _that_day_alone(message: Message, days: list[Day]) -> bool:
    """ "away on Saturday" is that day; who leaves or flies on Saturday comes back on no day told."""
    told = [day for day in days if day.kind not in ("vague", "length")]
    if len(told) != 1 or said(message, "leaving"):
        return False
    return told[0].kind in SINGLE and told[0].link in (None, "on", "to")


def _told_apart(message: Message, days: list[Day], absent: dict[str, list[Hit]]) -> Ask | None:
    """ "can't do Friday, maybe Saturday": a second day in a clause of its own may be missed too, or be the new one."""
    if not to_come(message):
        return None
    single = [day for day in days if day.ahead and day.ahead[0] == day.ahead[1] and day.ahead[0] >= message.today]
    for one, two in itertools.pairwise(single):
        between = message.tokens[one.end : two.start]
        parted = [at for at, token in enumerate(between, one.end) if token.text in PARTS]
        joined = any(token.text in little("and", "or", "too") for token in between)
        missed = any(parted and hit.start > parted[0] and hit.start < two.end for hit in absent.get("missed", ()))
        if parted and not joined and not missed and not same_day(one, two) and len(between) > 1:
            return Ask("dates", message.span(one.start, two.end))
    return None


def _within(day: Day, whole: Day) -> bool:
    return bool(day.ahead and whole.ahead and whole.ahead[0] <= day.ahead[0] and day.ahead[1] <= whole.ahead[1])


def _open(message: Message, days: list[Day]) -> tuple[Span | None, list[Day]]:
    """An absence ahead: from a day or today, to a day, a length, or open."""
    today = message.today
    start: date | None = None
    end: date | None = None
    back: Day | None = None
    for day in days:
        if day.kind == "range" and day.ahead:
            start, end = day.ahead
        elif day.link == "back" and day.ahead:
            back = day
        elif day.kind == "end" and day.ahead:
            end = day.ahead[1]
        elif day.link == "until" and day.ahead:
            end = _later(day, start or today)
        elif day.kind == "length":
            continue
        elif day.link == "since" and day.back:
            start = day.back[0]
        elif day.kind in ("week", "weekend", "month", "vague") and day.ahead:
            if day.kind == "month" and start is not None and day.ahead[0] <= start <= day.ahead[1]:
                end = end or day.ahead[1]
            if start is None:
                start, end = day.ahead
                if day.link == "from" and any(one.kind == "length" for one in days):
                    end = None  # "ab nächster Woche 10 Tage Urlaub"
        elif day.ahead:
            first = ahead(day)[0]
            if start is None:
                start = first
            elif end is None or first == end + timedelta(days=1):
                end = _later(day, start)  # "away fri sat sun"
    for day in days:
        if day.kind == "length" and end is None:
            start = start or today
            end = start + timedelta(days=day.days - 1)
    if start is None:
        start = today
    if back is not None:
        # "leaving Friday, home on Wednesday": the first such day after leaving
        end = _later(back, start + timedelta(days=1)) - timedelta(days=1)
    if end is not None and end < start:
        start = min(today, end)
    return Span(start, end), days


def _later(day: Day, first: date) -> date:
    end = ahead(day)[1]
    if end < first and day.kind == "weekday":
        end += timedelta(days=7 * (((first - end).days + 6) // 7))
    elif end < first and day.kind == "dom":
        end = day_of_month(first, end.day, True) or end
    return end


def _named_off(message: Message, days: list[Day], absent: dict[str, list[Hit]]) -> list[Day]:
    """ "stomach bug, no training Wednesday or Thursday": the weekdays that an illness takes, all ahead."""
    if any(hit.name == "was" for hit in message.hits("intents", "past")):
        return []
    plain = [day for day in days if day.kind == "weekday" and day.link in (None, "on", "to") and day.ahead]
    led = [day for day in plain if any(hit.start < day.start <= hit.end + 1 for hit in absent.get("missed", ()))]
    return plain if led and len(plain) == len(days) and led[0] is plain[0] else []


def _two_ways(message: Message, day: Day) -> bool:
    """Whether a weekday's last time is nearer than its next: "flu, no training Monday", told on a Wednesday."""
    return (
        day.back is not None and day.ahead is not None and (message.today - day.back[0] < day.ahead[0] - message.today)
    )


def _ill(message: Message, days: list[Day], resumed: bool) -> tuple[Span | None, list[Day]]:
    today = message.today
    start: date | None = None
    end: date | None = None
    only_today = False
    over = any(hit.name == "back_to_health" for hit in message.hits("intents", "past"))
    over = over or resumed or _two_days_gone(message, days)
    taken: list[Day] = []
    ends = [ahead(day)[1] for day in days if day.link == "until" and day.ahead]
    # "bis zum 24. krank, ab dem 25. wieder da": no second illness
    days = [day for day in days if not (ends and day.link == "from" and day.ahead and ahead(day)[0] > max(ends))]
    for day in days:
        if day.kind == "range" and (day.back or day.ahead):
            was = day.back if day.back and day.back[1] <= today else day.ahead or day.back
            assert was is not None
            start, end = was
        elif day.link in ("until", "back") and day.ahead:
            end = ahead(day)[1] if day.link == "until" else ahead(day)[0] - timedelta(days=1)
        elif day.kind == "end" and day.ahead:
            end = day.ahead[1]
        elif day.kind == "week" and day.ahead and ahead(day)[0] > today:
            end = ahead(day)[1]  # "sick, off all of next week"
        elif day.kind == "week":
            start = today - timedelta(days=today.weekday())
            end = today - timedelta(days=1) if resumed else end
        elif day.kind == "length":
            continue
        elif day.shift == 0:
            # "positive test this morning" names no day off
            only_today = only_today or message.tokens[day.start].text in little("today")
        elif day.shift is not None and day.shift > 0:
            end = ahead(day)[1]
        elif day.back and day.kind != "vague":
            if start is None or day.link in ("since", "open"):
                start = day.back[0]
            while taken and start > day.back[0] and taken[-1].kind == day.kind == "weekday":
                start, end = start - timedelta(days=7), None  # "Tuesday and Wednesday last week"
            if over and day.link not in ("since", "open") and len(days) > 1:
                end = max(end or day.back[1], day.back[1])
        else:
            continue
        taken.append(day)
    if start is None and end is None:
        return Span(today, today if only_today else None), taken
    if resumed and end is None and start is not None and start < today:
        named = days if only_today else [day for day in named_days(message).days if day.shift == 0]
        end = today - timedelta(days=1) if named else None  # "sick since Friday, back at it today"
    return Span(start or today, end), taken


def _two_days_gone(message: Message, days: list[Day]) -> bool:
    """ "Was ill Monday and Tuesday": both days, and no more."""
    gone = [day for day in days if day.kind == "weekday" and day.back and day.link in (None, "on", "to")]
    names = {hit.name for hit in message.hits("intents", "past")}
    joined = [
        any(token.text in little("and") for token in message.tokens[one.end : two.start])
        for one, two in itertools.pairwise(gone)
    ]
    return len(gone) == len(days) and bool(joined) and all(joined) and "was" in names and "still" not in names


def _told_as_past(message: Message) -> bool:
    """ "Skipped Thursday. I'll train tomorrow": what is to come is told in a sentence of its own."""
    tokens = message.tokens
    sentences = sentence_bounds(tokens)
    coming = {hit.start for hit in message.hits("intents", "past") if hit.name == "missed_future"}
    past = [
        (low, high) for low, high in sentences if any(token.text in little("missed_past") for token in tokens[low:high])
    ]
    return bool(past) and not any(low <= at < high for low, high in past for at in coming)


def _did_nothing(message: Message) -> bool:
    """Whether words for what was done, or was not, stand in a message: "nichts gemacht", "did nothing"."""
    return any(token.text in little("did_it", "done_then") for token in message.tokens)


def _far_back(today: date, days: list[Day]) -> bool:
    """ "No training from July 3 to 17", told in June: nobody tells of last year's days."""
    spans = [day for day in days if day.kind == "range" and day.back and day.ahead]
    return len(spans) == 1 and len(days) == 1 and all(today - day.back[1] > LONG_AGO for day in spans if day.back)


def _missed(message: Message, days: list[Day]) -> tuple[Span | None, list[Day]]:
    today = message.today
    future = (to_come(message) or _far_back(today, days)) and not _told_as_past(message)
    # "a stag do this weekend so I won't train Saturday": the day within the weekend
    days = [
        day
        for day in days
        if day.kind not in ("week", "weekend", "vague")
        or not any(one.kind in SINGLE and _within(one, day) for one in days)
    ]
    found: list[date] = []
    taken: list[Day] = []
    but = [hit.start for hit in message.hits("flags", "contrast")]
    week = next((day.ahead[0] for day in days if day.kind == "week" and day.ahead and day.ahead[0] > today), None)
    until = next((day for day in days if day.link == "until" and day.ahead and day.kind == "weekday"), None)
    if week is not None and until is not None:
        return Span(week, _later(until, week)), days  # "can't train next week until Thursday"
    since = next((day for day in days if day.link == "since" and day.back and day.back[1] < today), None)
    if since is not None and since.back and len(days) == 1 and not future:
        return Span(since.back[1] + timedelta(days=1), today), days  # "haven't trained since Sunday"
    for day in days:
        if found and day.shift == 0 and any(taken[-1].end <= at < day.start for at in but):
            continue  # "yesterday I could not train but today I did"
        session = possessed(message, day)  # "didn't get to Saturday's session" lasts till no day
        if day.link == "until" and not session and day.ahead and ahead(day)[1] > today and day.kind != "vague":
            found += [today, ahead(day)[1]]  # "stuck at home till Friday"
            taken.append(day)
            continue
        weekend = day.kind in ("weekend", "vague") and day.back is not None
        gone = weekend and not future and (_told_as_past(message) or _did_nothing(message))  # "el finde no hice nada"
        if gone and day.back:
            found.extend(day.back)
            taken.append(day)
            continue
        if day.link in ("since", "open", "back") or day.kind in ("length", "bad"):
            continue
        if day.kind == "vague" and not weekend:
            continue
        if day.link == "until" and not session:
            continue
        span = (
            day.back
            if (day.back and not future and not weekend) or (day.shift is not None and day.shift <= 0)
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
