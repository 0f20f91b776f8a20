"""Warning signs: named, and only talked about."""

from __future__ import annotations

from datetime import datetime
from zoneinfo import ZoneInfo

import pytest

from bot.reading.message import Message, read_message
from bot.reading.reading import Context
from bot.reading.red_flags import find_red_flags


def said(text: str, language: str = "en", at: str = "2027-03-10T18:00:00+00:00") -> Message:
    """A message of Wednesday 10 March 2027, evening."""
    zone = ZoneInfo("Europe/London")
    return read_message(text, Context(datetime.fromisoformat(at), zone, "kg", language, 71.5))


def flags(text: str, language: str) -> set[str]:
    return {claim.value for claim in find_red_flags(said(text, language)) if claim.kind == "red_flag"}


NAMED = [
    ("en", "heard a pop in my left shoulder", {"pop"}),
    ("en", "wrist is puffy and black and blue", {"swelling", "bruising"}),
    ("en", "two fingers are tingling", {"numbness"}),
    ("en", "no pain but my elbow is swollen", {"swelling"}),
    ("en", "no pain and my elbow is swollen", {"swelling"}),
    ("en", "shoulder pain woke me up", {"night_pain"}),
    ("en", "tight chest and short of breath", {"chest_pain", "breathless"}),
    ("en", "blacked out after the last set", {"dizziness"}),
    ("en", "this swelling could be bad", {"swelling"}),
    ("en", "physio asked about the tingling in my fingers", {"numbness"}),
    ("en", "out of breath just lying in bed", {"breathless"}),
    ("de", "Hat im Bizeps geknallt", {"pop"}),
    ("de", "Finger sind taub, Ellbogen geschwollen", {"numbness", "swelling"}),
    ("de", "mir wurde schwindlig", {"dizziness"}),
    ("es", "el hombro me despierta todas las noches", {"night_pain"}),
    ("es", "sentí un chasquido en el codo", {"pop"}),
    ("es", "tengo fiebre, 38,5", {"fever"}),
]
NONE = [
    ("en", "no swelling, no numbness or bruising"),
    ("en", "didn't hear or feel any pop"),
    ("en", "my kid has a fever"),
    ("en", "my training partner felt a pop"),
    ("en", "my ears popped on the plane"),
    ("en", "popped into the gym, brain numb"),
    ("en", "only my ego is bruised"),
    ("en", "locked out every rep"),
    ("en", "if it swells up I'll tell you"),
    ("en", "out of breath from the stairs run"),
    ("en", "coach said swelling would be bad"),
    ("en", "physio asked about numbness, none here"),
    ("en", "dead numb looking pigeon"),
    ("en", "skin on my palm ripped"),
    ("en", "knees crack when I squat, always have"),
    ("de", "nix geschwollen, kein Taubheitsgefühl"),
    ("de", "meine Tochter hat Fieber"),
    ("es", "sin fiebre y nada hinchado"),
]


@pytest.mark.parametrize(("language", "text", "expected"), NAMED)
def test_a_sign_that_is_named_is_a_red_flag(language: str, text: str, expected: set[str]) -> None:
    assert flags(text, language) == expected


@pytest.mark.parametrize(("language", "text"), NONE)
def test_what_only_sounds_like_a_sign_is_none(language: str, text: str) -> None:
    assert flags(text, language) == set()


def test_a_sign_of_long_ago_is_kept_as_history() -> None:
    claims = find_red_flags(said("three years ago my biceps popped"))
    assert [(claim.kind, claim.value) for claim in claims] == [("past_flag", "pop")]
