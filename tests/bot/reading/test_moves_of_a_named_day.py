"""A move whose day the message has named before: "a wedding on Friday, can we move Friday's session to Sunday?"."""

from datetime import date, datetime
from zoneinfo import ZoneInfo

import pytest

from bot.reading import read
from bot.reading.reading import Context, Span

ZONE = ZoneInfo("Europe/Berlin")
WEDNESDAY = datetime(2027, 6, 16, 18, 30, tzinfo=ZONE)


@pytest.mark.parametrize(
    ("text", "moved", "to"),
    [
        ("two wedding cakes on friday, can we move friday's session to sunday?", 18, 20),
        ("friday is full, move friday's session to saturday please", 18, 19),
        ("exam on Monday, could I do Monday's session on Tuesday", 21, 22),
        ("can we move friday's session to sunday?", 18, 20),
    ],
)
def test_the_day_named_twice_is_the_one_moved(text: str, moved: int, to: int) -> None:
    reading = read(text, Context(WEDNESDAY, ZONE, "kg", "en", 72.0, None))
    assert reading.intents == ("move",)
    assert reading.dates == Span(date(2027, 6, moved), date(2027, 6, to))


@pytest.mark.parametrize(
    ("language", "text", "first", "last"),
    [
        ("de", "Freitag auf Samstag schieben, nein, Sonntag", 18, 20),
        ("de", "Mittwoch auf Freitag schieben, Sonntag bleibt", 16, 18),
        ("en", "push Friday's session to Saturday please, actually Sunday", 18, 20),
        ("es", "pasa el viernes al sábado, perdón, al domingo", 18, 20),
        ("de", "krank seit Sonntag, ab dem 24. wieder da", 13, 23),
        ("de", "bis zum 24. krank, ab dem 25. trainiere ich wieder", 16, 24),
        ("de", "ab nächster Woche 10 Tage Urlaub", 21, 30),
        ("en", "away from next week for 10 days", 21, 30),
        ("en", "ill since Sunday, back from the 24th", 13, 23),
    ],
)
def test_the_day_put_right_or_come_back_on(language: str, text: str, first: int, last: int) -> None:
    reading = read(text, Context(WEDNESDAY, ZONE, "kg", language, 72.0, None))
    assert reading.dates == Span(date(2027, 6, first), date(2027, 6, last))
