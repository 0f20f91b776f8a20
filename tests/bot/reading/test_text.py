"""Folding keeps the way back to what was written."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.reading.text import fold
from bot.reading.tokens import tokenize


@pytest.mark.parametrize(
    ("written", "folded"),
    [
        ("5×3 @ 20KG", "5x3 @ 20kg"),
        ("Klimmzüge", "klimmzuge"),
        ("٥×٣", "5x3"),
        ("2½ kg", "2.5 kg"),
        ("½", "0.5"),
        ("5–3", "5-3"),
        ("don’t", "don't"),
        ("5\ufe0f\u20e3", "5"),
        ("\u200f5x3", "5x3"),
    ],
)
def test_odd_signs_are_folded_away(written, folded):
    assert fold(written).text == folded


@given(st.text(max_size=200))
def test_every_token_points_at_its_own_words(text):
    folded = fold(text)
    for token in tokenize(folded.text):
        span = folded.span(token.start, token.end)
        assert span
        assert span in text


@pytest.mark.parametrize(
    ("text", "values"),
    [
        ("22,5 kg", [22.5]),
        ("5,5,4", [5, 5, 4]),
        ("5x3@20", [5, 3, 20]),
        ("0.5", [0.5]),
        ("1234567890123", []),  # no number of the trade
    ],
)
def test_numbers_are_cut_as_they_are_meant(text, values):
    assert [token.value for token in tokenize(text) if token.value is not None] == values


def test_five_comma_five_says_that_it_may_be_two_numbers():
    assert [token.comma for token in tokenize("5,5") if token.kind == "num"] == [True]
