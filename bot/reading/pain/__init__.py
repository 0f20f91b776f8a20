"""Pain: where, which side, how much, when."""

from bot.reading.pain.find import find_pain

__all__ = ["find_pain"]
