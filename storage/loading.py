"""A roster goes into the database: new people are added, known ones get their new settings."""

from __future__ import annotations

from collections.abc import Collection
from dataclasses import dataclass, field
from datetime import date, datetime
from typing import Any
from zoneinfo import ZoneInfo

import sqlalchemy as sa
from sqlmodel import Session

from planner.facts import Session as Training
from planner.facts import WorkSet
from storage import facts, tombstones
from storage.database import run
from storage.persons import (
    Athlete,
    Coach,
    add_athlete,
    add_coach,
    athletes_of,
    coaches,
    new_stamp,
    schedule_to_json,
    update_athlete,
    update_coach,
)
from storage.roster import Roster, RosterAthlete, RosterTest

OWN_SETTINGS = ("unit", "plan_at")  # athletes set these by message, too


@dataclass(frozen=True)
class LoadedRoster:
    """`athlete_ids` by handle, in the roster's order. `added`: handles that are new. `absent`: handles of the same
    coach that the roster doesn't name; they stay as they were. `erased`: handles on the roster whose athlete had all
    their data erased; they were not taken up. `moved`: ids of those whose zone or hour is another now. `own`: by
    handle, what athletes set for themselves otherwise than the roster, and keep."""

    coach_id: int
    coach_added: bool
    athlete_ids: dict[str, int]
    added: tuple[str, ...]
    absent: tuple[str, ...]
    erased: tuple[str, ...] = ()
    moved: tuple[int, ...] = ()
    own: dict[str, dict[str, Any]] = field(default_factory=dict)


def load_roster(tx: Session, roster: Roster, now: datetime, again: Collection[str] = ()) -> LoadedRoster:
    """Put a checked roster in. The coach is known by name, an athlete by handle.

    `now` dates the tests' entry and, in each new athlete's own zone, the day they started. Loading a roster again
    changes settings and adds new tests; it touches no other fact and no start day. What athletes set for themselves
    stays until the roster says something else of it than it did. Who had all their data erased is
    left out, unless `again` has their handle.
    """
    coach_id, coach_added = _coach(tx, roster)
    erased = tombstones.buried_of(tx, coach_id, [entry.handle for entry in roster.athletes])
    wanted = {handle.casefold() for handle in again}
    known = {row.handle: row for row in athletes_of(tx, coach_id)}
    ids: dict[str, int] = {}
    added: list[str] = []
    left_out: list[str] = []
    moved: list[int] = []
    own: dict[str, dict[str, Any]] = {}
    for entry in roster.athletes:
        row, erased_at = known.get(entry.handle), erased.get(entry.handle)
        # Who is there all the same came back with an older copy, and is to be erased again before anything else.
        back = row is not None and erased_at is not None and tombstones.is_erased(row.added_at, erased_at)
        if back or (row is None and erased_at is not None and entry.handle.casefold() not in wanted):
            left_out.append(entry.handle)
            continue
        if row is None:
            started, at = now.astimezone(ZoneInfo(entry.timezone)).date(), tombstones.after(erased_at, now)
            new = Athlete(coach_id=coach_id, handle=entry.handle, started_on=started, added_at=at, **_settings(entry))
            ids[entry.handle] = add_athlete(tx, new)
            added.append(entry.handle)
        else:
            assert row.id is not None
            ids[entry.handle] = row.id
            settings, kept = _settings(entry), _kept(row, entry)
            if kept:
                own[entry.handle] = kept
            if (row.timezone, row.plan_at) != (entry.timezone, kept.get("plan_at", entry.plan_at)):
                moved.append(row.id)
            update_athlete(tx, row.id, settings | kept)
        _add_tests(tx, ids[entry.handle], entry.tests, now)
    absent = tuple(handle for handle in known if handle not in ids)
    return LoadedRoster(coach_id, coach_added, ids, tuple(added), absent, tuple(left_out), tuple(moved), own)


def _coach(tx: Session, roster: Roster) -> tuple[int, bool]:
    given = roster.coach
    settings: dict[str, Any] = {
        "timezone": given.timezone,
        "language": given.language,
        "unit": given.unit,
        "summary_day": given.summary_day,
        "summary_at": given.summary_at,
    }
    known = run(tx, sa.select(coaches.c.id).where(coaches.c.name == given.name)).scalar()
    if known is None:
        return add_coach(tx, Coach(name=given.name, **settings)), True
    update_coach(tx, known, settings)
    return int(known), False


def _settings(entry: RosterAthlete) -> dict[str, Any]:
    return {
        "name": entry.name,
        "timezone": entry.timezone,
        "language": entry.language,
        "unit": entry.unit,
        "bodyweight_kg": entry.bodyweight_kg,
        "plate_step": entry.plate_step,
        "plate_unit": entry.plate_unit,
        "equipment": sorted(entry.equipment),
        "schedule": schedule_to_json(entry.schedule),
        "plan_at": entry.plan_at,
        "ladders": [[entry.ladder, entry.rung], *([ladder, rung] for ladder, rung in entry.more_ladders)],
        "screened": entry.screened,
        "roster_said": _said(entry),
        "stamp": new_stamp(),
    }


def _kept(row: Athlete, entry: RosterAthlete) -> dict[str, Any]:
    """What the athlete set otherwise than the roster, where that says no more than when it was loaded last."""
    before, now = row.roster_said or {}, _said(entry)
    kept = {name: getattr(row, name) for name in OWN_SETTINGS if before.get(name) == now[name]}
    return {name: value for name, value in kept.items() if value != getattr(entry, name)}


def _said(entry: RosterAthlete) -> dict[str, str]:
    return {name: str(getattr(entry, name)) for name in OWN_SETTINGS}


def _add_tests(tx: Session, athlete_id: int, tests: tuple[RosterTest, ...], now: datetime) -> None:
    by_day: dict[date, list[WorkSet]] = {}
    for test in sorted(tests, key=lambda test: test.on):
        by_day.setdefault(test.on, []).append(_as_set(test))
    if not by_day:
        return
    known = {(old.on, old.sets) for old in facts.sessions(tx, athlete_id) if old.is_test}
    for on, sets in by_day.items():
        if (on, tuple(sets)) not in known:
            facts.add(tx, athlete_id, Training(on, tuple(sets), is_test=True), "coach", now, None)


def _as_set(test: RosterTest) -> WorkSet:
    return WorkSet(
        movement=test.movement,
        reps=test.reps,
        side=test.side,
        hold_s=test.hold_s,
        load_kg=test.load_kg,
        assist_kg=test.assist_kg,
        rpe=test.rpe,
        rom=test.rom,
    )
