"""Lifts that are told of all at once: "the last set of each exercise"."""

from __future__ import annotations

from bot.reading.little import little
from bot.reading.plan.ground import plan_names
from bot.reading.plan.state import Said, Told


def each_lift(told: Told, said: Said) -> list[list[int]]:
    """The sets of each lift, where "the last set of each exercise" is told of several; else none."""
    facts, rows = said.clause.facts, told.rows
    words = {token.text for token in told.message.tokens[facts[0].start : facts[-1].end]}
    each = [fact for fact in facts if fact.kind == "side" and fact.value == "each"]
    bare = [fact for fact in each if told.message.tokens[fact.end - 1].text in little("each_lift")]
    lift = not words.isdisjoint(little("lift")) and not words.isdisjoint(little("each_lift"))
    plain = bare if any(row.side for row in rows) else each
    alike = all(row.side for row in rows)
    if any(fact.note.get("each_lift") for fact in facts) and not said.clause.targets:
        return _lifts(told)
    lift = lift or not (words.isdisjoint(little("whole_plan")) or words.isdisjoint(little("of_each")))  # "von allem"
    if said.clause.targets or not (lift or "all_lifts" in said.names or (plain and not alike)):
        return []
    lifts = _lifts(told)
    return lifts if len(lifts) > 1 else []


def lifts_pointed_at(told: Told, said: Said) -> list[int] | None:
    """ "Did the first two exercises": the sets of whole lifts; None where the scope is of sets, or beyond the plan."""
    facts = said.clause.facts
    at = next(n for n, fact in enumerate(facts) if fact is said.scoped[-1])
    after = facts[at + 1] if at + 1 < len(facts) else facts[at]
    words = {token.text for token in told.message.tokens[facts[at].start : after.end]}
    if words.isdisjoint(little("lift")) or said.clause.targets or after.note.get("each_lift"):
        return None
    lifts, scope = _lifts(told), said.scoped[-1].value
    both = "all_lifts" in plan_names(after)  # "die ersten beiden Übungen"
    many = scope[1] if isinstance(scope, tuple) else 2 if both else 1
    if not isinstance(many, int) or many > len(lifts):
        return None
    which = scope[0] if isinstance(scope, tuple) else scope
    chosen = lifts[:many] if which == "first" else lifts[-many:] if which == "last" else None
    return [at for own in chosen for at in own] if chosen is not None else None


def _lifts(told: Told) -> list[list[int]]:
    """The sets of each lift, in the plan's order, the warm-up aside."""
    lifts: dict[str | None, list[int]] = {}
    for at, row in enumerate(told.rows):
        if row.part != "warm_up":
            lifts.setdefault(row.movement, []).append(at)
    return list(lifts.values())
