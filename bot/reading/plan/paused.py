"""Stops that the plan has not: "as planned, but I paused at the top of every rep"."""

from __future__ import annotations

from itertools import pairwise

from bot.reading.plan.choosing import pick
from bot.reading.plan.state import Said, Told

PLACES = ("top", "middle", "bottom")


def paused(told: Told, said: Said) -> None:
    """The sets that the clause means with the stops it tells; of which movement is asked where several are planned."""
    flags = {str(fact.value) for fact in said.clause.facts if fact.kind == "flag"}
    stops = tuple(place for place in PLACES if f"pause_{place}" in flags)
    without = "pause_pause" in flags and _denied(said)
    if (not stops and not without) or "pause_pause" not in flags:
        return
    targets = said.clause.targets or told.sticky
    targets = targets or [at for at, row in enumerate(told.rows) if row.part != "warm_up" and row.hold_s is None]
    if len({told.rows[at].movement for at in targets}) > 1:
        told.ask("sets", said.clause)
        return
    targets = [at for at in targets if told.rows[at].pauses] if without else targets
    for at in pick(told.rows, targets, said.scoped[-1].value) if said.scoped else targets:
        held = set() if without else {*told.rows[at].pauses, *stops}
        told.rows[at].pauses = tuple(place for place in PLACES if place in held)


def _denied(said: Said) -> bool:
    """ "No pause on the last set"."""
    facts = said.clause.facts
    return any(
        one.kind == "fail" and one.note.get("weak") and two.value == "pause_pause" for one, two in pairwise(facts)
    )
