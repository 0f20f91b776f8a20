"""Bodyweight, sleep, minutes, effort of the session."""

from __future__ import annotations

from collections.abc import Callable
from datetime import datetime
from zoneinfo import ZoneInfo

import pytest

from bot.reading.body import find_body
from bot.reading.message import Message, read_message
from bot.reading.reading import Context, Reading


def said(text: str, language: str = "en", at: str = "2027-03-10T18:00:00+00:00") -> Message:
    """A message of Wednesday 10 March 2027, evening."""
    zone = ZoneInfo("Europe/London")
    return read_message(text, Context(datetime.fromisoformat(at), zone, "kg", language, 71.5))


TABLE = [
    ("en", "BW 71.2", {"bodyweight": 71.2}),
    ("en", "slept 6.5h", {"sleep": 6.5}),
    ("en", "65 min, overall 7", {"duration": 65, "session_rpe": 7}),
    ("en", "took 1h10", {"duration": 70}),
    ("en", "4x3 pull ups +25, 3 min rest between sets", {}),
    ("en", "EMOM 10 min", {}),
    ("en", "pull ups bw 8,8,7", {}),
    ("en", "kids slept 10 hours, me 6", {"sleep": 6}),
    ("en", "bad night, barely 4 hours", {"sleep": 4}),
    ("en", "bad night, only 5 muscle ups", {}),
    ("en", "I'm 71 now", {"bodyweight": 71}),
    ("en", "I'm 40 today", {}),
    ("de", "Geschlafen 6,5 h, Gewicht heute früh 72,3", {"sleep": 6.5, "bodyweight": 72.3}),
    ("de", "Einheit RPE 7, 55 min", {"session_rpe": 7, "duration": 55}),
    ("es", "dormí 7h y media", {"sleep": 7.5}),
    ("es", "sesión 8/10, 70 min", {"session_rpe": 8, "duration": 70}),
    ("es", "peso 72,4 esta mañana", {"bodyweight": 72.4}),
]


@pytest.mark.parametrize(("language", "text", "expected"), TABLE)
def test_facts_of_the_body_are_read(language: str, text: str, expected: dict[str, float]) -> None:
    assert {claim.kind: claim.value for claim in find_body(said(text, language))} == expected


def test_a_weight_far_from_the_last_one_is_asked() -> None:
    (claim,) = find_body(said("bodyweight 745"))
    assert claim.value is None
    assert claim.ask is not None


def test_a_weight_told_bare_is_in_the_sender_s_unit(reads: Callable[..., Reading]) -> None:
    assert reads("I'm 158 now", unit="lb").bodyweight_kg == pytest.approx(158 * 0.45359237)


@pytest.mark.parametrize("text", ["I'm 158 now", "11 stone 4 this morning"])
def test_a_weight_in_another_unit_is_asked(reads: Callable[..., Reading], text: str) -> None:
    reading = reads(text)
    assert reading.bodyweight_kg is None
    assert [ask.about for ask in reading.ask] == ["bodyweight_kg"]


@pytest.mark.parametrize(
    ("text", "minutes"),
    [
        ("fingers tingly after the hangs, lasted 20 min", None),
        ("session lasted an hour, left elbow 2", 60),
        ("pull-ups 5x3 +20, lasted 50 min", 50),
    ],
)
def test_what_a_sign_lasted_is_no_session(reads, text, minutes):
    assert reads(text).duration_min == minutes


@pytest.mark.parametrize("text", ["Ellbogen 2, nach dem Aufwärmen weg", "Ellbogen rechts 2, beim Warmmachen weg"])
def test_pain_that_is_gone_is_no_absence(reads, text):
    assert reads(text, language="de").intents == ("pain",)
