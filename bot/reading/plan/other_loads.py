"""Planned sets done with more or less than planned, where it is not said by how much."""

from __future__ import annotations

from bot.reading.facts import Fact
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.plan.choosing import addressed
from bot.reading.plan.clauses import Clause
from bot.reading.plan.ground import plan_names
from bot.reading.plan.state import Said, Told

WEIGHT_NEAR = 2  # words from "more" to "weight"


def other_loads(told: Told, said: Said) -> bool:
    """Whether a clause says that loads were others, and not only how they felt."""
    if not said.clause.facts:
        return False
    tokens, end = told.message.tokens, said.clause.facts[-1].end
    if end < len(tokens) and tokens[end].text == "?":
        return False  # "why so light?"
    before = max(0, said.clause.facts[0].start - WEIGHT_NEAR)
    if any(token.text in little("could_have") for token in tokens[before:end]):
        return False  # "could've gone heavier"
    words = {tokens[n].text for fact in said.clause.facts for n in range(fact.start, fact.end)}
    whole = {"less", "all_lifts", "done"} <= said.names
    return whole or (bool(words & set(little("lighter_or_heavier"))) and not words & set(little("feels")))


def told_by_how_much(told: Told, said: Said) -> bool:
    """ "As planned only lighter, 15 kg", "more on it today: 32.5 kg": the sentence goes on with the load itself."""
    here = next(at for at, clause in enumerate(told.clauses) if clause is said.clause)
    return any(
        fact.kind in ("load", "loads", "at", "assist")
        or (fact.kind == "instead" and _of_load(told, fact))
        or (fact.kind == "delta" and fact.value[1] == "load")
        for clause in told.clauses[here + 1 :]
        if clause.sentence == said.clause.sentence and (_scoped(clause) or not _counted(clause))
        for fact in clause.facts
    )


def _of_load(told: Told, fact: Fact) -> bool:
    """ "Lighter on the dips, 7.5 not 10": in kilograms, or in place of a planned load."""
    _, old, unit = fact.value
    return unit in ("kg", "lb") or (unit is None and any(old in (row.load_kg, row.assist_kg) for row in told.rows))


def _scoped(clause: Clause) -> bool:
    return any(fact.kind == "scope" for fact in clause.facts)


def _counted(clause: Clause) -> bool:
    """Whether reps stand beside the load: "lighter and shorter, 4 reps at 17.5" is of some set, and which is asked."""
    return any(fact.kind in ("rows", "bare") for fact in clause.facts)


def told_next(told: Told, clause: Clause) -> bool:
    """ "The same but heavier, 32.5 kg on all": whether the next clause says by how much, or with what."""
    at = next((n for n, one in enumerate(told.clauses) if one is clause), len(told.clauses))
    after = told.clauses[at + 1] if at + 1 < len(told.clauses) else None
    if after is None or after.sentence != clause.sentence:
        return False
    scoped = any(fact.kind == "scope" and fact.value != "all" for fact in after.facts)
    loads = [f for f in after.facts if (f.kind == "load" and f.value) or (f.kind == "delta" and f.value[1] == "load")]
    return len(loads) == 1 and not scoped and not any(fact.kind in ("rows", "bare") for fact in after.facts)


def other_weight(told: Told, said: Said) -> bool:
    """ "A bit more weight on the dips", "etwas weniger Gewicht": other loads than planned, and not by how much."""
    facts = said.clause.facts
    own = {at for fact in facts if "other_load" in plan_names(fact) for at in range(fact.start, fact.end)}
    if not facts or _wished(told.message, facts[0].start, facts[-1].end, own):
        return False
    texts = [token.text for token in told.message.tokens]
    weight, amounts = little("weight", "put_on"), little("more_or_less")
    unloaded = any(fact.kind == "load" and fact.note.get("none") for one in told.clauses for fact in one.facts)
    for fact in facts:
        if "other_load" in plan_names(fact):
            return not unloaded  # "had to drop the weight", and no "dips without weight, forgot the belt"
        if fact.kind == "plan" and plan_names(fact) & {"less", "more"}:
            if weight.intersection(texts[fact.end : fact.end + WEIGHT_NEAR]):
                return True
        elif fact.kind == "thing":
            words = set(texts[fact.start : fact.end])
            if words & weight and words & amounts:
                return True
    return False


def _wished(message: Message, start: int, end: int, own: set[int]) -> bool:
    """Whether a clause says what would be, or will be: "could use more weight next time".

    `own`: the tokens of words that tell of another load, "left the weight at home".
    """
    if any(token.text in little("asked_for") for token in message.tokens[start:end]):
        return True
    return any(
        (hit.table == "unreal" and hit.name == "wanted")
        or ((hit.table, hit.name) == ("effort", "could") and not _had_to(message, hit.end))
        for at in range(max(0, start - WEIGHT_NEAR), end)
        if at not in own
        for hit in message.beginning("grammar")[at]
    )


def _had_to(message: Message, at: int) -> bool:
    """ "Had to drop the weight": done, and no wish."""
    return any(token.text in little("had_to") for token in message.tokens[at : at + 1])


def lighter(told: Told, clause: Clause) -> None:
    """Done with less or more than planned: by how much is not said."""
    told.ask("load_kg", clause)
    scope = next((fact.value for fact in clause.facts if fact.kind == "scope" and fact.value != "all"), None)
    in_mind = told.sticky if told.sticky_at == clause.sentence else []
    rows = [told.rows[at] for at in clause.targets or in_mind] or told.rows
    for row in addressed(rows, scope, None) if scope is not None else rows:
        if row.load_kg:
            row.load_kg, row.load_open = None, True
    told.everything = told.everything or not any(told.keep.values())
    for at in clause.targets or in_mind:
        told.keep.setdefault(at, True)
