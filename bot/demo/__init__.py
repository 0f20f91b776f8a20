"""A roster of our own invention, to try the bot with. Nobody in it exists."""

from __future__ import annotations

from dataclasses import replace
from datetime import datetime, timedelta
from pathlib import Path
from zoneinfo import ZoneInfo

from bot.roster import read_roster
from planner.facts import Weekly
from storage.roster import Roster

ROSTER = Path(__file__).parent / "roster.toml"
NEWEST_TEST = timedelta(days=3)
DAYBREAK = 4  # before that hour a report is of the evening before


def demo_roster(now: datetime) -> Roster:
    """The demo's roster as if written at `now`, whenever that is: its newest test is three days old, and the first
    athlete, who is somewhere where the day has begun, has a plan for it that is due."""
    roster = read_roster(ROSTER)
    newest = max(test.on for athlete in roster.athletes for test in athlete.tests)
    zone = next(one.timezone for one in roster.athletes if now.astimezone(ZoneInfo(one.timezone)).hour >= DAYBREAK)
    here = now.astimezone(ZoneInfo(zone))
    shift = here.date() - NEWEST_TEST - newest
    first, *others = (
        replace(athlete, tests=tuple(replace(test, on=test.on + shift) for test in athlete.tests))
        for athlete in roster.athletes
    )
    training = Weekly(frozenset({here.weekday(), (here.weekday() + 3) % 7}))
    plan_at = min(first.plan_at, here.time().replace(second=0, microsecond=0))
    today = replace(first, schedule=training, timezone=zone, plan_at=plan_at)
    return replace(roster, athletes=(today, *others))
