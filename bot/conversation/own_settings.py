"""What athletes set for themselves: the unit of their loads, and the hour of their plan."""

from __future__ import annotations

import re
from datetime import time

from bot.conversation import moments
from bot.conversation.desk import Desk
from bot.conversation.words import folded
from bot.reading.text import fold

WORD = re.compile(r"[^\W\d_]+(?:'[^\W\d_]+)?")
AT = re.compile(r"\b(\d{1,2})(?:[:.h](\d{2}))?\s*(am|pm|a\.m\.?|p\.m\.?|uhr|h)?\b")
EARLIEST, LATEST = time(4), time(21)  # a day's plan that comes later is of no use that day; common practice
MOST_CHARACTERS = 80
NOON, HOURS, MINUTES = 12, 24, 60


def carried_out(desk: Desk, text: str) -> str | None:
    """Set what a message wishes for and say so; None where its words are not all about that."""
    if len(text) > MOST_CHARACTERS:
        return None
    said = fold(text).text.casefold()
    known = {name: set(found) for name, found in folded("own_settings").items()}
    words = set(WORD.findall(AT.sub(" ", said)))
    hours = AT.findall(said)
    if not hours and any(sign.isdigit() for sign in said):
        return None
    if len(hours) == 1 and words & known["plan"] and words & known["at"]:
        hour, all_known = _hour(*hours[0]), words <= known["plan"] | known["at"] | known["small"]
        return _plan_at(desk, hour) if hour is not None and all_known else None
    units = [name for name in ("lb", "kg") if words & known[name]]
    if hours or len(units) != 1 or not words & known["into"]:
        return None
    if not words <= known[units[0]] | known["into"] | known["small"]:
        return None
    desk.set_own({"unit": units[0]})
    return desk.say.say(f"unit-set-{units[0]}")


def _hour(hour: str, minute: str, half: str) -> time | None:
    of_day, past = int(hour), int(minute or 0)
    if half.startswith("p") and of_day < NOON:
        of_day += NOON
    return time(of_day, past) if of_day < HOURS and past < MINUTES else None


def _plan_at(desk: Desk, at: time) -> str:
    say, shown = desk.say, f"{at:%H:%M}"
    if not EARLIEST <= at <= LATEST:
        return say.say("plan-at-odd", earliest=f"{EARLIEST:%H:%M}", latest=f"{LATEST:%H:%M}")
    desk.set_own({"plan_at": at})
    moments.at_new_hours(desk.tx, [desk.id], desk.now)
    return say.say("plan-at-set", at=shown)
