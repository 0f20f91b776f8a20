"""A value put right by the sets it stood in: "sorry, 4x4 was +11.25, not 13.75" says which movement, if one was 4x4."""

from __future__ import annotations

from collections import Counter
from dataclasses import replace
from datetime import timedelta

from bot.conversation.desk import Desk
from bot.reading.reading import Correction, Reading
from planner.facts import Session, WorkSet

LATELY = timedelta(days=7)
SAME = 0.06
OF_MOVEMENT = ("movement", "load_kg")  # doubts that end once it is known which sets are meant


def named(desk: Desk, reading: Reading) -> Reading:
    """The reading with the movement of the told sets that are meant; as it was where none or several fit."""
    change = reading.correction
    asked = {doubt.about for doubt in reading.ask}
    if change is None or change.movement is not None or change.was is None or "movement" not in asked:
        return reading
    if not asked <= set(OF_MOVEMENT) or not reading.sets or any(one.movement is not None for one in reading.sets):
        return reading
    reports = [one for one in desk.record.sessions if one.sets and not one.is_test and desk.said_on - one.on <= LATELY]
    if reading.performed_on not in (None, desk.said_on):
        reports = [one for one in reports if one.on == reading.performed_on]
    wanted = Counter(one.reps for one in reading.sets)
    for session in sorted(reports, key=lambda one: one.fact or 0, reverse=True):
        found = {work.movement for work in session.sets if _sets_meant(session, work.movement, change) == wanted}
        if len(found) == 1:
            meant = replace(change, movement=found.pop())
            return replace(reading, sets=(), correction=meant, ask=(), performed_on=session.on)
    return reading


def _sets_meant(session: Session, movement: str, change: Correction) -> Counter[int | None]:
    """How many sets of how many reps a report has of a movement at the value that was told before."""
    return Counter(work.reps for work in session.sets if work.movement == movement and _has(work, change))


def _has(work: WorkSet, change: Correction) -> bool:
    value = getattr(work, change.field, None)
    return isinstance(value, (int, float)) and isinstance(change.was, (int, float)) and abs(value - change.was) <= SAME
