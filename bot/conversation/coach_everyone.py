"""Orders for everyone: "everyone rest this week", "no archers for anyone but mira"; which of them may be given so.

Carried out for each as for several by name. What would make it harder for all at once, or gives back what was kept
from them, is asked for twice; what is right for one and wrong for the next is refused.
"""

from __future__ import annotations

import re

from bot.conversation import coach_several
from bot.conversation.coach_days import weekdays
from bot.conversation.coach_several import Names
from bot.conversation.coach_vocabulary import vocabulary
from bot.conversation.coach_words import Command

# A load, a rung, clips that were seen, a stop that is lifted: decided by what one athlete has shown.
BY_NAME = frozenset("lock rung approve seen restart".split())
TWICE = frozenset("unlock include resume".split())


def orders(text: str, names: Names, language: str) -> list[tuple[str, str]]:
    """Handle and order of each athlete, those apart who are excepted; none where a message is not for everyone."""
    excepted, rest = _excepted(text, names, language)
    found = _everyone_in(rest, language)
    if found is None or coach_several.is_any_named(rest, names):
        return []
    after = rest[found.end() :].removeprefix(":")
    return [(handle, f"{rest[: found.start()]}{handle}{after}") for handle, _ in names if handle not in excepted]


def excepted(text: str, names: Names, language: str) -> frozenset[str]:
    """The handles behind "but" or "except" right behind the word for everyone: "tell everyone but lea: …"."""
    everyone = _any("everyone", language).search(text)
    if everyone is None:
        return frozenset()
    found = re.match(_but(names, language), text[everyone.end() :], re.IGNORECASE)
    return frozenset(coach_several.named(found[0], names)) if found else frozenset()


def without_excepted(words: str, names: Names, language: str) -> str:
    """Words for everyone without whom they are not for, "but lea good week"."""
    return re.sub(rf"^{_but(names, language)}\s*[,:]?\s*", "", words, flags=re.IGNORECASE)


def words_behind(text: str, names: Names, language: str) -> str:
    """What stands behind "everyone:", "everyone but lea:"; nothing where there is no colon there."""
    found = _everyone_in(text, language)
    if found is None or found.start() > 0:
        return ""
    rest = text[found.end() :]
    colon = re.match(rf"(?:{_but(names, language)})?\s*:", rest, re.IGNORECASE)
    return rest[colon.end() :].strip() if colon is not None else ""


def must_be_by_name(command: Command) -> bool:
    in_numbers = command.verb == "sets" and command.scheme is not None and command.load is not None
    return in_numbers or command.verb in BY_NAME


def is_asked_twice(command: Command) -> bool:
    """Whether an order makes it harder for all at once, or gives back what was kept from them."""
    more = command.verb == "sets" and (command.step is None or command.step.by > 0)
    return more or command.verb in TWICE


def _everyone_in(text: str, language: str) -> re.Match[str] | None:
    """The words for everyone; "todos los lunes" are none."""
    for found in _any("everyone", language).finditer(text):
        behind = text[found.start() :].casefold()
        if not any(re.match(rf"{re.escape(mark)}\s+({_days(language)})(?!\w)", behind) for mark in _every(language)):
            return found
    return None


def _excepted(text: str, names: Names, language: str) -> tuple[frozenset[str], str]:
    """The handles behind "but" or "except", and the text without them."""
    found = re.search(_but(names, language), text, re.IGNORECASE)
    if found is None:
        return frozenset(), text
    handles = frozenset(coach_several.named(found[0], names))
    return handles, f"{text[: found.start()]} {text[found.end() :]}".strip()


def _but(names: Names, language: str) -> str:
    """ ", but jon and lea"."""
    return rf"\s*,?\s*{_any('except', language).pattern}\s+{coach_several.row(names, language, least=1).pattern}"


def _any(table: str, language: str) -> re.Pattern[str]:
    phrases = sorted(map(re.escape, vocabulary(language, "words")[table]), key=len, reverse=True)
    phrases = [phrase.replace("ss", "(?:ss|ß)") for phrase in phrases]  # the vocabulary is case-folded
    return re.compile(rf"(?<!\w)(?:{'|'.join(phrases)})(?!\w)", re.IGNORECASE)


def _every(language: str) -> list[str]:
    return vocabulary(language, "words")["every"]


def _days(language: str) -> str:
    return "|".join(sorted(map(re.escape, weekdays(language)), key=len, reverse=True))
