"""Minutes of the session."""

from __future__ import annotations

from collections.abc import Iterable

from bot.reading.body.cues import BodyCues
from bot.reading.body.sleep import hours_at
from bot.reading.little import little
from bot.reading.message import Claim
from bot.reading.reading import Ask

MINUTES = (10.0, 360.0)


ALONE_MINUTES = (15.0, 300.0)


SLEPT_MINUTES = (220.0, 660.0)  # so many alone, told in hours, may as well be the night's


SHORT = 4  # tokens that a sentence goes on with behind its minutes


FIRST_PICTURE = "\u2190"  # signs below it, "€" among them, go with numbers


OPENS_CLAUSE = frozenset(",;(|")  # "dips 3x8 +10 | rpe 8 | 58 min"


ENDS_CLAUSE = frozenset(",;):|")


DASHES = frozenset("-/")  # parts of a message where they stand free: "dips 3x8 - rpe 8 - 58 min"


SPANS = (("minutes_90", 90.0), ("minutes_60", 60.0), ("minutes_30", 30.0), ("minutes_45", 45.0))


WIDEST = 2.5  # times the shorter: "8 - 58 min" is no range


LEAST_FOR_ALL = 20  # minutes: fewer of several lifts may be a circuit's

METRES = 100  # "400 m" and more are metres


def find_duration(body: BodyCues, taken: set[int]) -> Iterable[Claim]:
    tokens = body.tokens
    timed = ("unit", "hour") in body.at or ("unit", "minute") in body.at
    if not timed and body.tables.isdisjoint(("span", "duration")):
        return
    including = body.covered("duration", "including")  # "with the warm-up"
    barred = body.covered("duration", "not") - including
    spans = {at for (table, _), places in body.at.items() if table == "span" for at in places}
    for low, high in body.message.sentences:
        clause = former = low
        for at in range(low, high):
            sign = tokens[at].kind == "sym" and tokens[at].text >= FIRST_PICTURE  # "done ✅ 55 min"
            if tokens[at].text in OPENS_CLAUSE or sign or _free_dash(body, at, low, high):
                bracketed = tokens[at].text == "," and clause > low and tokens[clause - 1].text == "("
                if not bracketed:  # "(45 €, 50 min)" stays together
                    former, clause = clause, at + 1
                continue
            if tokens[at].value is None and at not in spans and tokens[at].text not in little("an"):
                continue
            found = _span_minutes(body, at)
            if found is None and at not in taken and _unitless(body, at, clause, high):
                yield Claim(at, at + 1, "duration", tokens[at].value)
                return
            if found is None or at in taken:
                continue
            minutes, stop, exact = found
            end = stop
            while end < high and tokens[end].text not in ENDS_CLAUSE and not _free_dash(body, end, low, high):
                end += 1
            before, after = range(clause, at), range(stop, end)
            if any(a in barred for a in before) or any(a in barred for a in after):
                continue
            cue = body.covered("duration", "cue") | including
            cued = any(a in cue for a in before) or any(a in cue for a in list(after)[:3])
            if (not cued and _of_other_sport(body, former, clause)) or _of_a_sign(body, low, at):
                continue
            fill = body.covered("duration", "alone")
            alone = all(a in fill for a in before) and all(
                a in fill or a in cue or tokens[a].text == "." for a in after
            )
            # "40 minutes and soaked." at the head of a sentence
            alone = alone or (at == low and stop < high and tokens[stop].text in little("and") and high - stop <= SHORT)
            if alone and not cued and exact and SLEPT_MINUTES[0] < minutes <= SLEPT_MINUTES[1] and _in_hours(body, at):
                slept = Ask("sleep_h", body.message.span(at, stop))
                yield Claim(at, stop, "sleep", None, slept)
                return
            alone = alone or (
                exact and (_before_work(body, at, low, stop) or _for_all_of_it(body, at, low, stop, high))
            )
            limit = MINUTES if cued else ALONE_MINUTES
            if (cued or alone) and exact and limit[0] <= minutes <= limit[1]:
                cues = body.starts("duration", "cue")
                yield Claim(at, cues.get(stop, stop), "duration", minutes)  # the "all" of "1 hour all in" is no plan's
                return
            if cued and exact and minutes > MINUTES[1]:
                yield Claim(at, stop, "duration", None, Ask("duration_min", body.message.span(at, stop)))
                return


def _of_other_sport(body: BodyCues, start: int, end: int) -> bool:
    """ "a 5k with the dog (31 min)", "swam 1500 m, 35 min": a clause of a run or a ride, whose minutes follow."""
    sport = body.covered("duration", "sport")
    if not any(at in sport for at in range(start, end)):
        return False
    moves = body.message.beginning("movements")
    own = (at for at in range(start, end) if at not in sport)  # the "row" of "5 k row"
    return not any(hit.table not in ("other", "none") for at in own for hit in moves[at])


def _of_a_sign(body: BodyCues, low: int, at: int) -> bool:
    """ "Fingers tingly, lasted an hour": a place of the body in the sentence, and it is this that lasted."""
    lasted = any(body.tokens[n].text in little("lasted") for n in range(max(low, at - SHORT), at))
    places = {n for (table, _), starts in body.at.items() if table == "site" for n in starts}
    own = body.covered("diary", "during")  # "the session lasted an hour, left elbow 2"
    return lasted and any(low <= n < at for n in places) and not any(low <= n < at for n in own)


