""" "One more", "noch einer", "otra @8": the set told last, done again, by who tells their sets as they go."""

from __future__ import annotations

import re
from datetime import timedelta

from bot.conversation import days_told
from bot.conversation.desk import Desk
from bot.conversation.words import phrases
from bot.reading.reading import Reading, SetRead
from planner.facts import WorkSet
from storage import facts

LATELY = timedelta(hours=1)  # since the set that is meant
EFFORT = re.compile(r"\s*(?:@|rpe)\s*(10|[5-9](?:[.,]5)?)$")


def told(desk: Desk, text: str) -> Reading | None:
    """The set once more; None where the words are others, or the last report of today was no single set."""
    if not is_said(text):
        return None
    effort = EFFORT.search(_plain(text))
    of_today = [one for one in desk.record.sessions if one.on == desk.said_on and one.sets and not one.is_test]
    last = max(of_today, key=lambda one: one.fact or 0, default=None)
    if last is None or last.fact is None or not days_told.is_one_set(last):
        return None
    told_at = facts.said_at(desk.tx, "session", last.fact)
    if told_at is None or desk.said_at - told_at > LATELY:
        return None
    rpe = float(effort[1].replace(",", ".")) if effort is not None else None
    return Reading(("report",), performed_on=last.on, sets=tuple(_again(work, rpe) for work in last.sets))


def is_said(text: str) -> bool:
    """Whether a whole message says that the set was done once more, its effort aside."""
    return EFFORT.sub("", _plain(text)).strip(" .,!") in phrases("one_more_set")["said"]


def _plain(text: str) -> str:
    return text.casefold().strip(" .,!")


def _again(work: WorkSet, rpe: float | None) -> SetRead:
    return SetRead(
        movement=work.movement,
        reps=work.reps,
        side=work.side,
        hold_s=work.hold_s,
        load_kg=work.load_kg,
        assist_kg=work.assist_kg,
        rpe=rpe,
        rom=work.rom,
        eccentric=work.eccentric,
        pauses=work.pauses,
    )
