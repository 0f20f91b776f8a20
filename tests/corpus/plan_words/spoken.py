"""How one language speaks of a plan: the slots its wordings fill are told in `plan_words`."""

from __future__ import annotations

from dataclasses import dataclass, field


@dataclass(frozen=True)
class PlanWords:
    """How one language speaks of a plan."""

    names: dict[str, tuple[tuple[str, str, str], ...]]  # movement: (bare, with article, dative)
    numbers: tuple[str, ...]
    nth: tuple[str, ...]
    sides: dict[str, str]
    changes: dict[str, tuple[str, ...]]
    openings: tuple[str, ...]
    closings: tuple[str, ...] = field(default=())
