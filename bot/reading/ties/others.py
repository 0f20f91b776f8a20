"""What another did beside the athlete: "sie 3x5, ich 3x8", "she did 3x5, I did 3x8", "él metió 8 y yo 5, 5 y 4"."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.facts import Fact
from bot.reading.little import little
from bot.reading.message import Message

REACH = 2  # tokens from the person to the sets
OF_SETS = frozenset({"rows", "load", "effort", "side"})


def done_by_others(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts without the sets of "she", where the athlete's own stand behind an "I"."""
    rows = [at for at, fact in enumerate(facts) if fact.kind in ("rows", "bare")]
    theirs = [at for at in rows if _person(message, facts[at], "third_person")]
    if not theirs or not any(_person(message, facts[at], "first_person") for at in rows):
        return facts
    gone: set[int] = set()
    for at in theirs:
        end = next((n for n in range(at + 1, len(facts)) if facts[n].kind not in OF_SETS), len(facts))
        gone.update(range(at, end))
    return [fact for at, fact in enumerate(facts) if at not in gone]


def _person(message: Message, fact: Fact, who: str) -> bool:
    """Whether a word for a person stands right before a fact."""
    before = message.tokens[max(0, fact.start - REACH) : fact.start]
    return any(token.text in little(who) for token in before)
