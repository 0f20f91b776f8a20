"""The readers that each see one kind of thing; the assembler asks them all."""

from __future__ import annotations

import importlib
from collections.abc import Callable, Sequence

from bot.reading.message import Claim, Message
from bot.reading.reading import INTENTS


def _find(module: str, name: str) -> Callable[..., list[Claim]] | None:
    try:
        return getattr(importlib.import_module("bot.reading." + module), name, None)
    except ImportError:
        return None


FINDERS = [
    f
    for f in (
        _find("corrections", "find_corrections"),
        _find("body", "find_body"),
        _find("red_flags", "find_red_flags"),
        _find("pain", "find_pain"),
        _find("dates", "find_dates"),
    )
    if f
]
WISHES = _find("intents", "find_intents")


def find_claims(message: Message) -> list[Claim]:
    """All claims, those that overlap an earlier reader's left out."""
    claims: list[Claim] = []
    taken: set[int] = set()
    for finder in FINDERS:
        for claim in finder(message):
            own = set(range(claim.start, claim.end))
            if own & taken:
                continue
            taken |= own
            claims.append(claim)
    return claims


def find_wishes(message: Message, claims: Sequence[Claim], trained: bool) -> list[str]:
    if WISHES is None:
        return []
    return [claim.value for claim in WISHES(message, claims) if claim.value in INTENTS]
