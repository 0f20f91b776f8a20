"""A wish for other movements, "can I do chin-ups instead of pull-ups?": what is in the plan, the coach decides."""

from __future__ import annotations

from bot.conversation import asked_by_them
from bot.conversation.desk import Desk
from bot.conversation.placing import message_of
from bot.conversation.words import phrases, starts
from bot.reading.days import named_days
from bot.reading.movements import find_movements

MOST_CHARACTERS = 160


def is_one(desk: Desk, text: str) -> bool:
    """Whether a message wishes for one movement in the place of another, and tells of none that was done."""
    said, known = text.casefold(), phrases("swap_wish")
    if len(text) > MOST_CHARACTERS or any(sign.isdigit() for sign in text):
        return False
    if not starts(said, known["swaps"]) or starts(said, known["done"]):
        return False
    if not (asked_by_them.asks(text) or starts(said, known["wishes"]) or said.startswith(known["orders"])):
        return False
    message = message_of(desk, text)
    named = {one.movement for one in find_movements(message)}
    other = len(named) > 1 or bool(starts(said, known["anything"]))
    return bool(named) and (other or not named_days(message).days)  # "Thursday's pull-ups rather on Friday" moves
