"""What strength has gained of late, and whether that is worth the word: one test 2 % up is no progress."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import timedelta

from planner.facts import Record
from planner.orders import rules_on
from planner.plan import Review, Strength
from planner.review import review

WEEKS = 4  # as far back as adherence is counted


@dataclass(frozen=True)
class Gain:
    """The main lift's 1RM against `WEEKS` before, in system load [kg]. `is_change`: it is at least `least_kg`."""

    kg: float
    least_kg: float

    @property
    def is_change(self) -> bool:
        return abs(self.kg) >= self.least_kg


def gain_of(record: Record, seen: Review) -> Gain | None:
    """What was gained up to the day of a review; None where there was no estimate then, or no main lift is trained."""
    before = seen.on - timedelta(weeks=WEEKS)
    now = _main_strength(seen, seen.main_lift)
    if now is None or before < record.athlete.started_on:
        return None
    then = _main_strength(review(record, before), seen.main_lift)
    if then is None:
        return None
    least = rules_on(record, seen.on).number("strength.smallest_progress") * seen.bodyweight_kg
    return Gain(now.e1rm_kg - then.e1rm_kg, least)


def _main_strength(seen: Review, name: str | None) -> Strength | None:
    return next((one for one in seen.strength if one.movement == name and one.side is None), None)
