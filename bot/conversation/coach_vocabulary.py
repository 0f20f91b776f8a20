"""The words of the coach's orders: which the catalogue has for a language, and how words are cut and compared."""

from __future__ import annotations

import unicodedata
from functools import lru_cache
from pathlib import Path

import tomli

from bot.wording.catalogue import CATALOGUES, FALLBACK


@lru_cache(maxsize=32)
def vocabulary(language: str, table: str = "verbs") -> dict[str, list[str]]:
    """Verb (or, of table "words", mark of time) to phrases, the language's own and the English ones."""
    found: dict[str, list[str]] = {}
    for name in dict.fromkeys((FALLBACK, language.split("-")[0])):
        path = Path(CATALOGUES) / name / "coach.toml"
        if path.is_file():
            for verb, phrases in tomli.loads(path.read_text(encoding="utf-8"))[table].items():
                found.setdefault(verb, []).extend(" ".join(words_of(phrase)) or phrase for phrase in phrases)
    return found


def marks(language: str, mark: str) -> list[str]:
    return [word for phrase in vocabulary(language, "words").get(mark, []) for word in phrase.split()]


def plain(word: str) -> str:
    return "".join(sign for sign in unicodedata.normalize("NFD", word.casefold()) if not unicodedata.combining(sign))


def words_of(text: str) -> list[str]:
    bare = (word.strip(",.;!?()").casefold() for word in text.split())
    return [word.removesuffix("'s").removesuffix("\u2019s") for word in bare if word]
