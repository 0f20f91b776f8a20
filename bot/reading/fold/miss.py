"""One word for a miss, as the fold meets it."""

from __future__ import annotations

from dataclasses import dataclass

from bot.reading.facts import Fact
from bot.reading.fold.rows import Row
from bot.reading.fold.state import FoldState


@dataclass(frozen=True)
class Miss:
    """`nth`: the set or the rep that it names, "last" or none; `of_rep`: it names a rep."""

    fact: Fact
    nth: int | str | None
    of_rep: bool

    @property
    def weak(self) -> bool:
        """ "No": a miss only where it answers a try."""
        return bool(self.fact.note.get("weak"))

    @property
    def made_it(self) -> bool:
        """ "Yes", "made it": the answer to a try."""
        return self.fact.note.get("name") == "yes"


def miss_of(fold: FoldState, fact: Fact) -> Miss:
    of_last = fact.value is None and fold.last_rep
    return Miss(fact, "last" if of_last else fact.value, of_last or bool(fact.note.get("rep")))


def newest(fold: FoldState) -> Row | None:
    return fold.rows[-1] if fold.rows else None
