"""Reports put together of phrases: none is written down wrong, and few are asked about."""

from __future__ import annotations

from collections import Counter
from datetime import datetime
from zoneinfo import ZoneInfo

import pytest

from bot.reading import read
from bot.reading.reading import Context, Reading
from tests.corpus.composed import Composer, Done

REPORTS = 150  # of a language and kind, drawn by a seed that stays
MOST_ASKED = 0.03  # some can be read two ways: "the last set of dips was a 9" of planned tens
CLOCK = ZoneInfo("Europe/Zurich")
SENT = datetime(2027, 5, 20, 19, tzinfo=CLOCK)


def sets_of(reading: Reading) -> Counter[Done]:
    return Counter(Done(one.movement, one.reps, one.load_kg, one.rpe, one.side) for one in reading.sets)


@pytest.mark.parametrize("language", ["en", "de", "es"])
def test_reports_without_a_plan(language):
    composer, asked = Composer(language, 1), 0
    for _ in range(REPORTS):
        text, done = composer.free()
        found = read(text, Context(SENT, CLOCK, "kg", language, 75.0, None))
        asked += bool(found.ask)
        assert found.ask or sets_of(found) == Counter(done), text
    assert asked <= MOST_ASKED * REPORTS


@pytest.mark.parametrize("language", ["en", "de", "es"])
def test_reports_against_a_plan(language):
    composer, asked = Composer(language, 2), 0
    for _ in range(REPORTS):
        text, plan, done = composer.planned()
        today = tuple(row for one in plan for row in one.rows())
        found = read(text, Context(SENT, CLOCK, "kg", language, 75.0, today))
        asked += bool(found.ask)
        assert found.ask or sets_of(found) == Counter(done), (text, plan)
    assert asked <= MOST_ASKED * REPORTS
