"""One order for several athletes by name, "Mira and Jon rest this week": the same order for each."""

from __future__ import annotations

import re
from collections.abc import Sequence

from bot.conversation.coach_vocabulary import vocabulary

Names = Sequence[tuple[str, str]]


def orders(text: str, names: Names, language: str) -> list[tuple[str, str]]:
    """Handle and order of each athlete of the first row of names in a message; none where fewer than two stand in a
    row, or where a name is of two athletes."""
    found = row(names, language, least=2).search(text.partition(":")[0])
    if found is None:
        return []
    meant = named(found[0], names)
    if len(meant) < 2:
        return []
    return [(handle, f"{text[: found.start()]}{handle}{text[found.end() :]}") for handle in meant]


def named(text: str, names: Names) -> list[str]:
    """The handles of the names in a text, in their order; none where one of them is of two athletes."""
    handles = [_handle(word, names) for word in re.findall(_any(names), text, re.IGNORECASE)]
    return [] if None in handles else list(dict.fromkeys(handle for handle in handles if handle is not None))


def is_any_named(text: str, names: Names) -> bool:
    """Whether a name stands in a text, be it of two athletes."""
    return bool(names) and re.search(_any(names), text, re.IGNORECASE) is not None


def row(names: Names, language: str, least: int) -> re.Pattern[str]:
    """So many names or more with commas or "and" between them."""
    joined = "|".join(sorted(map(re.escape, vocabulary(language, "words")["and"]), key=len, reverse=True))
    name, more = _any(names), "+" if least > 1 else "*"
    between = rf"\s*,\s*(?:(?:{joined})\s+)?{name}|\s*[&+]\s*{name}|\s+(?:{joined})\s+{name}"
    return re.compile(rf"{name}(?:{between}){more}", re.IGNORECASE)


def _any(names: Names) -> str:
    called = {word.casefold() for handle, name in names for word in (handle, name)}
    listed = "|".join(sorted(map(re.escape, called), key=len, reverse=True))
    return rf"(?<!\w)(?:{listed})(?!\w)"


def _handle(word: str, names: Names) -> str | None:
    found = {handle for handle, name in names if word.casefold() in (handle, name.casefold())}
    return found.pop() if len(found) == 1 else None
