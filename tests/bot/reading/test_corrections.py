"""Corrections of an earlier report."""

from __future__ import annotations

from datetime import datetime
from zoneinfo import ZoneInfo

import pytest

from bot.reading.corrections import find_corrections
from bot.reading.message import Message, read_message
from bot.reading.reading import Context


def said(text: str, language: str = "en", at: str = "2027-03-10T18:00:00+00:00") -> Message:
    """A message of Wednesday 10 March 2027, evening."""
    zone = ZoneInfo("Europe/London")
    return read_message(text, Context(datetime.fromisoformat(at), zone, "kg", language, 71.5))


TABLE = [
    ("en", "that was 22.5, not 20", ("load_kg", 20, 22.5, None, "all")),
    ("en", "the last set was 2 reps, not 3", ("reps", 3, 2, None, "last")),
    ("en", "typo, bodyweight is 71.2 not 72.1", ("bodyweight_kg", 72.1, 71.2, None, "all")),
    ("de", "waren 22,5 statt 20", ("load_kg", 20, 22.5, None, "all")),
    ("de", "dritter Satz war 4 statt 5", ("reps", 5, 4, None, 3)),
    ("es", "eran 22,5, no 20", ("load_kg", 20, 22.5, None, "all")),
    ("es", "la última fue @9, no @8", ("rpe", 8, 9, None, "last")),
]


@pytest.mark.parametrize(("language", "text", "expected"), TABLE)
def test_a_value_put_right_is_a_correction(language: str, text: str, expected: tuple[object, ...]) -> None:
    (value,) = [claim.value for claim in find_corrections(said(text, language)) if claim.kind == "correction"]
    assert (value.field, value.was, value.now, value.movement, value.which) == expected


@pytest.mark.parametrize(
    "text", ["pull-ups 5x3 +20", "no pain, not sure why", "can we do it tomorrow instead of today?"]
)
def test_a_plain_message_corrects_nothing(text: str) -> None:
    assert not [claim for claim in find_corrections(said(text)) if claim.kind == "correction"]
