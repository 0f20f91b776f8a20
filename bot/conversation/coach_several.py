"""One order for several athletes by name, "Mira and Jon rest this week": the same order for each."""

from __future__ import annotations

import re
from collections.abc import Sequence

from bot.conversation.coach_vocabulary import vocabulary

Names = Sequence[tuple[str, str]]


def orders(text: str, names: Names, language: str) -> list[tuple[str, str]]:
    """Handle and order of each athlete of the first row of names in a message; none where fewer than two stand in a
    row, or where a name is of two athletes."""
    found = _row(names, language).search(text.partition(":")[0])
    if found is None:
        return []
    handles = [_handle(word, names) for word in re.findall(_any(names), found[0], re.IGNORECASE)]
    meant = list(dict.fromkeys(handle for handle in handles if handle is not None))
    if None in handles or len(meant) < 2:
        return []
    return [(handle, f"{text[: found.start()]}{handle}{text[found.end() :]}") for handle in meant]


def _row(names: Names, language: str) -> re.Pattern[str]:
    """Two names or more with commas or "and" between them."""
    joined = "|".join(sorted(map(re.escape, vocabulary(language, "words")["and"]), key=len, reverse=True))
    name = _any(names)
    return re.compile(rf"{name}(?:\s*,\s*(?:(?:{joined})\s+)?{name}|\s*[&+]\s*{name}|\s+(?:{joined})\s+{name})+", re.I)


def _any(names: Names) -> str:
    called = {word.casefold() for handle, name in names for word in (handle, name)}
    listed = "|".join(sorted(map(re.escape, called), key=len, reverse=True))
    return rf"(?<!\w)(?:{listed})(?!\w)"


def _handle(word: str, names: Names) -> str | None:
    found = {handle for handle, name in names if word.casefold() in (handle, name.casefold())}
    return found.pop() if len(found) == 1 else None
