"""Stops that the plan has not: "as planned, but I paused at the top of every rep"."""

from __future__ import annotations

from bot.reading.plan.choosing import pick
from bot.reading.plan.state import Said, Told

PLACES = ("top", "middle", "bottom")


def paused(told: Told, said: Said) -> None:
    """The sets that the clause means with the stops it tells; of which movement is asked where several are planned."""
    flags = {str(fact.value) for fact in said.clause.facts if fact.kind == "flag"}
    stops = tuple(place for place in PLACES if f"pause_{place}" in flags)
    if not stops or "pause_pause" not in flags:
        return
    targets = said.clause.targets or told.sticky
    targets = targets or [at for at, row in enumerate(told.rows) if row.part != "warm_up" and row.hold_s is None]
    if len({told.rows[at].movement for at in targets}) > 1:
        told.ask("sets", said.clause)
        return
    for at in pick(told.rows, targets, said.scoped[-1].value) if said.scoped else targets:
        told.rows[at].pauses = tuple(place for place in PLACES if place in {*told.rows[at].pauses, *stops})
