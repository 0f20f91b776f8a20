"""Facts of the body and of the whole session: bodyweight, sleep, minutes, effort of the session."""

from __future__ import annotations

from collections.abc import Iterable

from bot.reading.little import little
from bot.reading.message import Claim, Message
from bot.reading.phrases import sentence_bounds
from bot.reading.reading import Ask

KG_PER_LB = 0.45359237  # exact since 1959
PLAUSIBLE_KG = (30.0, 250.0)
CHANGE = 0.15  # a bodyweight further than this from the last known one is asked about (common practice)
MOST_SLEEP_H = 16.0
MINUTES = (10.0, 360.0)
ALONE_MINUTES = (15.0, 300.0)
BETWEEN = 8  # tokens between a cue and its number
SIGNS_BETWEEN = ":=-~(,"


class _Body:
    def __init__(self, message: Message) -> None:
        self.message = message
        self.tokens = message.tokens
        self.at: dict[tuple[str, str], dict[int, int]] = {}
        for hit in message.hits("body"):
            places = self.at.setdefault((hit.table, hit.name), {})
            places[hit.start] = max(places.get(hit.start, 0), hit.end)

    def starts(self, table: str, name: str) -> dict[int, int]:
        return self.at.get((table, name), {})

    def covered(self, table: str, *names: str) -> set[int]:
        return {at for name in names for start, end in self.starts(table, name).items() for at in range(start, end)}


def find_body(message: Message) -> list[Claim]:
    """Claims `bodyweight` [kg], `sleep` [h], `duration` [min], `session_rpe`; a doubtful one carries its question."""
    body = _Body(message)
    if not any(token.value is not None for token in message.tokens) and not any(key[0] == "span" for key in body.at):
        return []
    claims: list[Claim] = []
    taken: set[int] = set()
    for finder in (_sleep, _session_rpe, _bodyweight, _duration):
        for claim in finder(body, taken):
            taken |= set(range(claim.start, claim.end))
            claims.append(claim)
    return claims


def _hours(body: _Body, at: int) -> tuple[float, int] | None:
    """Hours at a token: "7", "7h", "6h30", "7h y media", "7:30", and where they end."""
    tokens = body.tokens
    token = tokens[at]
    if token.value is None:
        return None
    if token.kind == "clock":
        return token.value / 60, at + 1
    value, end = token.value, at + 1
    if end + 1 < len(tokens) and tokens[end].text in little("range") and tokens[end + 1].value is not None:
        high = tokens[end + 1].value or 0.0
        if value < high <= value + 3:
            value, end = (value + high) / 2, end + 2
    unit = body.starts("unit", "hour").get(end)
    if unit is not None:
        end = unit
        if end < len(tokens) and tokens[end].kind == "num" and not tokens[end].space and (tokens[end].value or 0) < 60:
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


def _sleep(body: _Body, taken: set[int]) -> Iterable[Claim]:
    tokens = body.tokens
    nights = body.starts("sleep", "night")  # "bad night, barely 4 hours": only with a unit
    told = {**nights, **body.starts("sleep", "cue")}
    cues = [(s, e) for s, e in told.items() if s not in body.starts("sleep", "neither")]
    for start, end in sorted(cues):
        ways = ((end, min(end + BETWEEN, len(tokens)), 1), (start - 1, max(start - 6, -1), -1))
        # "6h sleep, elbow 1": hours right before the word are its own
        if start and start - 1 in body.covered("unit", "hour"):
            ways = ways[::-1]
        for low, high, step in ways:
            for at in range(low, high, step):
                token = tokens[at]
                if token.text in ".;\n!?" or (token.text == "," and step == -1):
                    break
                if token.value is None or at in taken:
                    continue
                found = _hours(body, at)
                if found is None:
                    continue
                hours, stop = found
                if step == 1 and at > end and any(t.text in little("until_clock") for t in tokens[end:at]):
                    break
                has_unit = any(body.starts("unit", "hour").get(a) for a in range(at, stop)) or token.kind == "clock"
                if (step == -1 or start in nights) and not has_unit:
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
                first, last = min(start, at), max(end, stop)
                if 0 < hours <= MOST_SLEEP_H:
                    yield Claim(first, last, "sleep", round(hours, 4))
                    return
                if has_unit and hours > MOST_SLEEP_H:
                    yield Claim(first, last, "sleep", None, Ask("sleep_h", body.message.span(at, stop)))
                    return
                break


