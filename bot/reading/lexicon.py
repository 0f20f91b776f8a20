"""Words by language, from `words/<language>/*.toml`: read once, compiled to tries of tokens.

A book is one file: tables of lists of phrases, `[table] name = ["phrase", …]`. In a phrase `...` stands for up to three
tokens. Phrases are folded and cut like messages, so "pull-ups" and "w/" may be
written as people write them. German and Spanish books also hold what the English ones say of the trade.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from functools import cached_property, lru_cache
from pathlib import Path
from typing import Any, NamedTuple

import tomli

from bot.reading.text import fold_words
from bot.reading.tokens import Token, tokenize

WORDS = Path(__file__).parent / "words"
FALLBACK = "en"
FOREIGN = "foreign"
MOVEMENTS = ("movements", "part")  # the table whose phrases are written as one word too
WORD = re.compile(r"[^\W\d_]+")


class Hit(NamedTuple):
    """A phrase found at tokens[start:end]."""

    start: int
    end: int
    table: str
    name: str


GAP_SIGN = "..."
GAP = 3  # tokens that it may skip


def _pieces(phrase: str) -> list[str]:
    """What white space parts in a folded phrase, its gaps apart."""
    return (phrase.replace(GAP_SIGN, f" {GAP_SIGN} ") if GAP_SIGN in phrase else phrase).split()


@lru_cache(maxsize=8192)
def _cut(piece: str) -> tuple[str, ...]:
    """The tokens of a piece of a phrase."""
    return (piece,) if piece.isalpha() or piece == GAP_SIGN else tuple(token.text for token in tokenize(piece))


def _keys(phrase: str) -> Iterator[str]:
    """The tokens of a folded phrase, in order."""
    for piece in _pieces(phrase):
        yield from _cut(piece)


def first_key(phrase: str) -> str:
    """The token that a folded phrase begins with; a line end is one too."""
    return next(_keys(phrase), phrase)


@dataclass(slots=True)
class _Node:
    next: dict[str, _Node]
    hits: list[tuple[str, str]]


class Book:
    """The phrases of one file (and of its English sister) as a trie, grown from a word when a message first has it."""

    def __init__(self) -> None:
        self._root = _Node({}, [])
        self._begun: dict[str, list[tuple[str, str, str]]] = {}  # table, name and folded phrase by first token
        self._lists: dict[str, list[str]] = {}

    def add(self, table: str, name: str, phrase: str) -> None:
        """Add a folded phrase."""
        self._lists.setdefault(name, []).append(phrase)
        self._begun.setdefault(first_key(phrase), []).append((table, name, phrase))

    def named(self, name: str) -> list[str]:
        """The plain phrases listed under a name."""
        return self._lists.get(name, [])

    @cached_property
    def words(self) -> frozenset[str]:
        """All words of the phrases."""
        pieces = {piece for phrases in self._lists.values() for phrase in phrases for piece in _pieces(phrase)}
        return frozenset(key for piece in pieces for key in _cut(piece) if piece.isalpha() or key.isalpha())

    def _grow(self, first: str) -> None:
        """Take the phrases that begin with a token into the trie."""
        for table, name, phrase in self._begun.pop(first):
            node = self._root
            for key in _keys(phrase):
                after = node.next.get(key)
                if after is None:
                    after = node.next[key] = _Node({}, [])
                node = after
            if (table, name) not in node.hits:
                node.hits.append((table, name))

    def everywhere(self, tokens: Sequence[Token]) -> list[list[Hit]]:
        """For each token every phrase that begins there, longest first; to read, not to change."""
        begun, grown, none = self._begun, self._root.next, list[Hit]()
        return [
            self.at(tokens, start)
            if (word := token.word) in grown or word in begun or (text := token.text) in grown or text in begun
            else none
            for start, token in enumerate(tokens)
        ]

    def at(self, tokens: Sequence[Token], start: int) -> list[Hit]:
        """Every phrase that begins at tokens[start], longest first."""
        first = tokens[start]
        for word in (first.word, first.text):
            if word in self._begun:
                self._grow(word)
        if first.word not in self._root.next and first.text not in self._root.next:
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
        gap = node.next.get(GAP_SIGN)
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
        return tomli.load(file)


def sources(language: str) -> tuple[str, ...]:
    return (language,) if language == FALLBACK else (language, FALLBACK)


@lru_cache(maxsize=64)
def rows(language: str, name: str) -> tuple[tuple[str, str, str], ...]:
    """Every phrase of a file, folded, behind its table ("" where it stands in none) and its key."""
    found: list[tuple[str, str, str]] = []
    for of, entries in table(language, name).items():
        for key, phrases in entries.items() if isinstance(entries, dict) else [(of, entries)]:
            if isinstance(phrases, list):
                where = of if isinstance(entries, dict) else ""
                found += [(where, key, fold_words(phrase)) for phrase in phrases if isinstance(phrase, str)]
    return tuple(found)


@lru_cache(maxsize=256)
def book(language: str, name: str, mixed: bool = True) -> Book:
    """The compiled phrases of a file. `mixed`: with the English ones beside those of the language."""
    made = Book()
    # English words that are others here: the German "am", "er" and "es", the Spanish "son".
    foreign = {phrase for of, _, phrase in rows(language, name) if of == FOREIGN}
    for source in sources(language) if mixed else (language,):
        for of, key, phrase in rows(source, name):
            if of in ("", FOREIGN) or (phrase in foreign and source != language):
                continue
            if (name, of) == MOVEMENTS and " " in phrase and phrase.replace(" ", "").isalpha():
                made.add(of, key, phrase.replace(" ", ""))  # "ring rows" and "ringrows"
            made.add(of, key, phrase)
    return made


@lru_cache(maxsize=1)
def languages() -> tuple[str, ...]:
    """The languages that have words, English first."""
    found = sorted(path.name for path in WORDS.iterdir() if path.is_dir())
    return (FALLBACK, *(name for name in found if name != FALLBACK))


def phrases_in(language: str, name: str) -> list[str]:
    """Every phrase of a file, folded."""
    return [phrase for _, _, phrase in rows(language, name)]


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
    words = fold_words(table(language, "common").get("contracted", "")).split()
    return {word.replace("'", ""): word for word in words}
