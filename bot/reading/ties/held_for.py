"""How long a hold was kept, told without seconds: "one straddle lever try that lasted 2", "front lever: held 4"."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.facts import Entry, Fact
from bot.reading.fold.block import is_hold
from bot.reading.little import little
from bot.reading.message import Message

MOST_SECONDS = 120


def held_for(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts, a number by a word for holding on being seconds, of a movement that is held or a stop."""
    out = list(facts)
    movement = None
    for at, fact in enumerate(facts):
        if fact.kind == "move":
            movement = fact.value.movement
        whole = fact.kind == "bare" and not fact.note.get("spelled") and 0 < fact.value <= MOST_SECONDS
        if not whole or not (_led(message, fact.start) or _behind(message, fact.end)):
            continue
        if is_hold(movement):
            out[at] = Fact("rows", fact.start, fact.end, [Entry(hold_s=float(fact.value))], {"one": True})
        elif at + 1 < len(facts) and facts[at + 1].kind == "flag" and str(facts[at + 1].value).startswith("pause"):
            out[at] = Fact("word", fact.start, fact.end, None, {"noise": True})  # "held 2 at the top" of each dip
    return out


def _behind(message: Message, at: int) -> bool:
    return at < len(message.tokens) and message.tokens[at].text in little("held_word")


def _led(message: Message, at: int) -> bool:
    while at and message.tokens[at - 1].text in little("only_word"):
        at -= 1
    return at > 0 and message.tokens[at - 1].text in little("held_word")
