"""Cut a folded text into tokens: numbers, words, signs and line ends, each with its place.

"5x3@20kg" is six tokens; hyphens inside words are left out ("pull-ups" is "pull" and "ups"). A decimal comma makes
one number of "22,5"; "5,5,4" stays three numbers. Where "5,5" could be either, the token says so (`comma`).
"""

from __future__ import annotations

import re
from dataclasses import dataclass, replace
from typing import Literal

Kind = Literal["num", "word", "sym", "nl", "clock", "date"]

FACE = "\u263a"  # what a face of signs is to the readers
PIECES = re.compile(
    r"(?P<link>(?:https?://|www\.)\S+)"
    r"|(?P<date>\d{4}-\d{2}-\d{2}(?!\d))"
    r"|(?P<clock>\d{1,3}:\d{2}(?::\d{2})?(?![\d:]))"
    r"|(?P<num>(?<=[+@])\d+o(?![^\W_])|\d+(?:\.\d+)?|\.\d+)"
    r"|(?P<unit>(?<=\d)(?:kg|lbs?)(?=x\d))"
    r"|(?P<tie>(?<=\d)-(?=(?:kgs?|kilos?|lbs?|pounds?|pfund|libras?|secs?|seconds?|sek|sekunden)(?![^\W_])))"
    r"|(?P<by>(?<=\d)x(?=[^\W\d_]))"
    r"|(?P<word>[^\W\d_]+(?:'[^\W\d_]+)*)"
    r"|(?P<nl>\n)"
    r"|(?P<face>(?<!\S)[:;]-?[()dp](?!\S))"
    r"|(?P<sym>\S)"
)
POINTED = re.compile(r"\d\.(?:25|5|75)(?!\d)")  # "12.5": who writes so has no decimal commas
PARTS_OF_A_KILO = ("5", "25", "75")
MOST_DIGITS = 9  # no number of the trade is longer; what is longer is no number to us


@dataclass(slots=True, unsafe_hash=True)  # never changed; frozen, each would take five times as long to make
class Token:
    """One token. `text` is folded; `start` and `end` are places in the folded text.

    value: of a number (a word that says one too, once the message is read), or seconds of a "1:30" clock.
    space: white space stands before it. comma: written "5,5": a decimal, or two numbers.
    word: as corrected for typing errors, for look-ups; equal to `text` where there was none.
    """

    kind: Kind
    text: str
    start: int
    end: int
    value: float | None = None
    space: bool = False
    comma: bool = False
    word: str = ""
    spelled: bool = False  # a number said in words


def _cut(text: str) -> list[Token]:
    tokens: list[Token] = []
    end = 0
    for match in PIECES.finditer(text):
        piece, name = match.group(), match.lastgroup
        start, stop = match.span()
        if name == "word":  # so are most
            tokens.append(Token("word", piece, start, stop, None, start > end or not tokens, False, piece))
            end = stop
            continue
        if name == "link":
            continue  # the figures of an address tell nothing
        if name == "tie":
            end = stop
            continue  # "a 35-lb plate": the number and its unit
        # "3xamrap": three times what follows; "15kgx6": a load and its reps
        kind: Kind = "word" if name in ("by", "unit") else name  # type: ignore[assignment]
        if name == "face":
            kind, piece = "sym", FACE  # ":)" opens no bracket
        value: float | None = None
        if kind == "num":
            if len(piece) > MOST_DIGITS:
                kind = "sym"
            else:
                value = float(piece.replace("o", "0"))  # "+2O" is a slip of the finger
        elif kind == "clock":
            parts = [int(part) for part in piece.split(":")]
            value = float(sum(part * 60**power for power, part in enumerate(reversed(parts))))
        tokens.append(Token(kind, piece, start, stop, value, start > end or not tokens, False, piece))
        end = stop
    return tokens


def _tight(left: Token, right: Token) -> bool:
    return left.end == right.start


def _chain(tokens: list[Token], at: int) -> int:
    """How many whole numbers hang together by tight commas from `at` on."""
    count = 1
    while (
        at + 2 < len(tokens)
        and tokens[at].kind == "num"
        and tokens[at + 1].text == ","
        and tokens[at + 2].kind == "num"
        and _tight(tokens[at], tokens[at + 1])
        and _tight(tokens[at + 1], tokens[at + 2])
        and "." not in tokens[at].text
        and "." not in tokens[at + 2].text
    ):
        count += 1
        at += 2
    return count


def _next_set(tokens: list[Token], at: int) -> bool:
    """Whether a number begins a set rather than ends a load: the 3 of "3/3,3/2", the 2 of "at 15,2x4"; not "22,5x3"."""
    behind = tokens[at + 1 : at + 3]
    pair = len(behind) == 2 and behind[0].text in "x/" and behind[1].kind == "num" and _tight(tokens[at], behind[0])
    return pair and tokens[at].text not in PARTS_OF_A_KILO


def tokenize(text: str) -> list[Token]:
    """All tokens of a folded text, in order."""
    raw = _cut(text)
    pointed = POINTED.search(text) is not None
    tokens: list[Token] = []
    i = 0
    while i < len(raw):
        token = raw[i]
        if token.kind == "num":
            chain = _chain(raw, i)
            if chain == 2 and len(raw[i + 2].text) == 3 and raw[i + 2].text.isdigit() and len(token.text) <= 3:
                last = raw[i + 2]
                whole = text[token.start : last.end]
                tokens.append(replace(token, text=whole, end=last.end, value=float(whole.replace(",", "")), word=whole))
                i += 3
                continue
            if chain == 2 and (pointed or _next_set(raw, i + 2)):
                tokens.extend(raw[i : i + 3])
                i += 3
                continue
            if chain == 2 and len(raw[i + 2].text) <= 2:
                last = raw[i + 2]
                whole = text[token.start : last.end]
                value = float(whole.replace(",", "."))
                tokens.append(replace(token, text=whole, end=last.end, value=value, comma=True, word=whole))
                i += 3
                continue
            if chain > 2:
                tokens.extend(raw[i : i + 2 * chain - 1])
                i += 2 * chain - 1
                continue
        if (
            token.text == "-"
            and tokens
            and i + 1 < len(raw)
            and tokens[-1].kind == "word"
            and raw[i + 1].kind == "word"
            and _tight(tokens[-1], token)
            and _tight(token, raw[i + 1])
        ):
            i += 1
            continue
        tokens.append(token)
        i += 1
    return tokens
