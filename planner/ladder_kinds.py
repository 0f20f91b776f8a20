"""What each key of a ladder file holds. Looked at before what it means, which can then rely on it."""

from __future__ import annotations

import math
from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass
from typing import Any, Literal, get_args

from planner import movements, rules
from planner.facts import Pause, Rom

Work = Literal["volume", "main", "skill", "hold"]
GateKind = Literal[
    "sets_shown",  # `sets` sets of `movement` with `want` reps each in one session
    "reps_shown",  # one set of `movement` with `want` reps at bodyweight
    "hold_shown",  # one hold of `movement` of `want` seconds
    "relative_added",  # relative added 1RM of the main lift
    "held",  # the rung before done at `sets` x `want` (or harder) within its ceiling
    "shown_either",  # `want` reps a side in one of the movements `of`
]
Joint = Literal["elbow", "shoulder", "wrist"]
Pattern = Literal["pull", "push", "lever", "legs", "trunk"]
MOST = 30  # sets, and repetitions of a set


@dataclass(frozen=True)
class Kind:
    """`words` finish the sentence "… should be"."""

    words: str
    holds: Callable[[Any], bool]


def _is_number(value: Any) -> bool:
    return isinstance(value, (int, float)) and not isinstance(value, bool) and math.isfinite(value) and value >= 0


def _is_count(value: Any) -> bool:
    return isinstance(value, int) and _is_number(value)


def _is_table(value: Any) -> bool:
    return isinstance(value, Mapping)


def _is_few(value: Any) -> bool:
    return _is_count(value) and value <= MOST


def _is_number_or_rule(value: Any) -> bool:
    return _is_number(value) or (isinstance(value, str) and value in rules.catalogue())


def _list_of(kind: Kind) -> Kind:
    def holds(value: Any) -> bool:
        return isinstance(value, list) and all(kind.holds(one) for one in value)

    return Kind(f"a list of {kind.words}", holds)


def _one_of(literal: Any) -> Kind:
    return Kind(f"one of {', '.join(get_args(literal))}", lambda value: value in get_args(literal))


def _at_least_one(kind: Kind) -> Kind:
    return Kind(f"{kind.words}, with one at least", lambda value: kind.holds(value) and value != [])


def _table(needed: Mapping[str, Kind], more: Mapping[str, Kind]) -> Kind:
    kinds = {**needed, **more}

    def holds(value: Any) -> bool:
        return (
            _is_table(value)
            and set(needed) <= set(value)
            and all(key in kinds and kinds[key].holds(one) for key, one in value.items())
        )

    told = [f"{key} = {kind.words}" for key, kind in kinds.items()]
    return Kind(f"a table with {', '.join(told)}", holds)


TEXT = Kind("a word in quotes", lambda value: isinstance(value, str) and value != "")
FLAG = Kind("true or false", lambda value: isinstance(value, bool))
NUMBER = Kind("a number", _is_number)
COUNT = Kind("a whole number", _is_count)
AIM = Kind("a number or the name of a rule", _is_number_or_rule)
MOVEMENT = Kind("a movement of the catalogue", lambda value: isinstance(value, str) and movements.is_known(value))
TEXTS = _list_of(TEXT)
ROM = _one_of(Rom)
TABLES = Kind("tables, each begun by [[rung]]", _list_of(Kind("a table", _is_table)).holds)
DOSE = Kind("[sets, reps]", lambda value: isinstance(value, list) and len(value) == 2 and all(map(_is_few, value)))
DOSES = _at_least_one(_list_of(DOSE))
VARIANTS = _list_of(_table({}, {"pauses": _list_of(_one_of(Pause)), "load_kg": NUMBER}))
PROOF = _table({}, {"reps": COUNT, "hold_s": AIM, "smallest_plate": FLAG, "max_assist_share": AIM})
SHOWN = _table({"movement": MOVEMENT}, {"max_assist_kg": NUMBER})
GATES = _list_of(
    _table({"kind": _one_of(GateKind), "want": AIM}, {"movement": MOVEMENT, "sets": COUNT, "of": _list_of(SHOWN)})
)
OTHER_DAY = _table({"movement": MOVEMENT, "rom": ROM}, {})

LADDER = {
    "id": TEXT,
    "pattern": _one_of(Pattern),
    "joints": _list_of(_one_of(Joint)),
    "doses": DOSES,
    "variants": VARIANTS,
    "rung": TABLES,
}
RUNG = {
    "id": TEXT,
    "work": _one_of(Work),
    "movement": MOVEMENT,
    "rom": ROM,
    "roms": _at_least_one(_list_of(ROM)),
    "one_sided": FLAG,
    "alternative": FLAG,
    "next": TEXTS,
    "proof": PROOF,
    "gates": GATES,
    "doses": DOSES,
    "variants": VARIANTS,
    "other_day": OTHER_DAY,
}


def misfits(data: Mapping[str, Any], kinds: Mapping[str, Kind]) -> Iterator[tuple[str, str]]:
    """Each key that holds something else than it should, with the sentence."""
    for key, value in data.items():
        if key in kinds and not kinds[key].holds(value):
            yield key, f"{value!r} should be {kinds[key].words}"
