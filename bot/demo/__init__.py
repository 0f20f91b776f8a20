"""A roster of our own invention, to try the bot with. Nobody in it exists."""

from pathlib import Path

from bot.roster import read_roster
from storage.roster import Roster

ROSTER = Path(__file__).parent / "roster.toml"


def demo_roster() -> Roster:
    return read_roster(ROSTER)
