"""Words of the reader's own books and numbers, thrown together: a reading comes back, whatever they mean."""

from __future__ import annotations

import random
import re
import tomllib
from collections.abc import Iterator
from datetime import datetime
from zoneinfo import ZoneInfo

import pytest

from bot.reading import read
from bot.reading.lexicon import WORDS
from bot.reading.reading import Context
from tests.corpus import notation
from tests.corpus.context import planned_set

NUMBERS = [
    *"5x3 3 +20 20 22,5 @8 1. 2) ( ) : , . - / x 1:30 50% 3/10 L R 5-3-1 8,8,7 ½ # + = kg @ 10 20s ? ! and".split(),
    *("then", "1/10", "rpe 8", "10 min", "\n"),
]
PLAN = tuple(
    planned_set(one)
    for one in notation.prescribed(
        "s/archer archer_pull_up 3x2 LR; m/weighted_pull_up pull_up 5x3 +20 @8; a dip 3x8 +10"
    )
)
MESSAGES = 700


def phrases(found: object) -> Iterator[str]:
    if isinstance(found, dict):
        for one in found.values():
            yield from phrases(one)
    elif isinstance(found, list):
        for one in found:
            yield from phrases(one)
    elif isinstance(found, str):
        yield re.sub(r"[(){}|*]", " ", found)


@pytest.mark.parametrize("language", ["en", "de", "es"])
@pytest.mark.parametrize("today", [None, PLAN])
def test_any_words_in_any_order_are_read(language, today):
    chance = random.Random(f"{language} {today is None}")
    words = [
        phrase
        for name in ("little", "grammar", "movements")
        for phrase in phrases(tomllib.loads((WORDS / language / f"{name}.toml").read_text(encoding="utf-8")))
    ]
    zone = ZoneInfo("Europe/London")
    context = Context(datetime(2027, 3, 4, 18, tzinfo=zone), zone, "kg", language, 71.5, today)
    for _ in range(MESSAGES):
        pieces = [chance.choice(NUMBERS if chance.random() < 0.5 else words) for _ in range(chance.randint(2, 14))]
        text = " ".join(pieces)
        assert read(text, context).intents, text
