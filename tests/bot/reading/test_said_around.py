"""What stands around a report and is none of it: dashes that part, other months, last year's pain, denied signs."""

from __future__ import annotations

from datetime import date, datetime
from zoneinfo import ZoneInfo

import pytest

from bot.reading import read
from bot.reading.reading import Context, Reading
from planner.facts import PlannedSet

CLOCK = ZoneInfo("Europe/London")
SENT = datetime(2027, 5, 20, 19, tzinfo=CLOCK)  # a Thursday
PLAN = (
    *[PlannedSet("chin_up", "main", 4, load_kg=20.0, rpe=8.0)] * 4,
    *[PlannedSet("dip", "accessory", 8, load_kg=10.0)] * 3,
)


def reading(text: str, language: str, planned: bool = False) -> Reading:
    return read(text, Context(SENT, CLOCK, "kg", language, 70.0, PLAN if planned else None))


@pytest.mark.parametrize(
    ("language", "text", "many"),
    [
        ("en", "4x8 ring dips at 12.5kg - won't make it tomorrow", 4),
        ("en", "dips 12.5 kg 3x6 - 8h sleep last night", 3),
        ("en", "dips 3x8 - each with 20", 3),
        ("de", "Dips 3x8 mit 20 - letztes Jahr war die Schulter eine 6", 3),
        ("de", "morgen schaff ichs nicht, Klimmzüge 30 kg 4x3", 4),
        ("de", "Morgen fällt aus, Dips 3x8 mit 10 kg", 3),
        ("es", "mañana no puedo entrenar, fondos 3x8", 3),
        ("en", "won't make it tomorrow, dips 3x8", 3),
        ("es", "fondos 3x8 con 20 - mi mejor marca es 8 con 25 de 2024", 3),
    ],
)
def test_a_dash_or_a_day_off_beside_a_report_parts(language, text, many):
    found = reading(text, language)
    assert len(found.sets) == many
    assert not found.ask


@pytest.mark.parametrize(
    ("language", "text", "many"),
    [
        ("en", "just the dips today - travelling Monday to Wednesday", 3),
        ("en", "left out the dips, rest as planned. no swelling, no bruising", 4),
        ("en", "short of breath at rest. only did the dips", 3),
        ("en", "1 hour all in, only did the dips", 3),
        ("en", "all as planned; last month it was 5x8 with 20", 7),
        ("en", "done, my friend can do 3 one arm pull-ups", 7),
        ("en", "yesterday. chins with 25 instead of 20, rest as planned", 7),
        ("de", "Montag - alles gemacht, bei Dips einen Satz weniger", 6),
        ("de", "alles außer den Dips - keine Schwellung", 4),
        ("es", "todo menos fondos. sin hormigueo", 4),
        ("es", "todo hecho; la semana pasada fueron 3x8", 7),
    ],
)
def test_the_plan_is_left_as_it_is(language, text, many):
    found = reading(text, language, planned=True)
    assert len(found.sets) == many
    assert not found.ask
    assert found.correction is None


@pytest.mark.parametrize(
    ("language", "text", "scores"),
    [
        ("en", "last year my shoulder was a 6", []),
        ("en", "had a 4/10 in the elbow back in March", []),
        ("en", "elbow has been a 3 since last year", [3]),
        ("en", "elbow was 3/10 today, same as last year", [3]),
        ("de", "im März hatte ich 4/10 im Ellbogen", []),
        ("de", "der Knöchel, der letztes Jahr so dick war: 0 von 10", [0]),
        ("es", "el año pasado el hombro era un 6", []),
        ("es", "en marzo tuve 4/10 en el codo", []),
    ],
)
def test_pain_of_long_ago_is_none_of_today(language, text, scores):
    assert [entry.score for entry in reading(text, language).pain] == scores


@pytest.mark.parametrize(
    ("language", "text", "side", "when"),
    [
        ("en", "no pain in left wrist", "left", None),
        ("en", "pain in right elbow 2/10", "right", None),
        ("en", "hanging leg raises 2x8; left elbow 1/10", "left", None),
        ("en", "left elbow 2/10, on the last set of dips", "left", "during"),
        ("en", "left elbow a 3 when I got up", "left", "morning"),
        ("de", "beim letzten Satz Klimmzüge nur 3; rechte Schulter schmerzfrei", "right", None),
        ("es", "elevaciones de piernas colgado 2x8; codo izquierdo 1/10", "left", None),
    ],
)
def test_sides_and_moments_are_those_of_the_place(language, text, side, when):
    (entry,) = reading(text, language).pain
    assert (entry.side, entry.when) == (side, when)


@pytest.mark.parametrize(
    ("language", "text", "day"),
    [
        ("en", "from the 14th, dips 3x8", date(2027, 5, 14)),
        ("de", "Mo, Dips 3x8", date(2027, 5, 17)),
        ("de", "So, Haken dran. Dips 3x8", date(2027, 5, 20)),
        ("de", "gestern vergessen zu schicken, Dips 3x8", date(2027, 5, 19)),
        ("es", "el 14, 4×6 fondos", date(2027, 5, 14)),
        ("es", "14/5 - 5 series de 8 fondos", date(2027, 5, 14)),
    ],
)
def test_days_at_the_head(language, text, day):
    assert reading(text, language).performed_on == day


@pytest.mark.parametrize(
    ("language", "text", "field", "value"),
    [
        ("en", "sleep: 7.5. dips 3x8", "sleep_h", 7.5),
        ("de", "Schlaf: 7\nDips 3x8", "sleep_h", 7),
        ("en", "trained for an hour, all done", "duration_min", 60),
        ("de", "war in 75 min durch, Dips 3x8", "duration_min", 75),
        ("es", "8/10 para toda la sesión. fondos 3x8", "session_rpe", 8),
        ("es", "PC: 72.4kg, dominadas 3x8", "bodyweight_kg", 72.4),
    ],
)
def test_labels_and_wholes(language, text, field, value):
    found = reading(text, language, planned="all done" in text)
    assert getattr(found, field) == value


@pytest.mark.parametrize(
    ("language", "text"),
    [
        ("en", "dips 3x8 with 20. that was 15 in March"),
        ("en", "heart rate 135 bpm. dips 3x8 with 20"),
        ("en", "dips 3x8 with 20, you had 5x5 at 25 written"),
        ("de", "Dips 3x8 mit 20, im März waren das noch 15"),
        ("de", "Dips 3x8 mit 20. Durchschnittspuls 135"),
        ("es", "fondos 3x8 con 20, como un 80% del máximo"),
        ("es", "fondos 3x8 con 20. en marzo eran 15"),
    ],
)
def test_numbers_that_are_no_sets(language, text):
    found = reading(text, language)
    assert [(one.reps, one.load_kg) for one in found.sets] == [(8, 20)] * 3
    assert not found.ask
