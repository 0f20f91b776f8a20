"""Sets in the making, and one exercise's facts as they go into the fold and come out of it."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, field

from bot.reading.facts import Fact
from bot.reading.reading import Ask

MOST_TIMES = 4  # so many times the reps of before are no change of them
PAUSES = ("top", "middle", "bottom")


@dataclass
class Row:
    """One set in the making. load_kg None: not said (0 in the end)."""

    reps: int | None = None
    hold_s: float | None = None
    load_kg: float | None = None
    assist_kg: float | None = None
    rpe: float | None = None
    side: str | None = None
    rom: str | None = "full"
    eccentric: bool = False
    pauses: tuple[str, ...] = ()
    failed: bool = False
    linked: bool = False
    label: str | None = None
    movement: str | None = None
    part: str | None = None
    load_open: bool = False  # asked: stays None
    touched: bool = False  # changed by a clause that named it
    group: int = 0


@dataclass
class Block:
    """One movement with the facts told of it."""

    movement: str | None
    facts: list[Fact]
    one_sided: bool = False
    hold: bool = False
    loadable: bool = True  # False: only bodyweight makes sense beside "@"
    planned_kg: frozenset[float | None] = frozenset()  # the loads that the day's plan has of it
    base: list[Row] | None = None  # the plan's sets, when the message speaks of them
    move_at: int = 0
    rounds: int | None = None


@dataclass
class Folded:
    rows: list[Row]
    asks: list[Ask]
    efforts_open: list[tuple[float, int]] = field(default_factory=list)  # after the last set, in its own sentence
    early_effort: float | None = None
    effort_inside: bool = False


def change(rows: Sequence[Row], new: float, old: float, unit: str | None, to_kg: Callable[..., float]) -> None:
    """ "50 instead of 45": whichever value of the sets is the old one becomes the new one."""
    for row in rows:
        if unit is None and new > MOST_TIMES * old and row.reps == old:
            continue  # "4 at 30 instead of 3": no 30 reps
        if unit == "reps" or (
            unit is None and row.reps == old and not (row.load_kg and abs(row.load_kg - to_kg(old)) < 0.3)
        ):
            row.reps = int(new)
        elif unit == "sec" or (unit is None and row.hold_s == old):
            row.hold_s = float(new)
        elif unit in ("kg", "lb") or (row.load_kg is not None and abs(row.load_kg - to_kg(old)) < 0.3):
            row.load_kg = to_kg(new, unit if unit in ("kg", "lb") else None)
        elif row.assist_kg is not None and abs(row.assist_kg - to_kg(old)) < 0.3:
            row.assist_kg = to_kg(new)


def shift(row: Row, amount: float, kind: str, sign: int) -> None:
    """ "2.5 less", "one more rep"."""
    if kind == "load":
        if row.assist_kg:
            row.assist_kg = max(0.0, row.assist_kg + sign * amount)
        elif row.load_kg:
            row.load_kg = max(0.0, row.load_kg + sign * amount)
    elif kind == "reps" and row.reps is not None:
        row.reps = max(0, row.reps + sign * int(amount))
    elif kind == "hold" and row.hold_s is not None:
        row.hold_s = max(0.0, row.hold_s + sign * amount)
