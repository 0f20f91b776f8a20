"""Words for a plan that are the heading of what was done: "Today's training: pull-ups 5x4", "sesión del lunes: …"."""

from __future__ import annotations

from bot.reading.message import Message


def heads_work(message: Message, at: int) -> bool:
    """Whether an exercise or a number stands at a token, signs between left out."""
    tokens = message.tokens
    while at < len(tokens) and tokens[at].kind in ("sym", "nl"):
        at += 1
    return at < len(tokens) and (bool(message.beginning("movements")[at]) or tokens[at].value is not None)
