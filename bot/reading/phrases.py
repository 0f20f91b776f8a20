"""Phrases with turns in them, from the same word files: what intents, days, body and signs are told by.

A phrase is words with spaces between. `(a|b c|)` is one of several, also none; `stem*` any word that begins so; `#` a
number; `...` up to three words, not across the end of a sentence; `{name}` a list of the file's `[classes]`. German
words with umlauts are also found as people type them without ("müde", "muede").

A phrase is known by the words that it may begin with (`_heads`); only one whose word a message has is compiled.
"""

from __future__ import annotations

import re
from collections import defaultdict
from collections.abc import Iterable, Iterator, Sequence
from functools import cached_property, lru_cache
from operator import itemgetter
from typing import Any, NamedTuple

from bot.reading.lexicon import GAP, Hit, sources, table
from bot.reading.little import little
from bot.reading.text import fold_words
from bot.reading.tokens import Token, tokenize

SUBJECTS = ("intents", "flags", "signs", "body", "dates", "mends")  # the files of phrases
CLASSES = "classes"
TURNS = re.compile(r"[|(){]")
FIRST = re.compile(r"[^|(){}\s]+")
PIECES = re.compile(r"[|()]|\{[^}]*\}|[^|(){}\s]+")
SENTENCE_ENDS = frozenset(".!?;\n")
WEIGHTS = frozenset({"kg", "lb", "lbs"})
DATED = re.compile(r"\d{1,2}\.\d{1,2}$")
MOST_REMEMBERED = 20000
UMLAUTS = str.maketrans({"ä": "ae", "ö": "oe", "ü": "ue"})


Name = tuple[str, str, str]  # a phrase's file, table and key


class BadPhrase(ValueError):
    """A phrase of a word file that cannot be read; the message names file, table and key."""


class _Place:
    """Where a word leads from a node, with all that is reached without a word; names of phrases complete there."""

    __slots__ = ("ends", "gaps", "names", "next", "stems")

    def __init__(self, start: _Node) -> None:
        self.next, self.stems, self.gaps, self.names = start.next, start.stems, start.gaps, start.names
        if start.free or start.gaps:
            self._reach(start)
        self.ends = not self.next and not self.stems and not self.gaps

    def _reach(self, start: _Node) -> None:
        """Take in all that is reached without a word."""
        self.next, self.stems, self.gaps, self.names = {}, {}, [], []
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


class _Node:
    """A point in the graph of a phrase. `place` is worked out when a message first comes by; most never do."""

    __slots__ = ("_place", "free", "gaps", "names", "next", "stems")

    def __init__(self) -> None:
        self.next: dict[str, list[_Node]] = {}
        self.stems: dict[str, list[_Node]] = {}
        self.gaps: list[_Node] = []
        self.free: list[_Node] = []  # reached without a word
        self.names: list[Name] = []
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


class _Classes(dict[str, list[str]]):
    """The lists of words of a file, by name; and what a phrase may begin with that begins with one."""

    def __init__(self, lists: dict[str, list[str]]) -> None:
        super().__init__(lists)
        self._heads: dict[str, tuple[str, ...]] = {}

    def heads(self, name: str) -> tuple[str, ...]:
        found = self._heads.get(name)
        if found is None:
            found = self._heads[name] = tuple(head for row in self.get(name, ()) for head in _heads(row, self))
        return found


def _heads(phrase: str, classes: _Classes) -> Iterator[str]:
    """The words that a phrase may begin with, stems with their star."""
    plain = FIRST.match(phrase)
    if plain is not None:  # so do most
        yield from _spellings(plain.group())[0]
        return
    brackets: list[tuple[bool, bool]] = []  # around here: whether the phrase may begin in it, and behind it too
    begins = True
    for found in PIECES.finditer(phrase):
        piece = found.group()
        if piece == "(":
            brackets.append((begins, False))
        elif piece in "|)":
            if not brackets:
                raise BadPhrase(f"{piece!r} outside brackets in {phrase!r}")
            before, behind = brackets.pop()
            behind = behind or begins
            if piece == "|":
                brackets.append((before, behind))
            begins = before if piece == "|" else behind
        elif begins and piece[0] == "{":
            yield from classes.heads(piece[1:-1])
            begins = False
        elif begins:
            yield from _spellings(piece)[0]
            begins = False
        if not begins and not brackets:
            return


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
        [token.text.removesuffix("'s") + star for token in tokenize(fold_words(spelling))]
        for spelling in dict.fromkeys((plain, plain.translate(UMLAUTS)))
    ]
    return tuple(zip(*rows, strict=True))


