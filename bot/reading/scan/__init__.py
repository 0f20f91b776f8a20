"""The first half of the set grammar: items to facts. What belongs to what is decided in `fold`."""

from bot.reading.scan.scanner import Scanner
from bot.reading.scan.walk import scan

__all__ = ["Scanner", "scan"]
