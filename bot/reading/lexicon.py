"""Words by language, from `words/<language>/*.toml`: read once, compiled to tries of tokens.

A book is one file: tables of lists of phrases, `[table] name = ["phrase", …]`. In a phrase `...` stands for up to three
tokens. Phrases are folded and cut like messages, so "pull-ups" and "w/" may be
written as people write them. German and Spanish books also hold what the English ones say of the trade.
"""

from __future__ import annotations

import re
import tomllib
from collections.abc import Sequence
from dataclasses import dataclass
from functools import lru_cache
from pathlib import Path
from typing import Any, NamedTuple

from bot.reading.text import fold
from bot.reading.tokens import Token, tokenize

WORDS = Path(__file__).parent / "words"
FALLBACK = "en"
FOREIGN = "foreign"
WORD = re.compile(r"[^\W\d_]+")
GAP = 3  # tokens that "..." may skip


class Hit(NamedTuple):
    """A phrase found at tokens[start:end]."""

    start: int
    end: int
    table: str
    name: str


@dataclass
class _Node:
    next: dict[str, _Node]
    hits: list[tuple[str, str]]


class Book:
    """The phrases of one file (and of its English sister) as a trie."""

    def __init__(self) -> None:
        self._root = _Node({}, [])
        self.words: set[str] = set()
        self.lists: dict[str, list[str]] = {}

    def add(self, table: str, name: str, phrase: str, joined: bool = False) -> None:
        """Add a phrase; `joined`: also as one word ("ring rows" and "ringrows")."""
        folded = fold(phrase).text
        if joined and " " in phrase and "..." not in phrase and folded.replace(" ", "").isalpha():
            self.add(table, name, phrase.replace(" ", ""))
        self.lists.setdefault(name, []).append(folded)
        node = self._root
        marks = folded.replace("...", " \x01 ")
        for piece in marks.split():
            plain = piece.isalpha()
            keys = ["..."] if piece == "\x01" else [piece] if plain else [t.text for t in tokenize(piece)]
            for key in keys:
                if plain or key.isalpha():
                    self.words.add(key)
                after = node.next.get(key)
                if after is None:
                    after = node.next[key] = _Node({}, [])
                node = after
        if (table, name) not in node.hits:
            node.hits.append((table, name))

    def named(self, name: str) -> list[str]:
        """The plain phrases listed under a name."""
        return self.lists.get(name, [])

    def at(self, tokens: Sequence[Token], start: int) -> list[Hit]:
        """Every phrase that begins at tokens[start], longest first."""
        first = tokens[start]
        if first.word not in self._root.next and first.text not in self._root.next and "..." not in self._root.next:
            return []
        found: list[Hit] = []
        self._walk(self._root, tokens, start, start, found)
        if len(found) > 1:
            found.sort(key=lambda hit: -hit.end)
        return found

    def _walk(self, node: _Node, tokens: Sequence[Token], start: int, at: int, found: list[Hit]) -> None:
        for table, name in node.hits:
            found.append(Hit(start, at, table, name))
        if not node.next:
            return
        gap = node.next.get("...")
        if gap is not None:
            for skip in range(GAP + 1):
                if at + skip <= len(tokens):
                    self._walk(gap, tokens, start, at + skip, found)
        if at >= len(tokens):
            return
        token = tokens[at]
        after = node.next.get(token.word)
        if after is not None:
            self._walk(after, tokens, start, at + 1, found)
        if token.text != token.word and (after := node.next.get(token.text)) is not None:
            self._walk(after, tokens, start, at + 1, found)  # "that's all", of which the word is "that"

    def find(self, tokens: Sequence[Token]) -> list[Hit]:
        """The longest phrase at every place, left to right, none over another."""
        hits: list[Hit] = []
        at = 0
        while at < len(tokens):
            found = self.at(tokens, at)
            if found and found[0].end > at:
                hits.append(found[0])
                at = found[0].end
            else:
                at += 1
        return hits


@lru_cache(maxsize=256)
def table(language: str, name: str) -> dict[str, Any]:
    """The raw data of words/<language>/<name>.toml; empty where the language has no such file."""
    path = WORDS / language / f"{name}.toml"
    if not path.is_file():
        return {}
    with path.open("rb") as file:
        return tomllib.load(file)


def sources(language: str) -> tuple[str, ...]:
    return (language,) if language == FALLBACK else (language, FALLBACK)


@lru_cache(maxsize=256)
def book(language: str, name: str, mixed: bool = True) -> Book:
    """The compiled phrases of a file. `mixed`: with the English ones beside those of the language."""
    made = Book()
    for source in sources(language) if mixed else (language,):
        # English words that are others here: the German "am", "er" and "es", the Spanish "son".
        foreign = table(language, name).get(FOREIGN, {}).get("words", ()) if source != language else ()
        for table_name, entries in table(source, name).items():
            if not isinstance(entries, dict) or table_name == FOREIGN:
                continue
            for key, phrases in entries.items():
                if isinstance(phrases, list):
                    for phrase in phrases:
                        if isinstance(phrase, str) and phrase not in foreign:
                            made.add(table_name, key, phrase, joined=name == "movements" and table_name == "part")
    return made


@lru_cache(maxsize=1)
def languages() -> tuple[str, ...]:
    """The languages that have words, English first."""
    found = sorted(path.name for path in WORDS.iterdir() if path.is_dir())
    return (FALLBACK, *(name for name in found if name != FALLBACK))


def phrases_in(language: str, name: str) -> list[str]:
    """Every phrase of a file, folded."""
    found: list[str] = []
    for entries in table(language, name).values():
        for phrases in entries.values() if isinstance(entries, dict) else [entries]:
            if isinstance(phrases, list):
                found += [phrase for phrase in phrases if isinstance(phrase, str)]
    return fold("\n".join(found)).text.split("\n")


@lru_cache(maxsize=64)
def words_in(language: str, name: str) -> frozenset[str]:
    """Every word in the phrases of a file, without compiling them."""
    return frozenset(WORD.findall("\n".join(phrases_in(language, name))))


def everyday_words(language: str) -> str:
    words: str = table(language, "common").get("words", "")
    return words


@lru_cache(maxsize=8)
def contracted(language: str) -> dict[str, str]:
    """Words with an apostrophe by what they are without: "didnt"."""
    words = fold(table(language, "common").get("contracted", "")).text.split()
    return {word.replace("'", ""): word for word in words}
