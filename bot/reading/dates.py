"""The day trained: which of the days a message names it is, if any.

A report looks back for the nearest day of a name, a move or an absence ahead. Before 04:00 "today", "yesterday" and
no word at all mean the evening before, and "tomorrow" is asked. A day that cannot be known ("last week") is asked.
"""

from __future__ import annotations

from bisect import bisect_right
from dataclasses import dataclass
from itertools import pairwise

from bot.reading.absences import span_of
from bot.reading.corrections import find_corrections
from bot.reading.days import Day, DayFinder, named_days
from bot.reading.days.taken_back import taken_back
from bot.reading.headings import heads_work
from bot.reading.intents import ABSENCES, wishes
from bot.reading.lexicon import Hit
from bot.reading.little import little
from bot.reading.message import Claim, Message
from bot.reading.reading import Ask
from bot.reading.red_flags import signs_in

NEAR = 3
MOST_OF_OR = 2  # words between two days: "or on"
LONG_AGO = 31  # days; nobody reports what was trained a month before
FIRST_PICTURE = "\u2190"  # from the arrows on: no letter of the languages read
DATES = frozenset({"date", "dom"})
QUESTIONS = ("plan_today", "plan_week", "why", "progress")


def find_dates(message: Message) -> list[Claim]:
    """Claims `day` (a day trained), `span` (the days of a move or an absence) and `noise` (days of other things)."""
    finder = named_days(message)
    days = finder.days
    found = wishes(message)
    absent = {name: found[name] for name in ABSENCES if name in found}
    if "ill" not in absent:
        fevers = [s for s in signs_in(message) if s.name == "fever" and not s.past]
        if fevers:
            absent["ill"] = [Hit(s.start, s.end, "want", "ill") for s in fevers]
    if "move" in absent and any(claim.kind == "correction" for claim in find_corrections(message)):
        del absent["move"]  # "change the counterweight to 7.5": a value moves, no day
    claims: list[Claim] = []
    used: set[int] = set()
    if absent:
        away = _without_work(message, finder, days, absent)
        span, taken, ask = span_of(message, away, absent, bool(found.get("resume")))
        used = {day.start for day in taken}
        for day in taken:
            claims.append(Claim(day.start, day.end, "noise", None))
        if span is not None or ask is not None:
            claims.append(Claim(0, 0, "span", span, ask))
    bounds = message.sentences
    questions = [hit for name in QUESTIONS for hit in found.get(name, ())]
    if not any(token.text == "?" for token in message.tokens):
        questions = [hit for hit in questions if not heads_work(message, hit.end)]
    asked = {at for hit in questions for at in range(hit.start, hit.end + 2)}
    for day in days:
        if day.start in used:
            continue
        if day.start in asked:
            claims.append(Claim(day.start, day.end, "noise", None))  # "what's on Friday"
            continue
        claim = _trained(message, finder, day, bounds, absent)
        if claim is not None:
            claims.append(claim)
    trained = [claim for claim in claims if claim.kind == "day" and claim.value is not None]
    if len(trained) > 1:
        claims = _one_or_other(message, claims, trained)
        left = {id(claim) for claim in claims}
        trained = [claim for claim in trained if id(claim) in left]
    if len(trained) > 1:
        back = {id(c) for c, after in pairwise(trained) if taken_back(message, c.end, after.start)}
        back |= {id(c) for c in trained if c.start and message.tokens[c.start - 1].text in little("did_not")}
        claims = [Claim(c.start, c.end, "noise", None) if id(c) in back else c for c in claims]
        trained = [c for c in trained if id(c) not in back]
    if len(trained) > 1:
        worked = {id(c) for c in trained if _tells_of_work(message, finder, c, bounds)}
        if worked:
            idle = {id(c) for c in trained} - worked  # "yesterday I did 5x5 … today I can't feel my arms"
            claims = [Claim(c.start, c.end, "noise", None) if id(c) in idle else c for c in claims]
            trained = [c for c in trained if id(c) in worked]
    if len(trained) > 1:
        # "did today's sets last night", "did the sets from Tuesday today": planned for the one, trained on the other
        plans = {id(c) for c in trained if _of_the_plan(message, c)}
        beside = {_around(bounds, c.start) for c in trained if id(c) not in plans}
        plans = {
            id(c)
            for c in trained
            if id(c) in plans and (c.value == message.today or _around(bounds, c.start) in beside)
        }
        claims = [Claim(c.start, c.end, "noise", None) if id(c) in plans else c for c in claims]
    return claims


