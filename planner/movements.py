"""The catalogue of movements, from `movements.toml`: pattern, sides, load, joints, equipment, substitutes."""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from functools import cache
from pathlib import Path
from typing import Any

import tomli

CATALOGUE = Path(__file__).with_name("movements.toml")
_KEYS: Mapping[str, type | tuple[type, ...]] = {
    "pattern": str,
    "grip": str,
    "one_sided": bool,
    "one_arm": bool,
    "hold": bool,
    "bodyweight_share": (int, float),
    "measurable": bool,
    "loads": list,
    "needs": list,
    "substitutes": list,
}


class MovementError(ValueError):
    """The catalogue is wrong; the text names file, line and key."""


@dataclass(frozen=True, slots=True)
class Movement:
    """One movement.

    `bodyweight_share`: how much of the bodyweight is part of the system load, 0-1. `one_arm`: its reps are exposures.
    `measurable`: false where the load is not known well enough to estimate strength. `needs`: one set of alternatives
    for each thing needed. `loads`: joints, the values of `joint_of_site`.
    """

    id: str
    pattern: str
    grip: str | None = None
    one_sided: bool = False
    one_arm: bool = False
    hold: bool = False
    bodyweight_share: float = 1.0
    measurable: bool = True
    loads: frozenset[str] = frozenset()
    needs: tuple[frozenset[str], ...] = ()
    substitutes: tuple[str, ...] = ()

    def possible_with(self, equipment: Iterable[str]) -> bool:
        """Whether it can be done with this equipment."""
        has = frozenset(equipment)
        return all(alternatives & has for alternatives in self.needs)

    def loads_site(self, site: str | None) -> bool:
        """Whether a painful `site` is loaded by it. A site that is unnamed or "other" counts as loaded by all."""
        joint = joint_of(site)
        return joint is None or joint in self.loads


def movement(movement_id: str) -> Movement:
    """The movement with this id. Ids that a coach added are unknown here and get a cautious stand-in: two-sided, no
    bodyweight in the load, no estimate of strength, every arm joint loaded."""
    return catalogue().get(movement_id) or Movement(
        movement_id, "other", bodyweight_share=0.0, measurable=False, loads=frozenset({"elbow", "wrist", "shoulder"})
    )


def is_known(movement_id: str) -> bool:
    return movement_id in catalogue()


@cache
def catalogue() -> Mapping[str, Movement]:
    """Every movement of `movements.toml`, by id, in its order."""
    return _read_default()[0]


def joint_of(site: str | None) -> str | None:
    """The joint of a pain site (ids of the reading contract); None where the site tells no joint."""
    joint = None if site is None else _read_default()[1].get(site)
    return None if joint == "other" else joint


def closest_possible(movement_id: str, equipment: Iterable[str], excluded: Iterable[str] = ()) -> str | None:
    """The movement itself, or the closest substitute that the equipment allows; None where there is none.

    Substitutes of substitutes are looked at too, nearest first.
    """
    has, never = frozenset(equipment), frozenset(excluded)
    line, seen = [movement_id], {movement_id}
    for candidate in line:
        found = movement(candidate)
        if candidate not in never and found.possible_with(has):
            return candidate
        line.extend(name for name in found.substitutes if name not in seen)
        seen.update(found.substitutes)
    return None


@cache
def _read_default() -> tuple[Mapping[str, Movement], Mapping[str, str]]:
    return read(CATALOGUE.read_text(encoding="utf-8"), CATALOGUE.name)


def read(text: str, file: str) -> tuple[dict[str, Movement], dict[str, str]]:
    """Movements and the joint of each pain site, from TOML text; `file` is named in errors.

    Raises:
        MovementError: File, line, movement and key of the first thing that is wrong.
    """
    try:
        data = tomli.loads(text)
    except tomli.TOMLDecodeError as error:
        raise MovementError(f"{file}: {error}") from error
    joints = data.get("joint_of_site", {})
    found: dict[str, Movement] = {}
    for name, table in data.get("movement", {}).items():
        try:
            found[name] = _movement(name, table, frozenset(joints.values()))
        except MovementError as error:
            raise MovementError(f"{file}, line {_line_of(text, name)}: {error}") from None
    for name, made in found.items():
        for other in made.substitutes:
            if other not in found:
                raise MovementError(f"{file}, line {_line_of(text, name)}: {name}: no movement {other!r} to substitute")
    return found, joints


def _movement(name: str, table: Mapping[str, Any], joints: frozenset[str]) -> Movement:
    for key, value in table.items():
        if key not in _KEYS:
            raise MovementError(f"{name}: unknown key {key!r}")
        if not isinstance(value, _KEYS[key]):
            raise MovementError(f"{name}: {key!r} has the wrong kind of value")
    if "pattern" not in table:
        raise MovementError(f"{name}: 'pattern' is missing")
    share = float(table.get("bodyweight_share", 1.0))
    if not 0.0 <= share <= 1.0:
        raise MovementError(f"{name}: 'bodyweight_share' must be from 0 to 1")
    loads = frozenset(table.get("loads", ()))
    if not loads <= joints:
        raise MovementError(f"{name}: 'loads' names an unknown joint: {', '.join(sorted(loads - joints))}")
    plain = {
        key: table[key] for key in ("pattern", "grip", "one_sided", "one_arm", "hold", "measurable") if key in table
    }
    return Movement(
        id=name,
        bodyweight_share=share,
        loads=loads,
        needs=tuple(frozenset(need.split("|")) for need in table.get("needs", ())),
        substitutes=tuple(table.get("substitutes", ())),
        **plain,
    )


def _line_of(text: str, name: str) -> int:
    match = re.search(rf"^\[movement\.{re.escape(name)}\]", text, re.MULTILINE)
    return text.count("\n", 0, match.start()) + 1 if match else 1
