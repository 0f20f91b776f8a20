"""Planned pull-ups done with a band: "all done, pull-ups with the 15 kg band", "last set with a band"."""

from __future__ import annotations

from bot.reading.little import little
from bot.reading.plan.choosing import main_rows, pick
from bot.reading.plan.ground import PARTS
from bot.reading.plan.kept import kept_whole
from bot.reading.plan.state import Said, Told
from bot.reading.plan.swapping import GRIPPED, LOADED

BANDED = "band_pull_up"
OTHERWISE = frozenset({"skipped", "except", "instead", "not", *PARTS})
WITH_NEAR = 4  # tokens from "with" to the band: "with the 15 kg band"
TOLD_ANEW = frozenset({"rows", "bare", "count", "loads", "instead", "delta"})


def banded(told: Told, said: Said) -> bool:
    """Whether a clause says that planned sets were done with a band, and no more: those are `band_pull_up`.

    Of work that a band makes no other movement of, and where more than one lift may be meant, it is asked.
    """
    if any(row.movement == BANDED for row in told.rows) or said.names & OTHERWISE or not said.clause.facts:
        return False
    stretched = any(fact.kind == "move" and fact.value.movement == "!" for fact in said.clause.facts)
    if stretched or any(fact.kind in TOLD_ANEW for fact in said.values) or not _led(told, said):
        return False
    where = _lifts(told, said)
    scoped = [fact.value for fact in said.scoped if fact.value != "all"]
    lifts = {told.rows[at].movement for at in where}
    if not lifts & LOADED:
        return False  # "face pulls with the red band"
    kept_whole(told, said)
    if len(lifts) > 1 or not lifts <= GRIPPED:
        told.ask("movement", said.clause)
        return True
    help_kg = next((fact.value for fact in said.values if fact.kind in ("load", "assist") and fact.value), 0.0)
    for at in where:
        told.keep.setdefault(at, True)
    for at in pick(told.rows, where, scoped[-1]) if scoped else where:
        row = told.rows[at]
        row.movement, row.load_kg, row.assist_kg, row.touched = BANDED, 0.0, help_kg, True
    return True


def _led(told: Told, said: Said) -> bool:
    """Whether a band is named as what the sets were done with, and not what somebody warmed up with."""
    facts, tokens, outside = said.clause.facts, told.message.tokens, said.clause.outside
    if outside and (len(outside) > 1 or outside[0].value.movement != BANDED):
        return False
    names = told.message.beginning("movements")
    first, last = facts[0].start, min(facts[-1].end + 1, len(names))
    if outside:
        last = max(last, *(end for _, end in outside[0].value.spans))
    band = next((at for at in range(first, last) if any("band" in hit.name for hit in names[at])), None)
    if band is None:
        return False
    led = next((at for at in range(band, max(first, band - WITH_NEAR) - 1, -1) if _with(told, at)), None)
    weighed = any(fact.kind == "load" and fact.start >= first and fact.start <= band <= fact.end + 1 for fact in facts)
    known = {at for fact in facts if fact.kind not in ("word", "claim") for at in range(fact.start, fact.end)}
    before = range(first, band if led is None else led)
    plain = all(
        at in known or tokens[at].kind == "sym" or tokens[at].text in little("the", "used", "of_another")
        for at in before
    )
    return plain and (led is not None or weighed or bool(outside))


def _with(told: Told, at: int) -> bool:
    return told.message.tokens[at].text in little("with", "used")


def _lifts(told: Told, said: Said) -> list[int]:
    """The planned sets that were done so: those named, the main lift where only some sets are, else all."""
    work = [at for at, row in enumerate(told.rows) if row.part != "warm_up"]
    if said.clause.outside:
        features = said.clause.outside[0].value.features
        own = [at for at in work if told.rows[at].movement in GRIPPED]
        exact = [at for at in own if told.rows[at].movement in features]
        return exact or own
    if said.named:
        return said.clause.targets
    if told.sticky and told.sticky_at == said.clause.sentence:
        return told.sticky
    return main_rows(told.rows) if any(fact.value != "all" for fact in said.scoped) else work