def _one_or_other(message: Message, claims: list[Claim], trained: list[Claim]) -> list[Claim]:
    """The claims, "either Monday or Tuesday" as one question."""
    for one, other in pairwise(trained):
        between = message.tokens[one.end : other.start]
        if not between or between[0].text not in little("or") or len(between) > MOST_OF_OR:
            continue
        start = one.start - (one.start > 0 and message.tokens[one.start - 1].text in little("either"))
        ask = Ask("performed_on", message.span(start, other.end))
        claims = [claim for claim in claims if claim is not one and claim is not other]
        claims.append(Claim(start, other.end, "day", None, ask))
    return claims


def _of_the_plan(message: Message, claim: Claim) -> bool:
    """ "Today's sets", "lo de hoy": what was planned for that day."""
    heads = claim.end < len(message.tokens) and message.tokens[claim.end].text == ":"  # "Today's: dips 3x8"
    if not heads and any(mark in message.span(claim.start, claim.end) for mark in little("owner")):
        return True
    before = " ".join(token.text for token in message.tokens[max(0, claim.start - NEAR) : claim.start])
    return before.endswith(tuple(little("what_is_of")))


def _without_work(message: Message, finder: DayFinder, days: list[Day], absent: dict[str, list[Hit]]) -> list[Day]:
    """The days that no work is told of: "Thursday I couldn't, today pull-ups 4x4" leaves Thursday."""
    if not any(message.beginning("movements")):
        return days
    clauses = _clauses(message, message.sentences)
    spoken = {_around(clauses, at) for hits in absent.values() for hit in hits for at in (hit.start, hit.end - 1)}
    out: list[Day] = []
    for day in days:
        clause = _around(clauses, day.start)
        if clause is not None and day.start - 1 <= clause[0] and clause[1] <= day.end:
            clause = _around(clauses, day.end)  # "14.5. Klimmzüge 4x5"
        dated = day.shift in (0, -1) or (day.kind in DATES and "move" not in absent)
        dated = dated or (day.kind == "weekday" and "ill" in absent)
        told = clause is not None and clause not in spoken and dated and day.link in (None, "on", "to")
        if (
            told
            and clause
            and any(message.beginning("movements")[clause[0] : clause[1]])
            and _said(message, finder, clause).rows
        ):
            continue
        out.append(day)
    return out


def _tells_of_work(message: Message, finder: DayFinder, claim: Claim, bounds: list[tuple[int, int]]) -> bool:
    """Whether the clause of a day trained has a number or a word of training; or the next, if it is the day alone."""
    clauses = _clauses(message, bounds)
    place = next((n for n, (low, high) in enumerate(clauses) if low <= claim.start < high), None)
    if place is None:
        return True
    low, high = clauses[place]
    alone = high - low - (claim.end - claim.start) <= 1
    spans = [(low, high), *(clauses[place + 1 : place + 2] if alone else [])]
    return any(
        message.numbers_within(low, high) > message.numbers_within(max(low, claim.start), min(high, claim.end))
        or _said(message, finder, (low, high)).told
        or any(message.beginning("movements")[low:high])
        for low, high in spans
    )


def _rep_like(message: Message) -> frozenset[int]:
    known: frozenset[int] | None = message.notes.get("rep_like")
    if known is None:
        hits = (hit.start for hit in message.hits("body") if hit.name == "rep_like")
        known = message.notes["rep_like"] = frozenset(hits)
    return known


