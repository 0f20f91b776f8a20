from bot.reading.assemble import read

__all__ = ["read"]
