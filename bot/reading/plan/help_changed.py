"""Help told against the plan's: "2.5 kg less counterweight", "took 2.5 kg off the help", "with 20 kg of assistance"."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from bot.reading.bounds import clause_end, clause_start
from bot.reading.facts import Fact
from bot.reading.fold.rows import Row
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.plan.ground import plan_names

MOST_CHANGE = 0.35  # of the planned help: more than this is what the help was
SAME_KG = 0.01


def help_changed(message: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> Sequence[Fact]:
    """The facts, with so much less or more help where words say so, and help in place of a load beside its word."""
    helps = [row.assist_kg for row in rows if row.assist_kg]
    if not helps or any(row.load_kg for row in rows):
        return facts
    out: list[Fact] = []
    for at, fact in enumerate(facts):
        before = out[-1] if out else None
        suffix = fact.kind == "assist" and fact.value is None and bool(fact.note.get("suffix"))
        if suffix and before is not None and before.end == fact.start and before.kind in ("load", "delta"):
            if before.kind == "load" and before.value:
                out[-1] = replace(before, end=fact.end)  # said of sets with help, a load is their help
            continue
        amount = fact.value if fact.kind in ("assist", "load") else None
        small = amount is not None and 0 < amount <= MOST_CHANGE * min(helps)
        sign = _sign(message, facts, at) if small else 0
        if sign and amount:
            out.append(Fact("delta", fact.start, fact.end, (float(amount), "load", sign), {"open": False}))
            continue
        if (
            fact.kind == "plan"
            and plan_names(fact) & {"less", "more"}
            and before is not None
            and before.kind == "delta"
        ):
            continue  # "ayuda 2,5 kg menor que la prevista"
        out.append(fact)
    return _without_verbs(out)


def _sign(message: Message, facts: Sequence[Fact], at: int) -> int:
    """Whether the clause of an amount says that there was more or less of it; 0: neither."""
    fact = facts[at]
    if fact.start and message.tokens[fact.start - 1].text in little("changed_to", "turned_to_word"):
        return 0
    clause = facts[clause_start(facts, at) : clause_end(facts, at)]
    names = set().union(*(plan_names(one) for one in clause))
    words = {token.text for one in clause for token in message.tokens[one.start : one.end]}
    grammar = message.beginning("grammar")
    names |= {hit.name for at in range(fact.start, fact.end) for hit in grammar[at] if hit.table == "plan"}
    less = bool(names & {"minus", "less"}) or bool(words & little("step_down"))
    more = bool(names & {"more"} or ("by" in names and not less)) or bool(words & little("step_up"))
    return -1 if less else 1 if more else 0


def _without_verbs(facts: Sequence[Fact]) -> list[Fact]:
    """ "Le quité 2,5 kg al contrapeso": the verb that the change was told with leaves nothing out."""
    out: list[Fact] = []
    for at, fact in enumerate(facts):
        behind = facts[at + 1 : clause_end(facts, at)]
        changes = any(one.kind == "delta" for one in behind) and plan_names(fact) & {"minus", "by"}
        out.append(
            Fact("word", fact.start, fact.end, None, {"noise": True}) if fact.kind == "plan" and changes else fact
        )
    return out
