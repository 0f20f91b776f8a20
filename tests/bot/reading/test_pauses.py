"""Which sets were paused, where a pause is told of some and denied of others."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from bot.reading.reading import Reading


@pytest.mark.parametrize(
    ("text", "language"),
    [
        ("pull-ups 3x4 +12.5 with a pause on top, then 2x8 no pauses", "en"),
        ("pull-ups 3x4 +12.5 with a pause on top, then 2x8 without weight and without a pause", "en"),
        ("Klimmzüge 3x4 +12,5 mit Pause oben, danach 2x8 ohne Gewicht und ohne Pause", "de"),
        ("dominadas 3x4 +12,5 con pausa arriba, luego 2x8 sin pausa", "es"),
    ],
)
def test_a_pause_that_later_sets_are_said_not_to_have_is_of_the_first_alone(
    reads: Callable[..., Reading], text: str, language: str
):
    found = reads(text, language=language)
    assert [(one.reps, one.pauses, one.linked) for one in found.sets] == [(4, ("top",), False)] * 3 + [
        (8, (), False)
    ] * 2
    assert not found.ask


@pytest.mark.parametrize(
    ("text", "language", "where"),
    [
        ("ring dips 3x6, stopped dead at the bottom every rep", "en", ("bottom",)),
        ("pull-ups 3x6, stopped at the top of each one", "en", ("top",)),
        ("dips 3x6, each rep stopped at the bottom", "en", ("bottom",)),
        ("fondos 3x6, paré abajo en cada rep", "es", ("bottom",)),
        ("dips 3x6, stopped at the bottom when my shoulder hurt 3/10", "en", ()),
        ("dips 3x6 oben gehalten", "de", ("top",)),
        ("dips 3x6, 2s oben gehalten", "de", ("top",)),
        ("klimmzüge 3x6 +10, oben gehalten, letzter satz rpe 9", "de", ("top",)),
        ("dips 3x6 unten 1s pause", "de", ("bottom",)),
        ("dips 3x6 oben jeweils 2s pause", "de", ("top",)),
        ("dips 3x6 oben immer 2 sekunden gehalten", "de", ("top",)),
        ("dips 3x6 oben angefangen, 2 min pause", "de", ()),
    ],
)
def test_a_stop_at_a_place_of_every_rep_is_a_pause(
    reads: Callable[..., Reading], text: str, language: str, where: tuple[str, ...]
):
    found = reads(text, language=language)
    assert [(one.reps, one.pauses) for one in found.sets] == [(6, where)] * 3
