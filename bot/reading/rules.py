"""Rules in their order, each tried only where those facts are that it changes something of."""

from __future__ import annotations

from bisect import bisect
from collections.abc import Callable, Sequence
from functools import lru_cache
from operator import is_

from bot.reading.facts import Fact
from bot.reading.message import Message
from bot.reading.plan.ground import plan_names

Rule = Callable[..., Sequence[Fact]]  # of the message, the facts, and what else the rules of a table take
MOST_REMEMBERED = 8192


class Rules:
    """A table of rules, each with what a message must tell for it to change anything.

    "rows|bare sep =less 'of": one of "a|b", and one of each that a space parts. A name is a kind of fact, "=less" a
    plan word, "'of" a list of little words. What is not told costs nothing, however many rules there are.
    """

    def __init__(self, table: Sequence[tuple[Rule, str]]) -> None:
        self.needing = tuple(
            (rule, tuple(frozenset(names.split("|")) for names in needs.split())) for rule, needs in table
        )
        names = {name for _, needs in self.needing for names in needs for name in names}
        self._plan_words = {name[1:]: name for name in names if name.startswith("=")}
        self._lists = {name[1:]: name for name in names if name.startswith("'")}
        self._names = frozenset(names)
        self._bit = {name: 1 << at for at, name in enumerate(sorted(names))}
        self._needed_bits = [[sum(map(self._bit.__getitem__, one)) for one in needs] for _, needs in self.needing]
        self._fitting = lru_cache(maxsize=MOST_REMEMBERED)(self._fitting_to)

    def apply(self, message: Message, facts: Sequence[Fact], *given: object) -> list[Fact]:
        """The facts, changed by every rule in turn."""
        said = self._said(message)
        told = self._told(facts, said)
        places = self._fitting(told)
        n = 0
        while n < len(places):
            place = places[n]
            changed = self.needing[place][0](message, facts, *given)
            n += 1
            if changed is facts or (len(changed) == len(facts) and all(map(is_, changed, facts))):
                continue
            facts = changed
            now = self._told(facts, said)
            if now != told:
                told, places = now, self._fitting(now)
                n = bisect(places, place)
        return list(facts)

    def told(self, message: Message, facts: Sequence[Fact]) -> frozenset[str]:
        """What the message and the facts tell of all that the rules ask for."""
        return self._told(facts, self._said(message))

    def _said(self, message: Message) -> set[str]:
        return {self._lists[name] for name in self._lists.keys() & message.little}

    def _told(self, facts: Sequence[Fact], said: set[str]) -> frozenset[str]:
        told = {fact.kind for fact in facts} | said
        words = self._plan_words
        for fact in facts:
            if fact.kind == "plan" or "names" in fact.note:
                told.update(words[name] for name in words.keys() & plan_names(fact))
        return self._names & told

    def _fitting_to(self, told: frozenset[str]) -> tuple[int, ...]:
        """The places of the rules that may change something."""
        told_bits = sum(map(self._bit.__getitem__, told))
        return tuple(at for at, needed in enumerate(self._needed_bits) if all(map(told_bits.__and__, needed)))
