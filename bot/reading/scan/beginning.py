"""The work that a message begins with: "first five with ten kilos, then four with fifteen" are no five sets."""

from __future__ import annotations

from bot.reading.little import little
from bot.reading.scan.scanner import Scanner

TURNED_WITHIN = 4  # items from "then" to the load that it goes on with
MOST_REPS = 12  # a higher number that goes on is a load
THEN_WITHIN = 6  # items after a load within which "then" goes on with the next set
NOTHING_WITHIN = 8  # items before "first" that tell no number


def begins_with(s: Scanner, i: int) -> bool:
    """Whether "first" only opens the list: a number with its load stands behind, then the next one; none before."""
    if s.at(i).text not in little("to_begin") or s.at(i + 1).value is None or not s.at(i + 2).has("load", "at"):
        return False
    if any(s.at(at).value is not None for at in range(max(0, i - NOTHING_WITHIN), i)):
        return False
    then = next((at for at in range(i + 3, i + 3 + THEN_WITHIN) if s.at(at).has("sep", "then")), None)
    return then is not None and not _then_load(s, then + 1)


def _then_load(s: Scanner, at: int) -> bool:
    """Whether what goes on is a load alone, "then dropped to 17.5": so the first ones were sets."""
    end = at + TURNED_WITHIN
    while at < end and s.at(at).value is None:
        at += 1
    value = s.at(at).value
    if value is None:
        return False
    closes = s.at(at + 1).kind in ("nl", "sym")
    return closes and (s.at(at - 1).has("load", "at") or value > MOST_REPS or value != int(value))
