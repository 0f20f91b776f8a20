"""Ladders: the rungs of a skill as a graph, read from TOML files that a coach can write themselves.

A rung says what work it is, when its test may be tried (gates), what the test must show before it is programmed
(proof), and how the dose grows from block to block (steps). Numbers may be names of rules (`rules.toml`), so that they
can be set for one athlete.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from functools import cached_property, lru_cache
from pathlib import Path
from typing import Any

from planner.datafile import DataError, DataFile, read
from planner.facts import Pause, Rom
from planner.ladder_kinds import LADDER, RUNG, GateKind, Work, misfits
from planner.movements import movement

Number = float | str  # a value, or the name of a rule
SHIPPED = Path(__file__).parent / "ladders"


@dataclass(frozen=True)
class Shown:
    movement: str
    max_assist_kg: float | None = None


@dataclass(frozen=True)
class GateRule:
    kind: GateKind
    want: Number
    movement: str | None = None
    sets: int = 1
    of: tuple[Shown, ...] = ()


@dataclass(frozen=True)
class Proof:
    """What a test must show, on each side where the work is one-sided. Shares are of bodyweight."""

    reps: int | None = None
    hold_s: Number | None = None
    smallest_plate: bool = False
    max_assist_share: Number | None = None


@dataclass(frozen=True)
class OtherDay:
    """What replaces the rung on the week's other day: the other half of the range, or an earlier rung."""

    movement: str
    rom: Rom


@dataclass(frozen=True)
class Step:
    """One dose: sets a side, reps a set (0 for holds), and what makes it harder."""

    sets: int
    reps: int
    rom: Rom
    pauses: tuple[Pause, ...] = ()
    load_kg: float = 0.0

    @property
    def is_variant(self) -> bool:
        return bool(self.pauses) or self.load_kg > 0

    @property
    def label(self) -> str:
        """As in "2x1 pause top": for people who know the trade, in every language."""
        extra = ["half" if self.rom != "full" else ""]
        extra += ["pause " + "+".join(self.pauses)] if self.pauses else []
        extra += [f"+{self.load_kg:g} kg"] if self.load_kg else []
        dose = f"{self.sets}x{self.reps}" if self.reps else f"{self.sets} holds"
        return " ".join([dose, *filter(None, extra)])


@dataclass(frozen=True)
class Rung:
    id: str
    work: Work
    movement: str
    rom: Rom
    one_sided: bool
    alternative: bool
    next: tuple[str, ...]
    gates: tuple[GateRule, ...]
    proof: Proof
    steps: tuple[Step, ...]
    other_day: OtherDay | None


@dataclass(frozen=True)
class Ladder:
    id: str
    pattern: str
    joints: frozenset[str]
    rungs: tuple[Rung, ...]

    @cached_property
    def by_id(self) -> Mapping[str, Rung]:
        return {rung.id: rung for rung in self.rungs}

    @cached_property
    def order(self) -> Mapping[str, int]:
        return {rung.id: index for index, rung in enumerate(self.rungs)}

    @cached_property
    def main_rung(self) -> Rung | None:
        """The rung that is the main lift, if the ladder has one."""
        return next((rung for rung in self.rungs if rung.work == "main"), None)

    def before(self, rung_id: str) -> Rung | None:
        """The rung that leads here on the usual way; None on the first."""
        leading = [rung for rung in self.rungs if rung_id in rung.next]
        return next((rung for rung in leading if not rung.alternative), leading[0] if leading else None)

    def after(self, rung_id: str, has: frozenset[str], excluded: frozenset[str] = frozenset()) -> Rung | None:
        """The next rung that the equipment allows and no order excludes; None at the top or where nothing fits."""
        for name in self.by_id[rung_id].next:
            rung = self.by_id[name]
            if rung.movement not in excluded and movement(rung.movement).possible_with(has):
                return rung
        return None


def load(path: Path) -> Ladder:
    """Read one ladder file.

    Raises:
        DataError: All that is wrong with the file, one line each with file, line and key.
    """
    file = read(path)
    errors = _errors(file)
    if errors:
        raise DataError("\n".join(errors))
    return _ladder(file.data)


def check(path: Path) -> list[str]:
    """All that is wrong with a ladder file, each with file, line and key; empty when it can be used."""
    try:
        load(path)
    except DataError as error:
        return str(error).splitlines()
    return []


@lru_cache(maxsize=1)
def shipped() -> Mapping[str, Ladder]:
    """The ladders that come with the house, by id."""
    found = [load(path) for path in sorted(SHIPPED.glob("*.toml"))]
    return {ladder.id: ladder for ladder in found}


_own: dict[str, Ladder] = {}


