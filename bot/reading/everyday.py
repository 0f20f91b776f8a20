"""Words of everyday language that look like words of the trade and are no typing errors: "clocked", "mouths", "fixes".

The frequency lists are those of pyspellchecker. A list is read when a word first looks like a slip of the trade's, so
that who spells well does not wait for it.
"""

from __future__ import annotations

import gzip
import json
from functools import lru_cache
from importlib.resources import files

from bot.reading.text import fold_word


@lru_cache(maxsize=8)
def everyday(language: str) -> frozenset[str]:
    """The folded words of a language's list; empty where there is none."""
    source = files("spellchecker") / "resources" / f"{language}.json.gz"
    if not source.is_file():
        return frozenset()
    counts: dict[str, int] = json.loads(gzip.decompress(source.read_bytes()))
    return frozenset(word if word.isascii() else fold_word(word) for word in counts)
