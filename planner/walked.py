"""The walk up to a block's first day, kept with the sessions: what is long past is not walked through again.

A walk far enough back depends on nothing but facts of days before a day that it reached. It is kept with the newest
session it took, together with those facts; it holds only for the very same ones and may be dropped at any time.
"""

from __future__ import annotations

from bisect import bisect_left
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from itertools import pairwise
from typing import Any

from planner.absence import Return
from planner.facts import Session
from planner.history import History
from planner.main_done import Exposure
from planner.plan import Reason
from planner.slots import Slot

KEPT_DAYS = 200  # walks that end longer ago are neither kept nor looked for: longer than any two blocks in use
DAY = timedelta(days=1)


@dataclass(frozen=True, slots=True)
class Deload:
    """An early deload and why."""

    on: date
    reason: Reason


@dataclass(frozen=True, slots=True)
class Walked:
    """Where a walk stood on the first day of a block, and all that it had found. `taken`: sessions matched by then."""

    week_start: date
    block: int
    main: str
    grip_since: date
    retest: bool
    taken: int
    slots: Sequence[Slot]
    exposures: Sequence[Exposure]
    early: Sequence[Deload]
    returns: Sequence[Return]
    by_day: Mapping[date, Slot]


@dataclass(frozen=True, slots=True)
class Course:
    """What a walk is given besides the record: its first day, the usual grip, where sessions moved to, and days missed
    by when said."""

    start: date
    usual: str
    moves: Mapping[date, date]
    missed: Mapping[date, date]

    def reached(self, week_start: date, week_days: int) -> date:
        """The first day that the walk up to `week_start` never asked for: two weeks on, and behind what was moved."""
        found = week_start + 2 * week_days * DAY
        while True:
            behind = max((moved_to for day, moved_to in self.moves.items() if day < found), default=found - DAY) + DAY
            if behind <= found:
                return found
            found = behind


def keep(history: History, course: Course, reached: date, walked: Walked) -> None:
    """Keep a walk with the newest session it took."""
    if not walked.taken:
        return
    keeper = history.trained[walked.taken - 1]
    looked_at = _looked_at(history, course, reached, keeper)
    if looked_at is None:
        return
    for session in _late(history):
        if session is not keeper:
            session.__dict__.pop("_walked", None)
    # Set as one, for other threads may ask the same session.
    keeper.__dict__["_walked"] = (reached, looked_at, walked)


def kept(history: History, course: Course) -> Walked | None:
    """The newest walk kept that goes on in this history, too."""
    for session in _late(history):
        found: tuple[date, tuple[Any, ...], Walked] | None = session.__dict__.get("_walked")
        if found is not None and found[0] <= history.on:
            reached, looked_at, walked = found
            if looked_at == _looked_at(history, course, reached, session):
                return walked
    return None


def _late(history: History) -> Sequence[Session]:
    """The sessions that may keep a walk, the newest first."""
    first = bisect_left(history.trained, history.on - KEPT_DAYS * DAY, key=lambda one: one.on)
    return history.trained[first:][::-1]


def _looked_at(history: History, course: Course, reached: date, keeper: Session) -> tuple[Any, ...] | None:
    """Everything that a walk depends on which asks for no day from `reached` on; None where that cannot be told.

    Without the session that keeps it, of which the place is told: a ring of references would wait for the collector.
    """
    athlete, record = history.athlete, history.record
    count = bisect_left(history.sessions, reached, key=lambda one: one.on)
    sessions = list(history.sessions[:count])
    place = next((at for at in range(count - 1, -1, -1) if sessions[at] is keeper), None)
    if place is None:
        return None
    del sessions[place]
    sent = record.sent_by_day
    sore, answers = history.pain.sore_before(reached), record.pain
    if sore and any(earlier.on > later.on for earlier, later in pairwise(answers)):
        return None  # what is said of a place depends on the order of arrival
    return (
        place,
        sessions,
        history.bodyweights[:count],
        [sent.get(one.on) for one in history.sessions[:count]],
        course.start,
        course.usual,
        {day: moved_to for day, moved_to in course.moves.items() if day < reached},
        {day: said_on for day, said_on in course.missed.items() if day < reached},
        [away for away in history.aways if away.since < reached],
        sore,
        # Where nothing was sore, no answer was looked at.
        answers[: bisect_left(answers, reached, key=lambda one: one.on)] if sore else (),
        [(order.kind, order.on, order.for_date) for order in record.orders if order.kind in ("restart", "deload")],
        record.equipment,
        athlete.equipment,
        athlete.schedule,
        history.rules,
    )
