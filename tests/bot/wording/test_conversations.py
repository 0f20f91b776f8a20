"""Short journeys in German and Spanish: no sentence of English comes back, and the coach hears their own language."""

from __future__ import annotations

import re
from typing import Any

import pytest

from tests.bot.wording.catalogues import fixed_words, messages
from tests.journeys.rehearsing import Talk, talk

ROSTER = """
[coach]
name = "Inês"
timezone = "Europe/Lisbon"
language = "{coach}"
summary = {{ day = "sunday", at = "18:00" }}

[[athlete]]
handle = "mira"
name = "Mira"
timezone = "Europe/Zurich"
language = "{athlete}"
bodyweight_kg = 62.0
equipment = ["bar", "rings", "belt"]
training_days = ["monday", "thursday"]
plan_at = "07:30"
ladder = "one_arm_pull_up"
rung = "archer_elbow_full"
screened = true
tests = [ {{ date = 2027-01-02, movement = "pull_up", reps = 5, load_kg = 15.0, rpe = 9.0 }} ]
"""
# What the athlete says on the first evening, the next morning and two weeks later.
SAID = {
    "de": {
        "today": "Was steht heute an?",
        "report": "Klimmzüge 4x4 +11,25, letzter @7",
        "why": "Warum?",
        "progress": "Wie weit bin ich?",
        "week": "Diese Woche?",
        "pain": "Ellbogen links innen zwickt",
        "move": "verschieb Donnerstag auf Samstag",
        "gear": "ich habe nur Ringe",
        "wish": "ich will einarmige Negative machen",
        "help": "Hilfe",
        "data": "schick mir alle meine Daten",
        "flag": "es hat im Ellbogen geknallt",
        "chest": "Brustschmerzen und Atemnot",
        "nothing": "xylophon",
    },
    "es": {
        "today": "¿qué toca hoy?",
        "report": "dominadas 4x4 +11,25, última @7",
        "why": "¿por qué?",
        "progress": "¿cómo voy?",
        "week": "¿qué toca esta semana?",
        "pain": "me molesta el codo izquierdo por dentro",
        "move": "pasa el jueves al sábado",
        "gear": "solo tengo anillas",
        "wish": "quiero hacer negativas a un brazo",
        "help": "ayuda",
        "data": "mándame todos mis datos",
        "flag": "el codo hizo un chasquido",
        "chest": "me duele el pecho y me falta el aire",
        "nothing": "xilófono",
    },
}
COMMANDS = {
    "de": ["mira", "mira warum", "mira sperre 17,5 bis 1. märz", "liste", "übersicht", "hilfe", "mira gesehen"],
    "es": ["mira", "mira por qué", "mira bloquea 17,5 hasta el 1 de marzo", "lista", "resumen", "ayuda", "mira visto"],
}


def lived(language: str, coach: str, chat: Talk) -> None:
    said = SAID[language]
    chat.waits("2027-01-04 07:31")
    for minute, wish in enumerate(("today", "report", "pain", "why", "progress", "week", "help", "nothing")):
        chat.says(f"2027-01-04 18:{30 + minute}", "mira", said[wish])
    chat.presses("2027-01-04 18:50", "mira", "3")
    chat.waits("2027-01-05 07:31")
    chat.presses("2027-01-05 08:00", "mira", "4")
    for minute, wish in enumerate(("move", "gear", "wish", "data")):
        chat.says(f"2027-01-05 09:0{minute}", "mira", said[wish])
    chat.waits("2027-01-09 21:00")  # the nudge
    chat.says("2027-01-18 12:00", "mira", said["flag"])
    chat.says("2027-01-18 12:05", "mira", said["why"])
    chat.says("2027-01-18 12:10", "mira", said["chest"])
    for minute, command in enumerate(COMMANDS[coach]):
        chat.says(f"2027-01-19 19:0{minute}", "coach", command)
    chat.waits("2027-01-24 20:00")  # the week's summary


def sentences(chat: Talk, to: str) -> list[dict[str, Any]]:
    """Messages to one of them, without the names of files that are the same in every language."""
    return [one for one in chat.messages(to) if one["text"] not in ("everything.json", "tables.zip")]


def english_in(texts: list[str], language: str) -> set[str]:
    """The pieces of English sentences that stand in the texts, but for words that both languages have."""
    own = {piece for message in messages(language).values() for piece in fixed_words(message)}
    own_text = " ".join(own).casefold()
    found = set()
    for key, message in messages("en").items():
        for piece in fixed_words(message):
            words = [line.strip() for line in piece.splitlines()]
            for line in words:
                if len(re.sub(r"[\W\d]", "", line)) < 4 or line.casefold() in own_text or key.endswith("-pattern"):
                    continue
                if any(re.search(rf"(?<!\w){re.escape(line)}(?!\w)", text) for text in texts):
                    found.add(line)
    return found


