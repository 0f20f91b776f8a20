"""Words of everyday language by how often people write them: what looks like the trade's and is no typing error.

"clocked", "mouths", "fixes". The frequency lists are those of pyspellchecker. A list is read when a word first looks
like a slip, so that who spells well does not wait for it.
"""

from __future__ import annotations

import gzip
import json
from functools import lru_cache
from importlib.resources import files

from bot.reading.text import fold_word


@lru_cache(maxsize=8)
def everyday(language: str) -> dict[str, float]:
    """The folded words of a language's list with their share of all that is written; empty where there is none."""
    source = files("spellchecker") / "resources" / f"{language}.json.gz"
    if not source.is_file():
        return {}
    counts: dict[str, int] = json.loads(gzip.decompress(source.read_bytes()))
    whole = sum(counts.values())
    shares: dict[str, float] = {}
    for word, count in counts.items():
        folded = word if word.isascii() else fold_word(word)
        shares[folded] = shares.get(folded, 0.0) + count / whole
    return shares
