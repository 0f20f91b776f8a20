"""A day that is taken back before another is named."""

from __future__ import annotations

from bot.reading.message import Message


def taken_back(message: Message, start: int, end: int) -> bool:
    """Whether a day is taken back before another is named: "on Friday, no wait, Thursday it was"."""
    grammar = message.beginning("grammar")
    between = message.tokens[start:end]
    if any(token.value is not None for token in between):
        return False
    hits = [hit for at in range(start, end) for hit in grammar[at]]
    return any(hit.table == "unreal" and hit.name == "mend" for hit in hits)
