"""Which of a session's sets matter for what, as far as the movements alone tell.

People do the same movements in the same order for years, so it is worked out once for each such row of movements, and
a review looks only at the sets that can say something.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from functools import cache, lru_cache
from itertools import groupby
from typing import NamedTuple

from planner.facts import PlannedSet, Side, WorkSet
from planner.movements import catalogue, movement

GRIPS = ("pull_up", "chin_up", "neutral_grip_pull_up", "ring_pull_up")
Key = tuple[str, Side | None]
PULLS = frozenset({"vertical_pull", "horizontal_pull", "lever"})
_GRIPS = frozenset(GRIPS)


class Lift(NamedTuple):
    """What a movement lifts: its share of the bodyweight. `helped`: its load is known only with an assistance told."""

    share: float
    helped: bool


class Run(NamedTuple):
    """Sets of one movement in a row: their places, what they lift, and what they are measured as by side."""

    places: slice
    share: float
    helped: bool
    keys: Mapping[Side | None, Key]


class Layout(NamedTuple):
    """Places in a session's sets: `of` each movement, `arms` of one-arm-specific work, `grips` of the main lift's
    movements, `lifts` of those that can say something of a 1RM. `pulls`: whether any of the movements is a pull."""

    of: Mapping[str, tuple[int, ...]]
    pulls: bool
    arms: tuple[int, ...]
    grips: tuple[int, ...]
    lifts: tuple[Run, ...]


def layout_of(sets: Sequence[WorkSet | PlannedSet]) -> Layout:
    return _layout(tuple([work.movement for work in sets]))


@lru_cache(maxsize=1024)
def lift_of(name: str) -> Lift | None:
    """None where a movement's load is not known well enough to say anything of a 1RM; a band's is where it is told."""
    found = movement(name)
    helped = not found.measurable
    return Lift(found.bodyweight_share, helped) if found.measurable or name == "band_pull_up" else None


@lru_cache(maxsize=4096)
def _layout(names: tuple[str, ...]) -> Layout:
    pulling, one_arm = _known()
    return Layout(
        {name: tuple([at for at, other in enumerate(names) if other == name]) for name in dict.fromkeys(names)},
        not pulling.isdisjoint(names),
        tuple([at for at, name in enumerate(names) if name in one_arm]),
        tuple([at for at, name in enumerate(names) if name in _GRIPS]),
        tuple(_lifts(names)),
    )


def _lifts(names: Sequence[str]) -> Iterator[Run]:
    end = 0
    for name, those in groupby(names):
        start, end = end, end + len(list(those))
        lift = lift_of(name)
        if lift is not None:
            yield Run(slice(start, end), *lift, {side: (name, side) for side in (None, "left", "right")})


@cache
def _known() -> tuple[frozenset[str], frozenset[str]]:
    """The movements that pull, and those whose reps are exposures of one arm; one that nobody knows is neither."""
    known = catalogue().values()
    return (
        frozenset(one.id for one in known if one.pattern in PULLS),
        frozenset(one.id for one in known if one.one_arm),
    )
