"""Months gone by, as they are named of what was then: "that was 20 in March"."""

from __future__ import annotations

from bot.reading.lexicon import Hit
from bot.reading.little import little
from bot.reading.message import Message


def months_gone(message: Message) -> list[Hit]:
    """The months with "in" before them, other than the one it is, that are no part of a date."""
    tokens = message.tokens
    return [
        hit
        for hit in message.hits("dates", "month")
        if hit.name != str(message.local.month)
        and hit.start
        and tokens[hit.start - 1].text in little("in_month")
        and not (hit.end < len(tokens) and tokens[hit.end].value is not None)
    ]
