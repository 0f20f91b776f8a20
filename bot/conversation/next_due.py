"""What follows a moment: the next day's plan, the next week's summary, each by its own day and local hour.

The next is looked for from the end of the day before it, never from the clock alone: an hour that was changed, a zone
whose data changed or a moment that came late would else give the same day again, and the line would end there.
"""

from __future__ import annotations

from datetime import date, datetime, time, timedelta
from zoneinfo import ZoneInfo

from sqlmodel import Session as Tx

from bot.clock import UnknownZone, moment_of, next_moment, zone_named
from storage import due
from storage.persons import Athlete, Coach, Who

PLAN, SUMMARY = "plan", "summary"
A_DAY = timedelta(days=1)


def plant_plan(tx: Tx, athlete: Athlete, last: date, now: datetime) -> None:
    """The plan that follows that of the day `last`: of the next day, or of today where that is gone by."""
    if athlete.silenced:
        return
    assert athlete.id is not None
    zone = _zone(athlete.timezone)
    day = max(last + A_DAY, now.astimezone(zone).date())
    due.schedule(tx, Who("athlete", athlete.id), PLAN, day, moment_of(day, athlete.plan_at, zone))


def plant_summary(tx: Tx, coach: Coach, last: date | None, now: datetime) -> None:
    """The summary that follows that of the day `last` (None: there was none yet), at an hour later than `now`."""
    if coach.summary_day is None or coach.summary_at is None:
        return
    assert coach.id is not None
    zone = _zone(coach.timezone)
    # A moment before the day, so that its first minute counts.
    since = now if last is None else max(now, moment_of(last + A_DAY, time.min, zone) - timedelta(minutes=1))
    moment = next_moment(since, zone, coach.summary_at, frozenset({coach.summary_day}))
    due.schedule(tx, Who("coach", coach.id), SUMMARY, moment.astimezone(zone).date(), moment)


def plant_summary_anew(tx: Tx, coach: Coach, now: datetime) -> None:
    """A coach's day, hour or zone may be another: what is yet to come gives way. A week that went stays as it went."""
    assert coach.id is not None
    who, zone = Who("coach", coach.id), _zone(coach.timezone)
    today, since = now.astimezone(zone).date(), now
    for row in due.open_for(tx, who, SUMMARY):
        if row.due_at <= now:
            continue  # late, but this week's
        due.cancel(tx, who, SUMMARY, row.for_date)
        if row.for_date == today:
            since = min(since, moment_of(today, time.min, zone) - timedelta(minutes=1))  # its new hour may have gone by
    plant_summary(tx, coach, due.newest_day(tx, who, SUMMARY), since)


def _zone(name: str) -> ZoneInfo:
    """A person's zone. UTC where the zone database lost it: the line goes on until the roster names another."""
    try:
        return zone_named(name)
    except UnknownZone:
        return ZoneInfo("UTC")
