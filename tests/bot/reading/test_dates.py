"""Days: the day trained, the days of a move or an absence."""

from __future__ import annotations

from datetime import datetime
from zoneinfo import ZoneInfo

import pytest

from bot.reading.dates import find_dates
from bot.reading.message import Message, read_message
from bot.reading.reading import Context


def said(text: str, language: str = "en", at: str = "2027-03-10T18:00:00+00:00") -> Message:
    """A message of Wednesday 10 March 2027, evening."""
    zone = ZoneInfo("Europe/London")
    return read_message(text, Context(datetime.fromisoformat(at), zone, "kg", language, 71.5))


def days(text: str, language: str = "en", at: str = "2027-03-10T18:00:00+00:00") -> list[str]:
    return [str(c.value) for c in find_dates(said(text, language, at)) if c.kind == "day" and c.value]


def span(text: str, language: str) -> tuple[str, str]:
    (value,) = [c.value for c in find_dates(said(text, language)) if c.kind == "span"]
    return str(value.start), str(value.end)


TRAINED = [
    ("en", "yesterday dips 3x8", ["2027-03-09"]),
    ("en", "on friday i did chin-ups 4x5", ["2027-03-05"]),
    ("en", "on the 3rd: pull-ups 5x3", ["2027-03-03"]),
    ("en", "28 Feb: dips 5x5", ["2027-02-28"]),
    ("en", "2027-03-06 chin ups 5x5", ["2027-03-06"]),
    ("en", "pull-ups 5x3, missed the 4th", []),
    ("de", "Di Klimmzüge 5x3, Mo Dips 3x8", ["2027-03-09", "2027-03-08"]),
    ("de", "vorgestern Dips 3x8", ["2027-03-08"]),
    ("es", "el lunes hice fondos 3x8", ["2027-03-08"]),
    ("es", "anoche dominadas 5x3", ["2027-03-09"]),
]
SPANS = [
    ("en", "can we move Thursday's session to Saturday", ("2027-03-11", "2027-03-13")),
    ("en", "away from Friday, back on the 20th", ("2027-03-12", "2027-03-19")),
    ("en", "pause until 1 May", ("2027-03-10", "2027-05-01")),
    ("en", "sick since Monday", ("2027-03-08", "None")),
    ("es", "me voy de viernes a domingo", ("2027-03-12", "2027-03-14")),
    ("de", "heute schaff ich's nicht, mach ich morgen", ("2027-03-10", "2027-03-11")),
    ("de", "bin vom 12. bis 19. März auf Urlaub", ("2027-03-12", "2027-03-19")),
    ("de", "Gestern ausgelassen", ("2027-03-09", "2027-03-09")),
    ("es", "me voy de viaje del 5 al 12 de mayo", ("2027-05-05", "2027-05-12")),
    ("es", "¿puedo pasar lo del jueves al sábado?", ("2027-03-11", "2027-03-13")),
]


@pytest.mark.parametrize(("language", "text", "expected"), TRAINED)
def test_a_report_looks_back_for_its_day(language: str, text: str, expected: list[str]) -> None:
    assert days(text, language) == expected


@pytest.mark.parametrize(("language", "text", "expected"), SPANS)
def test_a_move_or_an_absence_looks_ahead(language: str, text: str, expected: tuple[str, str]) -> None:
    assert span(text, language) == expected


def test_before_four_yesterday_is_the_evening_before() -> None:
    assert days("yesterday's set: pull-ups 3x6", at="2027-03-10T02:30:00+00:00") == ["2027-03-09"]


def test_a_week_without_a_day_is_asked() -> None:
    asks = [c.ask for c in find_dates(said("forgot one from last week: pull-ups 5x3")) if c.ask]
    assert [ask.about for ask in asks] == ["performed_on"]


@pytest.mark.parametrize(
    ("text", "asked"),
    [
        ("flu, no training Monday and Tuesday", ["Monday and Tuesday"]),
        ("flu, no training Thursday and Friday", []),
    ],
)
def test_weekdays_of_an_illness_that_may_be_past_are_asked(text: str, asked: list[str]) -> None:
    assert [c.ask.span for c in find_dates(said(text)) if c.ask is not None] == asked
