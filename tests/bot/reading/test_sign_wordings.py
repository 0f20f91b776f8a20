"""Every warning sign in many wordings and three languages, with the language known and unknown; talk that is none."""

from __future__ import annotations

from pathlib import Path

import pytest

from bot.reading import read
from bot.reading.reading import RED_FLAGS
from tests.bot.reading.messages import context

LINES = (Path(__file__).parents[2] / "data" / "sign_wordings.txt").read_text(encoding="utf-8").splitlines()
ROWS = [tuple(part.strip() for part in line.split("|")) for line in LINES if line and not line.startswith("#")]
LANGUAGES = ("en", "de", "es")


def said(sign: str, language: str) -> list[str]:
    return [text for name, spoken, text in ROWS if (name, spoken) == (sign, language)]


def flags(text: str, language: str | None) -> tuple[str, ...]:
    return read(text, context(language=language)).red_flags


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("sign", RED_FLAGS)
def test_a_sign_is_caught_in_every_wording(sign: str, language: str) -> None:
    wordings = said(sign, language)
    assert len(wordings) >= 12
    assert [text for text in wordings if sign not in flags(text, language)] == []


@pytest.mark.parametrize("sign", RED_FLAGS)
def test_a_sign_is_caught_whatever_the_language_is_thought_to_be(sign: str) -> None:
    """A wrong hint; where the words speak clearly for their own language the hint is passed over anyway."""
    missed = [
        (thought, text)
        for language in LANGUAGES
        for text in said(sign, language)
        for thought in (None, *LANGUAGES)
        if thought != language and sign not in flags(text, thought)
    ]
    assert missed == []


@pytest.mark.parametrize("language", LANGUAGES)
def test_denied_past_feared_idiomatic_and_others_signs_are_no_alarm(language: str) -> None:
    talk = said("none", language)
    assert len(talk) >= 20
    assert [(text, flags(text, language)) for text in talk if flags(text, language)] == []
