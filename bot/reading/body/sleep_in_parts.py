"""A night told in pieces: "slept 5, then another hour and a half, so 6.5 in all", "4 h plus 2 more hours"."""

from __future__ import annotations

from collections.abc import Callable

from bot.reading.body.cues import BodyCues
from bot.reading.little import little

Hours = Callable[[BodyCues, int], tuple[float, int] | None]  # those at a token, and where they end
MOST_BETWEEN = 6  # tokens from one piece to what is added to it
MOST_SLEEP_H = 16.0
CLOSING = frozenset({",", ".", ";", ")", "!", "\n"})


def whole_night(body: BodyCues, first: float, stop: int, end: int, hours_at: Hours) -> tuple[float, int]:
    """The hours of all pieces, where more than the first, told up to `stop`, stand before `end`; and where they end."""
    told, at = _total(body, stop, end, hours_at)
    if told is not None and first < told <= MOST_SLEEP_H:
        return told, at
    whole = first
    while (piece := _more(body, stop, end, hours_at)) is not None:
        whole, stop = whole + piece[0], piece[1]
    return whole, stop


def _total(body: BodyCues, stop: int, end: int, hours_at: Hours) -> tuple[float | None, int]:
    """What it came to, behind another piece of it; None where that is not told."""
    tokens, grammar = body.tokens, body.message.beginning("grammar")
    totals = {hit.start for found in grammar[stop:end] for hit in found if (hit.table, hit.name) == ("scheme", "total")}
    pieces = False
    for at in range(stop, end):
        if body.message.beginning("movements")[at] or tokens[at].text in little("times"):
            return None, stop
        pieces = pieces or tokens[at].text in little("another", "on_top")
        found = hours_at(body, at) if tokens[at].value is not None else None
        if found is None or tokens[at - 1].value is not None:
            continue
        hours, after = found
        sums = tokens[at - 1].text in little("comes_to") or at - 1 in totals or after in totals
        if pieces and sums and (after not in body.starts("unit", "rep_like") or after in totals):
            return hours, after
        pieces = True
    return None, stop


def _more(body: BodyCues, stop: int, end: int, hours_at: Hours) -> tuple[float, int] | None:
    """The next piece: "plus another 2 hours", "+ 3 h", "another hour and a half"."""
    tokens = body.tokens
    added = False
    for at in range(stop, min(end, stop + MOST_BETWEEN)):
        token = tokens[at]
        if token.value is None or token.text in little("another"):
            added = added or token.text in little("another", "on_top")
            unit = body.starts("unit", "hour").get(at) if added else None
            if unit is None:
                continue
            half = body.starts("unit", "half").get(unit)
            return (1.5, half) if half is not None else (1.0, unit)
        found = hours_at(body, at)
        if found is None:
            return None
        hours, after = found
        united = any(one in body.starts("unit", "hour") for one in range(at, after)) or token.kind == "clock"
        more = after < len(tokens) and tokens[after].text in little("more")
        after += more
        if more and (unit := body.starts("unit", "hour").get(after)) is not None:
            united, after = True, unit
        closes = after >= len(tokens) or tokens[after].text in CLOSING or after in body.starts("sleep", "cue")
        return (hours, after) if closes and (more or (added and united)) and hours <= MOST_SLEEP_H else None
    return None
