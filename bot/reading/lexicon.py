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

from rapidfuzz import process
from rapidfuzz.distance import OSA

from bot.reading.everyday import everyday
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


def _sources(language: str) -> tuple[str, ...]:
    return (language,) if language == FALLBACK else (language, FALLBACK)


@lru_cache(maxsize=256)
def book(language: str, name: str, mixed: bool = True) -> Book:
    """The compiled phrases of a file. `mixed`: with the English ones beside those of the language."""
    made = Book()
    for source in _sources(language) if mixed else (language,):
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


def _phrases_in(language: str, name: str) -> list[str]:
    """Every phrase of a file, folded."""
    found: list[str] = []
    for entries in table(language, name).values():
        if isinstance(entries, dict):
            for phrases in entries.values():
                if isinstance(phrases, list):
                    found += [phrase for phrase in phrases if isinstance(phrase, str)]
    return fold("\n".join(found)).text.split("\n")


@lru_cache(maxsize=64)
def _words_in(language: str, name: str) -> frozenset[str]:
    """Every word in the phrases of a file, without compiling them."""
    return frozenset(WORD.findall("\n".join(_phrases_in(language, name))))


def _words_of_signs(language: str) -> frozenset[str]:
    """The words of the phrases that name a warning sign."""
    tables = [entries for of, entries in table(language, "flags").items() if of in ("sign", "sited", "felt")]
    phrases = [phrase for entries in tables for rows in entries.values() for phrase in rows]
    return frozenset(WORD.findall(fold("\n".join(phrases)).text))


def _everyday(language: str) -> str:
    words: str = table(language, "common").get("words", "")
    return words


@lru_cache(maxsize=8)
def contracted(language: str) -> dict[str, str]:
    """Words with an apostrophe by what they are without: "didnt"."""
    words = fold(table(language, "common").get("contracted", "")).text.split()
    return {word.replace("'", ""): word for word in words}


@lru_cache(maxsize=8)
def _spellings(language: str) -> tuple[frozenset[str], tuple[str, ...], frozenset[str]]:
    """Words that are no typing errors, the words that one may be corrected to, and those of them that name a sign."""
    known: set[str] = set()
    wanted: set[str] = set()
    for source in _sources(language):
        for path in (WORDS / source).glob("*.toml"):
            known |= _words_in(source, path.stem)
        known |= set(fold(_everyday(source)).text.split())
        known |= set(fold(" ".join(table(source, "numbers").get("value", {}))).text.split())
        for name in ("movements", "grammar", "numbers"):
            wanted |= _words_in(source, name)
        wanted |= set(fold(table(source, "common").get("mended", "")).text.split())
        wanted |= {phrase.replace(" ", "") for phrase in _phrases_in(source, "movements") if "..." not in phrase}
        known |= wanted
    for word in list(known):
        known.add(word + "s")
    signs = {word for source in _sources(language) for word in _words_of_signs(source) if len(word) >= LEAST_OF_A_SIGN}
    return frozenset(known), tuple(sorted(word for word in wanted | signs if len(word) >= 4)), frozenset(signs - wanted)


@lru_cache(maxsize=16384)
def spelled(word: str, language: str) -> tuple[str, ...]:
    """The words of the trade that `word` may be a typing error of: none, one, or several that are equally near.

    Whole words of five letters or more, one slip (two from seven letters on), the first letter as it should be or
    changed places with the second. A word of a warning sign is mended by one slip alone.
    """
    known, wanted, signs = _spellings(language)
    if len(word) < 4 or len(word) > 20 or word in known:
        return ()
    if len(word) == 4:
        # so short a word is only taken when two letters changed places
        swapped = sorted(word)
        near = [w for w in wanted if len(w) == 4 and sorted(w) == swapped and OSA.distance(w, word) == 1]
        return () if near and word in everyday(language) else tuple(near)
    slips = 2 if len(word) >= 7 else 1
    hits = [
        hit
        for hit in process.extract(word, wanted, scorer=OSA.distance, score_cutoff=slips, limit=8)
        if (hit[0][0] == word[0] or sorted(hit[0][:2]) == sorted(word[:2]))
        and (hit[1] < 2 or (len(hit[0]) >= 6 and hit[0] not in signs))
    ]
    if not hits or word in everyday(language) or _plural_of_everyday(word, language, wanted):
        return ()
    best = min(distance for _, distance, _ in hits)
    found = sorted(candidate for candidate, distance, _ in hits if distance == best)
    # "pullup" and "pullups" are one answer
    return _likeliest(word, tuple(one for one in found if one + "s" not in found), language)


