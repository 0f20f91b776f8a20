"""Days as people name them; seen from Wednesday 10 March 2027, evening."""

from __future__ import annotations

import subprocess
import sys

import pytest

from bot.reading import read
from tests.bot.reading.messages import context

TRAINED = [
    ("en", "three weeks ago: chins 5x3 +20", "2027-02-17"),
    ("en", "2 days ago did pull-ups 5x3 +20", "2027-03-08"),
    ("en", "pull-ups 5x3 +20 a month ago", "2027-02-10"),
    ("en", "March 3, 2027 pull-ups 5x3 +20", "2027-03-03"),
    ("en", "pull-ups 5x3 +20 on 3 March 2027", "2027-03-03"),
    ("en", "Sat - chins 4x5 +10", "2027-03-06"),
    ("en", "14/2 pull ups 3x3 +30", "2027-02-14"),
    ("de", "vor zwei Wochen Klimmzüge 5x3 +20", "2027-02-24"),
    ("de", "vor einer Woche Klimmzüge 5x3 +20", "2027-03-03"),
    ("de", "am 14.2. Klimmzüge 3x3 +30", "2027-02-14"),
    ("de", "3. Jänner 2027: Klimmzüge 5x3 +20", "2027-01-03"),
    ("es", "hace tres días hice dominadas 5x3 +20", "2027-03-07"),
    ("es", "el 3 de marzo de 2027 dominadas 5x3 +20", "2027-03-03"),
]
SPANS = [
    ("en", "away in two weeks for 5 days", "2027-03-24", "2027-03-28"),
    ("en", "travelling for work all next week, back monday the 22nd", "2027-03-15", "2027-03-21"),
    ("en", "freeze the programme from Monday till the 28th", "2027-03-15", "2027-03-28"),
    ("de", "bitte Pause bis 28.3.", "2027-03-10", "2027-03-28"),
    ("de", "ab 1. April zwei Wochen Urlaub ohne Stange", "2027-04-01", "2027-04-14"),
    ("es", "me voy de viernes a domingo", "2027-03-12", "2027-03-14"),
]
ASKED = [
    ("en", "can we move it?"),
    ("en", "move friday please"),
    ("en", "need to move friday's session"),
    ("de", "können wir es verschieben?"),
    ("es", "¿podemos moverlo?"),
]


@pytest.mark.parametrize(("language", "text", "day"), TRAINED)
def test_the_day_trained(language: str, text: str, day: str) -> None:
    assert str(read(text, context(language=language)).performed_on) == day


@pytest.mark.parametrize(("language", "text", "first", "last"), SPANS)
def test_the_days_of_an_absence(language: str, text: str, first: str, last: str) -> None:
    span = read(text, context(language=language)).dates
    assert span is not None
    assert (str(span.start), str(span.end)) == (first, last)


@pytest.mark.parametrize(("language", "text"), ASKED)
def test_a_move_without_its_new_day_is_asked(language: str, text: str) -> None:
    reading = read(text, context(language=language))
    assert "move" in reading.intents
    assert [ask.about for ask in reading.ask] == ["dates"]


def test_a_tale_of_years_ago_is_no_day_trained() -> None:
    reading = read("three years ago my right biceps popped, all good since. chin-ups 4x5 +10", context())
    assert str(reading.performed_on) == "2027-03-10"


def test_dateparser_is_not_loaded_for_messages_without_a_span_for_it() -> None:
    code = (
        "import sys\nfrom tests.bot.reading.messages import context\nfrom bot.reading import read\n"
        "read('two weeks ago pull-ups 5x3 +20, elbow 2/10, away from friday', context())\n"
        "print('dateparser' in sys.modules)"
    )
    out = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)
    assert out.stdout.strip() == "False"
