"""Pain: where, which side, how much, when."""

from __future__ import annotations

from datetime import datetime
from zoneinfo import ZoneInfo

import pytest

from bot.reading.message import Message, read_message
from bot.reading.pain import find_pain
from bot.reading.reading import Context


def said(text: str, language: str = "en", at: str = "2027-03-10T18:00:00+00:00") -> Message:
    """A message of Wednesday 10 March 2027, evening."""
    zone = ZoneInfo("Europe/London")
    return read_message(text, Context(datetime.fromisoformat(at), zone, "kg", language, 71.5))


def pains(text: str, language: str) -> list[tuple[str | None, str | None, float | None, str | None]]:
    values = [claim.value for claim in find_pain(said(text, language)) if claim.kind == "pain"]
    return [(value.site, value.side, value.score, value.when) for value in values]


TABLE = [
    ("en", "both elbows 3/10", [("elbow", "left", 3, None), ("elbow", "right", 3, None)]),
    ("en", "L elbow 2, R elbow 0", [("elbow", "left", 2, None), ("elbow", "right", 0, None)]),
    (
        "en",
        "right elbow two out of ten, left one out of ten",
        [("elbow", "right", 2, None), ("elbow", "left", 1, None)],
    ),
    ("en", "no pop no bruise but elbow a bit swollen, 3", [("elbow", None, 3, None)]),
    ("en", "a 3 in the elbow and a 2 in the knee", [("elbow", None, 3, None), ("knee", None, 2, None)]),
    ("de", "eine 3 im Ellbogen und eine 2 im Knie", [("elbow", None, 3, None), ("knee", None, 2, None)]),
    ("es", "un 2 en la muñeca izquierda", [("wrist", "left", 2, None)]),
    ("en", "did 3 in the knee wraps", []),
    ("en", "wrist pain 2-3 after", [("wrist", None, 3, "after")]),
    ("en", "3", [(None, None, 3, None)]),
    ("en", "no pain", [(None, None, 0, None)]),
    ("en", "5, 5, 4", []),
    ("en", "hand on the shoulder 2, 2, 1", []),
    ("de", "Ellbogen zwickt 3/10, rechts innen", [("elbow_inner", "right", 3, None)]),
    ("de", "Schulter rechts 2/10 am Morgen", [("shoulder", "right", 2, "morning")]),
    # a score has the moment of its own clause, and none that a denial has
    ("en", "no elbow pain this morning but 3/10 after training", [("elbow", None, 3, "after")]),
    ("en", "elbow was fine in the morning, 2 in the evening", [("elbow", None, 2, "after")]),
    ("de", "Ellbogen morgens ok, 3/10 nach dem Training", [("elbow", None, 3, "after")]),
    ("es", "el codo bien por la mañana, 3/10 después de entrenar", [("elbow", None, 3, "after")]),
    ("en", "left elbow 1/10, nothing during training", [("elbow", "left", 1, None)]),
    ("de", "Ellbogen 1/10, nichts beim Training", [("elbow", None, 1, None)]),
    ("es", "codo 1/10, nada durante el entreno", [("elbow", None, 1, None)]),
    ("en", "pain 5 yesterday evening in the shoulder", [("shoulder", None, 5, None)]),
    ("en", "pain 5 after training in the shoulder", [("shoulder", None, 5, "after")]),
    # none of several moments is lost
    ("en", "elbow 1 in the am 3 in the pm", [("elbow", None, 1, "morning"), ("elbow", None, 3, "after")]),
    ("en", "elbow: am 1, pm 3", [("elbow", None, 1, "morning"), ("elbow", None, 3, None)]),
    (
        "en",
        "2 before, 3 during, 1 after, left elbow",
        [("elbow", "left", 2, None), ("elbow", "left", 3, "during"), ("elbow", "left", 1, "after")],
    ),
    (
        "de",
        "Ellbogen: vorher 2, beim Training 3, danach 1",
        [("elbow", None, 2, None), ("elbow", None, 3, "during"), ("elbow", None, 1, "after")],
    ),
    (
        "es",
        "codo derecho 2 antes, 3 durante, 1 después",
        [("elbow", "right", 2, None), ("elbow", "right", 3, "during"), ("elbow", "right", 1, "after")],
    ),
    ("en", "left elbow 4 before, 2 after", [("elbow", "left", 2, "after")]),
    # the side without pain takes nothing from the other
    ("en", "left elbow aches, nothing on the right", [("elbow", "left", None, None), ("elbow", "right", 0, None)]),
    (
        "de",
        "linke Schulter zieht bei Archern, rechts nix",
        [("shoulder", "left", None, "during"), ("shoulder", "right", 0, None)],
    ),
    (
        "es",
        "el hombro izquierdo me molesta, el derecho nada",
        [("shoulder", "left", None, None), ("shoulder", "right", 0, None)],
    ),
    ("es", "3 durante, 1 después", [(None, None, 3, "during"), (None, None, 1, "after")]),
    ("es", "me molesta el codo izquierdo por fuera, 3/10, incluso en reposo", [("elbow_outer", "left", 3, "rest")]),
]


@pytest.mark.parametrize(("language", "text", "expected"), TABLE)
def test_pain_is_read_with_its_place_side_score_and_moment(language: str, text: str, expected: list[object]) -> None:
    assert pains(text, language) == expected


def test_a_score_over_ten_is_asked() -> None:
    (claim,) = [claim for claim in find_pain(said("elbow is a 12 today")) if claim.kind == "pain"]
    assert claim.value.score is None
    assert claim.ask is not None
    assert claim.ask.span == "12"