def _bare_range(message: Message, day: Day) -> bool:
    """Whether two numbers are all that says a span of days: no month, no ordinal."""
    tokens = message.tokens[day.start : day.end]
    numbers = [token for token in tokens if token.value is not None]
    words = {token.text for token in tokens if token.kind == "word"}
    return len(numbers) == 2 and len(tokens) <= 4 and words <= little("from_to")


def _of_a_month(message: Message, day: Day, sentence: tuple[int, int]) -> bool:
    """Whether "the 3rd" is a day: "on the 3rd", "am 3.", or first in its sentence; "missed the 4th" is a rep."""
    tokens = message.tokens
    first = tokens[day.start].text
    if first in little("article_of_day") and day.end - day.start > 2 and day.start == sentence[0]:
        return True  # "el día 3"
    after = tokens[day.end] if day.end < len(tokens) else None
    if after is not None and (after.text in ("%", "x", "/") or day.end in _rep_like(message)):
        return False
    if not day.start and day.link in (None, "on", "from") and after is not None and after.text in (",", ";", "-", "\n"):
        return True  # "from the 14th, all as planned", "el 14 - fondos 3x8"
    worded = tokens[day.end - 1].kind == "word" or tokens[day.end - 1].text == "."
    if first in little("before_ordinal") and worded:
        failed = day.start > 0 and tokens[day.start - 1].text in little("failed_on")
        return not failed or not message.numbers_within(0, day.start)  # "8, 8, 6, died on the 7th": a rep
    if day.start == sentence[0] and after is not None and (after.text == ":" or (worded and first in little("the"))):
        return True
    before = tokens[day.start - 1].text if day.start else ""
    opens = day.start == sentence[0] or (before == "," and not message.numbers_within(sentence[0], day.start))
    return (worded and before in little("before_of_month")) or (
        first in little("article_of_day") and opens and after is not None and after.kind == "word"
    )


def _compared(finder: DayFinder, day: Day) -> bool:
    """ "more than last week", "1.2 down on last week": a comparison."""
    return any(
        hit.table == "link" and hit.name == "than" and hit.end == day.start
        for at in range(max(0, day.start - NEAR), day.start)
        for hit in finder.at.get(at, ())
    )


def _done_elsewhere(message: Message, clause: tuple[int, int]) -> bool:
    """ "All as planned. Last month it was 3x5": what was done today stands outside the clause."""
    grammar = message.beginning("grammar")
    return bool(message.context.today) and any(
        hit.table == "plan" and hit.name in ("done", "planned", "same", "only", "skipped", "except")
        for at in (*range(clause[0]), *range(clause[1], len(grammar)))
        for hit in grammar[at]
    )


def _of_a_former_set(message: Message, clause: tuple[int, int]) -> bool:
    """ "4x5 +12.5, up from 4x5 +10 on Monday": the clause opposes what was."""
    return any(hit.start == clause[0] and hit.end - hit.start > 1 for hit in _former_weights(message))


def _of_a_former_weight(message: Message, day: Day) -> bool:
    """ "73 kg, up from 72.4 last week": right behind the weight that was."""
    at = day.start - 1
    body = message.hits("body")
    if at > 0 and message.tokens[at].value is None and any(h.name in ("kg", "lb") and h.start == at for h in body):
        at -= 1
    if at < 0 or message.tokens[at].value is None:
        return False
    return any(hit.end == at for hit in _former_weights(message))


def _former_weights(message: Message) -> list[Hit]:
    """The words before what a weight or set was."""
    found: list[Hit] | None = message.notes.get("former weights")
    if found is None:
        told = message.hits("body", "bodyweight")
        found = message.notes["former weights"] = [hit for hit in told if hit.name == "from"]
    return found


def _done_then(message: Message, day: Day, clause: tuple[int, int]) -> bool:
    """Whether a word for what was done follows a day in its clause."""
    return any(message.tokens[at].text in little("done_then") for at in range(day.end, clause[1]))


