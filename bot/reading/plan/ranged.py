"""A range or a lowering that the plan has not: "all there, though the archers were lower half only"."""

from __future__ import annotations

from bot.reading.facts import Fact
from bot.reading.little import little
from bot.reading.plan.choosing import pick
from bot.reading.plan.state import Said, Told

RANGES = ("full", "upper_half", "lower_half", "half")
LOWERED = "eccentric"
DENYING = frozenset({"skipped", "except", "not", "not_this", "instead"})
DONE_AS = 2  # tokens before "negatives" in which "as" or "were" stands


def ranged(told: Told, said: Said) -> bool:
    """The sets that the clause means with the range it tells; of which movement is asked where several are planned.

    Whether it says no more than that.
    """
    flags = {str(fact.value): fact for fact in said.clause.facts if fact.kind == "flag"}
    range_ = next((name for name in RANGES if name in flags), None)
    lowered = LOWERED in flags and _done_so(told, said, flags[LOWERED])
    if (range_ is None and not lowered) or said.values or said.names & DENYING:
        return False
    if any(fact.kind == "fail" for fact in said.clause.facts):
        return False
    targets = said.clause.targets or (told.sticky if said.scoped else [])
    targets = targets or [at for at, row in enumerate(told.rows) if row.part != "warm_up" and row.hold_s is None]
    sides = {fact.value for fact in said.clause.facts if fact.kind == "side"} & {"left", "right"}
    if len({told.rows[at].movement for at in targets}) > 1:
        told.ask("rom", said.clause)
        return True
    chosen = pick(told.rows, targets, said.scoped[-1].value) if said.scoped else targets
    for at in chosen:
        row = told.rows[at]
        if sides and row.side not in sides:
            continue
        row.eccentric = row.eccentric or lowered
        if range_ is not None:
            row.rom = None if range_ == "half" else range_
    if range_ == "half" and chosen:
        told.ask("rom", said.clause)  # which half
    for at in targets if said.named else ():
        told.keep.setdefault(at, True)
    return True


def _done_so(told: Told, said: Said, flag: Fact) -> bool:
    """ "Only negatives", "as negatives", "were eccentric": and not "negatives were hard" of a plan that has some."""
    if any(row.eccentric for row in told.rows):
        return False
    before = {token.text for token in told.message.tokens[max(0, flag.start - DONE_AS) : flag.start]}
    return bool(said.names & {"only"}) or not before.isdisjoint(little("done_as"))
