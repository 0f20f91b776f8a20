"""Movements named in a coach's own words."""

from __future__ import annotations

from functools import lru_cache

from bot.reading.message import Message
from bot.reading.movements.mention import Mention
from bot.reading.text import fold
from bot.reading.tokens import tokenize


@lru_cache(maxsize=1024)
def _nickname_tokens(phrase: str) -> tuple[str, ...]:
    return tuple(token.text for token in tokenize(fold(phrase).text))


def by_nickname(message: Message) -> list[Mention]:
    """A coach's own words come first."""
    found: list[Mention] = []
    if not message.context.nicknames:
        return found
    words = [token.word for token in message.tokens]
    for phrase, movement in message.context.nicknames:
        wanted = list(_nickname_tokens(phrase))
        if not wanted:
            continue
        for at in range(len(words) - len(wanted) + 1):
            if words[at : at + len(wanted)] == wanted:
                found.append(Mention(movement, [(at, at + len(wanted))]))
    return sorted(found, key=lambda mention: mention.start)
