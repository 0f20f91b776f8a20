"""Facts of the body and of the whole session: bodyweight, sleep, minutes, effort of the session."""

from bot.reading.body.find import find_body

__all__ = ["find_body"]
