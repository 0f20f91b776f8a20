"""The movements a message names."""

from bot.reading.movements.find import find_movements

__all__ = ["find_movements"]
