"""Time away: which days are blocked, and how carefully training starts again.

The cuts are caution, larger than the measured loss of strength (`sources`: bench -1.7 % after 14 days, Hortobágyi 1993;
-8.9 % after 5 weeks, García-Pallarés 2010), and are worded so.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date, timedelta
from typing import Literal

from planner.facts import Absence, Record, Session, WarningSign
from planner.rules import Rules

DAY = timedelta(days=1)
Kind = Literal["away", "ill", "pause"]


@dataclass(frozen=True, slots=True)
class Away:
    """Days blocked, `since` to `until` inclusive; `until` None: no end in sight."""

    kind: Kind
    since: date
    until: date | None

    def covers(self, day: date) -> bool:
        return self.since <= day and (self.until is None or day <= self.until)

    def days(self, day: date) -> int:
        """Length [days], of an open one up to `day`."""
        return ((self.until or day) - self.since).days + 1


def absences(record: Record, on: date, fever_free_days: int) -> tuple[Away, ...]:
    """Merged stretches without training that are known on `on`, in order.

    An open one ends with a `resume`, or with a reported session: who trains is back. After fever come
    `fever_free_days` more.
    """
    # A night's sleep told of is no training: it ends no illness.
    trained: list[date] = []
    if record.absences:
        trained = [one.on for one in record.sessions if not one.is_test and one.on <= on and _is_training(one)]
    resumed = [fact.on for fact in record.resumes if fact.on <= on]
    found = [
        _ended(fact, resumed, trained, fever_free_days)
        for fact in record.absences
        if fact.said_on <= on and fact.kind != "missed"
    ]
    found += [
        Away("ill", sign.on, sign.on + timedelta(fever_free_days)) for sign in _fevers(record.signs) if sign.on <= on
    ]
    return _merged(away for away in found if away.until is None or away.until >= away.since)


def _fevers(signs: Iterable[WarningSign]) -> list[WarningSign]:
    return [sign for sign in signs if sign.sign == "fever"]


def _is_training(session: Session) -> bool:
    return bool(session.sets) or session.session_rpe is not None or session.duration_min is not None


def _ended(fact: Absence, resumed: list[date], trained: list[date], fever_free_days: int) -> Away:
    kind: Kind = "away" if fact.kind == "missed" else fact.kind
    until, last_ill = fact.until, fact.until
    back = [day for day in resumed if day >= max(fact.since, fact.said_on) and (until is None or day <= until)]
    if back:
        last_ill = min(back) - DAY
        until = last_ill
    elif until is None:
        sessions = [day for day in trained if day > max(fact.since, fact.said_on)]
        until = min(sessions) - DAY if sessions else None
    if fact.fever and last_ill is not None:
        # Two whole days without fever: from the first day that had none.
        until = last_ill + timedelta(fever_free_days)
    return Away(kind, fact.since, until)


def _merged(found: Iterable[Away]) -> tuple[Away, ...]:
    merged: list[Away] = []
    for away in sorted(found, key=lambda one: one.since):
        last = merged[-1] if merged else None
        if last and (last.until is None or away.since <= last.until + DAY):
            until = None if last.until is None or away.until is None else max(last.until, away.until)
            merged[-1] = Away(last.kind, last.since, until)
        else:
            merged.append(away)
    return tuple(merged)


@dataclass(frozen=True, slots=True)
class Return:
    """How training starts again: share taken off the system load and an effort ceiling in the first week, the block
    from its start, a test and a rung down for skills. `days` away."""

    on: date
    days: int
    cut: float
    rpe_ceiling: float
    restart: bool
    retest: bool


def return_after(away: Away, rules: Rules) -> Return | None:
    """What follows an ended absence; None where it was short or is still open."""
    if away.until is None:
        return None
    days = away.days(away.until)
    if days < rules.whole("absence.short_days"):
        return None
    long, very_long = rules.whole("absence.long_days"), rules.whole("absence.retest_days")
    cut = rules.number("absence.short_cut" if days < long else "absence.long_cut")
    return Return(away.until + DAY, days, cut, rules.number("absence.rpe_ceiling"), days >= long, days > very_long)
