"""The days that a move or an absence speaks of: from when, until when, or open."""

from __future__ import annotations

import itertools
from datetime import date, timedelta

from bot.reading.days import Day, day_of_month
from bot.reading.lexicon import Hit
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.phrases import phrases, sentence_bounds
from bot.reading.reading import Ask, Span

NAMED = frozenset({"rel", "weekday", "date", "dom", "exact", "week", "weekend", "range"})
QUOTED = 80  # characters of a message quoted where no words of it stand for the doubt
CLAUSE_ENDS = frozenset(",;.!?\n")
LINKED = ("until", "back", "since", "from", "open")
SINGLE = ("rel", "weekday", "date", "dom", "exact")
PARTS = frozenset({",", ";", "-", "?", "¿"}) | little("but")


def span_of(
    message: Message, days: list[Day], absent: dict[str, list[Hit]], resumed: bool
) -> tuple[Span | None, list[Day], Ask | None]:
    """The days that the wish to move, or the absence, speaks of."""
    hits = [hit for own in absent.values() for hit in own]
    bounds = sentence_bounds(message.tokens)
    spoken = {b for b in bounds for hit in hits if b[0] <= hit.start < b[1]}
    near = [day for day in days if any(a < day.end and day.start < b for a, b in spoken)]
    if not near and len(bounds) > 1 and {"missed"} != set(absent):
        near = [
            day
            for day in days
            if day.kind in ("range", "length", "date", "dom") or day.link in ("until", "back", "from")
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
        only.link == "to" or "missed" in absent or _to_come(message) or not _named_object(message, only)
    ):
        near = [*_moved_before(message, days, only, bounds), *near]
    if "move" in absent:
        near = _of_move(near, absent["move"], bounds)
    if message.at_night:
        asked = next((day for day in near if day.shift is not None and day.shift > 0), None)
        if asked is not None:
            return None, near, Ask("dates", message.span(asked.start, asked.end))
    rough = next((day for day in near if day.kind == "rough"), None)
    if rough is not None:
        return None, near, Ask("dates", message.span(rough.start, rough.end))  # "pause until mid April"
    if "move" in absent:
        to, taken = _move(message, near, absent)
        return to, taken, None if to is not None and to.end is not None else _where_to(message, taken, absent)
    if "pause" in absent:
        return (*_open(message, near), None)
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
    if not any(day.back or day.ahead for day in near) and _said(message, "counted"):
        return None, near, Ask("dates", message.text.strip()[:QUOTED])  # "missed the last two sessions"
    apart = _told_apart(message, near, absent)
    if apart is not None:
        return None, near, apart
    return (*_missed(message, _of_the_clause(message, near, absent.get("missed", []))), None)


def _of_the_clause(message: Message, days: list[Day], hits: list[Hit]) -> list[Day]:
    """ "played football yesterday, no training today": where a wish has days in its own clause, these and what goes on
    with them; days told before are of other things."""
    if len(days) < 2:
        return days
    clauses = _clauses(message)
    own = {clause for clause in clauses for hit in hits if hit.start < clause[1] and clause[0] < hit.end}
    plain = [day for day in days if day.link not in LINKED and day.kind not in ("length", "vague")]
    first = next((day.start for day in plain if any(a <= day.start < b for a, b in own)), None)
    if first is None:
        return days
    low = min(a for a, _ in own)
    kept = [day for day in days if day.start >= low or day.link in LINKED or _nothing_else(message, day, days, clauses)]
    later = [day for day in kept if day.start > first]
    alone = "missed" in {hit.name for hit in hits}
    return [
        day
        for day in kept
        if day not in later
        or not alone
        or day.link in LINKED
        or any(a <= day.start < b for a, b in own)
        or _nothing_else(message, day, days, clauses)
    ]


def _clauses(message: Message) -> list[tuple[int, int]]:
    cuts = [at for at, token in enumerate(message.tokens) if token.text in CLAUSE_ENDS]
    return [*zip([0, *(at + 1 for at in cuts)], [*cuts, len(message.tokens)], strict=True)]