Way = tuple[int, _Place, int]  # see _State


def _key(token: Token) -> object:
    """What the phrases see of a token."""
    if token.value is None and token.text == token.word:
        return token.word
    return token.word, token.text, token.value is not None


class _State:
    """How far the phrases of a book are after some words, all at once: what is complete, and where the next word leads.

    A way is the phrase's place in the book, where it stands, and 0; or where it will stand behind its gap, and how
    many tokens that may still skip.
    """

    __slots__ = ("_stems", "_words", "complete", "next", "ways")

    def __init__(self, reached: Sequence[Way]) -> None:
        self.ways = tuple(way for way in reached if way[2] or not way[1].ends)
        at_words = [place for _, place, left in self.ways if not left]
        self._words = frozenset[str]().union(*(place.next for place in at_words))
        self._stems = tuple(stem for place in at_words for stem in place.stems)
        self.next: dict[object, _State | None] = {}
        complete: dict[Name, int] = {}
        for rank, place, left in reached:
            for name in () if left else place.names:
                complete[name] = min(rank, complete.get(name, rank))
        self.complete = dict(sorted(complete.items(), key=itemgetter(1)))  # the first of the book first

    def stranger(self, token: Token) -> bool:
        """Whether a token is no word of the phrases here: all such lead on alike, those that end a sentence apart."""
        return self._words.isdisjoint(_words(token)) and not token.word.startswith(self._stems)

    def led_by(self, token: Token) -> Iterator[Way]:
        """The ways on by a token."""
        goes_on = token.text not in SENTENCE_ENDS
        words = _words(token)
        for rank, place, left in self.ways:
            if left:
                if goes_on:
                    yield rank, place, 0
                    if left > 1:
                        yield rank, place, left - 1
                continue
            for word in words:
                for node in place.next.get(word, ()):
                    yield rank, node.place, 0
            for stem in _stems_of(token.word, place.stems):
                for node in place.stems[stem]:
                    yield rank, node.place, 0
            for gap in place.gaps if goes_on else ():
                yield rank, gap.place, 0
                yield rank, gap.place, GAP - 1


def _words(token: Token) -> tuple[str, ...]:
    """What a token may be in a phrase: its word, as it was typed, a number."""
    words = (token.word,) if token.text == token.word else (token.word, token.text)
    return words if token.value is None else (*words, "#")


def _stems_of(word: str, stems: dict[str, Any]) -> list[str]:
    """The stems that a word begins with, in the order of the file."""
    if not stems:
        return []
    begun = [stem for end in range(1, len(word) + 1) if (stem := word[:end]) in stems]
    if len(begun) > 1:
        begun.sort(key=list(stems).index)
    return begun


class Phrase:
    """A phrase of a word file; `heads`: what it may begin with. Its graph is grown when a message first has one."""

    def __init__(self, name: Name, text: str, classes: _Classes) -> None:
        self.name = name
        self.heads = tuple(dict.fromkeys(_heads(text, classes)))
        self._text, self._classes = text, classes

    @cached_property
    def first(self) -> _Place:
        """Where it begins."""
        start = _Node()
        end, stop = _grow(self._text, 0, start, self._classes)
        if stop != len(self._text):
            raise BadPhrase(f"a closing bracket too many in {self._text!r}")
        end.names.append(self.name)
        first = start.place
        if first.names or first.gaps:
            raise BadPhrase(f"{self._text!r} can begin with nothing")
        return first


class Found(NamedTuple):
    """The phrases found in a message, by file, and by file and table; to read with `get`."""

    of_files: dict[str, list[Hit]]
    of_tables: dict[tuple[str, str], list[Hit]]


