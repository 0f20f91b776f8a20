"""Second thoughts within a message: of "slept 6, sorry, 7 hours" "yesterday, no, the day before" the later counts."""

from __future__ import annotations

import itertools

from bot.reading.little import little
from bot.reading.message import Message

MOST_BETWEEN = 6  # tokens from the one to the other


def put_right(message: Message, start: int, end: int) -> bool:
    """Whether tokens [start, end) are nothing but "no, wait", "sorry": what follows replaces what went before."""
    if not 0 < end - start <= MOST_BETWEEN:
        return False
    thoughts = {
        at
        for hit in message.hits("mends", "within")
        for at in range(hit.start, hit.end)
        # "Monday, no Tuesday either"
        if hit.name != "lone" or (hit.end < end and message.tokens[hit.end].kind == "sym")
    }
    return bool(thoughts.intersection(range(start, end))) and all(
        at in thoughts or message.tokens[at].text in little("correcting") for at in range(start, end)
    )


def withdrawn(message: Message) -> frozenset[int]:
    """The numbers that are taken back at once, with the words that do so."""
    known: frozenset[int] | None = message.notes.get("withdrawn")
    if known is None:
        out: set[int] = set()
        if message.hits("mends", "within"):
            numbers = [at for at, token in enumerate(message.tokens) if token.value is not None]
            for one, two in itertools.pairwise(numbers):
                if put_right(message, one + 1, two):
                    out.update(range(one, two))
        known = message.notes["withdrawn"] = frozenset(out)
    return known
