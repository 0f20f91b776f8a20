"""A roster of our own invention, to try the bot with. Nobody in it exists."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta
from pathlib import Path

from bot.roster import read_roster
from planner.facts import Weekly
from storage.roster import Roster

ROSTER = Path(__file__).parent / "roster.toml"
NEWEST_TEST = timedelta(days=3)


def demo_roster(on: date) -> Roster:
    """The demo's roster as if written on day `on`: its newest test is three days old, and the first athlete trains
    that day, whenever it is tried."""
    roster = read_roster(ROSTER)
    newest = max(test.on for athlete in roster.athletes for test in athlete.tests)
    shift = on - NEWEST_TEST - newest
    first, *others = (
        replace(athlete, tests=tuple(replace(test, on=test.on + shift) for test in athlete.tests))
        for athlete in roster.athletes
    )
    today = replace(first, schedule=Weekly(frozenset({on.weekday(), (on.weekday() + 3) % 7})))
    return replace(roster, athletes=(today, *others))
