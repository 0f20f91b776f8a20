"""The folded text that the readers work on, with the way back to what was written.

Case, accents, digits of other scripts, fractions, odd dashes and times signs are folded away; marks of direction,
joiners and other unseen characters are dropped. Every folded character knows the piece of the original that it came
from, so whatever a reader points at can be quoted verbatim.
"""

from __future__ import annotations

import unicodedata
from dataclasses import dataclass
from functools import lru_cache

FRACTIONS = {"½": "5", "¼": "25", "¾": "75", "⅓": "33", "⅔": "67", "⅛": "125", "⅜": "375", "⅝": "625", "⅞": "875"}
ONE_TO_ONE = {
    **dict.fromkeys("‐‑‒–—―−﹘﹣－", "-"),
    **dict.fromkeys("×✕✖⨯╳х", "x"),
    **dict.fromkeys("’‘‛ʼ`´′＇", "'"),
    **dict.fromkeys("“”„«»″", '"'),
    **dict.fromkeys("٫", "."),
    **dict.fromkeys("،、，", ","),
    **dict.fromkeys("÷∕⁄", "/"),
    **dict.fromkeys("•●▪◦‣·", "\n"),
    "…": "\n",
    "\r": "\n",
    "\u2028": "\n",
    "\u2029": "\n",
}
LETTERS_END = "\u3000"  # beyond it nothing is kept: memory stays small whatever is sent
UNSEEN = {"Mn", "Me", "Cf", "Cc", "Cs", "Co", "Cn"}


@dataclass(frozen=True)
class Folded:
    """`text` is folded; character i came from original[starts[i]:ends[i]]."""

    original: str
    text: str
    starts: tuple[int, ...] | None  # None: character by character
    ends: tuple[int, ...] | None

    def span(self, start: int, end: int) -> str:
        """The piece of the original behind folded characters start..end (end excluded)."""
        if start >= end:
            return ""
        if self.starts is None or self.ends is None:
            return self.original[start:end]
        return self.original[self.starts[start] : self.ends[end - 1]]


@lru_cache(maxsize=4096)
def _fold_char(char: str) -> str:
    if char in ONE_TO_ONE:
        return ONE_TO_ONE[char]
    if char in "\n\t ":
        return char
    category = unicodedata.category(char)
    if category in UNSEEN:
        return ""
    if category == "Nd":
        return str(unicodedata.digit(char))
    if category in ("Zs", "Zl", "Zp"):
        return " "
    plain = unicodedata.normalize("NFKD", char).casefold()
    return "".join(c for c in plain if unicodedata.category(c) not in UNSEEN)


class _Letters(dict[int, str]):
    """The folded letters of the scripts below LETTERS_END, each worked out when it is first met."""

    def __init__(self) -> None:
        super().__init__()
        self.uneven: set[str] = set()  # those that do not fold to just one character, or to one that would fold again

    def __missing__(self, code: int) -> str:
        char = chr(code)
        piece = self[code] = _fold_char(char)
        if len(piece) != 1 or _fold_char(piece) != piece:
            self.uneven.add(char)
        return piece


LETTERS = _Letters()


def fold(text: str) -> Folded:
    """Fold a message. Linear in its length; any text at all is good."""
    if text.isascii() and text.replace("\n", " ").isprintable():
        return Folded(text, text.lower(), None, None)
    if FRACTIONS.keys().isdisjoint(text) and max(text, default="") < LETTERS_END:
        letters = set(text)
        folded = [(letter, LETTERS[ord(letter)]) for letter in letters]
        if LETTERS.uneven.isdisjoint(letters):
            whole = text
            for letter, piece in folded:
                if letter != piece:
                    whole = whole.replace(letter, piece)  # few differ: a fraction of what each by itself would take
            return Folded(text, whole, None, None)
    out: list[str] = []
    starts: list[int] = []
    ends: list[int] = []
    for i, char in enumerate(text):
        if char in FRACTIONS:
            # "2½" is 2.5 and "½" 0.5
            piece = ("." if out and out[-1].isdigit() else "0.") + FRACTIONS[char]
        else:
            piece = _fold_char(char)
        for c in piece:
            out.append(c)
            starts.append(i)
            ends.append(i + 1)
    return Folded(text, "".join(out), tuple(starts), tuple(ends))


def fold_words(text: str) -> str:
    """Words of a lexicon, folded the same way; without the way back, which nobody asks of them."""
    if text.isascii() and text.isprintable():
        return text.lower()
    return text.translate(LETTERS) if FRACTIONS.keys().isdisjoint(text) else fold(text).text


@lru_cache(maxsize=8192)
def fold_word(word: str) -> str:
    """A word of a lexicon, folded the same way."""
    return fold_words(word)