def _in_question(message: Message, day: Day) -> bool:
    """ "why is it only 15 when I did 20 last week": behind the words of a question, in its sentence."""
    starts = [hit.start for name in QUESTIONS for hit in wishes(message).get(name, ()) if hit.start < day.start]
    return any(not any(token.text in ".!?\n" for token in message.tokens[at : day.start]) for at in starts)


def _clauses(message: Message, bounds: list[tuple[int, int]]) -> list[tuple[int, int]]:
    """The parts of sentences between commas and pictures, in order."""
    known: list[tuple[int, int]] | None = message.notes.get("clauses")
    if known is None:
        known = message.notes["clauses"] = []
        for start, end in bounds:
            for at in range(start, end):
                if message.tokens[at].text in ",;" or message.tokens[at].text >= FIRST_PICTURE:
                    known.append((start, at))
                    start = at + 1
            known.append((start, end))
    return known


def _around(ranges: list[tuple[int, int]], at: int) -> tuple[int, int] | None:
    """The range that a token lies in."""
    place = bisect_right(ranges, (at, 1 << 60)) - 1
    return ranges[place] if place >= 0 and ranges[place][0] <= at < ranges[place][1] else None


@dataclass(frozen=True)
class _Said:
    """What a clause speaks of besides days: other things (where), training, rows of sets."""

    other: tuple[int, ...]
    told: bool
    rows: bool


def _said(message: Message, finder: DayFinder, clause: tuple[int, int]) -> _Said:
    known: _Said | None = message.notes.get(("said", clause))
    if known is None:
        tokens = message.tokens
        hits = [h for at in range(*clause) for h in finder.at.get(at, ()) if h.table == "other"]
        grammar = message.beginning("grammar")
        rows = any(
            tokens[a].text == "x"
            or (
                tokens[a].value is not None
                and any(h.table == "sets" for found in grammar[a + 1 : a + 2] for h in found)
            )
            or (
                tokens[a].kind == "num"
                and a + 2 < len(tokens)
                and tokens[a + 1].text in ("x", ",", "/")
                and tokens[a + 2].value is not None
            )
            for a in range(*clause)
        )
        other = tuple(hit.start for hit in hits if hit.name == "word")
        known = _Said(other, any(hit.name == "report" for hit in hits), rows)
        message.notes["said", clause] = known
    return known


