"""Little words that join, range and lead: words/<language>/little.toml, of all languages at once."""

from __future__ import annotations

from functools import cache

from bot.reading.lexicon import languages, table
from bot.reading.text import fold


@cache
def little(name: str) -> frozenset[str]:
    """The words of one list, folded; signs are listed in the English file."""
    return frozenset(
        fold(word).text for language in languages() for word in table(language, name="little").get(name, ())
    )
