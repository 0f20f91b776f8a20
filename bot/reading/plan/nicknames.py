"""Short names on a day that plans a variant: "rows done" of planned ring rows, "hang: left 9, right 12" on one arm."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from bot.reading.facts import LOADED, Fact
from bot.reading.message import Message
from bot.reading.movements.mention import Mention
from bot.reading.plan.clauses import clause_around
from bot.reading.plan.ground import plan_names

ON_RINGS = {"row": "ring_row", "dip": "ring_dip", "pull_up": "ring_pull_up", "muscle_up": "ring_muscle_up"}
ONE_ARMED = {"dead_hang": "one_arm_hang"}
FEATURE = {"dead_hang": "hang"}  # what the short name tells, where it is not the movement itself
WORDS = {
    "row": 1,
    "dip": 1,
    "pull_up": 2,
    "muscle_up": 2,
    "dead_hang": 2,
}  # so many words at most: "barbell rows" are none on rings


def as_planned(message: Message, facts: Sequence[Fact]) -> list[Fact]:
    """The movements named, the plan's variant for a name that only lacks its word, where nothing else is meant."""
    facts = _weighted_ones(message, facts)
    planned = {one.movement for one in message.context.today or ()}
    told = {fact.value.movement for fact in facts if fact.kind == "move"}
    meant = {
        short: ring
        for short, ring in (ON_RINGS | ONE_ARMED).items()
        if short in told and ring in planned and short not in planned and ring not in told
    }
    if not meant:
        return list(facts)
    return [
        replace(fact, value=replace(fact.value, movement=meant[fact.value.movement]))
        if fact.kind == "move" and fact.value.movement in meant and _short(fact) and not _stands_for(facts, at)
        else fact
        for at, fact in enumerate(facts)
    ]


def _stands_for(facts: Sequence[Fact], at: int) -> bool:
    """ "Pull-ups instead of on the rings": it stands for the variant."""
    clause = clause_around(facts, at)
    return any(plan_names(fact) & {"instead"} and "not_this" not in plan_names(fact) for fact in clause)


def _short(fact: Fact) -> bool:
    """Whether a movement is named by its short name alone."""
    mention = fact.value
    return bool(
        mention.features == {FEATURE.get(mention.movement, mention.movement)}
        and mention.end - mention.start <= WORDS[mention.movement]
    )


def _weighted_ones(message: Message, facts: Sequence[Fact]) -> list[Fact]:
    """ "Las lastradas bien", "the weighted ones done": the one lift of the day that hangs from a belt."""
    loaded = {one.movement for one in message.context.today or () if one.load_kg and one.movement in LOADED}
    if len(loaded) != 1 or not any(fact.kind == "weighted" for fact in facts):
        return list(facts)
    out: list[Fact] = []
    for at, fact in enumerate(facts):
        if fact.kind == "weighted" and not any(one.kind == "move" for one in clause_around(facts, at)):
            name = min(loaded)
            fact = Fact("move", fact.start, fact.end, Mention(name, [(fact.start, fact.end)], {name}))
        out.append(fact)
    return out
