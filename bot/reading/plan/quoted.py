"""The plan as it was sent, quoted: no report."""

from __future__ import annotations

from bot.reading.message import Message

QUOTES = {"'": "'", '"': '"', "“": "”", "„": "“", "‘": "’", "«": "»", "»": "«", "‚": "‘"}


def quoted_pieces(message: Message) -> list[tuple[int, int]]:
    """The pieces between quotation marks that hold a number: the plan as it was sent."""
    found: list[tuple[int, int]] = []
    if not any(sign in message.text for sign in QUOTES):
        return found
    at = 0
    tokens = message.tokens
    while at < len(tokens):
        sign = message.text[tokens[at].start : tokens[at].end] if tokens[at].kind == "sym" else ""
        shut = QUOTES.get(sign)
        closing = range(at + 1, len(tokens)) if shut else ()
        end = next((k for k in closing if message.text[tokens[k].start : tokens[k].end] == shut), None)
        if end is not None and any(token.value is not None for token in tokens[at:end]):
            found.append((at, end + 1))
            at = end
        at += 1
    return found
