"""Words looked for in messages, in every language: data wishes, equipment, one-arm eccentrics."""

from __future__ import annotations

import pytest

from bot.conversation import privacy
from bot.conversation.travels import told_of_equipment
from bot.conversation.words import begins, phrases

USUAL = frozenset({"bar", "rings", "belt"})


@pytest.mark.parametrize(
    "words",
    [
        "send me all my data", "what do you store about me?", "schick mir bitte alle meine Daten",
        "kannst du mir meine Daten zeigen",
        "was weißt du über mich?", "ich möchte eine Kopie meiner Daten", "was hast du über mich gespeichert?",
        "Auskunft über meine Daten bitte", "mándame todos mis datos", "¿qué datos tienes de mí?",
        "quiero una copia de mis datos",
        "¿qué sabes de mí?", "¿puedo ver mis datos?", "descargar mis datos",
    ],
)  # fmt: skip
def test_data_are_asked_for(words):
    assert privacy.wanted(words) == "ask"


@pytest.mark.parametrize(
    "words",
    [
        "delete all my data", "lösche alle meine Daten", "Bitte meine Daten löschen", "lösch alles über mich",
        "entferne bitte alle Daten über mich", "borra todos mis datos", "elimina mis datos por favor",
        "quiero que borren mis datos", "suprime todos los datos sobre mí",
    ],
)  # fmt: skip
def test_the_end_of_data_is_asked_for(words):
    assert privacy.wanted(words) == "erase"


@pytest.mark.parametrize(
    "words",
    [
        "delete that", "lösch das", "lösch den letzten Eintrag", "borra eso", "borra el último",
        "lösche meine Daten nicht",
        "no borres mis datos", "Klimmzüge 5x3 +20", "dominadas 5x3 +20", "was steht heute an?", "¿qué toca hoy?",
        "vergiss die Ringe", "quiero hacer dominadas",
    ],
)  # fmt: skip
def test_other_messages_are_not_about_data(words):
    assert privacy.wanted(words) is None


@pytest.mark.parametrize(
    ("words", "left"),
    [
        ("nur Ringe diese Woche", {"rings"}),
        ("mein Gürtel ist gerissen", {"bar", "rings"}),
        ("ich habe den Dipgürtel vergessen", {"bar", "rings"}),
        ("keine Ringe im Hotel", {"bar", "belt"}),
        ("im Hotel nur Widerstandsbänder", {"bands"}),
        ("ich habe jetzt auch eine Hantelbank", {"bar", "rings", "belt", "bench"}),
        ("ich habe bloß eine Stange", {"bar"}),
        ("solo tengo anillas", {"rings"}),
        ("se me rompió el cinturón", {"bar", "rings"}),
        ("sin argollas esta semana", {"bar", "belt"}),
        ("en el hotel solo hay mancuernas y un banco", {"dumbbells", "bench"}),
        ("ahora tengo ligas", {"bar", "rings", "belt", "bands"}),
        ("only a bench", {"bench"}),
    ],
)
def test_equipment_is_found_by_its_words(words, left):
    told = told_of_equipment(words)
    assert told is not None
    assert told.of(USUAL) == left


@pytest.mark.parametrize(
    ("words", "meant"),
    [
        ("ich will einarmige Negative machen", True),
        ("darf ich mit einem Arm exzentrisch ablassen?", True),
        ("quiero hacer negativas a un brazo", True),
        ("excéntricas a una sola mano, ¿puedo?", True),
        ("negative Klimmzüge", False),
        ("dominadas a un brazo", False),
    ],
)
def test_a_wish_for_one_arm_eccentrics_is_found_by_its_words(words, meant):
    named = phrases("eccentrics")

    assert all(any(begins(words.casefold(), stem) for stem in named[kind]) for kind in named) is meant