def add_own(folder: Path) -> list[str]:
    """Let rosters name the ladders of a folder as well. Once, as the program starts; no folder: nothing to add.

    Gives what is wrong with the files, one line each; those are left out, and so is an id that is taken.
    """
    problems = []
    for path in sorted(folder.glob("*.toml")):
        try:
            ladder = load(path)
        except DataError as error:
            problems += str(error).splitlines()
            continue
        if ladder.id in known() and known()[ladder.id] != ladder:
            problems.append(f"{path.name}: id: there is a ladder {ladder.id!r} already")
            continue
        _own[ladder.id] = ladder
    return problems


def known() -> Mapping[str, Ladder]:
    """The shipped ladders and the coach's own, by id."""
    return {**shipped(), **_own} if _own else shipped()


def get(ladder_id: str) -> Ladder:
    """The ladder of that id.

    Raises:
        KeyError: There is none.
    """
    return known()[ladder_id]


def _ladder(data: Mapping[str, Any]) -> Ladder:
    doses, variants = data.get("doses", [[2, 1]]), data.get("variants", [])
    rungs = tuple(_rung(raw, raw.get("doses", doses), raw.get("variants", variants)) for raw in data["rung"])
    return Ladder(data["id"], data["pattern"], frozenset(data["joints"]), rungs)


def _rung(raw: Mapping[str, Any], doses: list[list[int]], variants: list[Mapping[str, Any]]) -> Rung:
    roms: list[Rom] = raw.get("roms", [raw.get("rom", "full")])
    steps = [Step(sets, reps, rom) for rom in roms for sets, reps in doses]
    if raw["work"] == "skill":
        steps += [
            Step(doses[0][0], doses[0][1], roms[-1], tuple(v.get("pauses", ())), float(v.get("load_kg", 0)))
            for v in variants
        ]
    other = raw.get("other_day")
    return Rung(
        id=raw["id"],
        work=raw["work"],
        movement=raw["movement"],
        rom=roms[0],
        one_sided=raw.get("one_sided", False),
        alternative=raw.get("alternative", False),
        next=tuple(raw.get("next", ())),
        gates=tuple(_gate(gate) for gate in raw.get("gates", ())),
        proof=Proof(**raw.get("proof", {})),
        steps=tuple(steps),
        other_day=OtherDay(other["movement"], other["rom"]) if other else None,
    )


def _gate(raw: Mapping[str, Any]) -> GateRule:
    of = tuple(Shown(item["movement"], item.get("max_assist_kg")) for item in raw.get("of", ()))
    return GateRule(raw["kind"], raw["want"], raw.get("movement"), raw.get("sets", 1), of)


def _errors(file: DataFile) -> list[str]:
    data = file.data
    errors = file.unknown_keys(data, LADDER)
    errors += [f"{file.where(key)}: missing" for key in ("id", "pattern", "joints", "rung") if key not in data]
    errors += [f"{file.where(key)}: {why}" for key, why in misfits(data, LADDER)]
    if errors:
        return errors
    ids = [raw.get("id") for raw in data["rung"]]
    for index, raw in enumerate(data["rung"]):
        errors += _rung_errors(file, raw, index, ids)
    return errors or _graph_errors(file, data["rung"])


def _rung_errors(file: DataFile, raw: Mapping[str, Any], index: int, ids: list[Any]) -> list[str]:
    def at(key: str | None) -> str:
        return file.where(key, "rung", index)

    errors = file.unknown_keys(raw, RUNG, "rung", index)
    errors += [f"{at(key)}: missing" for key in ("id", "work", "movement") if key not in raw]
    errors += [f"{at(key)}: {why}" for key, why in misfits(raw, RUNG)]
    if errors:
        return errors
    if ids.count(raw["id"]) > 1:
        errors.append(f"{at('id')}: {raw['id']!r} is given twice")
    errors += [f"{at('next')}: no rung {name!r} in this file" for name in raw.get("next", ()) if name not in ids]
    return errors


def _graph_errors(file: DataFile, rungs: list[Mapping[str, Any]]) -> list[str]:
    """Only forward: a rung leads to later ones, and every rung but the first is led to."""
    place = {raw["id"]: index for index, raw in enumerate(rungs)}
    errors = [
        f"{file.where('next', 'rung', index)}: {name!r} stands before {raw['id']!r}; a ladder leads upward"
        for index, raw in enumerate(rungs)
        for name in raw.get("next", ())
        if place[name] <= index
    ]
    led_to = {name for raw in rungs for name in raw.get("next", ())}
    errors += [
        f"{file.where('id', 'rung', index)}: no rung leads to {raw['id']!r}"
        for index, raw in enumerate(rungs)
        if index and raw["id"] not in led_to
    ]
    return errors