@pytest.fixture(params=["de", "es"], scope="module")
def journey(request):
    with talk(ROSTER.format(coach=request.param, athlete=request.param)) as chat:
        lived(request.param, request.param, chat)
        yield request.param, chat


def test_no_sentence_of_english_is_said(journey):
    language, chat = journey
    for to in ("mira", "coach"):
        texts = [one["text"] + "\n" + "\n".join(one["buttons"]) for one in sentences(chat, to)]

        assert len(texts) > 8
        assert not english_in(texts, language)


def test_the_search_for_english_finds_it(journey):
    language, _ = journey
    english = "Noted for Mon 4 Jan: pull-ups 4×4 +11.25 kg."

    assert {"Noted for", "pull-ups"} <= english_in([english], language)


def test_every_step_of_the_journey_was_understood(journey):
    language, chat = journey
    said = "\n".join(one["text"] for one in sentences(chat, "mira"))
    wanted = {
        "de": ["+11,25 kg, letzter Satz RPE 7", "Ellbogen innen links 4/10", "Sa 9. Jan", "112", "Noch keine Meldung"],
        "es": ["+11,25 kg, última a RPE 7", "codo izquierdo por dentro 4/10", "sáb 9 ene", "112", "Aún no sé nada"],
    }

    assert not [piece for piece in wanted[language] if piece not in said]
    assert said.count({"de": "Darin habe ich nichts", "es": "No encontré nada que anotar"}[language]) == 1
    assert not re.search(r"\d\.\d+ kg", said), "decimal points"


@pytest.mark.parametrize("language", ["de", "es"])
def test_the_coach_hears_their_own_language_whatever_the_athlete_speaks(language):
    with talk(ROSTER.format(coach="en", athlete=language)) as chat:
        chat.says("2027-01-04 12:00", "mira", SAID[language]["flag"])
        alert = [one for one in chat.messages("coach") if one["buttons"]][-1]
        chat.says("2027-01-04 12:30", "coach", "mira restart")
        why, week = (
            chat.says(f"2027-01-05 12:0{at}", "coach", f"mira {word}") for at, word in enumerate(["why", "week"])
        )

        assert "reports a pop" in alert["text"]
        assert alert["buttons"] == ["May train again"]
        assert "with bodyweight" in why[-1]["text"]
        assert "The next seven days" in week[-1]["text"]
        assert not english_in([one["text"] for one in chat.messages("mira")], language)


@pytest.mark.parametrize(
    ("language", "words"), [("de", "what's today?"), ("de", "¿qué toca hoy?"), ("es", "what's today?")]
)
def test_a_message_in_another_language_is_read_and_answered_in_the_athletes_own(language, words):
    with talk(ROSTER.format(coach="en", athlete=language)) as chat:
        first, again = chat.waits("2027-01-04 07:31"), chat.says("2027-01-04 08:00", "mira", words)

        assert again[-1]["text"] in first[-1]["text"]
        assert chat.says("2027-01-04 08:01", "mira", SAID[language]["today"])[-1]["text"] == again[-1]["text"]


@pytest.mark.parametrize(
    ("language", "press", "words"),
    [
        ("de", "Wie geplant", "Notiert für Mo 4. Jan"),
        ("de", "Ausgefallen", "Mo 4. Jan ausgefallen"),
        ("de", "Morgen", "Verschoben von Mo 4. Jan auf Di 5. Jan"),
        ("es", "Hecho según el plan", "Anotado para el lun 4 ene"),
        ("es", "No entrené", "lun 4 ene, sin entreno"),
        ("es", "Mañana", "Movido del lun 4 ene al mar 5 ene"),
    ],
)
def test_the_nudges_buttons_do_what_they_say(language, press, words):
    with talk(ROSTER.format(coach="en", athlete=language)) as chat:
        chat.waits("2027-01-04 07:00")
        chat.waits("2027-01-04 21:00")

        assert words in "\n".join(one["text"] for one in chat.presses("2027-01-04 21:30", "mira", press))


@pytest.mark.parametrize(
    ("language", "words", "press", "noted"),
    [
        ("de", "Archer 3x2", "Archer, Ring auf Schulterhöhe", "Archer, Ring auf Schulterhöhe 3×2"),
        (
            "es",
            "arqueras 3x2",
            "arqueras, anilla a la altura del hombro",
            "arqueras, anilla a la altura del hombro 3×2",
        ),
    ],
)
def test_a_family_of_movements_is_offered_by_names_and_the_name_pressed_is_noted(language, words, press, noted):
    # On a rung without archers the bare name can be three.
    roster = ROSTER.format(coach="en", athlete=language).replace("archer_elbow_full", "weighted_pull_up")
    with talk(roster) as chat:
        chat.waits("2027-01-04 07:31")
        asked = chat.says("2027-01-04 18:30", "mira", words)

        assert len(asked[-1]["buttons"]) == 3
        assert noted in chat.presses("2027-01-04 18:31", "mira", press)[0]["text"]
