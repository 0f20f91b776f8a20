"""Phrases with turns in them, from the same word files: what intents, days, body and signs are told by.

A phrase is words with spaces between. `(a|b c|)` is one of several, also none; `stem*` any word that begins so; `#` a
number; `...` up to three words, not across the end of a sentence; `{name}` a list of the file's `[classes]`. German
words with umlauts are also found as people type them without ("müde", "muede").
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator, Sequence
from functools import lru_cache

from bot.reading.lexicon import FALLBACK, GAP, Hit, table
from bot.reading.little import little
from bot.reading.text import fold
from bot.reading.tokens import Token, tokenize

CLASSES = "classes"
TURNS = re.compile(r"[|(){]")
SENTENCE_ENDS = frozenset(".!?;\n")
WEIGHTS = frozenset({"kg", "lb", "lbs"})
DATED = re.compile(r"\d{1,2}\.\d{1,2}$")
MOST_REMEMBERED = 20000
UMLAUTS = str.maketrans({"ä": "ae", "ö": "oe", "ü": "ue"})


class BadPhrase(ValueError):
    """A phrase of a word file that cannot be read; the message names file, table and key."""


class _Place:
    """Where a word leads from a node, with all that is reached without a word; names of phrases complete there."""

    __slots__ = ("ends", "gaps", "names", "next", "stems", "worded")

    def __init__(self, start: _Node) -> None:
        self.next: dict[str, list[_Node]] = {}
        self.stems: dict[str, list[_Node]] = {}
        self.gaps: list[_Node] = []
        self.names: list[tuple[str, str]] = []
        reach, seen = [start], {id(start)}
        while reach:
            one = reach.pop()
            for edges, made in ((one.next, self.next), (one.stems, self.stems)):
                for word, targets in edges.items():
                    made.setdefault(word, []).extend(targets)
            self.gaps.extend(one.gaps)
            reach.extend(gap for gap in one.gaps if id(gap) not in seen)  # a gap may be empty
            seen.update(id(gap) for gap in one.gaps)
            self.names.extend(name for name in one.names if name not in self.names)
            for free in one.free:
                if id(free) not in seen:
                    seen.add(id(free))
                    reach.append(free)
        self.worded = not self.gaps and not self.stems  # nothing but whole words leads on
        self.ends = self.worded and not self.next


class _Node:
    """A point in the graph of a phrase. `place` is worked out when a message first comes by; most never do."""

    __slots__ = ("_place", "free", "gaps", "names", "next", "stems")

    def __init__(self) -> None:
        self.next: dict[str, list[_Node]] = {}
        self.stems: dict[str, list[_Node]] = {}
        self.gaps: list[_Node] = []
        self.free: list[_Node] = []  # reached without a word
        self.names: list[tuple[str, str]] = []
        self._place: _Place | None = None

    @property
    def place(self) -> _Place:
        if self._place is None:
            self._place = _Place(self)
        return self._place


def _grow(phrase: str, at: int, start: _Node, classes: dict[str, list[str]]) -> tuple[_Node, int]:
    """Grow the graph of "a (b|c d) e" from `start`; the node after it, and where the phrase or bracket ends."""
    join = _Node()
    node = start
    while at < len(phrase) and phrase[at] != ")":
        char = phrase[at]
        if char == "|":
            if node is not join:
                node.free.append(join)
            node, at = start, at + 1
        elif char == "(":
            node, close = _grow(phrase, at + 1, node, classes)
            if close >= len(phrase):
                raise BadPhrase(f"no closing bracket in {phrase!r}")
            at = close + 1
        elif char == "{":
            close = phrase.find("}", at)
            words = classes.get(phrase[at + 1 : close], [])
            if not words:
                raise BadPhrase(f"no such class in {phrase!r}")
            node, _ = _grow("|".join(words), 0, node, classes)
            at = close + 1
        else:
            turn = TURNS.search(phrase, at)
            stop = turn.start() if turn else len(phrase)
            # The last word of an alternative leads straight to where all meet: long lists of words stay one step.
            elements, closes = list(_elements(phrase[at:stop])), stop == len(phrase) or phrase[stop] in "|)"
            for place, element in enumerate(elements, 1):
                after = join if closes and place == len(elements) else _Node()
                for spelling in element:
                    if spelling == "...":
                        node.gaps.append(after)
                    elif spelling.endswith("*") and len(spelling) > 1:
                        node.stems.setdefault(spelling[:-1], []).append(after)
                    else:
                        node.next.setdefault(spelling, []).append(after)
                node = after
            at = stop
    if node is not join:
        node.free.append(join)
    return join, at


def _elements(row: str) -> Iterator[tuple[str, ...]]:
    """The words of a row, each with the other way it is typed."""
    for piece in row.split():
        yield from _spellings(piece)


@lru_cache(maxsize=16384)
def _spellings(piece: str) -> tuple[tuple[str, ...], ...]:
    if piece in ("...", "#"):
        return ((piece,),)
    star = "*" if piece.endswith("*") else ""
    plain = piece.removesuffix("*")
    if plain.isascii() and plain.isalpha():
        return ((plain.lower() + star,),)
    rows = [
        [token.text.removesuffix("'s") + star for token in tokenize(fold(spelling).text)]
        for spelling in dict.fromkeys((plain, plain.translate(UMLAUTS)))
    ]
    return tuple(zip(*rows, strict=True))


class _First:
    """The phrases that a word begins, and those of them that the next word does not rule out."""

    __slots__ = ("_by_second", "_others", "places", "seconds", "whole")

    def __init__(self, places: tuple[_Place, ...]) -> None:
        self.places = places
        self.whole = tuple(place for place in places if place.names)  # complete with the one word
        self._others = tuple(place for place in places if place.names or not place.worded)
        self.seconds = frozenset().union(*(place.next for place in places))
        self._by_second: dict[str, tuple[_Place, ...]] = {}

    def going_on(self, after: Token | None) -> tuple[_Place, ...]:
        """The phrases that may go on with the token `after`, or end before it."""
        if after is None:
            return self.whole
        if after.text != after.word or (after.value is not None and after.word in self.seconds):
            return self.places
        return self._before("#" if after.value is not None else after.word)

    def _before(self, second: str) -> tuple[_Place, ...]:
        if second not in self.seconds:
            return self._others
        found = self._by_second.get(second)
        if found is None:
            found = self._by_second[second] = tuple(
                place for place in self.places if place.names or not place.worded or second in place.next
            )
        return found


NOTHING = _First(())


class Phrases:
    """The compiled phrases of one subject in one or more languages."""

    def __init__(self) -> None:
        self._next: dict[str, list[_Node]] = {}
        self._stems: dict[str, list[_Node]] = {}
        self._firsts: dict[str, _First] = {}

    def add(self, of: str, name: str, phrase: str, classes: dict[str, list[str]]) -> None:
        start = _Node()
        end, stop = _grow(phrase, 0, start, classes)
        if stop != len(phrase):
            raise BadPhrase(f"a closing bracket too many in {phrase!r}")
        end.names.append((of, name))
        first = start.place
        if first.names or first.gaps:
            raise BadPhrase(f"{phrase!r} can begin with nothing")
        for word, nodes in first.next.items():
            self._next.setdefault(word, []).extend(nodes)
        for stem, nodes in first.stems.items():
            self._stems.setdefault(stem, []).extend(nodes)

    def join(self, other: Phrases) -> None:
        """Take in the phrases of another book; its graph is shared, not copied."""
        for mine, theirs in ((self._next, other._next), (self._stems, other._stems)):
            for word, nodes in theirs.items():
                mine.setdefault(word, []).extend(nodes)
        self._firsts.clear()

    def _first(self, word: str) -> _First:
        found = self._firsts.get(word)
        if found is None:
            if len(self._firsts) > MOST_REMEMBERED:
                self._firsts.clear()
            by_stem = [node for stem, nodes in self._stems.items() if word.startswith(stem) for node in nodes]
            nodes = (*self._next.get(word, ()), *by_stem)
            found = self._firsts[word] = _First(tuple(node.place for node in nodes)) if nodes else NOTHING
        return found

    def at(self, tokens: Sequence[Token], start: int) -> list[Hit]:
        """Every phrase that begins at tokens[start], longest first; a name once."""
        token = tokens[start]
        after = tokens[start + 1] if start + 1 < len(tokens) else None
        places = self._first(token.word).going_on(after)
        if token.text != token.word:
            places += self._first(token.text).going_on(after)
        if token.value is not None:
            places += self._first("#").going_on(after)
        if not places:
            return []
        found: dict[tuple[str, str], int] = {}
        for place in places:
            _walk(place, tokens, start + 1, found)
        if not found:
            return []
        if len(found) == 1:
            (name, end), *_ = found.items()
            return [Hit(start, end, *name)]
        return sorted((Hit(start, end, *name) for name, end in found.items()), key=lambda hit: -hit.end)

    def every(self, tokens: Sequence[Token]) -> list[Hit]:
        """Every phrase at every place, also over each other."""
        hits: list[Hit] = []
        firsts = self._firsts
        for start, token in enumerate(tokens):
            # Few words begin a phrase of the file: most tokens end here.
            if firsts.get(token.word) is NOTHING and token.value is None and token.text == token.word:
                continue
            hits += self.at(tokens, start)
        return hits

    def find(self, tokens: Sequence[Token]) -> list[Hit]:
        """The longest phrase at every place, left to right, none over another."""
        hits: list[Hit] = []
        start = 0
        while start < len(tokens):
            found = self.at(tokens, start)
            if found:
                hits.append(found[0])
                start = found[0].end
            else:
                start += 1
        return hits


def _walk(place: _Place, tokens: Sequence[Token], at: int, found: dict[tuple[str, str], int]) -> None:
    for name in place.names:
        if at > found.get(name, 0):
            found[name] = at
    if place.ends or at >= len(tokens):
        return
    token = tokens[at]
    leads = place.next
    if leads:
        for after in leads.get(token.word, ()):
            _walk(after.place, tokens, at + 1, found)
        if token.text != token.word:
            for after in leads.get(token.text, ()):
                _walk(after.place, tokens, at + 1, found)
        if token.value is not None:
            for after in leads.get("#", ()):
                _walk(after.place, tokens, at + 1, found)
    for stem, nodes in place.stems.items():
        if token.word.startswith(stem):
            for after in nodes:
                _walk(after.place, tokens, at + 1, found)
    for gap in place.gaps:
        for skip in range(min(GAP, len(tokens) - at)):
            if tokens[at + skip].text in SENTENCE_ENDS:
                break
            _walk(gap.place, tokens, at + skip + 1, found)


@lru_cache(maxsize=256)
def _source(name: str, source: str, tables: tuple[str, ...]) -> Phrases:
    """The phrases of one file, only those of `tables` where named."""
    made = Phrases()
    data = table(source, name)
    classes = data.get(CLASSES, {})
    for of, entries in data.items():
        if of == CLASSES or not isinstance(entries, dict) or (tables and of not in tables):
            continue
        for key, rows in entries.items():
            for row in rows:
                try:
                    made.add(of, key, row, classes)
                except BadPhrase as fault:
                    raise BadPhrase(f"words/{source}/{name}.toml, [{of}] {key}: {fault}") from fault
    return made


@lru_cache(maxsize=256)
def phrases(name: str, language: str, *tables: str) -> Phrases:
    """The phrases of words/<language>/<name>.toml and of its English sister; only those of `tables` where named."""
    if language == FALLBACK:
        return _source(name, FALLBACK, tables)
    made = Phrases()
    for source in (language, FALLBACK):
        made.join(_source(name, source, tables))
    return made


def phrases_of(name: str, language: str, *tables: str) -> Phrases:
    """The phrases of words/<language>/<name>.toml alone."""
    return _source(name, language, tables)


def longest(hits: Iterable[Hit]) -> list[Hit]:
    """The longest hit at every place, left to right, none over another."""
    out: list[Hit] = []
    for hit in sorted(hits, key=lambda hit: (hit.start, -hit.end)):
        if not out or hit.start >= out[-1].end:
            out.append(hit)
    return out


def sentence_bounds(tokens: Sequence[Token]) -> list[tuple[int, int]]:
    """Token ranges of the sentences of a message, ends excluded."""
    bounds = []
    start = 0
    for i, token in enumerate(tokens):
        if token.text in SENTENCE_ENDS and not _shortens(tokens, i):
            if i > start:
                bounds.append((start, i))
            start = i + 1
    if len(tokens) > start:
        bounds.append((start, len(tokens)))
    return bounds


def _shortens(tokens: Sequence[Token], i: int) -> bool:
    """Whether the full stop at i belongs to a shortened word ("ca. 3/10") or a day ("12. März")."""
    if tokens[i].text != "." or i == 0 or i + 1 >= len(tokens) or tokens[i].space:
        return False
    before, after = tokens[i - 1], tokens[i + 1]
    if before.text in little("always_short"):
        return True  # "inkl. Aufwärmen"
    if i > 1 and before.text in WEIGHTS and tokens[i - 2].value is not None:
        return False  # "4x8 60 kg. 50 minutes"
    if i > 1 and before.kind == "num" and tokens[i - 2].text in little("before_dotted") and DATED.match(before.text):
        return True  # "ab dem 15.3. zwei Wochen"
    return (before.text in little("shortened") and after.kind == "num") or not after.space
