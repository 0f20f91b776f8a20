"""How long an athlete stayed on each rung, from the record: what `planner/survival.py` counts with."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from datetime import date

from planner.facts import Record
from planner.ladders import Ladder
from planner.survival import Stay, Step, still_there
from planner.view import View


@dataclass(frozen=True, slots=True)
class RungTimes:
    """All stays on one rung across a roster, and their curve."""

    ladder: str
    rung: str
    stays: tuple[Stay, ...]
    steps: tuple[Step, ...]


def stays_of(record: Record, on: date) -> Mapping[tuple[str, str], tuple[Stay, ...]]:
    """Stays by ladder and rung as known on day `on`.

    Only a step up ends a stay; a step back, like still being there, says no more than that it took longer. The time
    on the first rung counts from the start with the bot: what was before nobody told.
    """
    found: dict[tuple[str, str], tuple[Stay, ...]] = {}
    if record.athlete.started_on > on:
        return found
    for climb in View(record, on).climbs(on):
        ladder, since = climb.position.ladder, record.athlete.started_on
        for one in climb.decisions:
            if one.kind == "rung" and one.on <= on:
                before, after = (str(one.reasons[0].values[name]) for name in ("before", "rung"))
                _add(found, ladder, before, since, one.on, ladder.order[after] > ladder.order[before])
                since = one.on
        _add(found, ladder, climb.position.rung.id, since, on, left=False)
    return found


def _add(
    found: dict[tuple[str, str], tuple[Stay, ...]], ladder: Ladder, rung: str, since: date, until: date, left: bool
) -> None:
    key = (ladder.id, rung)
    if until > since:
        found[key] = (*found.get(key, ()), Stay((until - since).days / 7, left))


def across(records: Iterable[tuple[Record, date]]) -> tuple[RungTimes, ...]:
    """Every rung that somebody of a roster was on, each record as known on its own day; by ladder and rung."""
    together: dict[tuple[str, str], list[Stay]] = {}
    for record, on in records:
        for key, stays in stays_of(record, on).items():
            together.setdefault(key, []).extend(stays)
    return tuple(
        RungTimes(ladder, rung, tuple(stays), still_there(stays)) for (ladder, rung), stays in together.items()
    )
