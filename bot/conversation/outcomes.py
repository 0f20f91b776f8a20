"""What a move would come to: whether its session is there then, and what else goes elsewhere with it."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace
from datetime import date, timedelta

from bot.conversation import followups
from bot.conversation.desk import Desk
from bot.wording import Wording
from planner.facts import Absence, Move
from planner.view import View

BACK = timedelta(days=7)  # how far back a session can have been planned that is still ahead
FARTHEST = 6  # days between the day wished for and one that would fit


@dataclass(frozen=True)
class Outcome:
    """`besides`: the other sessions that are no longer where they were, and where they are then; None: left out."""

    fits: bool
    besides: tuple[tuple[date, date | None], ...]

    def besides_in_words(self, say: Wording) -> Iterator[str]:
        for was, on in self.besides:
            key = "moved-too" if on is not None else "moved-gone"
            yield say.say(key, since=say.day(was), until=say.day(on) if on is not None else "")


def outcome(desk: Desk, since: date, until: date, instead_of: Move | Absence | None = None) -> Outcome:
    """What moving the session of `since` to `until` would come to; nothing is moved.

    Args:
        instead_of: What was agreed before, and would not stand any more.
    """
    known, view = desk.record, desk.view
    if instead_of is not None:
        known = replace(
            known,
            moves=tuple(one for one in known.moves if one != instead_of),
            absences=tuple(one for one in known.absences if one != instead_of),
        )
        view = View(known, desk.today)
    before = _sessions(view)
    meant = next((planned for planned, on in before.items() if on == since), since)
    moves = sorted((*known.moves, Move(desk.said_on, since, until)), key=lambda one: one.said_on)
    moved = View(replace(known, moves=tuple(moves)), desk.today)
    after = _sessions(moved)
    besides = [
        (was, after.get(planned))
        for planned, was in before.items()
        if planned != meant and was is not None and after.get(planned) != was and planned in after
    ]
    return Outcome(after.get(meant) == until and bool(moved.plan(until).sets), tuple(besides))


def is_done(desk: Desk, day: date) -> bool:
    """Whether the session of a day was told of: on that day, or on the one where it was by then."""
    return any(followups.told_on(desk, on) for on in (day, _sessions(desk.view).get(day)) if on is not None)


def nearest_that_fits(desk: Desk, since: date, wished: date) -> date | None:
    """The day nearest to the one wished for to which the session of `since` can go; None where none is near."""
    for apart in range(1, FARTHEST + 1):
        for day in (wished + timedelta(days=apart), wished - timedelta(days=apart)):
            if day >= desk.today and day != since and not desk.plan(day).sets and outcome(desk, since, day).fits:
                return day
    return None


def _sessions(view: View) -> dict[date, date | None]:
    """Where the sessions of the days ahead are, by the day that they were planned for."""
    return {slot.planned_for: slot.on for slot in view.timeline.slots if slot.planned_for >= view.on - BACK}
