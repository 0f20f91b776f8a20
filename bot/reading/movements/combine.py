"""The movement that features are, by words/combine.toml."""

from __future__ import annotations

from collections.abc import Collection
from dataclasses import dataclass
from functools import lru_cache

import tomli

from bot.reading.lexicon import WORDS


@dataclass(frozen=True)
class Combine:
    """The rules by which features make a movement, and the features that need or seek others."""

    rules: tuple[tuple[str, frozenset[str], frozenset[str]], ...]  # movement, all, all + may
    far: frozenset[str]
    never_alone: frozenset[str]
    leaning: frozenset[str]
    grips: frozenset[str]
    families: dict[str, tuple[str, ...]]

    def resolve(self, features: Collection[str]) -> str | None:
        """The movement (or "?family") that exactly these features are; None: none."""
        have = frozenset(features)
        for movement, needed, allowed in self.rules:
            if needed <= have <= allowed:
                return movement
        return None

    def needed(self, movement: str) -> frozenset[str]:
        """The features that name a movement."""
        return next(needed for name, needed, _ in self.rules if name == movement)

    def begins(self, features: Collection[str]) -> bool:
        """Whether some movement has all these features."""
        have = frozenset(features)
        return any(have <= allowed for _, _, allowed in self.rules)


@lru_cache(maxsize=1)
def combine() -> Combine:
    """The rules of words/combine.toml."""
    with (WORDS / "combine.toml").open("rb") as file:
        data = tomli.load(file)
    return Combine(
        rules=tuple(
            (rule["is"], frozenset(rule["all"]), frozenset(rule["all"]) | frozenset(rule.get("may", ())))
            for rule in data["rule"]
        ),
        far=frozenset(data["far"]),
        never_alone=frozenset(data["never_alone"]),
        leaning=frozenset(data["leaning"]),
        grips=frozenset(data["grips"]),
        families={name: tuple(members) for name, members in data["family"].items()},
    )
