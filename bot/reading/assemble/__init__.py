"""All that was found in a message to one `Reading`."""

from bot.reading.assemble.whole import read

__all__ = ["read"]
