"""Warning signs made of parts in all their combinations, and talk of the same words that is none.

The rows stand in tests/data/sign_grammars.txt; of each a few sentences are drawn, the same ones every time.
"""

from __future__ import annotations

import pytest

from bot.reading import read
from bot.reading.reading import RED_FLAGS
from tests.bot.reading.messages import context
from tests.bot.reading.sign_grammar import rows, sentences

OF_A_ROW = 6
LANGUAGES = ("en", "de", "es")
SIGNS = RED_FLAGS
PLACES = {
    "elbow": ("elbow", "ellbogen", "codo"),
    "shoulder": ("shoulder", "schulter", "hombro"),
    "wrist": ("wrist", "handgelenk", "muñeca"),
    "knee": ("knee", "knie", "rodilla"),
}
SIDES = {"left": ("left", "linke", "izquierd"), "right": ("right", "rechte", "derech")}


def said(sign: str, language: str) -> list[str]:
    found = [row for name, spoken, row in rows() if (name, spoken) == (sign, language)]
    assert found
    return [text for row in found for text in sentences(row, OF_A_ROW)]


def named(words: dict[str, tuple[str, ...]], text: str) -> str | None:
    """The place or side that a sentence has a word for."""
    return next((name for name, known in words.items() if any(word in text.lower() for word in known)), None)


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("sign", SIGNS)
def test_a_sign_is_heard_in_every_combination(sign: str, language: str) -> None:
    missed = [text for text in said(sign, language) if sign not in read(text, context(language=language)).red_flags]
    assert missed == []


@pytest.mark.parametrize("language", LANGUAGES)
def test_talk_of_the_same_words_alarms_of_nothing(language: str) -> None:
    heard = {text: read(text, context(language=language)).red_flags for text in said("none", language)}
    assert {text: flags for text, flags in heard.items() if flags} == {}


@pytest.mark.parametrize("language", LANGUAGES)
def test_pain_at_night_has_its_place_and_side_and_no_hour_for_a_score(language: str) -> None:
    for text in said("night_pain", language):
        reading = read(text, context(language=language))
        if named(PLACES, text) is None:
            continue
        pain = [(one.site, one.side, one.when) for one in reading.pain]
        assert pain == [(named(PLACES, text), named(SIDES, text), "rest")], text
        assert reading.pain[0].score in ((None, 6) if "6" in text else (None,)), text
        assert reading.sleep_h is None, text
        assert not reading.sets, text
