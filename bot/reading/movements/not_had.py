"""Gear that nobody could use, which names no movement: "pulley was taken so pull-ups 4x5", "no rings, dips 3x8"."""

from __future__ import annotations

from bot.reading.little import little
from bot.reading.message import Message

LONGEST = 3  # words of "out of order", and of "couldn't use the"
BESIDE = 3  # words that may stand between the gear and what was amiss: "rings were all taken"


def not_had(message: Message, start: int, end: int) -> bool:
    """Whether the gear named by tokens [start, end) was taken, broken or not there."""
    return _amiss_behind(message, end) or (_amiss_before(message, start) and not _of_a_lift(message, end))


def _of_a_lift(message: Message, at: int) -> bool:
    """ "No ring dips": the gear is part of a lift's name, where it stands in the singular."""
    hits = message.beginning("movements")[at] if at < len(message.tokens) else []
    return any(hit.table == "part" for hit in hits) and not message.tokens[at - 1].text.endswith(
        tuple(little("plural"))
    )


def _amiss_behind(message: Message, at: int) -> bool:
    tokens = message.tokens
    if message.little.isdisjoint(("not_free",)):
        return False
    last = at + BESIDE
    while at < len(tokens) and at < last and tokens[at].text in little("beside_not_free"):
        at += 1
    words = [token.text for token in tokens[at : at + LONGEST]]
    found = any(" ".join(words[:n]) in little("not_free") for n in range(1, len(words) + 1))
    return found and (len(words) < 2 or words[1] not in little("taken_off"))  # "the band taken off 20"


def _amiss_before(message: Message, at: int) -> bool:
    tokens = message.tokens
    if message.little.isdisjoint(("could_not_use",)):
        return False
    words = [token.text for token in tokens[max(0, at - LONGEST) : at]]
    if any(" ".join(words[n:]) in little("could_not_use") for n in range(len(words))):
        return True  # "left the band at home"
    while at and tokens[at - 1].text in little("the"):
        at -= 1
    words = [token.text for token in tokens[max(0, at - LONGEST) : at]]
    return any(" ".join(words[n:]) in little("could_not_use") for n in range(len(words)))
