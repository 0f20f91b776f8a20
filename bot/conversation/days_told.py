"""What was told of a day: as one, be it in one report or set by set."""

from __future__ import annotations

from dataclasses import replace
from datetime import date

from planner.facts import Record, Session


def newest(known: Record, most: int) -> list[Session]:
    """The last days with sets that were told of, the newest last; tests from the roster are none."""
    days: dict[date, Session] = {}
    for one in known.sessions:
        if one.sets and not one.is_test:
            before = days.get(one.on)
            days[one.on] = one if before is None else replace(before, sets=(*before.sets, *one.sets))
    return [days[on] for on in sorted(days)][-most:]


def is_one_set(session: Session) -> bool:
    """Whether a session is one set of one movement, a side."""
    sides = [work.side for work in session.sets]
    return len({work.movement for work in session.sets}) == 1 and len(set(sides)) == len(sides)
