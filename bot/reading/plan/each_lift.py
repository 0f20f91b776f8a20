"""Lifts that are told of all at once: "the last set of each exercise"."""

from __future__ import annotations

from bot.reading.little import little
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
    if said.clause.targets or not (lift or "all_lifts" in said.names or (plain and not alike)):
        return []
    lifts: dict[str | None, list[int]] = {}
    for at, row in enumerate(rows):
        if row.part != "warm_up":
            lifts.setdefault(row.movement, []).append(at)
    return list(lifts.values()) if len(lifts) > 1 else []
