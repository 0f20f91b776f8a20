"""The day that a question is about: "what's on Saturday?"."""

from __future__ import annotations

from datetime import date

from bot.reading.days.finder import named_days
from bot.reading.message import read_message
from bot.reading.reading import Context


def day_asked(text: str, context: Context) -> date | None:
    """The one day to come that a text names; None where it names none or several, or today."""
    message = read_message(text, context)
    named = {day.ahead for day in named_days(message).days if day.ahead is not None}
    if len(named) != 1:
        return None
    first, last = named.pop()
    return first if first == last and first > message.today else None