def _number_after(
    body: _Body, end: int, bounds_end: int, *between: tuple[str, str], signs: str = SIGNS_BETWEEN
) -> int | None:
    """The first number behind a cue with nothing but small words between."""
    fill: set[int] = set()
    for table, name in between:
        fill |= body.covered(table, name)
    for at in range(end, min(bounds_end, end + BETWEEN)):
        if body.tokens[at].value is not None:
            return at
        if at not in fill and body.tokens[at].text not in signs:
            return None
    return None


def _effort(body: _Body, at: int) -> tuple[float, int] | None:
    """An effort at a token: "7", "7.5", "8/10", "7-8", "8 von 10"."""
    tokens = body.tokens
    value = tokens[at].value
    if value is None or tokens[at].kind == "clock":
        return None
    scale = body.starts("pain", "scale").get(at)
    end = scale or at + 1
    if (
        scale is None
        and end + 1 < len(tokens)
        and tokens[end].text in little("range")
        and tokens[end + 1].value is not None
    ):
        high = tokens[end + 1].value or 0.0
        if value < high <= value + 2:
            value, end = (value + high) / 2, end + 2
            end = body.starts("pain", "scale").get(end - 1, end)
    if not 0 <= value <= 10:
        return None
    if end < len(tokens) and scale is None:
        after = tokens[end]
        units = (
            *body.starts("unit", "hour"),
            *body.starts("unit", "minute"),
            *body.starts("unit", "rep_like"),
            *body.starts("unit", "kg"),
        )
        if end in units or after.text in ("x", "/", "%", "+") or (after.kind == "word" and not after.space):
            return None
        if (
            after.text in (",",)
            and not after.space
            and end + 1 < len(tokens)
            and tokens[end + 1].value is not None
            and not tokens[end + 1].space
        ):
            return None
    return value, end


def _session_rpe(body: _Body, taken: set[int]) -> Iterable[Claim]:
    tokens = body.tokens
    # "session rpe 8", "sRPE 7", "Sesión 8/10", "overall 7"
    for low, high in sentence_bounds(tokens):
        for name in ("whole", "cue"):
            for start, end in sorted(body.starts("session_rpe", name).items()):
                if not low <= start < high or start in taken:
                    continue
                at = _number_after(body, end, high, ("session_rpe", "between"), ("session_rpe", "effort"))
                found = _effort(body, at) if at is not None else None
                if at is None or found is None:
                    continue
                value, stop = found
                said = (
                    name == "whole"
                    or at in body.starts("pain", "scale")
                    or any(a in body.covered("session_rpe", "effort", "between") for a in range(end, at))
                    or at == end
                    or tokens[end].text in ":=("
                )
                if said:
                    yield Claim(start, stop, "session_rpe", value)
                    return
        # "rpe 7 overall", "an 8 overall", "7/10 session"
        for start, end in sorted(body.starts("session_rpe", "cue").items()):
            if not low <= start < high:
                continue
            for at in range(start - 1, max(low, start - 7) - 1, -1):
                found = _effort(body, at)
                if found is None:
                    continue
                value, stop = found
                between = range(stop, start)
                fill = body.covered("session_rpe", "between")
                if stop <= start and all(a in fill or tokens[a].text in little("for_the") for a in between):
                    before = range(max(low, at - 2), at)
                    effort = any(a in body.covered("session_rpe", "effort") for a in before)
                    if (
                        effort
                        or (tokens[start].text in little("overall") and at and tokens[at - 1].text in little("likely"))
                        or at in body.starts("pain", "scale")
                    ):
                        first = min([a for a in before if a in body.covered("session_rpe", "effort")], default=at)
                        yield Claim(first, end, "session_rpe", value)
                        return
                break


