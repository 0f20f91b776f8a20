"""The block: weeks of sets x reps @ ceiling, from a TOML file with a checker."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from functools import lru_cache
from pathlib import Path
from typing import Any

from planner.datafile import DataError, DataFile, read

SHIPPED = Path(__file__).parent / "blocks"
DAY_KINDS = ("heavy", "volume", "light")
_KEYS = frozenset({"id", "days", "lengths", "week", "deload", "test", "warm_up", "accessories"})


@dataclass(frozen=True, slots=True)
class Work:
    """`sets` x `reps` at the effort ceiling `rpe`."""

    sets: int
    reps: int
    rpe: float


@dataclass(frozen=True, slots=True)
class Accessory:
    """`amount` is reps, or seconds of a hold."""

    movement: str
    sets: int
    amount: int
    rpe: float


@dataclass(frozen=True)
class Block:
    id: str
    days: Mapping[int, tuple[str, ...]]  # by pulling days a week: their kinds, in order
    lengths: Mapping[int, tuple[int, ...]]  # by loading weeks: which weeks of the table
    weeks: tuple[Mapping[str, Work], ...]
    deload: Work
    deload_skill_rpe: float
    test: Work
    test_rung_rpe: float
    warm_up: tuple[tuple[float, int], ...]  # share of the first working set's system load, reps
    accessories: Mapping[str, tuple[Accessory, ...]]

    def work(self, kind: str, week: int, loading_weeks: int) -> Work:
        """The main work of a day of `kind` in week `week` (from 1) of a block of `loading_weeks`."""
        return self.weeks[self.lengths[loading_weeks][week - 1] - 1][kind]


def load(path: Path) -> Block:
    """Read one block file.

    Raises:
        DataError: All that is wrong with the file, one line each with file, line and key.
    """
    file = read(path)
    errors = _errors(file)
    if errors:
        raise DataError("\n".join(errors))
    data = file.data
    warm = data["warm_up"]
    return Block(
        id=data["id"],
        days={int(count): tuple(kinds) for count, kinds in data["days"].items()},
        lengths={int(count): tuple(weeks) for count, weeks in data["lengths"].items()},
        weeks=tuple({kind: _work(raw[kind]) for kind in DAY_KINDS} for raw in data["week"]),
        deload=_work(data["deload"]["main"]),
        deload_skill_rpe=float(data["deload"]["skill_rpe"]),
        test=_work(data["test"]["main"]),
        test_rung_rpe=float(data["test"]["rung_rpe"]),
        warm_up=tuple(zip(warm["share"], warm["reps"], strict=True)),
        accessories={
            kind: tuple(Accessory(str(m), int(s), int(a), float(r)) for m, s, a, r in rows)
            for kind, rows in data["accessories"].items()
        },
    )


@lru_cache(maxsize=1)
def shipped() -> Block:
    """The block that comes with the house."""
    return load(SHIPPED / "four_plus_one.toml")


def _work(raw: list[Any]) -> Work:
    return Work(int(raw[0]), int(raw[1]), float(raw[2]))


def _errors(file: DataFile) -> list[str]:
    data = file.data
    errors = file.unknown_keys(data, _KEYS)
    errors += [f"{file.where(key)}: missing" for key in sorted(_KEYS - set(data))]
    if errors:
        return errors
    for index, raw in enumerate(data["week"]):
        errors += file.unknown_keys(raw, DAY_KINDS, "week", index)
        for kind in DAY_KINDS:
            if not _is_work(raw.get(kind)):
                errors.append(f"{file.where(kind, 'week', index)}: {raw.get(kind)!r} is no [sets, reps, RPE]")
    for table in ("deload", "test"):
        if not _is_work(data[table].get("main")):
            errors.append(f"{file.where('main', table)}: {data[table].get('main')!r} is no [sets, reps, RPE]")
    for count, weeks in data["lengths"].items():
        if not count.isdigit() or len(weeks) != int(count) or not all(1 <= week <= len(data["week"]) for week in weeks):
            errors.append(f"{file.where(count, 'lengths')}: must name {count} of the {len(data['week'])} weeks")
    for count, kinds in data["days"].items():
        if not count.isdigit() or len(kinds) != int(count) or not set(kinds) <= set(DAY_KINDS):
            errors.append(f"{file.where(count, 'days')}: must name {count} of {', '.join(DAY_KINDS)}")
    for kind, rows in data["accessories"].items():
        if not all(len(row) == 4 for row in rows):
            errors.append(f"{file.where(kind, 'accessories')}: a row is [movement, sets, reps or seconds, RPE]")
    return errors


def _is_work(raw: Any) -> bool:
    return (
        isinstance(raw, list)
        and len(raw) == 3
        and all(isinstance(n, (int, float)) for n in raw)
        and 1 <= raw[0] <= 10
        and 1 <= raw[1] <= 20
        and 5 <= raw[2] <= 10
    )
