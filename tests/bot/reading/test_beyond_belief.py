"""Values that nobody means are asked, and absences taken back or told in few words are what they say."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from bot.reading.reading import Reading
from tests.bot.reading.messages import planned

TODAY = planned("pull_up", 4, 4, 4, 4, load_kg=11.25, rpe=7)


@pytest.mark.parametrize(
    ("text", "about"),
    [
        ("pull-ups 4x4 +999999999999999999", "load_kg"),
        ("pull-ups 500x4 +11.25", "sets"),
        ("pull-ups 4x4 +11.25 on 31 february", "performed_on"),
        ("pull-ups 4x4 +11.25 on 31 april", "performed_on"),
        ("pull-ups 4x4 +11.25 " * 400, "sets"),
    ],
)
def test_a_value_beyond_belief_is_asked(reads: Callable[..., Reading], text: str, about: str):
    found = reads(text, today=TODAY)
    assert about in [ask.about for ask in found.ask]
    assert about != "load_kg" or all(one.load_kg is None for one in found.sets)
    assert about != "sets" or found.sets == ()
    assert about != "performed_on" or found.performed_on is None


@pytest.mark.parametrize(
    ("text", "language"),
    [
        ("I'm not going away after all", "en"),
        ("actually I'm not away", "en"),
        ("my trip got cancelled", "en"),
        ("bin doch nicht weg", "de"),
        ("no estoy fuera", "es"),
    ],
)
def test_an_absence_taken_back_is_none(reads: Callable[..., Reading], text: str, language: str):
    found = reads(text, language=language, today=TODAY)
    assert found.intents == ("resume",)
    assert found.dates is None


@pytest.mark.parametrize(
    ("text", "language"),
    [
        ("missed it", "en"),
        ("nothing today, kids sick", "en"),
        ("hab's nicht geschafft", "de"),
        ("hoy nada, no pude", "es"),
    ],
)
def test_a_day_missed_in_few_words(reads: Callable[..., Reading], text: str, language: str):
    assert reads(text, language=language, today=TODAY).intents == ("missed",)
