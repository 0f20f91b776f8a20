"""A fact is one thing said: three sets of five, a load, an effort, a side, which set is meant.

`scan` makes facts of a message's items, `fold` makes sets of facts.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Any, Literal

FREE_WEIGHTS = frozenset({"squat", "row", "lat_pulldown", "split_squat", "biceps_curl", "hammer_curl"})  # never without
NO_PAUSE = "no_pause"  # a flag: these sets are said to have none
# a belt is hung on these: a lone number may be its kilograms
LOADED = frozenset("pull_up chin_up neutral_grip_pull_up ring_pull_up dip ring_dip muscle_up".split())

FactKind = Literal[
    "rows",  # value: list[Entry]: these sets
    "bare",  # value: one number, meaning open
    "loads",  # value: list of kg, one a set
    "efforts",  # value: list of efforts, one a set
    "count",  # value: so many sets, of what is not said
    "load",  # value: kg; None: asked
    "at",  # "@ 8": load or effort; value (number, kg)
    "percent",  # of bodyweight
    "assist",  # kg
    "effort",  # value: rpe
    "effort_range",  # value: (low, high)
    "scope",  # value: which sets the next fact is about
    "side",  # value: left, right, each, other, unclear
    "flag",  # value: eccentric, upper_half, lower_half, half, pause_top…
    "fail",  # value: None, or the ordinal
    "link",  # value: cluster, drop, straight
    "scheme",  # value: name
    "rounds",  # value: so many times
    "repeat",  # value: "twice"
    "instead",  # value: (new, old, unit)
    "step",  # kg by which the load changes from set to set
    "delta",  # value: (amount, unit, sign)
    "plan",  # value: done, planned, same…
    "move",  # value: Mention
    "weighted",
    "last_rep",
    "vague",  # "a few sets"
    "thing",  # a vest, chains: a load without a number
    "mend",  # what follows replaces what came before
    "sep",  # value: how strongly it parts (bounds.py)
    "claim",
    "word",
    "left",  # a number that nothing took
    "ask",  # value: the field; cannot be read safely
]


@dataclass
class Entry:
    """Reps or a hold of one set, with what is tied to it so closely that nothing else can have it."""

    reps: int | None = None
    hold_s: float | None = None
    load_kg: float | None = None
    side: str | None = None
    ask: str | None = None


@dataclass
class Fact:
    kind: FactKind
    start: int
    end: int
    value: Any = None
    note: dict[str, Any] = field(default_factory=dict)