def _bodyweight(body: _Body, taken: set[int]) -> Iterable[Claim]:
    message, tokens = body.message, body.tokens
    known = message.context.bodyweight_kg
    strong, weak = body.starts("bodyweight", "cue"), body.starts("bodyweight", "weak")
    cues = sorted({**weak, **strong}.items())
    sentences = sentence_bounds(tokens)
    for start, end in cues:
        if any(a in taken for a in range(start, end)):
            continue
        high = next((b for a, b in sentences if a <= start < b), len(tokens))
        at = _number_after(body, end, high, ("bodyweight", "at"), signs=SIGNS_BETWEEN)
        if at is None or at in taken or tokens[at].kind == "clock":
            continue
        value = tokens[at].value or 0.0
        stop = at + 1
        unit: str = message.context.unit
        said = None
        for name in ("kg", "lb"):
            after = body.starts("unit", name).get(stop)
            if after is not None:
                unit, said, stop = name, name, after
                break
        if said is None and stop in body.starts("unit", "rep_like") and tokens[stop].text not in ("am", "this"):
            continue
        if (stop < len(tokens) and tokens[stop].text in ("x", "/", "@")) or (
            stop < len(tokens)
            and tokens[stop].text == ","
            and not tokens[stop].space
            and stop + 1 < len(tokens)
            and tokens[stop + 1].value is not None
            and not tokens[stop + 1].space
        ):
            continue
        if tokens[at - 1].text in ("x", "@", "+"):
            continue
        kg = value * KG_PER_LB if unit == "lb" else value
        near = known is not None and abs(kg - known) <= CHANGE * known
        plausible = PLAUSIBLE_KG[0] <= kg <= PLAUSIBLE_KG[1]
        if (near or known is None) and plausible:
            if start in weak and start not in strong and known is None and not 40 <= kg <= 160:
                continue
            yield Claim(start, stop, "bodyweight", kg)
            return
        alone = sum(1 for token in tokens if token.value is not None) == 1
        slip = value != int(value) and (alone or said is not None)  # "bodyweight 7.15": no count of repetitions
        if ((start in strong and value >= 25) or (slip and value < PLAUSIBLE_KG[0])) and not _is_load(body, start):
            yield Claim(start, stop, "bodyweight", None, Ask("bodyweight_kg", message.span(at, at + 1)))
            return
    yield from _told_bare(body, taken) or _weighed(body, taken, sentences)


def _told_bare(body: _Body, taken: set[int]) -> list[Claim]:
    """ "I'm 158 now": a weight if near the last known one, asked if only so in the other unit; stones are asked."""
    message, tokens = body.message, body.tokens
    for start, end in body.starts("bodyweight", "stone").items():
        numbers = [at for at in range(start, end) if tokens[at].value is not None and at not in taken]
        if numbers:
            return [Claim(numbers[0], end, "bodyweight", None, Ask("bodyweight_kg", message.span(numbers[0], end)))]
    known = message.context.bodyweight_kg
    for start, end in body.starts("bodyweight", "am").items():
        at = next(at for at in range(start, end) if tokens[at].value is not None)
        if known is None or at in taken:
            continue
        value = tokens[at].value or 0.0
        here, there = (value * KG_PER_LB, value) if message.context.unit == "lb" else (value, value * KG_PER_LB)
        if abs(here - known) <= CHANGE * known:
            return [Claim(start, end, "bodyweight", here)]
        if abs(there - known) <= CHANGE * known:
            return [Claim(start, end, "bodyweight", None, Ask("bodyweight_kg", message.span(at, at + 1)))]
    return []


