"""The readers that each see one kind of thing; the assembler asks them all."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import replace

from bot.reading.body import find_body
from bot.reading.corrections import find_corrections
from bot.reading.dates import find_dates
from bot.reading.intents import find_asides, find_intents
from bot.reading.message import Claim, Message
from bot.reading.pain import find_pain
from bot.reading.reading import INTENTS
from bot.reading.red_flags import find_red_flags

# In order of right: a later reader's claim over tokens that an earlier one has is dropped.
FINDERS: tuple[Callable[[Message], list[Claim]], ...] = (
    find_corrections,  # first: "bodyweight is 71.2 not 72.1" mends, it does not weigh
    find_body,
    find_red_flags,
    find_pain,
    find_dates,
    find_asides,
)


def find_claims(message: Message) -> list[Claim]:
    """All claims, those that overlap an earlier reader's left out."""
    claims: list[Claim] = []
    taken: set[int] = set()
    for finder in FINDERS:
        for claim in finder(message):
            own = set(range(claim.start, claim.end))
            if finder is find_asides and own & taken and claim.start not in taken:
                # "2 more than last week": the words but for the week, and that is no day trained
                claims = [
                    replace(c, kind="noise", value=None) if c.kind == "day" and c.start in own else c for c in claims
                ]
                claim = replace(claim, end=min(own & taken))
                own = set(range(claim.start, claim.end))
            if own & taken:
                continue
            taken |= own
            claims.append(claim)
    return claims


def find_wishes(message: Message, claims: Sequence[Claim]) -> list[str]:
    """What the sender wants besides reporting, as intents."""
    return [claim.value for claim in find_intents(message, claims) if claim.value in INTENTS]
