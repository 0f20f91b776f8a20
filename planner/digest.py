"""What a review asks of every session, folded once and kept with it: five years of sets are not walked each time."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache

from planner.facts import Session, WorkSet
from planner.movements import catalogue

GRIPS = ("pull_up", "chin_up", "neutral_grip_pull_up", "ring_pull_up")
_GRIPS = frozenset(GRIPS)
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
    sets = session.sets
    names = frozenset([work.movement for work in sets])
    pulling, one_arm = _known()
    arms = names & one_arm
    if arms:
        for work in sets:
            if work.movement in arms and work.reps:
                left += work.reps if work.side != "right" else 0
                right += work.reps if work.side != "left" else 0
    main: tuple[WorkSet, ...] = ()
    if not names.isdisjoint(_GRIPS):
        main = tuple([work for work in sets if work.movement in _GRIPS and work.reps and work.rom == "full"])
    loaded = bool(main) and max([work.load_kg for work in main]) > 0
    return Digest(not names.isdisjoint(pulling), left, right, main, loaded, names)


@cache
def _known() -> tuple[frozenset[str], frozenset[str]]:
    """The movements that pull, and those whose reps are exposures of one arm; one that nobody knows is neither."""
    known = catalogue().values()
    return (
        frozenset(one.id for one in known if one.pattern in PULLS),
        frozenset(one.id for one in known if one.one_arm),
    )
