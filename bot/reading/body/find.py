"""All claims of the body and of the session."""

from __future__ import annotations

from bot.reading.better import withdrawn
from bot.reading.body.bodyweight import find_bodyweight
from bot.reading.body.cues import BodyCues
from bot.reading.body.duration import find_duration
from bot.reading.body.session_rpe import find_session_rpe
from bot.reading.body.sleep import find_sleep
from bot.reading.message import Claim, Message

FOUND = "body"  # the key of what was found, for the readers that ask for it too


def find_body(message: Message) -> list[Claim]:
    """Claims `bodyweight` [kg], `sleep` [h], `duration` [min], `session_rpe`; a doubtful one carries its question."""
    found: list[Claim] | None = message.notes.get(FOUND)
    if found is None:
        found = message.notes[FOUND] = _find(message)
    return list(found)


def _find(message: Message) -> list[Claim]:
    body = BodyCues(message)
    timed = "span" in body.tables or ("unit", "hour") in body.at  # "trained for an hour"
    if not timed and not message.numbers_within(0, len(message.tokens)):
        return []
    claims: list[Claim] = []
    taken: set[int] = set(withdrawn(message))
    for finder in (find_sleep, find_session_rpe, find_bodyweight, find_duration):
        for claim in finder(body, taken):
            taken |= set(range(claim.start, claim.end))
            claims.append(claim)
    return claims
