"""Numbers said in words: "twenty two point five", "zweiundzwanzig", "veinticinco", "ten and a half".

A word that says a number keeps its kind and gets a `value` (`spelled`), since "one arm" and "a un brazo" are no
counts: the set grammar decides. Words that belong together become one token.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import replace
from functools import lru_cache

from bot.reading.lexicon import FALLBACK, table
from bot.reading.text import fold_word
from bot.reading.tokens import Token


@lru_cache(maxsize=8)
def _words(
    language: str,
) -> tuple[dict[str, float], frozenset[str], frozenset[str], tuple[tuple[str, ...], ...], frozenset[str]]:
    """Value of each number word, words that join tens and units, words for the point, ways to say "and a half".

    Last the tens that no units stand right behind: "veinte tres series" and "zwanzig drei Sätze" are two numbers.
    """
    values: dict[str, float] = {}
    joins: set[str] = set()
    points: set[str] = set()
    halves: set[tuple[str, ...]] = set()
    for source in (FALLBACK, language):
        data = table(source, "numbers")
        plain = {fold_word(word): float(n) for word, n in data.get("value", {}).items()}
        joiner = fold_word(data.get("compound", ""))
        if joiner:
            units = {w: n for w, n in plain.items() if n < 10}
            tens = {w: n for w, n in plain.items() if n >= 20 and n % 10 == 0 and n < 100}
            plain |= {unit + joiner + ten: u + t for unit, u in units.items() for ten, t in tens.items()}
        suffix = fold_word(data.get("half_suffix", ""))
        if suffix:
            plain |= {word + suffix: n + 0.5 for word, n in plain.items()}
        values |= plain
        joins |= {fold_word(word) for word in data.get("join", [])}
        points |= {fold_word(word) for word in data.get("point", [])}
        halves |= {tuple(fold_word(phrase).split()) for phrase in data.get("half", [])}
    own = table(language, "numbers")
    joined = bool(own.get("join") or own.get("compound"))
    apart = frozenset(fold_word(word) for word in own.get("value", {})) if joined else frozenset[str]()
    return values, frozenset(joins), frozenset(points), tuple(sorted(halves, key=len, reverse=True)), apart


HUNDRED = 100
MOST_WORDS = 3  # of a number below a hundred: "cincuenta y dos"


@lru_cache(maxsize=8)
def _led_hundreds(language: str) -> frozenset[str]:
    """The hundreds that the rest of a number follows without a word: "ciento"."""
    return frozenset(fold_word(word) for word in table(language, "numbers").get("led_hundreds", []))


@lru_cache(maxsize=8)
def _articles(language: str) -> frozenset[str]:
    """The number words that are no number right before another one: "un nueve"."""
    return frozenset(fold_word(word) for word in table(language, "numbers").get("article", []))


@lru_cache(maxsize=8)
def _behind_figures(language: str) -> frozenset[str]:
    """What figures go on with: the point, the beginning of "and a half"."""
    _, _, points, halves, _ = _words(language)
    return points.union(half[0] for half in halves)


def _word_next(tokens: Sequence[Token], at: int, values: Mapping[str, float]) -> bool:
    """Whether a word for a number above one stands at a place."""
    return at < len(tokens) and values.get(tokens[at].text, 0) > 1


def _below_hundred(tokens: Sequence[Token], at: int, language: str) -> tuple[float, int]:
    """What stands behind a hundred, and the place after it; nothing: 0."""
    said = say_numbers(tokens[at : at + MOST_WORDS], language)[:1]
    if not said or not said[0].spelled or not 0 < (said[0].value or 0.0) < HUNDRED:
        return 0.0, at
    return said[0].value or 0.0, next(n for n in range(at, len(tokens)) if tokens[n].end == said[0].end) + 1


def say_numbers(tokens: Sequence[Token], language: str) -> list[Token]:
    """The same tokens with the value of number words filled in, those that are one number made one."""
    values, joins, points, halves, apart = _words(language)
    articles, behind = _articles(language), _behind_figures(language)
    out: list[Token] = []
    i = 0
    while i < len(tokens):
        token = tokens[i]
        value = values.get(token.text) if token.kind == "word" else None
        if value is None and (
            token.kind != "num" or token.comma or i + 1 == len(tokens) or tokens[i + 1].text not in behind
        ):
            out.append(token)
            i += 1
            continue
        if token.text in articles and _word_next(tokens, i + 1, values):
            out.append(token)  # "un nueve sobre diez"
            i += 1
            continue
        end = i + 1
        if value is None:
            value = token.value or 0.0
        else:
            if value >= 20 and value % 10 == 0 and value < 100:
                joined = end < len(tokens) and tokens[end].text in joins
                after = end + 1 if joined else end
                goes_on = after < len(tokens) and (joined or token.text not in apart)
                unit = values.get(tokens[after].text) if goes_on else None
                if unit is not None and 1 <= unit < 10 and tokens[after].start > tokens[after - 1].end:
                    value, end = value + unit, after + 1
        if value >= HUNDRED and value % HUNDRED == 0 and token.text in _led_hundreds(language):
            rest, after = _below_hundred(tokens, end, language)
            value, end = value + rest, after  # "ciento veinte", "doscientos cincuenta y dos"
        if end + 1 < len(tokens) and tokens[end].text in points and value == int(value):
            part = tokens[end + 1]  # "zwölf Komma fünf", "12 Komma 5"
            tenth = values.get(part.text, part.value if part.kind == "num" else None)
            if tenth is not None and 0 <= tenth < 10:
                value, end = value + tenth / 10, end + 2
        for half in halves:
            if tuple(t.text for t in tokens[end : end + len(half)]) == half:
                value, end = value + 0.5, end + len(half)
                break
        if end == i + 1 and token.kind == "num":
            out.append(token)
        else:
            last = tokens[end - 1]
            said = " ".join(t.text for t in tokens[i:end])
            out.append(
                replace(
                    token,
                    text=said,
                    word=said if end > i + 1 else token.word,
                    end=last.end,
                    value=value,
                    spelled=token.kind == "word",
                )
            )
        i = end
    return out
