"""Stops that the plan has not: "as planned, but I paused at the top of every rep"."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.facts import NO_PAUSE, Fact
from bot.reading.fold.rows import Row
from bot.reading.message import Message
from bot.reading.plan.choosing import pick
from bot.reading.plan.ground import plan_names
from bot.reading.plan.state import Said, Told

PLACES = ("top", "middle", "bottom")


def stops_denied(_message: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> list[Fact]:
    """ "No pause on the last set", "only without the stop on the first": that set had none, and was done."""
    if not any(row.pauses for row in rows):
        return list(facts)
    out: list[Fact] = []
    for fact in facts:
        if fact.kind == "flag" and str(fact.value).startswith("pause_"):
            led = next((n for n in range(len(out) - 1, -1, -1) if out[n].value != "the"), None)
            if led is not None and _denies(out[led]):
                del out[led:]
                fact = Fact("flag", fact.start, fact.end, NO_PAUSE)
            elif out and out[-1].value == NO_PAUSE:
                continue  # "no pause at the top"
        out.append(fact)
    return out


def _denies(fact: Fact) -> bool:
    no = fact.kind == "fail" and fact.value is None and fact.note.get("name") == "no"
    return no or bool(plan_names(fact) & {"skipped", "except"})


def paused(told: Told, said: Said) -> bool:
    """The sets that the clause means with the stops it tells; of which movement is asked where several are planned.

    Whether it says no more than that some had none.
    """
    flags = {str(fact.value) for fact in said.clause.facts if fact.kind == "flag"}
    stops = tuple(place for place in PLACES if f"pause_{place}" in flags)
    without = NO_PAUSE in flags
    if not without and (not stops or "pause_pause" not in flags):
        return False
    targets = said.clause.targets or told.sticky
    targets = targets or [at for at, row in enumerate(told.rows) if row.part != "warm_up" and row.hold_s is None]
    targets = [at for at in targets if told.rows[at].pauses] if without else targets
    if len({told.rows[at].movement for at in targets}) > 1:
        told.ask("sets", said.clause)
        return False
    for at in pick(told.rows, targets, said.scoped[-1].value) if said.scoped else targets:
        held = set() if without else {*told.rows[at].pauses, *stops}
        told.rows[at].pauses = tuple(place for place in PLACES if place in held)
    if without:
        told.everything = told.everything or not any(told.keep.values())
    return without and not said.values
