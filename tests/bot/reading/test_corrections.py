"""Corrections of an earlier report."""

from __future__ import annotations

from collections.abc import Callable
from datetime import datetime
from zoneinfo import ZoneInfo

import pytest

from bot.reading.corrections import find_corrections
from bot.reading.message import Message, read_message
from bot.reading.reading import Context, Reading
from tests.bot.reading.messages import planned


def said(text: str, language: str = "en", at: str = "2027-03-10T18:00:00+00:00") -> Message:
    """A message of Wednesday 10 March 2027, evening."""
    zone = ZoneInfo("Europe/London")
    return read_message(text, Context(datetime.fromisoformat(at), zone, "kg", language, 71.5))


TABLE = [
    ("en", "that was 22.5, not 20", ("load_kg", 20, 22.5, None, "all")),
    ("en", "the last set was 2 reps, not 3", ("reps", 3, 2, None, "last")),
    ("en", "typo, bodyweight is 71.2 not 72.1", ("bodyweight_kg", 72.1, 71.2, None, "all")),
    ("en", "second set was 4 actually", ("reps", None, 4, None, 2)),
    ("en", "rpe on the last one was more like 9 than 8", ("rpe", 8, 9, None, "last")),
    ("en", "change the chins to 17.5kg pls", ("load_kg", None, 17.5, "chin_up", "all")),
    ("en", "it was chins not pull ups", ("movement", "pull_up", "chin_up", None, "all")),
    ("en", "+10 not bodyweight", ("load_kg", 0, 10, None, "all")),
    ("en", "sorry that was 4 sets not 5", ("sets", 5, 4, None, "all")),
    ("en", "oops I meant dips 3x8 not 3x10", ("reps", 10, 8, "dip", "all")),
    ("es", "eran supinas, no pronas", ("movement", "pull_up", "chin_up", None, "all")),
    ("es", "la segunda serie fue de 4 en realidad", ("reps", None, 4, None, 2)),
    ("de", "waren 22,5 statt 20", ("load_kg", 20, 22.5, None, "all")),
    ("de", "dritter Satz war 4 statt 5", ("reps", 5, 4, None, 3)),
    ("es", "eran 22,5, no 20", ("load_kg", 20, 22.5, None, "all")),
    ("es", "la última fue @9, no @8", ("rpe", 8, 9, None, "last")),
    ("en", "sorry, the load was 22.5", ("load_kg", None, 22.5, None, "all")),
    ("de", "sorry, das Gewicht war 22,5", ("load_kg", None, 22.5, None, "all")),
    ("es", "perdón, el lastre era 22,5", ("load_kg", None, 22.5, None, "all")),
]


@pytest.mark.parametrize(("language", "text", "expected"), TABLE)
def test_a_value_put_right_is_a_correction(language: str, text: str, expected: tuple[object, ...]) -> None:
    (value,) = [claim.value for claim in find_corrections(said(text, language)) if claim.kind == "correction"]
    assert (value.field, value.was, value.now, value.movement, value.which) == expected


@pytest.mark.parametrize(
    "text",
    [
        "pull-ups 5x3 +20",
        "no pain, not sure why",
        "can we do it tomorrow instead of today?",
        "sorry, my bodyweight was 73",
        "sorry, the elbow was 3",
    ],
)
def test_a_plain_message_corrects_nothing(text: str) -> None:
    assert not [claim for claim in find_corrections(said(text)) if claim.kind == "correction"]


def test_that_was_looks_back_though_a_plan_stands(reads: Callable[..., Reading]) -> None:
    reading = reads("that was 17.5 not 15", today=planned("pull_up", 5, 5, load_kg=20.0))
    assert reading.correction is not None
    assert (reading.correction.field, reading.correction.was, reading.correction.now) == ("load_kg", 15, 17.5)
    assert not reading.sets


def test_fewer_than_planned_is_no_correction(reads: Callable[..., Reading]) -> None:
    assert reads("2 instead of 3 on the last", today=planned("pull_up", 3, 3, 3)).correction is None


@pytest.mark.parametrize("text", ["change the counterweight to 7.5, I said 5", "change the chins to 17.5kg pls"])
def test_a_value_changed_asks_for_no_day(reads: Callable[..., Reading], text: str) -> None:
    assert reads(text).ask == ()


@pytest.mark.parametrize("text", ["change the session to the 12th", "update my training to 3 times a week"])
def test_a_day_or_a_week_changed_is_no_correction(reads: Callable[..., Reading], text: str) -> None:
    assert reads(text).correction is None
