"""Numbers that mean nothing here: rest times, tempo, heart rate, prices, heights."""

from __future__ import annotations

from bot.reading.little import little
from bot.reading.scan.figured_sets import set_of_lift
from bot.reading.scan.scanner import Scanner

MOST_FIGURES = 4  # of a tempo
STOPS = ("top", "middle", "bottom")  # where in a repetition one stops
LEAST_SECONDS = 60  # so much is no load of "the rest"


def _ends(s: Scanner, dot: int) -> bool:
    """Whether a full stop ends its sentence: a movement, a capital or nothing follows."""
    after = s.at(dot + 1)
    return after.kind in ("nl", "move", "claim") or after.has("sets")


def _o_clock(s: Scanner, i: int) -> bool:
    """Whether "half", a word for a time before it and nothing that is counted behind the number are a time of day."""
    *led, half = s.at(i).text.split() or [""]
    before = led[0] if led else s.at(i - 1).text
    if half not in little("half_past") or before not in little("before_clock"):
        return False
    after = s.at(i + 2)
    return not (after.has("reps") or after.has("sets") or after.has("unit") or after.kind == "move")


def _rested_before(s: Scanner, i: int) -> bool:
    """ "Rest 3 min", "descansos de 3 min"."""
    led = s.at(i - 2) if s.at(i - 1).text in little("of_rest") else s.at(i - 1)
    return i > 0 and led.has("noise", "rest")


def _warms_up(s: Scanner, i: int, unit: int) -> bool:
    """ "10 min warm-up", "warmed up for 10 min", "5 min mobility": no hold."""
    near = (s.at(n) for n in (unit + 1, unit + 2, i - 1, i - 2, i - 3))
    return any(not little("warming").isdisjoint(item.text.replace("-", " ").split()) for item in near)


def _tempo_figures(s: Scanner, i: int) -> int | None:
    """ "3-1-X-1": three or four figures, one of them the X of a lift without delay; the place behind them."""
    if s.at(i + 1).text not in ("-", "/"):
        return None
    at, fast = i, False
    for n in range(MOST_FIGURES):
        item = s.at(at)
        fast = fast or item.text == "x"
        if item.text != "x" and not (item.kind == "num" and item.value in range(10)):
            return None
        at += 1
        if s.at(at).text not in ("-", "/") or n == MOST_FIGURES - 1:
            return at if fast and n >= MOST_FIGURES - 2 else None
        at += 1
    return None


def _is_of_seconds(s: Scanner, rest: int, j: int) -> bool:
    """ "4x30s rest 90": seconds, as no load of the other sets is so high; "the rest with 90" is of sets."""
    after = s.at(j + 1)
    alone = s.unit_at(j + 1) is None and not after.has("times", "x") and not after.has("reps") and after.kind != "move"
    led = s.at(rest - 1).has("plan", "the") or s.at(rest - 1).text in little("the")
    return j == rest + 1 and alone and not led and s.unit == "kg" and (s.at(j).value or 0) >= LEAST_SECONDS


