"""What a review asks of every session, folded once and kept with it: five years of sets are not walked each time."""

from __future__ import annotations

from typing import NamedTuple

from planner.facts import Session, WorkSet
from planner.layout import Layout, layout_of


class Digest(NamedTuple):
    """`left`, `right`: one-arm-specific reps; a set without a side counts on both."""

    layout: Layout
    left: int
    right: int


def digest(session: Session) -> Digest:
    """The digest of a session; made when first asked for."""
    kept: Digest | None = session.__dict__.get("_digest")
    if kept is None:
        kept = _made(session)
        session.__dict__["_digest"] = kept
    return kept


def main_sets(session: Session) -> list[WorkSet]:
    """Full-range sets of the main lift's grips with at least a rep; the same one again in a row is left out."""
    sets, found, before = session.sets, list[WorkSet](), None
    for at in digest(session).layout.grips:
        work = sets[at]
        if work is not before and work.reps and work.rom == "full":
            found.append(work)
        before = work
    return found


def sets_in(session: Session, movement_id: str) -> list[WorkSet]:
    """A session's sets of one movement."""
    if movement_id not in digest(session).layout.movements:
        return []
    return [work for work in session.sets if work.movement == movement_id]


def _made(session: Session) -> Digest:
    left = right = 0
    sets = session.sets
    layout = layout_of(sets)
    for at in layout.arms:
        work = sets[at]
        if work.reps:
            left += work.reps if work.side != "right" else 0
            right += work.reps if work.side != "left" else 0
    return Digest(layout, left, right)