def _nothing_else(message: Message, day: Day, days: list[Day], clauses: list[tuple[int, int]]) -> bool:
    """Whether a clause is nothing but days: the middle of "missed Monday, Tuesday and Friday"."""
    low, high = next(((a, b) for a, b in clauses if a <= day.start < b), (day.start, day.end))
    if any(token.text in little("too") for token in message.tokens[low:high]):
        return True  # "can't do Friday, Saturday also not"
    named = {at for one in days for at in range(one.start, one.end)}
    small = little("and") | little("or") | little("too") | little("the") | little("article")
    return all(at in named or message.tokens[at].text in small for at in range(low, high))


def _said(message: Message, name: str) -> bool:
    """Whether words of the table `past` of this name are in the message."""
    return any(hit.name == name for hit in message.hits("intents", "past"))


def _that_day_alone(message: Message, days: list[Day]) -> bool:
    """ "away on Saturday" is that day; who leaves or flies on Saturday comes back on no day told."""
    told = [day for day in days if day.kind not in ("vague", "length")]
    if len(told) != 1 or _said(message, "leaving"):
        return False
    return told[0].kind in SINGLE and told[0].link in (None, "on", "to")


def _told_apart(message: Message, days: list[Day], absent: dict[str, list[Hit]]) -> Ask | None:
    """ "can't do Friday, maybe Saturday": a second day in a clause of its own may be missed too, or be the new one."""
    if not _to_come(message):
        return None
    single = [day for day in days if day.ahead and day.ahead[0] == day.ahead[1] and day.ahead[0] >= message.today]
    for one, two in itertools.pairwise(single):
        between = message.tokens[one.end : two.start]
        parted = [at for at, token in enumerate(between, one.end) if token.text in PARTS]
        joined = any(token.text in little("and") | little("or") | little("too") for token in between)
        missed = any(parted and hit.start > parted[0] and hit.start < two.end for hit in absent.get("missed", ()))
        if parted and not joined and not missed and not _same_day(one, two) and len(between) > 1:
            return Ask("dates", message.span(one.start, two.end))
    return None


def _of_move(near: list[Day], hits: list[Hit], bounds: list[tuple[int, int]]) -> list[Day]:
    """ "I move house on Saturday, can I do Saturday's on Monday?": the days of the wish, where it names two."""
    spoken = {b for b in bounds for hit in hits if b[0] <= hit.start < b[1]}
    own = [day for day in near if any(a < day.end and day.start < b for a, b in spoken)]
    for days in ([day for day in own if any(hit.start <= day.start for hit in hits)], own):
        if len({(day.back, day.ahead) for day in days if day.kind in NAMED}) > 1:
            return days
    return near


def _ahead(day: Day) -> tuple[date, date]:
    found = day.ahead or day.back
    assert found is not None
    return found


def _move(message: Message, days: list[Day], absent: dict[str, list[Hit]]) -> tuple[Span | None, list[Day]]:
    named = [day for day in days if day.kind in NAMED and (day.ahead or day.back)]
    # "moving house on Saturday, can I do Saturday's on Monday?": a day named twice is one
    named = [day for n, day in enumerate(named) if not any(_same_day(day, other) for other in named[:n])]
    today = message.today
    if not named:
        lengths = [day for day in days if day.kind == "length"]
        if lengths:
            return Span(today, today + timedelta(days=lengths[0].days)), lengths
        return None, []
    missed = [] if _to_come(message) else absent.get("missed", [])

    def first(day: Day) -> date:
        told = any(_one_sentence(message, hit.start, day.start) for hit in missed)
        if told and day.kind == "weekday" and day.back:
            return day.back[0]
        return _ahead(day)[0]

    if len(named) == 1:
        day = named[0]
        if day.kind == "range" and day.ahead:
            return Span(day.ahead[0], _nearer(message, *day.ahead)), named
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
    if _rather(message, one, two) or (_owned(message, two) and one.shift is not None and not _owned(message, one)):
        one, two = two, one
    start = first(one)
    end = _ahead(two)[0]
    nearer = end + timedelta(days=7) - start < start - end  # "Thursday next week … on Friday"
    if end < start and two.kind == "weekday" and (end <= today or nearer):
        end += timedelta(days=7)  # "can't do Tuesday, Wednesday works", said on a Wednesday
    return Span(start, end), named


