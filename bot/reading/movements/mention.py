"""One movement named."""

from __future__ import annotations

from dataclasses import dataclass, field


@dataclass
class Mention:
    """One movement named. `movement` is an id, "?family", or "!" for training without a field.

    spans: the token ranges that name it; the first one is where it stands.
    """

    movement: str
    spans: list[tuple[int, int]]
    features: set[str] = field(default_factory=set)
    of_sets_before: bool = False  # "…, then 2x8 with the band": of the sets right before it
    doubt: tuple[int, int] | None = None  # words that make some of its sets another movement

    @property
    def start(self) -> int:
        return self.spans[0][0]

    @property
    def end(self) -> int:
        return self.spans[0][1]
