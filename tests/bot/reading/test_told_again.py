"""What looks like a set and is none, what is left open, and sets told by their place or apparatus."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from bot.reading.reading import Reading
from tests.bot.reading.messages import context

Reads = Callable[..., Reading]


@pytest.mark.parametrize(
    ("text", "language", "about"),
    [
        ("chin ups 3x4 with 15 and 20", "en", "load_kg"),
        ("Klimmzüge 3x4 mit 15 und 20", "de", "load_kg"),
        ("dominadas 3x4 con 15 y 20", "es", "load_kg"),
        ("Chin ups 7, maybe 8", "en", "reps"),
        ("Klimmzüge 7, vielleicht 8", "de", "reps"),
        ("dominadas 7, quizá 8", "es", "reps"),
        ("4 sets of dips, between 8 and 10 reps", "en", "reps"),
        ("4 Sätze Dips, zwischen 8 und 10 Wdh", "de", "reps"),
        ("4 series de fondos, entre 8 y 10 repes", "es", "reps"),
        ("3 sets of pull ups, 20", "en", "reps"),
        ("3 Sätze Klimmzüge, 20", "de", "reps"),
        ("hoy dips 3 series, 15", "es", "reps"),
    ],
)
def test_a_number_left_open_is_asked(reads: Reads, text: str, language: str, about: str):
    assert [ask.about for ask in reads(text, language=language).ask] == [about]


@pytest.mark.parametrize(
    ("text", "language", "sets"),
    [
        ("pull-ups 5x2 +30, the doubles felt easy", "en", 5),
        ("Klimmzüge: ein Single mit 40, dann 5x2 mit 32,5. Die Doubles liefen gut", "de", 6),
        ("dips 4x6 +10, was scared something would pop but nope, no pain", "en", 4),
        ("5 x pull-ups, 3 each", "en", 5),
        ("5 x dominadas, 3 cada una, +12,5", "es", 5),
    ],
)
def test_what_is_spoken_of_again_is_no_further_set(reads: Reads, text: str, language: str, sets: int):
    assert len(reads(text, language=language).sets) == sets


@pytest.mark.parametrize(
    ("text", "language", "movements"),
    [
        ("bar muscle ups 5x1, on rings 2 singles", "en", ["muscle_up"] * 5 + ["ring_muscle_up"] * 2),
        ("Muscle-ups an der Stange 5x1, an den Ringen 2x1", "de", ["muscle_up"] * 5 + ["ring_muscle_up"] * 2),
        ("muscle ups en barra 5x1, en anillas 2 singles", "es", ["muscle_up"] * 5 + ["ring_muscle_up"] * 2),
        ("pull ups 3x5, with the red band 2x6", "en", ["pull_up"] * 3 + ["band_pull_up"] * 2),
        ("Klimmzüge 3x5, mit dem roten Band 2x6", "de", ["pull_up"] * 3 + ["band_pull_up"] * 2),
        ("dominadas 3x5, con la liga roja 2x6", "es", ["pull_up"] * 3 + ["band_pull_up"] * 2),
    ],
)
def test_the_same_on_the_rings_or_with_a_band(reads: Reads, text: str, language: str, movements: list[str]):
    assert [one.movement for one in reads(text, language=language).sets] == movements


@pytest.mark.parametrize(
    ("text", "language"),
    [
        ("push-ups 30 25 and the last to failure 19", "en"),
        ("Liegestütze 30 25 und der letzte bis zum Versagen 19", "de"),
        ("flexiones 30 25 y la última al fallo 19", "es"),
    ],
)
def test_the_last_set_may_tell_its_effort_first(reads: Reads, text: str, language: str):
    assert [(one.reps, one.rpe) for one in reads(text, language=language).sets] == [(30, None), (25, None), (19, 10)]


@pytest.mark.parametrize(
    ("text", "language"),
    [
        ("Skipped Thursday. I'll train tomorrow", "en"),
        ("Donnerstag geschwänzt. Morgen pack ichs wieder", "de"),
        ("me salté el jueves. mañana vuelvo", "es"),
    ],
)
def test_a_day_skipped_is_past_whatever_the_next_sentence_plans(reads: Reads, text: str, language: str):
    dates = reads(text, language=language).dates
    assert dates is not None
    assert dates.end == dates.start < context().sent_at.date()
