"""The work that a message begins with: "first five with ten kilos, then four with fifteen" are no five sets."""

from __future__ import annotations

from bot.reading.little import little
from bot.reading.scan.scanner import Scanner

THEN_WITHIN = 6  # items after a load within which "then" goes on with the next set
NOTHING_WITHIN = 8  # items before "first" that tell no number


def begins_with(s: Scanner, i: int) -> bool:
    """Whether "first" only opens the list: a number with its load stands behind, then the next one; none before."""
    if s.at(i).text not in little("to_begin") or s.at(i + 1).value is None or not s.at(i + 2).has("load", "at"):
        return False
    if any(s.at(at).value is not None for at in range(max(0, i - NOTHING_WITHIN), i)):
        return False
    return any(s.at(at).has("sep", "then") for at in range(i + 3, i + 3 + THEN_WITHIN))
