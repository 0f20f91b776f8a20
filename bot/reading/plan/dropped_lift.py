"""A movement of the plan that was taken down to something: "dropped the pull-ups to 15", "cut the dips to 2 sets"."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from bot.reading.facts import Fact
from bot.reading.fold.rows import Row
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.plan.ground import plan_names

PLACES = ("top", "back")
NEAR = 6  # the facts of "dropped the pull-ups down to 15"


def lift_dropped_to(message: Message, facts: Sequence[Fact], _rows: Sequence[Row]) -> Sequence[Fact]:
    """The facts, with the word that elsewhere leaves a movement out as the change that it is."""
    for at, fact in enumerate(facts):
        if "skipped" not in plan_names(fact) or message.tokens[fact.end - 1].text not in little("turned"):
            continue
        follow = facts[at + 1 : at + NEAR]
        to = next((n for n, one in enumerate(follow) if _is_to(message, one)), None)
        if to is None or to + 1 >= len(follow) or follow[to + 1].kind not in ("bare", "load", "count", "rows"):
            continue
        moves = [one for one in follow[:to] if one.kind == "move" or (one.kind == "scope" and one.value in PLACES)]
        if len(moves) != 1 or any(one is not moves[0] and plan_names(one) - {"the", "less"} for one in follow[:to]):
            continue
        name = "only" if follow[to + 1].kind in ("count", "rows") else "turned_to"
        changed = replace(fact, value=name, note={"names": [name]})
        return [*facts[:at], changed, *moves, *lift_dropped_to(message, facts[at + 2 + to :], _rows)]
    return facts


def _is_to(message: Message, fact: Fact) -> bool:
    return fact.kind == "word" and message.tokens[fact.end - 1].text in little("turned_to_word")
