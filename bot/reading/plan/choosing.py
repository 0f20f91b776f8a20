"""Which sets of the plan are meant: by scope, by count, by reps, or the main lift's."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TypeVar

from bot.reading.facts import Fact
from bot.reading.fold.rows import Row

T = TypeVar("T")


def main_rows(rows: Sequence[Row]) -> list[int]:
    """The sets that a message means which names no movement: the main lift's, else the first that is no warm-up."""
    for parts in (("main",), ("skill",), ("accessory",), ("warm_up",)):
        inside = [i for i, row in enumerate(rows) if row.part in parts]
        if inside:
            first = rows[inside[0]].movement
            return [i for i in inside if rows[i].movement == first]
    return list(range(len(rows)))


def pick(rows: Sequence[Row], targets: list[int], scope: object) -> list[int]:
    """The rows among `targets` that a scope means."""
    if isinstance(scope, tuple) and scope[0] == "of_reps":  # "single 4", where several are planned
        reps, nth = scope[1]
        return [at for at in targets if rows[at].reps == reps][nth - 1 : nth]
    paired = len(targets) > 1 and {rows[targets[0]].side, rows[targets[1]].side} == {"left", "right"}
    step = 2 if paired else 1
    if not isinstance(scope, str) and paired:
        pairs = [targets[at : at + 2] for at in range(0, len(targets), 2)]
        return [at for pair in _of_list(pairs, scope) for at in pair]
    if scope == "last":
        return targets[-step:]
    if scope == "first":
        return targets[:step]
    if scope in ("top", "back"):
        return _by_weight(rows, targets, scope == "top")
    return _of_list(targets, scope)


def _by_weight(rows: Sequence[Row], targets: list[int], top: bool) -> list[int]:
    """The top set, or the back-offs behind it; none where the plan's sets are all as heavy. An only set is the top."""
    if len(targets) == 1:
        return targets if top else []
    loads = [(rows[at].load_kg or 0.0) - (rows[at].assist_kg or 0.0) for at in targets]
    if not loads or min(loads) == max(loads):
        return []
    first = loads.index(max(loads))
    if top:
        return [at for at, load in zip(targets, loads, strict=True) if load == max(loads)]
    return [at for at, load in zip(targets, loads, strict=True) if load < max(loads) and at > targets[first]]


def _of_list(targets: list[T], scope: object) -> list[T]:
    """The ones of a list that a scope means by number."""
    if isinstance(scope, tuple) and scope[0] == "these":
        return [targets[at - (at > 0)] for at in scope[1] if -1 <= at <= len(targets) and at]
    if isinstance(scope, tuple) and scope[0] == "from":
        return targets[scope[1] - 1 :]
    if isinstance(scope, tuple) and scope[0] == "back":
        return targets[1:][-1:] if scope[1] < 0 else targets[scope[1] : scope[1] + 1]
    if isinstance(scope, tuple):
        return targets[: scope[1]] if scope[0] == "first" else targets[-scope[1] :]
    if isinstance(scope, int):
        return targets[scope - 1 : scope] if scope > 0 else []
    return targets


def addressed(base: Sequence[Row], scope: object, side: str | None) -> list[Row]:
    """The rows of `base` that a scope and a side mean; empty: the plan has none such."""
    own = [row for row in base if side is None or row.side == side]
    if scope is None:
        return own
    return [own[at] for at in pick(own, list(range(len(own))), scope)]


def counted_rows(rows: Sequence[Row], n: int) -> list[int]:
    """The sets of the movement that has n of them in the plan."""
    names = dict.fromkeys([rows[at].movement for at in main_rows(rows)] + [row.movement for row in rows])
    for name in names:
        own = [i for i, row in enumerate(rows) if row.movement == name]
        if len(own) == n or len(own) == 2 * n:
            return own
    return []


def the_rows(rows: Sequence[Row], values: list[Fact]) -> list[int]:
    """ "the 3s": the sets of three."""
    for fact in values:
        if fact.kind == "rows" and fact.note.get("the"):
            reps = fact.value[0].reps
            return [i for i, row in enumerate(rows) if row.reps == reps and row.part != "warm_up"]
    return []


def per_side(rows: Sequence[Row], clause_facts: Sequence[Fact]) -> bool:
    """Whether "2 singles per arm" is told of a plan whose main lift has no sides, and other work has."""
    each = any(fact.kind == "side" and fact.value == "each" and not fact.note.get("plain") for fact in clause_facts)
    return each and any(row.side for row in rows) and not any(rows[at].side for at in main_rows(rows))


def of_pair(rows: Sequence[Row], values: list[Fact]) -> bool:
    """Whether "1/1" is told of a plan whose main lift has no such pair, and whose one-sided work has."""
    if len(values) != 1 or values[0].kind != "rows" or values[0].note.get("mark") != "/" or len(values[0].value) != 2:
        return False
    most = max(entry.reps or 0 for entry in values[0].value)
    main = main_rows(rows)
    sided = [row for row in rows if row.side is not None and row.reps is not None and row.reps >= most]
    return bool(sided) and len(main) != len(values[0].value) and not any(rows[at].side for at in main)


def best_rows(rows: list[Row], stated: list[Fact]) -> list[int]:
    """The planned sets that restated ones fit best: a hold for seconds, else the main lift."""
    holds = any(entry.hold_s is not None for fact in stated for entry in fact.value)
    if holds:
        own = [i for i, row in enumerate(rows) if row.hold_s is not None]
        if own:
            first = rows[own[0]].movement
            return [i for i in own if rows[i].movement == first]
    return main_rows(rows)


def exact_rows(rows: Sequence[Row], stated: Fact) -> list[int]:
    """The planned sets that a scheme repeats to the letter: "4x4" of a day of 4x4 pull-ups and 3x6 dips; else none."""
    if stated.kind != "rows" or not stated.note.get("plain"):
        return []
    told = [(entry.reps, entry.hold_s) for entry in stated.value]
    found: list[list[int]] = []
    for name in dict.fromkeys(row.movement for row in rows if row.part != "warm_up"):
        own = [at for at, row in enumerate(rows) if row.movement == name and row.part != "warm_up"]
        sides = {rows[at].side for at in own}
        sets = [at for at in own if rows[at].side != "right"] if sides == {"left", "right"} else own
        values = [(rows[at].reps, rows[at].hold_s) for at in sets]
        timed = [(None, float(reps)) if reps is not None else (None, hold) for reps, hold in told]
        if values in (told, timed):
            found.append(own)
    return found[0] if len(found) == 1 else []