def _within(day: Day, whole: Day) -> bool:
    return bool(day.ahead and whole.ahead and whole.ahead[0] <= day.ahead[0] and day.ahead[1] <= whole.ahead[1])


def _same_day(one: Day, other: Day) -> bool:
    return (one.back, one.ahead) == (other.back, other.ahead)


def _nearer(message: Message, start: date, end: date) -> date:
    """ "adelantar el sábado al viernes": a move to the day before, not to the one a week later."""
    before = end - timedelta(days=7)
    return before if message.today < before < start and (start - before) < (end - start) else end


def _moved_before(message: Message, days: list[Day], to: Day, bounds: list[tuple[int, int]]) -> list[Day]:
    """ "Thursday doesn't work. Can we do Friday?": the one day to come named in the sentence before."""
    at = next((n for n, (low, high) in enumerate(bounds) if low <= to.start < high), 0)
    low, high = bounds[at - 1] if at else (0, 0)
    before = [day for day in days if low <= day.start < high]
    return before if len(before) == 1 and before[0].ahead and before[0].ahead[0] > message.today else []


def _one_sentence(message: Message, one: int, other: int) -> bool:
    return not any(token.text in ".!?;\n" for token in message.tokens[min(one, other) : max(one, other)])


def _to_come(message: Message) -> bool:
    """Whether what is missed lies ahead: "can't make Friday"."""
    return _said(message, "missed_future")


def _rather(message: Message, one: Day, two: Day) -> bool:
    """ "rather Sunday than Saturday": the day behind "than" is the one moved."""
    between = range(one.end, two.start)
    thans = {at for hit in message.hits("mends", "than") for at in range(hit.start, hit.end)}
    return any(at in thans for at in between) and all(
        at in thans or message.tokens[at].text in little("article") for at in between
    )


def _where_to(message: Message, taken: list[Day], absent: dict[str, list[Hit]]) -> Ask:
    """A move without its new day is asked, by the day moved or by the words of the wish."""
    if taken:
        return Ask("dates", message.span(taken[0].start, taken[0].end))
    hit = max(absent["move"], key=lambda hit: hit.end - hit.start)
    return Ask("dates", message.span(hit.start, hit.end))


def _owned(message: Message, day: Day) -> bool:
    """ "Thursday's session", "lo del jueves", "die Donnerstagseinheit": what was planned for the day, not the day."""
    before = " ".join(token.text for token in message.tokens[max(0, day.start - 3) : day.start])
    last = message.tokens[day.end - 1].text
    return (
        _possessed(message, day)
        or before.endswith(tuple(little("what_is_of")))
        or last.endswith(tuple(little("session_of")))
    )


def _possessed(message: Message, day: Day) -> bool:
    return "'s" in message.span(day.start, day.end)


def _named_object(message: Message, day: Day) -> bool:
    """ "move Thursday", "Thursday's session": the day is what is moved, not where to."""
    if _possessed(message, day) or day.link == "from":
        return True
    before = message.tokens[day.start - 1] if day.start else None
    if before is None or (day.end < len(message.tokens) and message.tokens[day.end].text in little("instead")):
        return False
    moves = phrases("intents", message.language, "want").at(message.tokens, day.start - 1)
    return any(hit.name == "move" for hit in moves)


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
        elif day.kind in ("week", "weekend", "vague") and day.ahead:
            if start is None:
                start, end = day.ahead
        elif day.ahead:
            first = _ahead(day)[0]
            if start is None:
                start = first
            elif end is None:
                end = _later(day, start)
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
    end = _ahead(day)[1]
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
            # "positive test this morning" names no day off
            only_today = only_today or message.tokens[day.start].text in little("today")
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
        return Span(today, today if only_today else None), taken
    return Span(start or today, end), taken


def _missed(message: Message, days: list[Day]) -> tuple[Span | None, list[Day]]:
    today = message.today
    future = _to_come(message)
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
    for day in days:
        if found and day.shift == 0 and any(taken[-1].end <= at < day.start for at in but):
            continue  # "yesterday I could not train but today I did"
        if day.link == "until" and day.ahead and _ahead(day)[1] > today and day.kind != "vague":
            found += [today, _ahead(day)[1]]  # "stuck at home till Friday"
            taken.append(day)
            continue
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
