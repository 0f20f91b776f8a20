"""What was done, prepared once for a review: sessions in order, exposures, strength, equipment, pain, absences."""

from __future__ import annotations

from bisect import bisect_left, bisect_right
from collections.abc import Mapping
from dataclasses import replace
from datetime import date
from functools import cached_property
from operator import attrgetter

from planner.absence import Away, absences
from planner.digest import Digest, digest, main_sets
from planner.facts import Record, Session, Side
from planner.followed import Line
from planner.layout import GRIPS, SIDES, Key
from planner.loading import Plates
from planner.orders import Orders, rules_on
from planner.pain import PainHistory
from planner.rules import Rules
from planner.strength import BodyweightHistory, followed_of, lines_of
from planner.trend import Trend

_NONE: Mapping[Side, int] = {"left": 0, "right": 0}
LOADED_BY = frozenset({"belt", "dumbbells"})


class History:
    """The record of one athlete as known on day `on`. Everything that costs is folded once, when first asked for."""

    def __init__(self, record: Record, on: date) -> None:
        record = known_by(record, on)
        self.record = record
        self.athlete = record.athlete
        self.on = on
        self.rules: Rules = rules_on(record, on)
        self.orders = Orders(record.orders)
        self.pain = PainHistory(record, self.rules)
        self.bodyweight = BodyweightHistory(record)
        self.plates = Plates(record.athlete.plate_step, record.athlete.plate_unit)
        self.sessions: tuple[Session, ...] = tuple(sorted([one for one in record.sessions if one.on <= on], key=_on))
        self.trained = tuple([one for one in self.sessions if not one.is_test])
        self._days = [one.on for one in self.sessions]

    @cached_property
    def aways(self) -> tuple[Away, ...]:
        return absences(self.record, self.on, self.rules.whole("absence.fever_free_days"))

    @cached_property
    def bodyweights(self) -> list[float]:
        """Bodyweight [kg] on the day of each session."""
        return self.bodyweight.on_each(self._days)

    @cached_property
    def _done(self) -> list[Digest]:
        return [digest(one) for one in self.trained]

    @cached_property
    def pull_days(self) -> tuple[date, ...]:
        """Days on which something was pulled, each once."""
        return tuple(sorted({one.on for one, done in zip(self.trained, self._done, strict=True) if done.layout.pulls}))

    @cached_property
    def session_days(self) -> frozenset[date]:
        return frozenset([one.on for one in self.trained if one.sets or one.session_rpe is not None])

    def pulled_before(self, day: date) -> date | None:
        """The newest day before `day` with pulling."""
        at = bisect_left(self.pull_days, day)
        return self.pull_days[at - 1] if at else None

    def pulled_after(self, day: date) -> date | None:
        """The first day after `day` with pulling."""
        at = bisect_right(self.pull_days, day)
        return self.pull_days[at] if at < len(self.pull_days) else None

    def between(self, since: date, until: date) -> tuple[Session, ...]:
        """Sessions of the days `since` to `until`, both included, tests too."""
        return self.sessions[bisect_left(self._days, since) : bisect_right(self._days, until)]

    def equipment(self, day: date) -> frozenset[str]:
        """What there is to train with on `day`: the newest word that covers it, else the roster's."""
        found = self.athlete.equipment
        for fact in self.record.equipment:
            if fact.since <= day and (fact.until is None or day <= fact.until):
                found = fact.has
        return found

    def can_load(self, day: date) -> bool:
        """Whether weight can be hung on: a belt or dumbbells, or, with the usual equipment, that it has been done."""
        has = self.equipment(day)
        return bool(has & LOADED_BY) or (has == self.athlete.equipment and self._has_loaded)

    @cached_property
    def _has_loaded(self) -> bool:
        return any(work.load_kg > 0 for one in self.sessions for work in main_sets(one))

    @cached_property
    def _lines(self) -> Mapping[Key, Line]:
        return lines_of(self.sessions, self.bodyweights, self.rules)

    @cached_property
    def strength(self) -> Mapping[Key, Trend]:
        return followed_of(self._lines)

    def steepness(self, name: str) -> float:
        """How the athlete's reps fall with load in a movement of both arms; 1 where nothing was learned."""
        trend = self.strength.get((name, None))
        return 1.0 if trend is None else trend.habits.steepness

    def level_before(self, name: str, day: date) -> float | None:
        line = self._lines.get((name, None))
        return None if line is None else line.level_before(day)

    def levels_before(self, name: str, day: date) -> int:
        """How many measurements a grip's trend had before `day`."""
        line = self._lines.get((name, None))
        return 0 if line is None else line.count_before(day)

    @cached_property
    def exposures(self) -> Mapping[date, Mapping[Side, int]]:
        """One-arm-specific reps done, by day and side. A set without a side counts on both."""
        found: dict[date, dict[Side, int]] = {}
        for one, done in zip(self.trained, self._done, strict=True):
            if done.left or done.right:
                before = found.get(one.on, _NONE)
                found[one.on] = {"left": before["left"] + done.left, "right": before["right"] + done.right}
        return found


def known_by(record: Record, on: date) -> Record:
    """The record without what was only said after `on`; itself where nothing was."""
    later: dict[str, tuple[object, ...]] = {}
    for name, said in _SAID.items():
        facts = getattr(record, name)
        if facts and max(map(said, facts)) > on:
            later[name] = tuple([fact for fact in facts if said(fact) <= on])
    return replace(record, **later) if later else record  # type: ignore[arg-type]


_on, _said_on = attrgetter("on"), attrgetter("said_on")
_SAID = {
    "pain": _on,
    "signs": _on,
    "bodyweights": _on,
    "absences": _said_on,
    "resumes": _on,
    "moves": _said_on,
    "clips": _on,
    "orders": _on,
}


__all__ = ["GRIPS", "SIDES", "History", "known_by"]
