"""Typing errors: mended where one word is clearly meant, left alone where none is, asked where two of the trade are."""

from __future__ import annotations

import pytest

from bot.reading.lexicon import languages
from bot.reading.spelling import own_words, spelled

# what was typed, the language, the word meant; by hand, common practice of a keyboard, no source
MEANT = [
    ("twnety", "en", "twenty"), ("fiteen", "en", "fifteen"), ("beacuse", "en", "because"), ("inisde", "en", "inside"),
    ("sessin", "en", "session"), ("minues", "en", "minutes"), ("bothr", "en", "bother"), ("planed", "en", "planned"),
    ("zwnazig", "de", "zwanzig"), ("letten", "de", "letzten"), ("saetze", "de", "satze"),
    ("gehaletn", "de", "gehalten"),
    ("veitne", "es", "veinte"), ("repso", "es", "reposo"), ("colgano", "es", "colgando"), ("minutso", "es", "minutos"),
]  # fmt: skip
# words that no list has, or that everyday language has; near to one of the trade
NO_SLIPS = [("gesäbelt", "de"), ("clocked", "en"), ("mouths", "en"), ("filed", "en"), ("lenka", "en"), ("parir", "es")]


@pytest.mark.parametrize(("typed", "language", "meant"), MEANT)
def test_the_word_that_is_clearly_meant_is_read(typed: str, language: str, meant: str) -> None:
    assert spelled(typed, language) == (meant,)


@pytest.mark.parametrize(("word", "language"), NO_SLIPS)
def test_a_word_of_its_own_is_no_slip(word: str, language: str) -> None:
    assert spelled(word, language) == ()


@pytest.mark.parametrize("language", languages())
def test_no_word_that_the_books_know_is_mended(language: str) -> None:
    assert [word for word in sorted(own_words(language)) if spelled(word, language)] == []