class Phrases:
    """The phrases of one or more files.

    What a message's words lead to is remembered, so that words met before are one look each.
    """

    def __init__(self, phrases: Iterable[Phrase]) -> None:
        self._next: dict[str, list[Phrase]] = {}
        self._stems: dict[str, list[Phrase]] = {}
        for phrase in phrases:
            for head in phrase.heads:
                stem = len(head) > 1 and head.endswith("*")
                (self._stems if stem else self._next).setdefault(head[:-1] if stem else head, []).append(phrase)
        self._forget()

    def _forget(self) -> None:
        self._first: dict[object, _State | None] = {}
        self._states: dict[tuple[Way, ...], _State] = {}
        self._remembered = 0

    def _begun_by(self, token: Token) -> Iterator[Way]:
        """The ways into the phrases that a token begins."""
        nodes: list[_Node] = []
        for word in _words(token):
            for phrase in self._next.get(word, ()):
                nodes += phrase.first.next[word]
            for stem in _stems_of(word, self._stems):
                for phrase in self._stems[stem]:
                    nodes += phrase.first.stems[stem]
        return ((rank, node.place, 0) for rank, node in enumerate(nodes))

    def _begun(self, token: Token) -> _State | None:
        """The state after a first token."""
        if self._remembered > MOST_REMEMBERED:
            self._forget()
        self._remembered += 1
        state = self._first[_key(token)] = self._of(self._begun_by(token))
        return state

    def _led(self, state: _State, token: Token) -> _State | None:
        """The state that a token leads to from another."""
        self._remembered += 1
        alike = token.text in SENTENCE_ENDS if state.stranger(token) else _key(token)
        if alike not in state.next:
            state.next[alike] = self._of(state.led_by(token))
        after = state.next[_key(token)] = state.next[alike]
        return after

    def _of(self, ways: Iterator[Way]) -> _State | None:
        """The state of these ways; None where there are none."""
        reached = tuple(dict.fromkeys(ways))
        if not reached:
            return None
        state = self._states.get(reached)
        if state is None:
            state = self._states[reached] = _State(reached)
        return state

    def every(self, tokens: Sequence[Token]) -> Found:
        """Every phrase at every place: in order, the longest at a place first, a name there once."""
        found = Found(defaultdict(list), defaultdict(list))
        of_files, of_tables = found
        keys = [token.word if token.value is None and token.text == token.word else _key(token) for token in tokens]
        known = self._first
        for start, key in enumerate(keys):
            state = known[key] if key in known else self._begun(tokens[start])
            if state is None:
                continue
            for (subject, of, name), end in self._from(state, tokens, keys, start + 1):
                hit = Hit(start, end, of, name)
                of_files[subject].append(hit)
                of_tables[subject, of].append(hit)
        return found

    def _from(
        self, first: _State, tokens: Sequence[Token], keys: Sequence[object], end: int
    ) -> Iterable[tuple[Name, int]]:
        """The phrases whose first word stands before `end`, and where they end."""
        state: _State | None = first
        ends: list[tuple[_State, int]] = []
        while state is not None:
            if state.complete:
                ends.append((state, end))
            if not state.ways or end == len(keys):
                break
            key = keys[end]
            state = state.next[key] if key in state.next else self._led(state, tokens[end])
            end += 1
        if not ends:
            return ()
        if len(ends) == 1:
            state, end = ends[0]
            return [(name, end) for name in state.complete]
        found: dict[Name, tuple[int, int]] = {}
        for state, end in ends:
            for name, rank in state.complete.items():
                found[name] = (-end, min(rank, found[name][1]) if name in found else rank)
        return [(name, -found[name][0]) for name in sorted(found, key=found.__getitem__)]


@lru_cache(maxsize=64)
def phrases_of(name: str, language: str) -> tuple[Phrase, ...]:
    """The phrases of words/<language>/<name>.toml, in its order."""
    made: list[Phrase] = []
    data = table(language, name)
    classes = _Classes(data.get(CLASSES, {}))
    for of, entries in data.items():
        if of == CLASSES or not isinstance(entries, dict):
            continue
        for key, rows in entries.items():
            try:
                made += [Phrase((name, of, key), row, classes) for row in rows]
            except BadPhrase as fault:
                raise BadPhrase(f"words/{language}/{name}.toml, [{of}] {key}: {fault}") from fault
    return tuple(made)


@lru_cache(maxsize=8)
def joined_phrases(language: str, *books: tuple[str, ...]) -> Phrases:
    """The phrases of several files of a language as one book; of each its name and the tables wanted."""
    return Phrases(
        phrase for name, *tables in books for phrase in phrases_of(name, language) if phrase.name[1] in tables
    )


@lru_cache(maxsize=8)
def phrases(language: str) -> Phrases:
    """The phrases of all files of a language, and of their English sisters."""
    return Phrases(phrase for name in SUBJECTS for source in sources(language) for phrase in phrases_of(name, source))


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
