"""The day of each set where a message tells of several: named before its work, behind it, or several for one work."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from itertools import pairwise

from bot.reading.fold.sets import Work
from bot.reading.little import little
from bot.reading.message import Claim, Message
from bot.reading.reading import Ask, SetRead

MOST_BETWEEN = 2  # tokens between days and the work that was done on each of them


def dated(message: Message, work: Work, days: Sequence[Claim]) -> None:
    """Each block's sets get the day named before them (or after them)."""
    told = sorted((c for c in days if c.value is not None and c.end > c.start), key=lambda claim: claim.start)
    if len({claim.value for claim in told}) < 2:
        return
    if not work.places:
        if work.sets and message.context.today:  # "yesterday pull-ups and dips as planned, today archers"
            work.asks.append(Ask("performed_on", message.span(told[0].start, told[0].end)))
        return
    runs = _runs(message, told)
    if len(work.places) < 2 and not any(_beside(message, run, work) for run in runs):
        return
    chosen = [_day_of(told, place, heads=told[0].start <= work.places[0][2]) for place in work.places]
    bounds = [*(first for first, _, _ in work.places), len(work.sets)]
    sets: list[SetRead] = []
    for n, day in enumerate(chosen):
        own = work.sets[bounds[n] : bounds[n + 1]]
        run = next((run for run in runs if day in run and _beside(message, run, work)), [day])
        if len(run) > 1 and (_mixed(own) or sum(one in run for one in chosen) == len(run)):
            # "dips 3x10 and pull-ups 3x8 on Monday and Tuesday": both on each, or one on each
            work.asks.append(Ask("performed_on", message.span(run[0].start, run[-1].end)))
            sets += own
            continue
        for on in run:
            sets += [replace(one, on=on.value) for one in own]
    work.sets = sets
    if len({one.on for one in work.sets}) < 2:
        work.sets = [replace(one, on=None) for one in work.sets]


def _day_of(told: Sequence[Claim], place: tuple[int, int, int], *, heads: bool) -> Claim:
    """The day of the work at a place: days head their work, or follow it."""
    _, start, end = place
    if heads:
        before = [claim for claim in told if claim.start <= max(start, end)]
        return before[-1] if before else told[0]
    after = [claim for claim in told if claim.start >= start]
    return after[0] if after else told[-1]


def _mixed(own: Sequence[SetRead]) -> bool:
    return len({(one.reps, one.hold_s, one.load_kg) for one in own if one.side != "right"}) > 1


def _runs(message: Message, told: Sequence[Claim]) -> list[list[Claim]]:
    """Days that are named in one breath."""
    runs: list[list[Claim]] = [[told[0]]]
    for one, after in pairwise(told):
        between = message.tokens[one.end : after.start]
        apart = [token.text for token in between] == [","] and after.value == message.today
        if between and not apart and all(token.text in little("between_days") for token in between):
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
