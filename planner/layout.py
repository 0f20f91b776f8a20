"""Which of a session's sets matter for what, as far as the movements alone tell.

People do the same movements in the same order for years, so it is worked out once for each such row of movements, and
a review looks only at the sets that can say something.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence, Set
from functools import cache, lru_cache
from typing import NamedTuple

from planner.facts import PlannedSet, Side, WorkSet
from planner.movements import catalogue, movement

SIDES: tuple[Side, Side] = ("left", "right")
GRIPS = ("pull_up", "chin_up", "neutral_grip_pull_up", "ring_pull_up")
Key = tuple[str, Side | None]
PULLS = frozenset({"vertical_pull", "horizontal_pull", "lever"})
_GRIPS = frozenset(GRIPS)


class Lift(NamedTuple):
    """What a movement lifts: its share of the bodyweight. `helped`: its load is known only with an assistance told.
    `keys`: what it is measured as, by side."""

    share: float
    helped: bool
    keys: Mapping[Side | None, Key]


class Layout(NamedTuple):
    """Places in a session's sets: `arms` of one-arm-specific work, `grips` of the main lift's movements, `lifts` of
    sets of one movement in a row that can say something of a 1RM. `pulls`: whether any of the movements is a pull."""

    movements: frozenset[str]
    pulls: bool
    arms: tuple[int, ...]
    grips: tuple[int, ...]
    lifts: tuple[tuple[slice, Lift], ...]


def layout_of(sets: Sequence[WorkSet | PlannedSet]) -> Layout:
    return _layout(tuple([work.movement for work in sets]))


@lru_cache(maxsize=1024)
def lift_of(name: str) -> Lift | None:
    """None where a movement's load is not known well enough to say anything of a 1RM; a band's is where it is told."""
    found = movement(name)
    if not found.measurable and name != "band_pull_up":
        return None
    keys = {side: (name, side) for side in (None, *SIDES)}
    return Lift(found.bodyweight_share, not found.measurable, keys)


@lru_cache(maxsize=4096)
def _layout(names: tuple[str, ...]) -> Layout:
    pulling, one_arm = _known()
    movements = frozenset(names)
    return Layout(
        movements,
        not pulling.isdisjoint(movements),
        _places(names, movements & one_arm),
        _places(names, movements & _GRIPS),
        tuple(_lifts(names)),
    )


def _places(names: Sequence[str], wanted: Set[str]) -> tuple[int, ...]:
    return tuple([at for at, name in enumerate(names) if name in wanted]) if wanted else ()


def _lifts(names: Sequence[str]) -> Iterator[tuple[slice, Lift]]:
    start, before = 0, None
    for at, name in enumerate((*names, None)):
        if name != before:
            lift = None if before is None else lift_of(before)
            if lift is not None:
                yield slice(start, at), lift
            start, before = at, name


@cache
def _known() -> tuple[frozenset[str], frozenset[str]]:
    """The movements that pull, and those whose reps are exposures of one arm; one that nobody knows is neither."""
    known = catalogue().values()
    return (
        frozenset(one.id for one in known if one.pattern in PULLS),
        frozenset(one.id for one in known if one.one_arm),
    )
