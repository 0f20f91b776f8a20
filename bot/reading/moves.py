"""A move: which day is moved, and to which."""

from __future__ import annotations

from datetime import date, timedelta
from itertools import pairwise

from bot.reading.days import Day
from bot.reading.days.taken_back import taken_back
from bot.reading.lexicon import Hit
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.reading import Ask, Span

LEAST_OF_TWO = 2  # days named: from one to another
NAMED = frozenset({"rel", "weekday", "date", "dom", "exact", "week", "weekend", "range"})


def said(message: Message, name: str) -> bool:
    """Whether words of the table `past` of this name are in the message."""
    return any(hit.name == name for hit in message.hits("intents", "past"))


def of_move(message: Message, near: list[Day], hits: list[Hit], bounds: list[tuple[int, int]]) -> list[Day]:
    """ "I move house on Saturday, can I do Saturday's on Monday?": the days of the wish, where it names two."""
    spoken = {b for b in bounds for hit in hits if b[0] <= hit.start < b[1]}
    own = [day for day in near if any(a < day.end and day.start < b for a, b in spoken)]
    told = [day for day in own if any(hit.start <= day.start for hit in hits)]
    before = own[: len(own) - len(told)][-1:]
    if before and told and told[0].link == "to" and _beside(message, before[0], told[0]):
        told = [*before, *told]  # "Mittwoch auf Freitag schieben, Sonntag bleibt"
    for days in (told, own):
        named = [day for day in days if day.kind in NAMED]
        if len({(day.back, day.ahead) for day in named if day not in _replaced(message, named)}) > 1:
            return days
    return near


def _beside(message: Message, day: Day, after: Day) -> bool:
    """Whether no mark parts two days."""
    return all(token.kind == "word" for token in message.tokens[day.end : after.start])


def _replaced(message: Message, named: list[Day]) -> list[Day]:
    """The days that are taken back for the next: the first of "to Saturday, no wait, Sunday"."""
    return [
        day for day, after in pairwise(named) if after.link != "instead" and taken_back(message, day.end, after.start)
    ]


def ahead(day: Day) -> tuple[date, date]:
    found = day.ahead or day.back
    assert found is not None
    return found


def moved(message: Message, days: list[Day], absent: dict[str, list[Hit]]) -> tuple[Span | None, list[Day]]:
    named = [day for day in days if day.kind in NAMED and (day.ahead or day.back)]
    # "moving house on Saturday, can I do Saturday's on Monday?": a day named twice is one
    named = [day for n, day in enumerate(named) if not any(same_day(day, other) for other in named[:n])]
    spans = [day.ahead for day in named if day.kind == "range" and day.ahead]
    # "a wedding on Friday, can we move Friday's session to Sunday?"
    named = [day for day in named if day.kind == "range" or all(span[0] != ahead(day)[0] for span in spans)]
    whole = named[0].ahead if len(named) == LEAST_OF_TWO and named[0].kind == "range" else None
    if whole and taken_back(message, named[0].end, named[1].start):
        return Span(whole[0], ahead(named[1])[0]), named  # "Friday's to Saturday please, actually Sunday"
    replaced = _replaced(message, named)
    named = [day for day in named if day not in replaced]
    today = message.today
    by = _by_days(message)
    if by and len(named) < LEAST_OF_TWO and not (named and named[0].kind == "range"):
        start = ahead(named[0])[0] if named else today
        if named and start + timedelta(days=by) < today:
            start += timedelta(days=7)  # "Thursday's a day early", said on a Thursday
        return Span(start, start + timedelta(days=by)), [day for day in days if day in named or day.kind == "length"]
    if not named:
        lengths = [day for day in days if day.kind == "length"]
        if lengths:
            return Span(today, today + timedelta(days=lengths[0].days)), lengths
        return None, []
    missed = [] if to_come(message) else absent.get("missed", [])

    def first(day: Day) -> date:
        told = any(_one_sentence(message, hit.start, day.start) for hit in missed)
        if told and day.kind == "weekday" and day.back:
            return day.back[0]
        return ahead(day)[0]

    if len(named) == 1:
        day = named[0]
        if day.kind == "range" and day.ahead:
            return Span(day.ahead[0], _nearer(message, *day.ahead)), named
        if day.link == "to" or (
            day.shift is not None and day.shift > 0 and day.link != "from" and not possessed(message, day)
        ):
            if named_object(message, day) and day.link != "to":
                return Span(first(day), None), named
            return Span(today, first(day)), named
        if day.shift is not None and day.shift < 0:
            return Span(first(day), None), named
        if day.link == "instead":
            return Span(first(day), None), named
        if named_object(message, day):
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
    end = ahead(two)[0]
    if start < end and said(message, "brought_forward"):
        start, end = end, start  # "ziehe heute vor was morgen dran wäre"
    nearer = end + timedelta(days=7) - start < start - end  # "Thursday next week … on Friday"
    if end < start and two.kind == "weekday" and (end <= today or nearer):
        end += timedelta(days=7)  # "can't do Tuesday, Wednesday works", said on a Wednesday
    return Span(start, end), named


