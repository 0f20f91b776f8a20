"""Short names on a day that plans a variant: "rows done" of planned ring rows."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from bot.reading.facts import LOADED, Fact
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.movements.mention import Mention
from bot.reading.movements.not_had import not_had
from bot.reading.plan.clauses import clause_around
from bot.reading.plan.ground import plan_names

LEAST = 2  # facts of "fondos en barras" before "en vez de anillas"
NEAR = 4  # facts of "instead of on the rings"
ON_RINGS = {"row": "ring_row", "dip": "ring_dip", "pull_up": "ring_pull_up", "muscle_up": "ring_muscle_up"}
WORDS = {
    "row": 1,
    "dip": 1,
    "pull_up": 2,
    "muscle_up": 2,
}  # so many words at most: "barbell rows" are none on rings


def as_planned(message: Message, facts: Sequence[Fact]) -> list[Fact]:
    """The movements named, the plan's variant for a name that only lacks its word, where nothing else is meant."""
    facts = _weighted_ones(message, facts)
    planned = {one.movement for one in message.context.today or ()}
    told = {fact.value.movement for fact in facts if fact.kind == "move"}
    meant = {
        short: ring
        for short, ring in ON_RINGS.items()
        if short in told and ring in planned and short not in planned and ring not in told
    }
    if not meant:
        return list(facts)
    rather = _rather_than_rings(message, facts)
    if _no_rings(message) or rather:
        return _in_their_place([fact for fact in facts if fact not in rather], meant)
    return [
        replace(fact, value=replace(fact.value, movement=meant[fact.value.movement]))
        if fact.kind == "move" and fact.value.movement in meant and _short(fact) and not _stands_for(facts, at)
        else fact
        for at, fact in enumerate(facts)
    ]


def _no_rings(message: Message) -> bool:
    """ "No rings, dips 3x6": the rings were not there, what was done is the plain lift."""
    return any(
        hit.name == "ring" and not_had(message, hit.start, hit.end)
        for hits in message.beginning("movements")
        for hit in hits
    )


def _rather_than_rings(message: Message, facts: Sequence[Fact]) -> list[Fact]:
    """The facts of "not rings" behind "dips on bars", "instead of the rings", "statt an den Ringen"."""
    rings = {hit.start for hits in message.beginning("movements") for hit in hits if hit.name == "ring"}
    for at, fact in enumerate(facts):
        if not plan_names(fact) & {"instead", "not_this"} or not any(
            one.kind == "move" for one in clause_around(facts, at)
        ):
            continue
        on_bar = at >= LEAST and str(facts[at - 2].value) in little("on_lift")
        if at and facts[at - 1].kind == "move" and not on_bar:
            continue  # "Klimmzüge statt an den Ringen"
        end = at + 1
        while end < len(facts) and facts[end].kind in ("word", "plan") and facts[end].start not in rings:
            end += 1
        ring = facts[end] if end < len(facts) else None
        if ring is not None and ring.kind == "word" and ring.start in rings and end - at <= NEAR:
            bar = facts[at - 1] if at > 1 and facts[at - 1].kind == "move" else None  # "fondos en barras"
            named = bar is not None and facts[at - 2].kind == "word" and bar.value.movement not in ON_RINGS.values()
            return list(facts[at - named : end + 1])
    return []


def _in_their_place(facts: Sequence[Fact], meant: dict[str, str]) -> list[Fact]:
    """The facts, with each plain lift in place of the planned one on rings."""
    out: list[Fact] = []
    for fact in facts:
        out.append(fact)
        if fact.kind == "move" and fact.value.movement in meant:
            out.append(Fact("plan", fact.end, fact.end, "instead", {"names": ["instead"]}))
            ring = Mention(meant[fact.value.movement], [(fact.end, fact.end)])
            out.append(Fact("move", fact.end, fact.end, ring))
    return out


def _stands_for(facts: Sequence[Fact], at: int) -> bool:
    """ "Pull-ups instead of on the rings": it stands for the variant."""
    clause = clause_around(facts, at)
    return any(plan_names(fact) & {"instead"} and "not_this" not in plan_names(fact) for fact in clause)


def _short(fact: Fact) -> bool:
    """Whether a movement is named by its short name alone."""
    mention = fact.value
    return bool(mention.features == {mention.movement} and mention.end - mention.start <= WORDS[mention.movement])


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
