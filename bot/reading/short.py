"""Shorthand as people type it on a phone ("c/ 20", "xq", "dsp", "rot. externa"), written out before anything is read.

The ways are data: words/<language>/short.toml, `[short]` anywhere, `[before_number]` only where a number follows,
`[after_number]` only right behind one ("15''").
Places stay those of what was typed, so that it is quoted verbatim.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from functools import lru_cache

from bot.reading.lexicon import table
from bot.reading.text import fold_words
from bot.reading.tokens import Token, tokenize

Way = tuple[tuple[tuple[str, bool], ...], tuple[str, ...], str]  # as typed, written out, where


@lru_cache(maxsize=8)
def _ways(language: str) -> dict[str, tuple[Way, ...]]:
    """The ways to shorten, by their first token; the longest first."""
    found: dict[str, list[Way]] = {}
    for name, entries in table(language, "short").items():
        for whole, ways in entries.items():
            written = tuple(fold_words(whole).split())
            for way in ways:
                typed = tuple((token.text, token.space) for token in tokenize(fold_words(way)))
                found.setdefault(typed[0][0], []).append((typed, written, name))
    return {first: tuple(sorted(ways, key=lambda way: -len(way[0]))) for first, ways in found.items()}


def written_out(tokens: Sequence[Token], language: str) -> list[Token]:
    """The same tokens, what is shortened written out."""
    ways = _ways(language)
    if not ways or not any(token.text in ways for token in tokens):
        return list(tokens)
    out: list[Token] = []
    at = 0
    while at < len(tokens):
        way = next((way for way in ways.get(tokens[at].text, ()) if _is(tokens, at, way)), None)
        if way is None:
            out.append(tokens[at])
            at += 1
            continue
        typed, written, _ = way
        last = tokens[at + len(typed) - 1]
        first = replace(tokens[at], kind="word", end=last.end)
        out += [replace(first, text=word, word=word, space=n > 0 or first.space) for n, word in enumerate(written)]
        at += len(typed)
    return out


def _is(tokens: Sequence[Token], at: int, way: Way) -> bool:
    """Whether these tokens are typed so: apart from a number before ("6c" is none), all in one piece."""
    typed, _, where = way
    end = at + len(typed)
    glued = at > 0 and not tokens[at].space and tokens[at - 1].kind == "num"
    if glued != (where == "after_number") or end > len(tokens) or tokens[at].text != typed[0][0]:
        return False
    for token, (piece, space) in zip(tokens[at + 1 : end], typed[1:], strict=True):
        if token.text != piece or (token.space and not space):
            return False
    follow = tokens[end] if end < len(tokens) else None
    if where == "after_number":
        return follow is None or follow.space or follow.kind != "word"
    return where != "before_number" or (follow is not None and follow.kind == "num")
