"""A weight taken off part of the way: "4x6 with 10, took it off after set 2", "… for the last two"."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.bounds import clause_end, clause_start
from bot.reading.facts import Fact
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.plan.ground import plan_names

NUMBERS = frozenset({"load", "loads", "bare", "at", "rows", "delta", "instead", "left", "percent"})
WORDS = frozenset({"word", "plan"})


def off_after(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts, the sets that were done without named before the load that they had not."""
    told = next((at for at, fact in enumerate(facts) if fact.kind == "rows" and len(fact.value) > 1), None)
    if told is None:
        return facts
    loaded = any(fact.kind in ("load", "at", "thing") and fact.value != 0.0 for fact in facts)
    for at in range(told + 1, len(facts)):
        fact = facts[at]
        changed = fact.kind == "plan" and "other_load" in plan_names(fact) and loaded and not message.context.today
        if changed and not any(one.kind in NUMBERS for one in facts[at + 1 :]):
            end = clause_end(facts, at + 1)
            asked = Fact("ask", fact.start, facts[end - 1].end, "load_kg", {"some": True})
            return [*facts[:at], asked, *facts[end:]]  # "5x5 +10, dropped the weight after the third": to what
        if fact.kind != "load" or not fact.note.get("none") or not loaded:
            continue
        start = clause_start(facts, at)
        end = clause_end(facts, at + 1)
        clause = facts[start:end]
        which = [one for one in clause if one.kind in ("scope", "count")]
        if len(which) != 1 or any(one is not fact and one not in which and one.kind not in WORDS for one in clause):
            continue
        scope = _from(message, which[0], behind=which[0].start > fact.start)
        if scope is not None:
            return [*facts[:start], scope, fact, *facts[end:]]
    return facts


def _from(message: Message, which: Fact, behind: bool) -> Fact | None:
    """The sets from which on, or of which, a clause speaks; None: it names none, or they stand in their place."""
    led = {token.text for token in message.tokens[max(0, which.start - 3) : which.start + 1]}
    after = bool(led & little("after", "after_set"))
    if which.kind == "scope" and isinstance(which.value, tuple) and which.value[0] == "from":
        return which if behind else None
    if after and isinstance(which.value, int):
        return Fact("scope", which.start, which.end, ("from", which.value + 1), {"text": ""})
    if after and which.kind == "scope" and (which.value == "first" or _first(which)):
        done = 1 if which.value == "first" else which.value[1]
        return Fact("scope", which.start, which.end, ("from", done + 1), {"text": ""})
    if not after and behind and which.kind == "scope" and (which.value == "last" or _last(which)):
        return which
    return None


def _first(which: Fact) -> bool:
    return isinstance(which.value, tuple) and which.value[0] == "first"


def _last(which: Fact) -> bool:
    return isinstance(which.value, tuple) and which.value[0] == "last"
