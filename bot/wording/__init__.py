"""Data to sentences. Every sentence for people stands in the catalogues, `<language>/*.ftl`."""

from bot.wording.catalogue import Wording, wording_for

__all__ = ["Wording", "wording_for"]
