"""Little words that join, range and lead: words/<language>/little.toml, of all languages at once."""

from __future__ import annotations

from collections.abc import Iterable
from functools import cache

from bot.reading.lexicon import first_key, languages, table
from bot.reading.text import fold_words


@cache
def little(*names: str) -> frozenset[str]:
    """The words of a list, or of several, folded; signs are listed in the English file."""
    return frozenset(
        fold_words(word)
        for language in languages()
        for name in names
        for word in table(language, name="little").get(name, ())
    )


@cache
def _begun() -> dict[str, frozenset[str]]:
    """The lists in which something begins with a word or sign, by that word."""
    lists: dict[str, set[str]] = {}
    for name in {name for language in languages() for name in table(language, name="little")}:
        for phrase in little(name):
            lists.setdefault(first_key(phrase), set()).add(name)
    return {word: frozenset(names) for word, names in lists.items()}


def lists_begun(words: Iterable[str]) -> set[str]:
    """The lists of which something may stand in a text of these words."""
    begun = _begun()
    return set().union(*(begun[word] for word in words if word in begun))
