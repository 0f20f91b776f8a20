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


class Everyday:
    """The folded words of a language's list, and how often each was counted; of no words where there is no list."""

    def __init__(self, counts: dict[str, int]) -> None:
        self._whole = sum(counts.values())
        accented = [word for word in counts if not word.isascii()]
        text = "\n".join(accented)
        for letter in set(text):
            text = text.replace(letter, fold_word(letter))  # for so many words, far less than each by itself
        for word, folded in zip(accented, text.split("\n") if text else (), strict=True):
            counts[folded] = counts.get(folded, 0) + counts.pop(word)
        self._counts = counts

    def __contains__(self, word: str) -> bool:
        return word in self._counts

    def share(self, word: str) -> float:
        """What a word is of all that is written."""
        count = self._counts.get(word)
        return count / self._whole if count else 0.0


@lru_cache(maxsize=8)
def everyday(language: str) -> Everyday:
    """A language's list."""
    source = files("spellchecker") / "resources" / f"{language}.json.gz"
    return Everyday(json.loads(gzip.decompress(source.read_bytes())) if source.is_file() else {})
