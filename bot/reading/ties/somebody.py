""" "Einer" who was on the phone at the cable is a person and no repetition."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.bounds import clause_end, clause_start
from bot.reading.facts import Fact
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.prose import strange

TOLD = frozenset({"move", "side", "scope", "load", "at", "fail", "bare", "loads", "count", "effort", "link", "flag"})
TALK = 2  # words that the grammar does not know


def somebody(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts without a word for one that stands in a clause of talk alone."""
    return [fact for at, fact in enumerate(facts) if not (_person(message, fact) and _in_talk(message, facts, at))]


def _person(message: Message, fact: Fact) -> bool:
    one = fact.kind == "rows" and fact.end == fact.start + 1 and fact.note.get("word")
    return bool(one) and message.tokens[fact.start].text in little("somebody")


def _in_talk(message: Message, facts: Sequence[Fact], at: int) -> bool:
    low = clause_start(facts, at)
    high = clause_end(facts, at + 1)
    clause = [fact for fact in facts[low:high] if fact is not facts[at]]
    told = any(fact.kind in TOLD or (fact.kind == "scheme" and fact.value in ("got", "attempt")) for fact in clause)
    return not told and strange(message, clause) >= TALK
