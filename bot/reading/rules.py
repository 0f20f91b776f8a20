"""Rules in their order, each tried only where those facts are that it changes something of."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from functools import lru_cache

from bot.reading.facts import Fact
from bot.reading.message import Message
from bot.reading.plan.ground import plan_names

Rule = Callable[..., Sequence[Fact]]  # of the message, the facts, and what else the rules of a table take
MOST_REMEMBERED = 8192


class Rules:
    """A table of rules, each with what a message must tell for it to change anything.

    "rows|bare sep =less": one of "a|b", and one of each that a space parts. A name is a kind of fact, "=less" a plan
    word. What is not told costs nothing, however many rules there are.
    """

    def __init__(self, table: Sequence[tuple[Rule, str]]) -> None:
        self.needing = tuple(
            (rule, tuple(frozenset(names.split("|")) for names in needs.split())) for rule, needs in table
        )
        self._names = frozenset(name for _, needs in self.needing for names in needs for name in names)
        self._words = any(name.startswith("=") for name in self._names)
        self._next = lru_cache(maxsize=MOST_REMEMBERED)(self._next_of)

    def apply(self, message: Message, facts: Sequence[Fact], *given: object) -> list[Fact]:
        """The facts, changed by every rule in turn."""
        told = self.told(facts)
        at = self._next(told, 0)
        while at < len(self.needing):
            facts = self.needing[at][0](message, facts, *given)
            told = self.told(facts)
            at = self._next(told, at + 1)
        return list(facts)

    def told(self, facts: Sequence[Fact]) -> frozenset[str]:
        """The kinds and the plan words of the facts, those that the rules ask for."""
        told: set[str] = {fact.kind for fact in facts}
        if self._words:
            told.update(f"={name}" for fact in facts if fact.note or fact.kind == "plan" for name in plan_names(fact))
        return self._names.intersection(told)

    def _next_of(self, told: frozenset[str], start: int) -> int:
        """The place of the first rule from `start` on that may change something."""
        for at in range(start, len(self.needing)):
            if not any(told.isdisjoint(names) for names in self.needing[at][1]):
                return at
        return len(self.needing)
