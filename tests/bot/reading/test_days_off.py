"""Days and weeks that one takes off: a day is missed, a week is a pause of seven days at most."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date, datetime
from zoneinfo import ZoneInfo

import pytest

from bot.reading.reading import Reading

SENT = datetime(2027, 5, 20, 19, tzinfo=ZoneInfo("Europe/London"))  # a Thursday
FRIDAY, SUNDAY, MONDAY = date(2027, 5, 21), date(2027, 5, 23), date(2027, 5, 24)


@pytest.mark.parametrize(
    ("language", "text", "intent", "low", "high"),
    [
        ("en", "taking tomorrow off", "missed", FRIDAY, FRIDAY),
        ("en", "taking friday off, need it", "missed", FRIDAY, FRIDAY),
        ("en", "took friday off", "missed", date(2027, 5, 14), date(2027, 5, 14)),
        ("en", "taking the week off, wedding", "pause", SENT.date(), SUNDAY),
        ("en", "taking next week off, exams", "pause", MONDAY, date(2027, 5, 30)),
        ("de", "nehme mir morgen frei", "missed", FRIDAY, FRIDAY),
        ("de", "nehm mir diese Woche frei", "pause", SENT.date(), SUNDAY),
        ("de", "mach diese Woche Pause", "pause", SENT.date(), SUNDAY),
        ("es", "me cojo el viernes libre", "missed", FRIDAY, FRIDAY),
        ("es", "me tomo la semana libre", "pause", SENT.date(), SUNDAY),
        ("es", "esta semana descanso, boda", "pause", SENT.date(), SUNDAY),
    ],
)
def test_time_taken_off_has_its_days(
    reads: Callable[..., Reading], language: str, text: str, intent: str, low: date, high: date
):
    found = reads(text, language=language, sent_at=SENT)
    assert found.intents == (intent,)
    assert found.dates is not None
    assert (found.dates.start, found.dates.end) == (low, high)


@pytest.mark.parametrize(
    ("language", "text"),
    [
        ("en", "pull ups 5x3 on tuesday, wednesday off"),
        ("en", "gave the right arm a day off"),
        ("de", "Klimmzüge 5x3, 2 min Pause diese Woche"),
        ("es", "dominadas 5x3, descanso 2 min"),
    ],
)
def test_rest_beside_work_is_no_absence(reads: Callable[..., Reading], language: str, text: str):
    assert not {"missed", "pause", "away"} & set(reads(text, language=language, sent_at=SENT).intents)