def noise_after(s: Scanner, i: int) -> int | None:
    """The place after numbers that mean nothing here: rest times, tempo, heart rate, clock times, heights."""
    item = s.at(i)
    cells = [s.at(i + n) for n in range(4)]
    cell = item.text in little("week_cell") and cells[2].text in little("day_cell")
    if cell and cells[1].kind == cells[3].kind == "num" and not any(one.space for one in cells[1:]):
        return i + 4  # "W3D1"
    if item.text in little("numbered") and cells[1].kind == "num" and s.at(i - 1).kind != "num":
        if cells[2].text in little("out_of") and cells[3].kind == "num":
            return i + 4  # "day 3 of 30: 50 push-ups"
        if cells[2].text == ":":
            return i + 2  # "workout 12: chins 4x4"
    if cells[1].spelled and cells[1].value in range(1, 13) and _o_clock(s, i):
        return i + 2  # "got to the gym about half six"
    figures = _tempo_figures(s, i + item.has("load", "sign"))  # "4x4 @3-1-x-0"
    if figures is not None:
        return figures
    if item.has("noise", "tempo"):
        j = i + 1
        while (
            (s.at(j).kind in ("num", "word") and s.at(j).text not in little("ends_tempo"))
            or s.at(j).text in ("-", "/", ":")
            or (s.at(j).has("times", "x") and s.at(j + 1).kind == "num")
        ):
            if j > i + 9:
                break
            j += 1
        return j
    if item.has("noise", "heart"):
        for j in range(i + 1, i + 5):
            shortened = s.at(j).text == "." and s.at(j - 1).has("noise", "peak")  # "max. 162"
            if s.at(j).kind in ("move", "nl") or (s.at(j).text in (".", ";", ",") and not shortened):
                break  # "heart rate 135 bpm. Dips 3x8"
            if s.at(j).kind == "num":
                j += 1
                while (
                    s.at(j).kind in ("word", "known", "sym")
                    and s.at(j + 1).kind == "num"
                    and (s.at(j).has("noise", "heart", "peak") or s.at(j).text in ("/", "-"))
                ):
                    j += 2
                if s.at(j).text == "," and s.at(j + 1).has("noise", "peak") and s.at(j + 2).kind == "num":
                    j += 3  # "HR avg 121, max 158"
                return j
    if item.has("noise", "rest"):
        j = i + 1
        while s.at(j).text in little("before_rest"):
            j += 1
        if s.at(j).kind in ("num", "clock") and (
            s.at(j).kind == "clock" or s.unit_at(j + 1) in ("sec", "min") or s.at(j + 1).text == "'"
        ):
            return j + 2 if s.at(j).kind == "num" else j + 1
        if s.at(j).kind == "num" and _is_of_seconds(s, i, j):
            return j + 1
    if item.text == "(" and s.at(i + 1).kind == "num" and s.at(i + 2).text == "-" and s.at(i + 4).text == "-":
        j = i + 1
        while s.at(j).kind == "num" or s.at(j).text == "-":
            j += 1
        if s.at(j).text == ")":
            return j + 1
    if item.kind == "sym" and item.text in ("€", "$", "£", ":") and s.at(i + 1).kind == "num" and item.text != ":":
        return i + 2
    row = s.at(i + 2).text in (",", "/", "-") or s.at(i + 2).kind == "num"  # "5x5 = 5,5,4,4,3"
    if item.text == "=" and s.at(i - 1).kind == "num" and s.at(i + 1).kind == "num" and not row:
        return i + 2  # "2-4-6-4-2 = 18": the sum of what was told
    if item.kind == "num":
        j = i + 1
        led = s.at(i - 1).has("plan", "the") and s.at(i - 1).text in little("dotted")
        if s.at(j).text == "." and not s.at(j).space and led and not _ends(s, j):
            return j + 1  # "14 sauber, die 15. nur halb": which repetition
        if s.unit_at(j) == "hour" and s.at(i - 1).kind != "move":
            return j + 1
        if (
            len(item.text) == 2
            and item.text.isdigit()
            and s.at(j).has("times", "x")
            and not s.at(j).space
            and len(s.at(j + 1).text) == 1
            and s.at(j + 1).text.isdigit()
            and not s.at(j + 1).space
            and s.has_tempo
        ):
            return j + 2  # "31x1"
        if s.at(j).text == "-" and s.at(j + 1).kind == "num":
            j += 2
        unit = s.unit_at(j)
        of_sets = s.at(j + 1).has("sets", "sets") or s.at(j + 1).text in little("a_round")
        if s.at(j).text in little("ordinal_ending") and (of_sets or set_of_lift(s, j + 1)):
            return None  # "1st set", "4th dip set"
        if unit == "other":
            return j + 1
        if unit in ("sec", "min") or s.at(j).text == "'":
            after = s.at(j + 1)
            where = (s.at(j + 2), s.at(i - 1), s.at(i - 2 if s.at(i - 1).has("side", "each", "per") else i - 1))
            if after.has("pause", "pause") and any(one.has("pause", *STOPS) for one in where):
                return None  # "2 Sek Pause oben", "oben jeweils 2 Sek Pause"
            timed = s.at(j + 2).kind == "num" and s.unit_at(j + 3) in ("sec", "min")  # "15s rested 3 minutes"
            if (after.has("noise", "rest", "down") and not (timed and after.has("noise", "rest"))) or (
                after.text in little("of_rest") and s.at(j + 2).has("noise", "rest")
            ):
                return j + 2
            if _rested_before(s, i):
                return j + 1
            if unit == "min" and _warms_up(s, i, j):
                return j + 1
            if s.rest_paused(i) and unit == "sec":
                return j + 1  # "rest-pause dips: 8, 20 sec, 3, 20 sec, 2"
        if s.at(i - 1).text == "-" and unit == "other":
            return j + 1
    if item.kind == "clock":
        return None
    return None