def _is_range(body: BodyCues, at: int) -> bool:
    """Whether two numbers with a dash between them are the ends of a span of minutes."""
    shorter, longer = body.tokens[at].value or 0.0, body.tokens[at + 2].value or 0.0
    return 0 < shorter <= longer <= WIDEST * shorter


def _free_dash(body: BodyCues, at: int, low: int, high: int) -> bool:
    """Whether a dash or stroke with room on both sides parts what is told; "50 - 60 min" is one span."""
    tokens = body.tokens
    if tokens[at].text not in DASHES or not low < at < high - 1:
        return False
    ranged = tokens[at - 1].value is not None and tokens[at + 1].value is not None and _is_range(body, at - 1)
    return tokens[at].space and tokens[at + 1].space and not ranged


def _unitless(body: BodyCues, at: int, clause: int, high: int) -> bool:
    """ "Total time 40", "Dauer 1:10": a clause that is a name for the session's minutes and a number."""
    tokens = body.tokens
    value = tokens[at].value or 0.0
    closes = at + 1 >= high or tokens[at + 1].text in ENDS_CLAUSE - {":"}
    sized = (
        tokens[at].kind in ("num", "clock") and ALONE_MINUTES[0] <= value <= ALONE_MINUTES[1] and value == int(value)
    )
    if not (sized and closes) or at == clause or at - clause > SHORT:
        return False
    named = body.covered("duration", "named")
    return all(tokens[i].text in ":=-~" or i in named for i in range(clause, at))


def _before_work(body: BodyCues, at: int, low: int, stop: int) -> bool:
    """ "Hoy una hora y veinte dominadas cinco por tres": whole sets of a movement follow, no work before.

    Told without a comma, "twenty" would be repetitions of the movement.
    """
    tokens, moves = body.tokens, body.message.beginning("movements")
    told = any(moves[low:at]) or any(token.value is not None for token in tokens[low:at])
    if told or stop >= len(tokens) or not moves[stop]:
        return False
    end = moves[stop][0].end
    return (
        end + 2 < len(tokens)
        and tokens[end].value is not None
        and tokens[end + 1].text in little("times")
        and tokens[end + 2].value is not None
    )


def _for_all_of_it(body: BodyCues, at: int, low: int, stop: int, high: int) -> bool:
    """ "Muscle-ups 5, 4, 3 and ring dips 3x10 in 40 minutes.": of several lifts, at the end; of one it is a scheme."""
    tokens, moves = body.tokens, body.message.beginning("movements")
    closes = stop >= high or tokens[stop].text in ".!"
    minutes = tokens[at].value or 0.0
    if not closes or at <= low or tokens[at - 1].text not in little("within_time") or minutes < LEAST_FOR_ALL:
        return False
    lifts = {hit.name for found in moves[low:at] for hit in found}
    sets = sum(token.text in little("times") or token.text == "," for token in tokens[low:at])
    return len(lifts) > 1 and sets > 1


def _closes(body: BodyCues, at: int) -> bool:
    """Whether "in total" or another word of the session's length stands here."""
    return at in body.covered("duration", "cue", "alone")


def _in_hours(body: BodyCues, at: int) -> bool:
    return at + 1 in body.starts("unit", "hour")


def _span_minutes(body: BodyCues, at: int) -> tuple[float, int, bool] | None:
    """Minutes at a token: "65 min", "1h10", "1:05 h", "una hora y cuarto", "an hour", "anderthalb Stunden"."""
    tokens = body.tokens
    for name, part in SPANS if "span" in body.tables else ():
        stop = body.starts("span", name).get(at)
        if stop is not None:
            if name == "minutes_60":
                if (
                    stop >= len(tokens)
                    or tokens[stop].value is None
                    or (tokens[stop].spelled and (tokens[stop].value or 0) < 1)
                ):
                    continue
                return part + (tokens[stop].value or 0), stop + 1, True
            return part, stop, True
    token = tokens[at]
    hour, minute = body.starts("unit", "hour"), body.starts("unit", "minute")
    if token.value is None:
        if token.text in little("an") and at + 1 in hour:
            value = 30.0 if token.text in little("half") else 60.0
            end = hour[at + 1]
            for name, part in (("half", 30.0), ("quarter", 15.0), ("three_quarters", 45.0)):
                if end in body.starts("unit", name):
                    return value + part, body.starts("unit", name)[end], True
            return value, end, True
        return None
    if token.kind == "clock":
        return (token.value, hour[at + 1], True) if at + 1 in hour else None
    if token.kind == "num" and at and tokens[at - 1].text in ("x", "@", "+", "/") and not token.space:
        return None
    if at + 1 in minute and not (tokens[at + 1].text == "m" and token.value >= METRES):
        return token.value, minute[at + 1], True
    if at + 3 < len(tokens) and tokens[at + 1].text == "-" and at + 3 in minute and _is_range(body, at):
        return (token.value + (tokens[at + 2].value or 0)) / 2, minute[at + 3], True
    if at + 1 in hour:
        found = hours_at(body, at)
        if found is not None:
            hours, end = found
            if (
                end < len(tokens)
                and tokens[end].value is not None
                and end == hour[at + 1]
                and (tokens[end].value or 0) < 60
                and (end + 1 >= len(tokens) or tokens[end + 1].text in ",.;)" or _closes(body, end + 1))
            ):
                return hours * 60 + (tokens[end].value or 0), end + 1, True
            return hours * 60, end, True
    for name, part in (("half", 0.5), ("quarter", 0.25)):
        stop = body.starts("unit", name).get(at + 1)
        if stop is not None and stop in hour:
            return (token.value + part) * 60, hour[stop], True
    return None