def _plural_of_everyday(word: str, language: str, wanted: tuple[str, ...]) -> bool:
    """ "faciles", "gotas": the list has the singular, which is no word of the trade."""
    endings = table(language, "common").get("plural", ())
    stems = (word.removesuffix(ending) for ending in endings if word.endswith(ending))
    return any(len(stem) >= LEAST_STEM and stem in everyday(language) and stem not in wanted for stem in stems)


LEAST_STEM = 4  # letters
LEAST_OF_A_SIGN = 7  # letters of a sign's word that is mended


def _likeliest(word: str, found: tuple[str, ...], language: str) -> tuple[str, ...]:
    """Of several equally near words those of a movement, and of these those that only lack a letter here."""
    if len(found) < 2:
        return found
    moves = frozenset[str]().union(*(_words_in(source, "movements") for source in _sources(language)))
    found = tuple(one for one in found if one in moves) or found
    if len({one[: len(word) - 3] for one in found}) == 1:
        return found[:1]  # forms of one word: "klimmzug", "klimmzuge"
    return tuple(one for one in found if len(one) > len(word)) or found


LEAST_HALF = 4  # letters of each half of a word written together


@lru_cache(maxsize=16384)
def compound(word: str, language: str) -> tuple[str, str] | None:
    """The two words that are written as one ("ringdips", "klimmzugleiter"); None where it is one word, or none."""
    if len(word) < 2 * LEAST_HALF - 1 or is_known(word, language):
        return None
    parts, tails = _parts(language), _tails(language)
    for at in range(LEAST_HALF - 1, len(word) - LEAST_HALF + 2):
        if word[:at] in parts and (word[at:] in parts or word[at:] in tails):
            return word[:at], word[at:]
    return None


@lru_cache(maxsize=8)
def _parts(language: str) -> frozenset[str]:
    """Words of the movements, as halves of longer ones."""
    return frozenset(
        word for source in _sources(language) for word in _words_in(source, "movements") if len(word) >= LEAST_HALF - 1
    )


@lru_cache(maxsize=8)
def _tails(language: str) -> frozenset[str]:
    """What is written together with a movement before it: "leiter", "test"."""
    return frozenset(fold(table(language, "common").get("tails", "")).text.split())


def is_known(word: str, language: str) -> bool:
    """Whether a word stands in a lexicon of the language."""
    return word in _spellings(language)[0]


@lru_cache(maxsize=8)
def _telltales(language: str) -> frozenset[str]:
    words = set(fold(_everyday(language)).text.split())
    words |= set(fold(" ".join(table(language, "numbers").get("value", {}))).text.split())
    for path in (WORDS / language).glob("*.toml"):
        words |= _words_in(language, path.stem)
    return frozenset(words)


CLEARLY = 3  # words of another language than the hint's, and none of its own
MOST_SLIPS = 12  # words of a message looked at for the language of its typing errors


def guess_language(words: Sequence[str], hint: str | None) -> str:
    """The language of a message: the hint, unless the words speak clearly for another; English where nothing does."""
    names = languages()
    base = hint.split("-")[0].lower() if hint else None
    if base in names and sum(word not in _telltales(base) for word in words[:200]) < CLEARLY:
        return base  # before the words of other languages are read
    counts = dict.fromkeys(names, 0)
    for word in words[:200]:
        homes = [name for name in names if word in _telltales(name)]
        if len(homes) == 1:
            counts[homes[0]] += 1
    if base is None and not any(counts.values()):
        for name in names:  # "domindas 4x4, fonods 3x8": nothing but typing errors
            counts[name] = sum(len(spelled(word, name)) == 1 for word in words[:MOST_SLIPS])
    best = max(names, key=lambda name: counts[name])
    if base in names:
        assert base is not None
        return best if counts[best] >= CLEARLY and counts[base] == 0 else base
    return best
