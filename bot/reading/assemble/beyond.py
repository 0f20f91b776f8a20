"""What nobody writes in earnest is asked: a load of ten digits, hundreds of sets."""

from __future__ import annotations

from dataclasses import replace

from bot.reading.fold.sets import Work
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.reading import Ask
from bot.reading.tokens import MOST_DIGITS

MOST_SETS_TOLD = 150  # of one message
SPAN = 80  # characters quoted


def ask_beyond(message: Message, work: Work) -> None:
    """Put out of `work` what is beyond belief, and ask about it."""
    if len(work.sets) > MOST_SETS_TOLD:
        work.sets.clear()
        work.places.clear()
        work.asks[:] = [Ask("sets", message.text.strip()[:SPAN])]
    tokens = message.tokens
    for at, token in enumerate(tokens[1:], 1):
        endless = len(token.text) > MOST_DIGITS and token.value is None and token.text.isdigit()
        if endless and work.sets and (tokens[at - 1].text in ("+", "@") or tokens[at - 1].text in little("with")):
            work.sets[:] = [replace(one, load_kg=None) for one in work.sets]
            work.asks.append(Ask("load_kg", message.span(at - 1, at + 1)[:SPAN]))
            return
        if endless and work.sets:
            work.unread.append(message.span(at, at + 1)[:SPAN])