def _weighed(body: _Body, taken: set[int], sentences: list[tuple[int, int]]) -> Iterable[Claim]:
    """A weight said before its cue: "71.5 today on the scale", "72.3 kg fasted"."""
    tokens, known = body.tokens, body.message.context.bodyweight_kg
    fill = body.covered("bodyweight", "at")
    for start, end in sorted({**body.starts("bodyweight", "after"), **body.starts("bodyweight", "cue")}.items()):
        low = next((a for a, b in sentences if a <= start < b), 0)
        for at in range(start - 1, max(low, start - BETWEEN) - 1, -1):
            value = tokens[at].value
            if value is None:
                if at in fill or any(body.starts("unit", name).get(at) for name in ("kg", "lb")):
                    continue
                break
            unit: str = body.message.context.unit
            for name in ("kg", "lb"):
                unit = name if body.starts("unit", name).get(at + 1) else unit
            kg = value * KG_PER_LB if unit == "lb" else value
            if (
                at not in taken
                and known is not None
                and abs(kg - known) <= CHANGE * known
                and tokens[at - 1].text not in ("x", "@", "+")
            ):
                yield Claim(at, end, "bodyweight", kg)
                return
            break


def _is_load(body: _Body, start: int) -> bool:
    """ "bw +20", "bodyweight pull-ups 25": the word stands for no added load."""
    before = body.tokens[start - 1] if start else None
    return before is not None and (before.value is not None or before.text in little("carrying"))


def _duration(body: _Body, taken: set[int]) -> Iterable[Claim]:
    tokens = body.tokens
    barred = body.covered("duration", "not")
    for low, high in sentence_bounds(tokens):
        clause = low
        for at in range(low, high):
            if tokens[at].text in ",;(":
                clause = at + 1
                continue
            found = _span_minutes(body, at)
            if found is None or at in taken:
                continue
            minutes, stop, exact = found
            end = stop
            while end < high and tokens[end].text not in ",;):":
                end += 1
            before, after = range(clause, at), range(stop, end)
            if any(a in barred for a in before) or any(a in barred for a in after):
                continue
            cue = body.covered("duration", "cue")
            cued = any(a in cue for a in before) or any(a in cue for a in list(after)[:3])
            fill = body.covered("duration", "alone")
            alone = all(a in fill for a in before) and all(a in fill or a in cue for a in after)
            limit = MINUTES if cued else ALONE_MINUTES
            if (cued or alone) and exact and limit[0] <= minutes <= limit[1]:
                yield Claim(at, stop, "duration", minutes)
                return
            if cued and exact and minutes > MINUTES[1]:
                yield Claim(at, stop, "duration", None, Ask("duration_min", body.message.span(at, stop)))
                return


def _span_minutes(body: _Body, at: int) -> tuple[float, int, bool] | None:
    """Minutes at a token: "65 min", "1h10", "1:05 h", "una hora y cuarto", "an hour", "anderthalb Stunden"."""
    tokens = body.tokens
    for name, part in (("minutes_90", 90.0), ("minutes_60", 60.0), ("minutes_30", 30.0), ("minutes_45", 45.0)):
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
    if token.kind == "num" and at and tokens[at - 1].text in ("x", "@", "+", "/"):
        return None
    if at + 1 in minute:
        return token.value, minute[at + 1], True
    if at + 3 < len(tokens) and tokens[at + 1].text == "-" and tokens[at + 2].value is not None and at + 3 in minute:
        return (token.value + (tokens[at + 2].value or 0)) / 2, minute[at + 3], True
    if at + 1 in hour:
        found = _hours(body, at)
        if found is not None:
            hours, end = found
            if (
                end < len(tokens)
                and tokens[end].value is not None
                and end == hour[at + 1]
                and (tokens[end].value or 0) < 60
                and (end + 1 >= len(tokens) or tokens[end + 1].text in ",.;)")
            ):
                return hours * 60 + (tokens[end].value or 0), end + 1, True
            return hours * 60, end, True
    for name, part in (("half", 0.5), ("quarter", 0.25)):
        stop = body.starts("unit", name).get(at + 1)
        if stop is not None and stop in hour:
            return (token.value + part) * 60, hour[stop], True
    return None
