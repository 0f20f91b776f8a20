"""What a clause leaves open of planned sets, and is asked: "handstands all under 15 s", "as planned but one extra"."""

from __future__ import annotations

from bot.reading.little import little
from bot.reading.plan.choosing import main_rows
from bot.reading.plan.ground import plan_names
from bot.reading.plan.state import Said, Told
from bot.reading.reading import Ask

NEAR = 3  # words from "nothing" to "as planned"


def unclear(told: Told, said: Said) -> bool:
    """Ask what a clause leaves open, and take nothing else from it; whether there was such a thing."""
    asked = next((fact for fact in said.clause.facts if fact.kind == "ask"), None)
    if asked is None and _not_as_planned(told, said):
        told.ask("sets", said.clause)
        for at in said.clause.targets:
            told.keep[at] = False
        return True
    if asked is None:
        return _one_more(told, said)
    told.asks.append(Ask(asked.value, told.message.span(asked.start, asked.end)))
    own = main_rows(told.rows)
    counted = any(fact.kind == "count" and fact.value * told.step(own[0]) == len(own) for fact in said.values)
    targets = said.clause.targets or (own if asked.note.get("shift") or counted else [])
    if asked.note.get("outcome"):  # "missed the single on the left" of several a side
        targets = targets or [at for at, row in enumerate(told.rows) if row.side is not None]
    for at in targets:
        if asked.value == "load_kg":
            told.rows[at].load_kg, told.rows[at].load_open = None, True
        told.keep[at] = asked.value == "load_kg"
    return True


def _not_as_planned(told: Told, said: Said) -> bool:
    """ "Pull-ups not as planned": how they were done is not said."""
    first = said.clause.facts[0].start if said.clause.facts else 0  # "yes, dips no": a clause may be empty
    words = (
        token.text
        for fact in said.clause.facts
        if "planned" in plan_names(fact) and "rest" not in plan_names(fact)
        for token in told.message.tokens[max(first, fact.start - NEAR) : fact.start]
    )
    return not said.values and not said.scoped and any(word in little("not_so_done") for word in words)


def of_something_else(told: Told, said: Said) -> bool:
    """Whether a clause says "done" of what the plan has not, "stretching done", while others name what it has."""
    if said.named or said.values or not any(clause.targets for clause in told.clauses):
        return False
    done = next((at for at, fact in enumerate(said.clause.facts) if plan_names(fact) & {"done"}), 0)
    before = said.clause.facts[done - 1] if done else None
    if before is None:
        return False
    word = told.message.tokens[before.end - 1].text
    return before.kind == "move" or (before.kind == "word" and word not in little("all_done"))


def _one_more(told: Told, said: Said) -> bool:
    """ "As planned but one extra": a rep or a set, and of what, is not said."""
    more = next((fact for fact in said.values if fact.kind == "delta" and fact.note.get("open")), None)
    whole = any(fact.value == "all" for fact in said.scoped) or said.names & {"every", "all_lifts"}
    if more is None or said.named or said.scoped or whole or not (told.several or told.everything):
        return False
    told.ask("sets", said.clause)
    return True
