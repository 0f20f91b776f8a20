"""What a review asks of every session, folded once and kept with it: five years of sets are not walked each time."""

from __future__ import annotations

from dataclasses import dataclass

from planner.facts import Session, WorkSet
from planner.movements import movement

GRIPS = ("pull_up", "chin_up", "neutral_grip_pull_up", "ring_pull_up")
PULLS = frozenset({"vertical_pull", "horizontal_pull", "lever"})


@dataclass(frozen=True, slots=True)
class Digest:
    """`left`, `right`: one-arm-specific reps; a set without a side counts on both. `main`: full-range sets of the main
    lift's grips with at least a rep. `loaded`: weight was hung on. `movements`: all that was done."""

    pulls: bool
    left: int
    right: int
    main: tuple[WorkSet, ...]
    loaded: bool
    movements: frozenset[str]


def digest(session: Session) -> Digest:
    """The digest of a session; made when first asked for."""
    kept: Digest | None = session.__dict__.get("_digest")
    if kept is None:
        kept = _made(session)
        session.__dict__["_digest"] = kept
    return kept


def _made(session: Session) -> Digest:
    left = right = 0
    names = frozenset(work.movement for work in session.sets)
    arms = {name for name in names if movement(name).one_arm}
    if arms:
        for work in session.sets:
            if work.movement in arms and work.reps:
                left += work.reps if work.side != "right" else 0
                right += work.reps if work.side != "left" else 0
    main = tuple(work for work in session.sets if work.movement in GRIPS and work.reps and work.rom == "full")
    pulls = any(movement(name).pattern in PULLS for name in names)
    return Digest(pulls, left, right, main, any(work.load_kg > 0 for work in main), names)
