"""The language of a message."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.lexicon import languages
from bot.reading.spelling import own_words, spelled

CLEARLY = 3  # words of another language than the hint's, and none of its own
LEAST = 2  # of these, where every word of a message is of that language
MOST_SLIPS = 12  # words of a message looked at for the language of its typing errors


def guess_language(words: Sequence[str], hint: str | None) -> str:
    """The language of a message: the hint, unless the words speak clearly for another; English where nothing does."""
    names = languages()
    base = hint.split("-")[0].lower() if hint else None
    if base in names and sum(word not in own_words(base) for word in words[:200]) < min(
        CLEARLY, max(len(words) - 1, 1)
    ):
        return base  # before the words of other languages are read
    counts = dict.fromkeys(names, 0)
    for word in words[:200]:
        homes = [name for name in names if word in own_words(name)]
        if len(homes) == 1:
            counts[homes[0]] += 1
    if base is None and not any(counts.values()):
        for name in names:  # "domindas 4x4, fonods 3x8": nothing but typing errors
            counts[name] = sum(len(spelled(word, name)) == 1 for word in words[:MOST_SLIPS])
    best = max(names, key=lambda name: counts[name])
    if base in names:
        assert base is not None
        whole = len(words) >= LEAST and all(word in own_words(best) for word in words)  # "heute krank"
        return best if counts[base] == 0 and (counts[best] >= CLEARLY or (whole and counts[best] >= LEAST)) else base
    return best
