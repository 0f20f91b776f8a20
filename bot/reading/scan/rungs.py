"""Ladders told by their ends: "ladder 1 to 5", "10 to 1 ladder", "Leiter von 1 bis 5", "10 down to 1"."""

from __future__ import annotations

from bot.reading.facts import Entry, Fact
from bot.reading.little import little
from bot.reading.scan.scanner import Scanner

LEAST_RUNGS = 3
MOST_RUNGS = 20


def rungs(s: Scanner, i: int) -> tuple[list[Fact], int] | None:
    """A set of each number from the first to the last, up or down."""
    if not s.has_ladder:
        return None
    at = i + s.at(i).has("scheme", "ladder")
    led = at > i
    beside = not led and s.at(i).has("load", "at")  # "ladder of push-ups 10 to 1 with 1 to 10 of pull-ups"
    at += beside
    while led and (s.at(at).text == ":" or s.at(at).kind == "move" or s.at(at).text in little("from")):
        at += 1
    first, joined = s.at(at), at + 1
    joined += s.at(joined).has("plan", "less", "more") or s.at(joined).text in little("up_or_down")
    last, end = s.at(joined + 1), joined + 2
    if not (s.at(joined).text in little("until") or s.at(joined).text in little("range")):
        return None
    if first.kind != "num" or last.kind != "num" or s.at(end).text in ("-", "/", ",", "x"):
        return None
    behind = s.at(end + (s.at(end).kind == "move"))
    if beside and not (s.at(end).has("times", "of") and s.at(end + 1).kind == "move"):
        return None
    if not led and not behind.has("scheme", "ladder") and not _led_by_ladder(s, i, beside):
        return None
    low, high = first.value or 0.0, last.value or 0.0
    whole = low == int(low) > 0 and high == int(high) > 0
    if not whole or not LEAST_RUNGS <= abs(high - low) + 1 <= MOST_RUNGS:
        return None
    step = 1 if high > low else -1
    rows = [Entry(reps) for reps in range(int(low), int(high) + step, step)]
    moves = [Fact("move", one.start, one.end, one.mention) for one in map(s.at, range(i, at)) if one.kind == "move"]
    mark = [Fact("scheme", s.at(i).start, s.at(i).end, "ladder", {"names": []})] if led else []
    return [*mark, *moves, Fact("rows", first.start, last.end, rows, {"list": True, "mark": "-"})], end


def _led_by_ladder(s: Scanner, i: int, beside: bool) -> bool:
    """ "Ladder of pull-ups from 1 to 5": the word for it stands in the same clause before, or beside another one."""
    for at in range(i - 1, -1, -1):
        item = s.at(at)
        if item.has("scheme", "ladder"):
            return True
        if (item.kind == "num" and not beside) or item.kind == "nl" or item.text in (".", "!", "?", ";", ","):
            return False
    return False
