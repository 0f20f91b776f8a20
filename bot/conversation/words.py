"""The words of `words.toml`."""

from __future__ import annotations

import re
from collections.abc import Iterable
from functools import cache
from pathlib import Path

import tomli

from bot.reading.text import fold

WORDS = Path(__file__).with_name("words.toml")


@cache
def phrases(table: str) -> dict[str, tuple[str, ...]]:
    """The beginnings of words of one table, by name."""
    tables = tomli.loads(WORDS.read_text(encoding="utf-8"))
    return {name: tuple(one.casefold() for one in found) for name, found in tables[table].items()}


@cache
def folded(table: str) -> dict[str, tuple[str, ...]]:
    """As `phrases`, folded as the reader folds a message."""
    return {name: tuple(fold(one).text for one in found) for name, found in phrases(table).items()}


def begins(text: str, stem: str) -> bool:
    """Whether a word of `text` (case-folded) begins with `stem`: "rings" is meant by "ring", "during" is not."""
    return re.search(rf"(?<!\w){re.escape(stem)}", text) is not None


def starts(text: str, stems: Iterable[str]) -> list[int]:
    """Where words of `text` (case-folded) begin with one of `stems`."""
    return [found.start() for stem in stems for found in re.finditer(rf"(?<!\w){re.escape(stem)}", text)]


def medical(text: str) -> bool:
    """Whether a message speaks of a doctor's word, an operation, a pregnancy: what the coach must hear."""
    return _medical().search(text.casefold()) is not None


@cache
def _medical() -> re.Pattern[str]:
    # Every message is looked through: once for all stems, not once for each of a hundred.
    return re.compile(rf"(?<!\w)(?:{'|'.join(re.escape(stem) for stem in phrases('medical')['said'])})")
