"""A warning sign stays one whatever stands around it: every wording of tests/data/sign_wordings.txt in other sentences.

Wordings and frames are made up; no source.
"""

from __future__ import annotations

from datetime import datetime
from pathlib import Path
from zoneinfo import ZoneInfo

import pytest

from bot.reading import read
from bot.reading.reading import Context

WORDINGS = Path(__file__).parents[2] / "data" / "sign_wordings.txt"
EACH_IN = 4  # frames
FRAMES = {
    "en": (
        "trained today and {}",
        "pull-ups 5x3 at 20, {}",
        "{} so I stopped",
        "trained yesterday, today {}",
        "my kid is ill. and me: {}",
        "{}, but I finished the sets",
        "I'm scared because {}",
        "{}, should I train tomorrow?",
        "my wife says I exaggerate but {}",
        "if it helps, {}",
        "didn't train today: {}",
        "{}, getting better though",
        "{} and it won't go away",
        "out of nowhere {}",
        "without warning {}",
        "for no reason {}",
        "not gonna lie, {}",
        "never felt that before, {}",
        "I don't like this: {}",
        "no dips today, {}",
        "was afraid of the test, now {}",
        "should have told you earlier: {}",
        "my mate was there, {}",
        "no pain in the wrist but {}",
        "pull-ups 4x4\n{}\nslept 7 h",
        "without any warning, {}",
    ),
    "de": (
        "heute trainiert und {}",
        "Klimmzüge 5x3 mit 20, {}",
        "{} hab aufgehört",
        "gestern trainiert, heute {}",
        "mein Sohn ist krank. und bei mir: {}",
        "{}, hab die Sätze aber fertig gemacht",
        "macht mir Angst, weil {}",
        "{}, soll ich morgen trainieren?",
        "das kommt vom Training her: {}",
        "falls es hilft, {}",
        "heute nicht trainiert: {}",
        "{}, wird aber schon besser",
        "{} und es geht nicht weg",
        "aus dem Nichts {}",
        "ohne Vorwarnung {}",
        "ohne Grund {}",
        "noch nie gehabt, {}",
        "nicht aufgewärmt und {}",
        "gefällt mir nicht: {}",
        "keine Dips heute, {}",
        "hatte Angst vorm Test, jetzt {}",
        "hätte ich früher sagen sollen: {}",
        "mein Kumpel war dabei, {}",
        "kein Schmerz im Handgelenk, aber {}",
        "Klimmzüge 4x4\n{}\n7 h geschlafen",
        "aus dem Nichts: {}",
        "ohne Vorwarnung, {}",
    ),
    "es": (
        "hoy he entrenado y {}",
        "dominadas 5x3 con 20, {}",
        "{} y he parado",
        "ayer entrené y hoy {}",
        "mi hijo está malo. y yo {}",
        "{}, pero he terminado las series",
        "me da miedo porque {}",
        "{}, ¿entreno mañana?",
        "esta mañana he notado algo: {}",
        "si sirve de algo, {}",
        "hoy no entrené: {}",
        "{}, aunque ya va mejor",
        "{} y no se me pasa",
        "de la nada {}",
        "sin previo aviso {}",
        "sin motivo {}",
        "nunca lo había sentido, {}",
        "no calenté y {}",
        "no me gusta esto: {}",
        "hoy sin fondos, {}",
        "tenía miedo del test, ahora {}",
        "debería haberlo dicho antes: {}",
        "mi amigo estaba ahí, {}",
        "sin dolor en la muñeca pero {}",
        "dominadas 4x4\n{}\ndormí 7 h",
        "de la nada, {}",
    ),
}


def _wordings() -> list[tuple[str, str, str]]:
    rows = WORDINGS.read_text(encoding="utf-8").splitlines()
    parts = [tuple(row.split(" | ")) for row in rows if row and not row.startswith("#")]
    return [(sign, language, words) for sign, language, words in parts if sign != "none"]


def _context(language: str) -> Context:
    zone = ZoneInfo("Europe/Madrid")
    return Context(datetime(2027, 3, 4, 18, tzinfo=zone), zone, "kg", language, 71.5, None)


@pytest.mark.parametrize("language", FRAMES)
def test_a_sign_is_heard_in_every_frame(language):
    missed = []
    for n, (sign, _, words) in enumerate(row for row in _wordings() if row[1] == language):
        for k in range(EACH_IN):
            frame = FRAMES[language][(EACH_IN * n + k) % len(FRAMES[language])]
            said = words if frame.startswith("{}") else words[0].lower() + words[1:]
            text = frame.format(said)
            if sign not in read(text, _context(language)).red_flags:
                missed.append((sign, text))
    assert missed == []


@pytest.mark.parametrize(
    ("language", "words", "sign"),
    [
        ("en", "left elbow swolen since this morning", "swelling"),
        ("en", "my forearm is brusied", "bruising"),
        ("en", "tinglng in my ring finger", "numbness"),
        ("de", "Ellbogen ist geschwolen", "swelling"),
        ("de", "Taubehit in den Fingern", "numbness"),
        ("es", "codo hincahdo", "swelling"),
        ("es", "hormigeuo en los dedos", "numbness"),
    ],
)
def test_a_sign_that_is_typed_wrong_is_heard(language, words, sign):
    assert sign in read(words, _context(language)).red_flags


@pytest.mark.parametrize(
    ("language", "words"),
    [
        ("en", "left elbow smelling of chalk"),
        ("en", "looking at my elbow"),
        ("de", "ausgeklügelt, dieser Plan für die Schulter"),
        ("es", "dominadas con buen ritmo marcado"),
    ],
)
def test_a_word_that_only_looks_like_a_sign_is_none(language, words):
    assert not read(words, _context(language)).red_flags