def _trained(
    message: Message,
    finder: DayFinder,
    day: Day,
    bounds: list[tuple[int, int]],
    absent: dict[str, list[Hit]],
) -> Claim | None:
    """What a day named means for a report: the day trained, a question, or nothing."""
    tokens = message.tokens
    sentence = _around(bounds, day.start) or (0, len(tokens))
    noise = Claim(day.start, day.end, "noise", None)
    if day.kind == "bad":
        return Claim(day.start, day.end, "day", None, Ask("performed_on", message.span(day.start, day.end)))
    if day.kind == "range" and not absent and finder.has("date", day.start) and _bare_range(message, day):
        return None  # "del 20 al 25" are kilograms
    if sentence[1] < len(tokens) and tokens[sentence[1]].text == "?" and not _said(message, finder, sentence).told:
        return noise  # a question tells of no training
    if finder.has("to_come", day.end) or any(
        hit.table == "to_come" and hit.end == day.start
        for at in range(max(0, day.start - NEAR), day.start)
        for hit in finder.at.get(at, ())
    ):
        return noise  # "Monday I'll try 75"
    if day.kind == "dom" and not _of_a_month(message, day, sentence):
        return None
    if day.kind == "weekend" and day.back is not None and not absent and not message.hits("intents", "foretold"):
        told = _said(message, finder, _around(_clauses(message, bounds), day.start) or sentence)
        if told.rows and not told.other:  # "pull-ups 3x5 at the weekend": on which of the two days
            return Claim(day.start, day.end, "day", None, Ask("performed_on", message.span(day.start, day.end)))
    if day.kind in ("length", "end", "week", "weekend", "lasting"):
        return noise if day.kind != "length" or day.days else None
    before = tokens[day.start - 1].text if day.start else ""
    of = tokens[day.start - 2] if day.start > 1 else None
    numbered = before in little("from_then") and of is not None and of.value is not None and day.start > 2
    if numbered and tokens[day.start - 3].text in little("the"):
        return noise  # "the 20 from last week were no problem"
    mends = day.link == "until" and of is not None and of.text in little("a_correction")  # "correction to yesterday"
    if day.link in ("since", "open", "until", "back", "same") and not mends:
        return noise
    if day.kind == "vague" and before not in little("from") and (_compared(finder, day) or _in_question(message, day)):
        return noise
    if day.kind == "vague" and _of_a_former_weight(message, day):
        return noise
    clause = _around(_clauses(message, bounds), day.start) or sentence
    if _of_a_former_set(message, clause):
        return noise
    was = finder.has("as_it_was", day.end)
    if (
        day.kind == "vague"
        and was is not None
        and (
            message.numbers_within(0, len(tokens)) > message.numbers_within(*clause) or _done_elsewhere(message, clause)
        )
    ):
        counted = was.end + 1 == clause[1] and tokens[was.end].value is not None
        return Claim(day.start, was.end + counted, "noise", None)  # "9 in a row, last week were 7"
    for at in range(max(clause[0], day.start - 4), day.start - 1):
        hit = next(
            (h for h in finder.at.get(at, ()) if h.table == "link" and h.name == "cause" and h.end < day.start), None
        )
        if (
            hit is not None
            and day.start - hit.end <= NEAR
            and not any(t.value is not None for t in tokens[hit.end : day.start])
            and not any(t.text in little("and") for t in tokens[hit.end : day.start])  # "de dominadas y ayer 3x10"
            and not any(hit.end <= one.start < day.start for one in finder.days)  # "the sets from Tuesday today"
            and at > clause[0]
            and not any(one.table == "plan" for one in message.beginning("grammar")[at])  # "as planned yesterday"
        ):
            return noise
    said = _said(message, finder, clause)
    other = bool(said.other) and (said.other[0] < day.start or said.other[-1] >= day.end)
    if day.kind == "vague":
        named = any(one.back for one in finder.days if one.kind not in ("vague", "length"))
        end = sentence[1]
        if end < len(tokens) and tokens[end].text == ":":
            end = next((high for low, high in bounds if low > end), end)  # "forgot to log this last week: dips 4x8"
        numbers = any(t.value is not None for t in (*tokens[sentence[0] : day.start], *tokens[day.end : end]))
        if other and any(tokens[n].value is not None for n in range(day.end, said.other[0])):
            other = False  # "last week: dips 4x8, no weight"
        asked = (numbers or said.told) and not other and not absent and not named
        asked = asked and not message.hits("intents", "foretold")  # "I'll try 5x5 at the weekend"
        return (
            Claim(day.start, day.end, "day", None, Ask("performed_on", message.span(day.start, day.end)))
            if asked
            else noise
        )
    if other and not said.told and not said.rows:
        return noise
    if day.start - 2 in said.other and before in little("from"):
        return noise  # "abs sore from Tuesday"
    if day.back is None or (day.shift is not None and day.shift > 0):
        if said.rows and not other and not absent and _done_then(message, day, clause):  # "next Monday I did 4x4"
            return Claim(day.start, day.end, "day", None, Ask("performed_on", message.span(day.start, day.end)))
        return noise
    when = day.back[1]
    if day.kind == "ago" and (message.today - when).days > LONG_AGO:
        return noise  # "six months ago I couldn't hold it": a tale
    if when > message.today:
        if day.kind == "exact":
            return Claim(day.start, day.end, "day", None, Ask("performed_on", message.span(day.start, day.end)))
        return noise
    return Claim(day.start, day.end, "day", when)
