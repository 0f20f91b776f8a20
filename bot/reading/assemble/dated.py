"""The day of each set, where one message tells of several: named before its work, behind it, or several for one work."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from datetime import date
from itertools import pairwise

from bot.reading.fold.sets import Work
from bot.reading.little import little
from bot.reading.message import Claim, Message
from bot.reading.reading import Ask, SetRead

MOST_BETWEEN = 2  # tokens between days and the work that was done on each of them


def dated(message: Message, work: Work, days: Sequence[Claim]) -> None:
    """Each block's sets get the day named before them (or after them)."""
    told = sorted((c for c in days if c.value is not None and c.end > c.start), key=lambda claim: claim.start)
    if len({claim.value for claim in told}) < 2 or not work.places:
        return
    runs = _runs(message, told)
    if len(work.places) < 2 and not any(_beside(message, run, work) for run in runs):
        return
    heads = told[0].start <= work.places[0][2]
    bounds = [*(first for first, _, _ in work.places), len(work.sets)]
    sets: list[SetRead] = []
    for n, (first, start, end) in enumerate(work.places):
        if heads:
            before = [claim for claim in told if claim.start <= max(start, end)]
            day = before[-1] if before else told[0]
        else:
            after = [claim for claim in told if claim.start >= start]
            day = after[0] if after else told[-1]
        own = work.sets[first : bounds[n + 1]]
        for on in _each_day(message, work, runs, day, own):
            sets += [replace(one, on=on) for one in own]
    work.sets = sets
    if len({one.on for one in work.sets}) < 2:
        work.sets = [replace(one, on=None) for one in work.sets]


def _each_day(
    message: Message, work: Work, runs: Sequence[list[Claim]], day: Claim, own: Sequence[SetRead]
) -> list[date | None]:
    """The days on which the same was done: "Mon/Wed/Fri 5x5"; asked where each may have its own."""
    run = next((run for run in runs if any(one is day for one in run) and _beside(message, run, work)), None)
    if run is None:
        return [day.value]
    mixed = len({(one.reps, one.hold_s, one.load_kg) for one in own if one.side != "right"}) > 1
    if mixed or len(work.places) == len(run):
        work.asks.append(Ask("performed_on", message.span(run[0].start, run[-1].end)))
        return [None]
    return [one.value for one in run]


def _runs(message: Message, told: Sequence[Claim]) -> list[list[Claim]]:
    """Days that are named in one breath."""
    runs: list[list[Claim]] = [[told[0]]]
    for one, after in pairwise(told):
        between = message.tokens[one.end : after.start]
        if between and all(token.text in little("between_days") for token in between):
            runs[-1].append(after)
        else:
            runs.append([after])
    return [run for run in runs if len({one.value for one in run}) > 1]


def _beside(message: Message, run: Sequence[Claim], work: Work) -> bool:
    """Whether the work stands right behind the days or right before them."""
    tokens = message.tokens
    for _, start, end in work.places:
        ahead = tokens[run[-1].end : min(start, end)] if run[-1].end <= min(start, end) else None
        if ahead is not None and len(ahead) <= MOST_BETWEEN and all(token.text not in ".;!?\n" for token in ahead):
            return True
    before = tokens[max(0, run[0].start - MOST_BETWEEN) : run[0].start]
    return bool(before) and (before[-1].value is not None or (before[0].value is not None and len(before) > 1))