def _by_days(message: Message) -> int:
    """How many days a move goes by, "a day early" is -1; 0 where that is not said, or both ways are."""
    hits = message.hits("intents", "shift")
    names = {hit.name for hit in hits}
    if len(names) != 1:
        return 0
    told = (message.tokens[at].value for hit in hits for at in range(hit.start, hit.end))
    many = int(next((value for value in told if value is not None), 1))
    return many if names == {"later"} else -many


def same_day(one: Day, other: Day) -> bool:
    return (one.back, one.ahead) == (other.back, other.ahead)


def _nearer(message: Message, start: date, end: date) -> date:
    """ "adelantar el sábado al viernes": a move to the day before, not to the one a week later."""
    before = end - timedelta(days=7)
    return before if message.today < before < start and (start - before) < (end - start) else end


def moved_before(message: Message, days: list[Day], to: Day, bounds: list[tuple[int, int]]) -> list[Day]:
    """ "Thursday doesn't work. Can we do Friday?": the one day to come named in the sentence before."""
    at = next((n for n, (low, high) in enumerate(bounds) if low <= to.start < high), 0)
    low, high = bounds[at - 1] if at else (0, 0)
    before = [day for day in days if low <= day.start < high]
    return before if len(before) == 1 and before[0].ahead and before[0].ahead[0] > message.today else []


def _one_sentence(message: Message, one: int, other: int) -> bool:
    return not any(token.text in ".!?;\n" for token in message.tokens[min(one, other) : max(one, other)])


def to_come(message: Message) -> bool:
    """Whether what is missed lies ahead: "can't make Friday"."""
    return said(message, "missed_future")


def _rather(message: Message, one: Day, two: Day) -> bool:
    """ "rather Sunday than Saturday": the day behind "than" is the one moved."""
    between = range(one.end, two.start)
    thans = {at for hit in message.hits("mends", "than") for at in range(hit.start, hit.end)}
    return any(at in thans for at in between) and all(
        at in thans or message.tokens[at].text in little("article") for at in between
    )


def where_to(message: Message, taken: list[Day], absent: dict[str, list[Hit]]) -> Ask:
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
        possessed(message, day)
        or before.endswith(tuple(little("what_is_of")))
        or last.endswith(tuple(little("session_of")))
    )


def possessed(message: Message, day: Day) -> bool:
    return "'s" in message.span(day.start, day.end)


def named_object(message: Message, day: Day) -> bool:
    """ "move Thursday", "Thursday's session": the day is what is moved, not where to."""
    if possessed(message, day) or day.link == "from":
        return True
    before = message.tokens[day.start - 1] if day.start else None
    if before is None or (day.end < len(message.tokens) and message.tokens[day.end].text in little("instead")):
        return False
    return any(hit.name == "move" and hit.start == day.start - 1 for hit in message.hits("intents", "want"))
