"""The second half of the set grammar: the facts of one exercise to its sets."""

from bot.reading.fold.block import fold_block

__all__ = ["fold_block"]
