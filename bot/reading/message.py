"""A message as the readers see it. This page is the contract between them.

A reader is a pure function `find_xxx(message: Message) -> list[Claim]`. A claim says what the tokens
[start, end) mean; the assembler takes claimed tokens out of the set grammar's way ("slept 6.5h", "elbow 3/10", "on the
3rd"). `kind` names what `value` is:

    kind          value
    day           datetime.date: the day trained ("yesterday", "on the 3rd"); find_dates
    span          reading.Span: the days a move, an absence … speaks of
    pain          reading.PainRead
    red_flag      str; past_flag: str
    bodyweight    kg; sleep: hours; duration: minutes; session_rpe: 0-10
    correction    reading.Correction; undo: None
    noise         None: words with numbers that mean nothing here (rest times, clocks, temperatures, other people's)
    intent        str; found last, from the message and all claims

`ask` (an `Ask`) on a claim is a question that goes out with the reading; value None then where nothing is certain.
Claims of one reader must not overlap each other. Claims may have start == end == 0 when no words carry them.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field, replace
from datetime import date, datetime, timedelta
from functools import cached_property, lru_cache
from itertools import accumulate
from typing import Any, NamedTuple

from rapidfuzz.distance import OSA

from bot.reading.dashes import part_dashes
from bot.reading.language import guess_language
from bot.reading.lexicon import Book, Hit, book, contracted
from bot.reading.little import lists_begun
from bot.reading.numbers import say_numbers
from bot.reading.phrases import Found, phrases, sentence_bounds
from bot.reading.reading import Ask, Context
from bot.reading.short import written_out
from bot.reading.spelling import compound, is_known, spelled
from bot.reading.text import Folded, fold
from bot.reading.tokens import Token, tokenize

QUOTE = '"'
MOST_WORDS = 16384  # remembered
NIGHT_ENDS_AT = 4  # before this hour it is still the evening before


@dataclass(frozen=True, slots=True)
class Claim:
    """Tokens [start, end) mean `value`."""

    start: int
    end: int
    kind: str
    value: Any
    ask: Ask | None = None


@dataclass(frozen=True)
class Message:
    """What was written, cut into tokens, with all that is known beside it."""

    folded: Folded
    tokens: tuple[Token, ...]
    language: str
    context: Context
    local: datetime  # when it was sent, where the athlete is
    doubts: tuple[int, ...] = field(default=())  # tokens that are typing errors of several words of the trade

    @property
    def text(self) -> str:
        """The message, verbatim."""
        return self.folded.original

    @property
    def at_night(self) -> bool:
        """Sent before 04:00: "today" and "yesterday" both mean the evening before, "tomorrow" is asked."""
        return self.local.hour < NIGHT_ENDS_AT

    @cached_property
    def today(self) -> date:
        """The day that "today" means, and a report without a day."""
        return self.local.date() - timedelta(days=self.at_night)

    def span(self, start: int, end: int) -> str:
        """The words of tokens [start, end), verbatim: for `ask` and `unread`."""
        if start >= end:
            return ""
        return self.folded.span(self.tokens[start].start, self.tokens[end - 1].end)

    @cached_property
    def _hits(self) -> Found:
        return phrases(self.language).every(self.tokens)

    @cached_property
    def notes(self) -> dict[object, Any]:
        """What a reader has worked out that another asks for too; by its own key."""
        return {}

    def hits(self, name: str, *tables: str) -> Sequence[Hit]:
        """Every phrase (`phrases.py`) of words/<language>/<name>.toml in the message; only of `tables` where named."""
        if not tables:
            return self._hits.of_files.get(name, ())
        if len(tables) == 1:
            return self._hits.of_tables.get((name, tables[0]), ())
        return [hit for hit in self._hits.of_files.get(name, ()) if hit.table in tables]

    @cached_property
    def sentences(self) -> list[tuple[int, int]]:
        """Token ranges of the sentences, ends excluded; to read, not to change."""
        return sentence_bounds(self.tokens)

    @cached_property
    def little(self) -> frozenset[str]:
        """The lists of little words of which something stands in the message."""
        return frozenset(lists_begun({token.text for token in self.tokens}))

    @cached_property
    def _numbers_before(self) -> list[int]:
        return list(accumulate((token.value is not None for token in self.tokens), initial=0))

    def numbers_within(self, start: int, end: int) -> int:
        """How many numbers the tokens [start, end) have; none where start >= end."""
        return self._numbers_before[end] - self._numbers_before[start] if start < end else 0

    def beginning(self, name: str) -> list[list[Hit]]:
        """For each token the plain phrases of words/<language>/<name>.toml that begin there, longest first."""
        found: list[list[Hit]] | None = self.notes.get(("beginning", name))
        if found is None:
            found = self.notes["beginning", name] = self.book(name).everywhere(self.tokens)
        return found

    def book(self, name: str, mixed: bool = True) -> Book:
        """The phrases of words/<language>/<name>.toml."""
        return book(self.language, name, mixed)


def _run_on(tokens: list[Token], at: int, language: str) -> str | None:
    """ "pul ups" is no word and a word, together a typing error of "pullups"."""
    if at + 1 >= len(tokens) or tokens[at + 1].kind != "word":
        return None
    first, second = tokens[at].text, tokens[at + 1].text
    if (not 3 <= len(first) <= 4 and not 2 <= len(second) <= 4) or (
        is_known(first, language) and is_known(second, language)
    ):
        return None
    if len(first) < 3 or len(second) < 2 or len(first) + len(second) > 14:
        return None
    found = spelled(first + second, language)
    return found[0] if len(found) == 1 and OSA.distance(found[0], first + second) == 1 else None


class _Mended(NamedTuple):
    """What a word is meant to be."""

    word: str
    halves: tuple[str, str] | None = None  # of two written as one
    slip: bool = False  # a typing error of this word
    doubtful: bool = False  # a typing error of several words of the trade


@lru_cache(maxsize=MOST_WORDS)
def _mended(text: str, language: str) -> _Mended | None:
    """What a word is meant to be; None where it stands as it is: so most do, and are one look each."""
    halves = compound(text, language)
    if halves:
        return _Mended(text, halves)
    if text in contracted(language):
        return _Mended(contracted(language)[text])
    word = text.removesuffix("'s")
    candidates = spelled(word, language)
    if len(candidates) > 1:
        return _Mended(word, doubtful=True)
    if candidates:
        return _Mended(candidates[0], slip=True)
    return _Mended(word) if word != text else None


def _unquoted(tokens: list[Token]) -> list[Token]:
    """Without the quotation marks around a whole message: behind a number one would be seconds."""
    whole = len(tokens) > 2 and tokens[0].text == tokens[-1].text == QUOTE
    return tokens[1:-1] if whole and sum(token.text == QUOTE for token in tokens) == 2 else tokens


def read_message(text: str, context: Context) -> Message:
    """Fold and cut a message, find its language, mend typing errors, see numbers said in words."""
    folded, tokens, language, doubts = _cut(text, context.language)
    local = context.sent_at.astimezone(context.timezone)
    return Message(folded, tokens, language, context, local, doubts)


@lru_cache(maxsize=8)  # one message is read several times: alone, against its plan, against what was told before
def _cut(text: str, hint: str | None) -> tuple[Folded, tuple[Token, ...], str, tuple[int, ...]]:
    folded = fold(text)
    cut = _unquoted(tokenize(folded.text))
    language = guess_language([token.text for token in cut if token.kind == "word"], hint)
    cut = written_out(cut, language)
    tokens: list[Token] = []
    doubts: list[int] = []
    skip = False
    for at, token in enumerate(cut):
        if skip:
            skip = False
            continue
        if token.kind == "word":
            whole = _run_on(cut, at, language)
            if whole is not None:
                tokens.append(replace(token, text=whole, word=whole, end=cut[at + 1].end))
                skip = True
                continue
            mended = _mended(token.text, language)
            if mended is not None and mended.halves is not None:
                first, second = mended.halves
                cut_at = token.start + len(first)
                tokens.append(replace(token, text=first, word=first, end=cut_at))
                tokens.append(replace(token, text=second, word=second, start=cut_at, space=True))
                continue
            if mended is not None and mended.doubtful:
                doubts.append(len(tokens))
            if mended is not None and mended.word != token.text:
                token = replace(token, word=mended.word, text=mended.word if mended.slip else token.text)
        tokens.append(token)
    return folded, tuple(part_dashes(say_numbers(tokens, language), language)), language, tuple(doubts)
