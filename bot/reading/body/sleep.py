"""Hours slept."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from bot.reading.body.cues import BETWEEN, BodyCues
from bot.reading.body.sleep_in_parts import whole_night
from bot.reading.composed import hours_of_waking
from bot.reading.little import little
from bot.reading.message import Claim
from bot.reading.reading import Ask
from bot.reading.red_flags import Cues
from bot.reading.tokens import Token

MOST_SLEEP_H = 16.0
LEAST_MINUTES = 10  # told behind hours without their name
MINUTES_OF_AN_HOUR = 60
LEAST_NIGHT_H, MOST_NIGHT_H = 2, 13  # what "from 11 to 6" may be
HALF_A_DAY, DAY = 12, 24


def _range() -> frozenset[str]:
    return little("range", "until") | {"-"}


def _closing_minutes(body: BodyCues, at: int) -> bool:
    """Whether a number that ends its clause can be minutes: "sleep 8h 15"."""
    ends = at + 1 >= len(body.tokens) or body.tokens[at + 1].text in (",", ".", ";", ")", "\n")
    return ends and (body.tokens[at].value or 0) >= LEAST_MINUTES


def hours_at(body: BodyCues, at: int) -> tuple[float, int] | None:
    """Hours at a token: "7", "7h", "6h30", "7h y media", "7:30", and where they end."""
    tokens = body.tokens
    token = tokens[at]
    if token.value is None:
        return None
    if token.kind == "clock":
        return token.value / 60, at + 1
    value, end = token.value, at + 1
    if end + 1 < len(tokens) and tokens[end].text in _range() and tokens[end + 1].value is not None:
        high = tokens[end + 1].value or 0.0
        if value < high <= value + 3:
            value, end = (value + high) / 2, end + 2
    unit = body.starts("unit", "hour").get(end)
    if unit is not None:
        end = unit
        if (
            end < len(tokens)
            and tokens[end].kind == "num"
            and (not tokens[end].space or _of_sleep(body, end + 1) or _closing_minutes(body, end))
            and (tokens[end].value or 0) < MINUTES_OF_AN_HOUR
        ):
            value, end = value + (tokens[end].value or 0) / 60, end + 1
            end = body.starts("unit", "minute").get(end, end)
        elif end < len(tokens) and tokens[end].value is not None and end + 1 in body.starts("unit", "minute"):
            value, end = value + (tokens[end].value or 0) / 60, body.starts("unit", "minute")[end + 1]
        elif (
            end + 1 < len(tokens)
            and tokens[end].text in little("and")
            and tokens[end + 1].value is not None
            and end + 2 in body.starts("unit", "minute")
        ):
            value, end = value + (tokens[end + 1].value or 0) / 60, body.starts("unit", "minute")[end + 2]
    for name, part in (("half", 0.5), ("quarter", 0.25), ("three_quarters", 0.75)):
        after = body.starts("unit", name).get(end)
        if after is not None:
            value, end = value + part, after
            break
    end = body.starts("unit", "hour").get(end, end)
    return value, end


def _night(body: BodyCues, start: int, end: int, bounds: tuple[int, int]) -> Claim | None:
    """The hours of a night told by the clock, behind the word of sleep or before it: "von 23 bis 6 geschlafen"."""
    for at in (end, *range(start - 1, max(bounds[0], start - BETWEEN) - 1, -1)):
        found = _by_clock(body, at)
        before = at < start
        if found is None or (before and found[1] != start) or (not before and found[1] > bounds[1]):
            continue
        if before and body.tokens[at].text not in little("until_clock") and at and _led(body, at - 1):
            continue
        hours, stop = found
        low, high = min(start, at), max(end, stop)
        return Claim(low, high, "sleep", hours, None if hours else Ask("sleep_h", body.message.span(low, high)))
    return None


def _led(body: BodyCues, at: int) -> bool:
    return body.tokens[at].text in little("until_clock")


def _by_clock(body: BodyCues, at: int) -> tuple[float | None, int] | None:
    """ "Slept (from) 11 (pm) to 6", "von 23 bis 6 Uhr": the hours, None where they make no night, and where it ends."""
    tokens = body.tokens
    led = at < len(tokens) and tokens[at].text in little("until_clock")
    first = _o_clock(body, at + led)
    if first is None or first[1] >= len(tokens):
        return None
    joined = tokens[first[1]].text
    if joined not in _range():
        return None
    second = _o_clock(body, first[1] + 1)
    if second is None:
        return None
    went, woke = first[0], second[0]
    if not (led or first[2] or second[2] or went > woke):
        return None  # "7-8" are hours; no range of hours falls
    whole = DAY if went > HALF_A_DAY or woke > HALF_A_DAY else HALF_A_DAY
    hours = round((woke - went) % whole, 4)
    return (hours if LEAST_NIGHT_H <= hours <= MOST_NIGHT_H else None), second[1]


def _o_clock(body: BodyCues, at: int) -> tuple[float, int, bool] | None:
    """The time of day at a token, the place after it, and whether its form says that it is one."""
    tokens = body.tokens
    if at >= len(tokens) or tokens[at].value is None:
        return None
    token = tokens[at]
    clock = token.kind == "clock"
    value = (token.value or 0.0) / 60 if clock else token.value or 0.0
    end = at + 1
    while end < len(tokens) and tokens[end].text in little("half_of_day"):
        end, clock = end + 1, True
    return (value, end, clock) if 0 <= value <= DAY else None


def _of_sleep(body: BodyCues, at: int) -> bool:
    """ "7 h 10 geschlafen": the word of sleep right behind."""
    return at in body.starts("sleep", "cue")


def _of_nights(tokens: Sequence[Token], at: int) -> bool:
    """ "Can't sleep, two nights now": so many nights are no hours."""
    return at + 1 < len(tokens) and tokens[at + 1].text in little("nights")


def _minutes_of(body: BodyCues, at: int) -> bool:
    """Whether a number hangs on hours: "6h30", "7 h 10"."""
    below = (body.tokens[at].value or 0.0) < MINUTES_OF_AN_HOUR and body.tokens[at].kind == "num"
    return at > 1 and below and body.tokens[at - 2].value is not None and body.starts("unit", "hour").get(at - 1) == at


def _of_mine(body: BodyCues, low: int, high: int) -> Claim | None:
    """One's own hours behind somebody else's: "me 6", "I only 5"."""
    for start, end in sorted(body.starts("sleep", "me").items()):
        if not low <= start < high:
            continue
        at = end
        found = hours_at(body, at) if at < high else None
        if found is not None and 0 < found[0] <= MOST_SLEEP_H:
            return Claim(start, found[1], "sleep", round(found[0], 4))
    return None


def _parted(body: BodyCues, low: int, at: int) -> bool:
    """Whether a comma stands before a number that is not the only one of its message, or may be of training."""
    message = body.message
    if at == low + 1 and body.tokens[low].text == ":" and _closes(body, at):
        return False  # "sleep: 7.5" is a label and its hours
    if not any(token.text in (",", ":") for token in body.tokens[low:at]):
        return False
    of_training = bool(message.context.today) or any(message.beginning("movements")[low:at])
    return of_training or message.numbers_within(0, len(body.tokens)) > 1


def _closes(body: BodyCues, at: int) -> bool:
    """Whether a clause ends with a number that may be the hours of a night, and with no more figures behind."""
    tokens = body.tokens
    after = tokens[at + 1 : at + 3]
    ends = not after or after[0].kind == "nl" or after[0].text in (",", ";", ".", "!", ")")
    listed = len(after) > 1 and after[0].text == "," and after[1].value is not None and not _scheme(tokens, at + 2)
    return ends and not listed and LEAST_NIGHT_H <= (tokens[at].value or 0) <= MOST_NIGHT_H


def _scheme(tokens: Sequence[Token], at: int) -> bool:
    return at + 1 < len(tokens) and tokens[at + 1].text == "x"


def _lift_between(body: BodyCues, start: int, end: int) -> bool:
    """Whether an exercise is named between two tokens."""
    found = body.message.beginning("movements")
    return any(hit.table != "none" for at in range(start, end) for hit in found[at])


def find_sleep(body: BodyCues, taken: set[int]) -> Iterable[Claim]:
    if "sleep" not in body.tables:
        return
    tokens = body.tokens
    taken = taken | hours_of_waking(body.message)
    nights = body.starts("sleep", "night")  # "bad night, barely 4 hours": only with a unit
    told = {**nights, **body.starts("sleep", "cue")}
    neither = body.covered("sleep", "neither")
    of_them = body.starts("sleep", "of_them")  # "8 hours in bed, 6 of them asleep"
    in_bed = body.starts("sleep", "in_bed")
    cues = [*sorted((s, e) for s, e in told.items() if s not in neither), *sorted(in_bed.items())]
    others = Cues(body.message) if cues else None
    for start, end in cues:
        bounds = next(((a, b) for a, b in body.message.sentences if a <= start < b), (0, len(tokens)))
        of_hours = any(high == start or low == end for low, high in of_them.items())
        night = _night(body, start, end, bounds)
        if night is not None and not (others is not None and others.of_others(start, bounds)):
            yield night
            return
        if others is not None and not of_hours and others.of_others(start, bounds):
            own = _of_mine(body, end, bounds[1])  # "kids slept 10 hours, me 6"
            if own is not None:
                yield own
                return
            continue  # "the baby slept 4 hours"
        ways = ((end, min(end + BETWEEN, len(tokens)), 1), (start - 1, max(start - 6, -1), -1))
        # "6h sleep, elbow 1": hours right before the word are its own
        if start and start - 1 in body.covered("unit", "hour"):
            ways = ways[::-1]
        for low, high, step in ways:
            for at in range(low, high, step):
                token = tokens[at]
                if token.text in ".;\n!?" or (token.text == "," and step == -1):
                    break
                if token.value is None or at in taken or _of_nights(tokens, at):
                    continue
                if step == -1 and _minutes_of(body, at):
                    continue  # the "30" of "6h30 sleep"
                if step == -1 and at > 1 and tokens[at - 1].text in _range() and tokens[at - 2].value is not None:
                    at -= 2  # "7-8 h sleep"
                found = hours_at(body, at)
                if found is None:
                    continue
                hours, stop = found
                if step == 1 and at > end and any(t.text in little("until_clock") for t in tokens[end:at]):
                    break
                has_unit = any(body.starts("unit", "hour").get(a) for a in range(at, stop)) or token.kind == "clock"
                has_unit = has_unit or at in of_them or at - 1 in of_them
                if token.spelled and hours == 1 and not has_unit:
                    continue  # "wie ein Stein"
                if (not has_unit or token.kind == "clock") and step == 1 and _parted(body, end, at):
                    break  # "slept badly, 12, 12, 10"
                if step == 1 and not has_unit and _lift_between(body, end, at):
                    break  # "slept badly dips 8 8 7"
                if (step == -1 or start in nights or start in in_bed) and not has_unit:
                    break
                if (
                    step == 1
                    and not has_unit
                    and (
                        at - end > 3
                        or stop in body.starts("unit", "rep_like")
                        or (stop < len(tokens) and tokens[stop].text in ("x", "/", "@", "%"))
                    )
                ):
                    break
                hours, stop = whole_night(body, hours, max(end, stop), bounds[1], hours_at)
                first, last = min(start, at), max(end, stop)
                if 0 < hours <= MOST_SLEEP_H:
                    yield Claim(first, last, "sleep", round(hours, 4))
                    return
                if has_unit and hours > MOST_SLEEP_H:
                    yield Claim(first, last, "sleep", None, Ask("sleep_h", body.message.span(at, stop)))
                    return
                break
