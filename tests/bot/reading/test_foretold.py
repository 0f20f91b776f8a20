"""What is there to train with, where one will be and what will be trained: none of it was trained."""

from __future__ import annotations

from collections.abc import Callable
from datetime import datetime

import pytest

from bot.reading.reading import Reading
from tests.bot.reading.messages import planned

TODAY = (
    planned("scapular_pull_up", 5, part="warm_up")
    + planned("pull_up", 3, part="warm_up")
    + planned("pull_up", 4, 4, 4, 4, load_kg=11.25, rpe=7)
)


@pytest.mark.parametrize(
    ("text", "language", "intents"),
    [
        ("the gym here has a pulldown machine but no bar", "en", {"equipment"}),
        ("next week I only have a bar, no rings, no belt", "en", {"equipment"}),
        ("traveling 11 to 15 january, no rings no belt only a bar", "en", {"away", "equipment"}),
        ("im Hotel nur Kurzhanteln, keine Stange", "de", {"equipment"}),
        ("vom 11. bis 15. Januar unterwegs, keine Ringe, nur eine Stange", "de", {"away", "equipment"}),
        ("me voy de vacas del 18 al 29, sin material", "es", {"away", "equipment"}),
        ("el gimnasio de aquí tiene polea pero no barra", "es", {"equipment"}),
        ("could you give me 6 reps at 20 on thursday", "en", {"for_coach"}),
        ("könntest du mir am Donnerstag 6 Wdh mit 20 geben", "de", {"for_coach"}),
        ("me puedes poner 6 reps con 20 el jueves", "es", {"for_coach"}),
    ],
)
def test_what_is_there_and_what_is_wanted_is_no_report(
    reads: Callable[..., Reading], text: str, language: str, intents: set[str]
):
    found = reads(text, language=language, today=TODAY)
    assert found.sets == ()
    assert set(found.intents) == intents


@pytest.mark.parametrize(
    ("text", "language"),
    [
        ("planning 4x4 at 12.5 tonight", "en"),
        ("plane 4x4 mit 12,5 heute Abend", "de"),
        ("pienso hacer 4x4 con 2,5 esta noche", "es"),
    ],
)
def test_an_intention_is_no_report(reads: Callable[..., Reading], text: str, language: str):
    found = reads(text, language=language, today=TODAY)
    assert found.sets == ()
    assert "report" not in found.intents


@pytest.mark.parametrize(
    ("text", "language", "hours", "told"),
    [
        ("tonight: pull-ups 4x4 at 13.75", "en", ("08:00", "16:30"), False),
        ("tonight: pull-ups 4x4 at 13.75", "en", ("18:00", "23:30", "01:15"), True),
        ("Weighted chin-ups this evening: four sets of four with 17.5 kg", "en", ("19:30",), True),
        ("pull ups this afternoon: 4x4", "en", ("11:00",), False),
        ("pull ups this afternoon: 4x4", "en", ("15:00",), True),
        ("heute Abend: Klimmzüge 4x4 mit 13,75", "de", ("09:00",), False),
        ("heute Abend: Klimmzüge 4x4 mit 13,75", "de", ("21:00",), True),
        ("esta noche: dominadas 4x4 con 13,75", "es", ("09:00",), False),
        ("esta noche: dominadas 4x4 con 13,75", "es", ("22:00",), True),
    ],
)
def test_the_hour_says_whether_this_evening_lies_ahead(
    reads: Callable[..., Reading], text: str, language: str, hours: tuple[str, ...], told: bool
):
    for hour in hours:
        sent_at = datetime.fromisoformat(f"2027-03-10T{hour}:00+00:00")
        assert bool(reads(text, language=language, sent_at=sent_at).sets) == told


@pytest.mark.parametrize(
    ("text", "language", "sets"),
    [
        ("no rings today, used the bar instead, all as planned", "en", 6),
        ("Gürtel vergessen, sonst alles nach Plan", "de", 6),
        ("olvidé el cinturón, lo demás según el plan", "es", 6),
        ("planned 4x4, did 4x3", "en", 4),
    ],
)
def test_what_was_done_all_the_same_is_a_report(reads: Callable[..., Reading], text: str, language: str, sets: int):
    assert len(reads(text, language=language, today=TODAY).sets) == sets


@pytest.mark.parametrize(
    ("text", "language", "asks_for_another_plan"),
    [
        ("forgot the belt, so pull-ups 4x5 without", "en", False),
        ("no belt at my mum's, pull-ups 3x8 bodyweight", "en", False),
        ("planche lean 5x6s in the hotel gym", "en", False),
        ("my belt broke so pull-ups 4x8 with nothing", "en", True),
        ("pull-ups 4x4 +15. No rings until Friday", "en", True),
        ("pull-ups 3x10. The hotel only has a bar, no rings", "en", True),
        ("Dipgürtel vergessen, also Klimmzüge 4x5 ohne Gewicht", "de", False),
        ("Klimmzüge 4x5, der Gürtel ist gerissen", "de", True),
        ("me dejé el cinturón en casa, así que dominadas 3x8 sin lastre", "es", False),
        ("dominadas 3x8, se rompió el cinturón", "es", True),
    ],
)
def test_what_was_not_there_for_the_sets_told_is_no_wish(
    reads: Callable[..., Reading], text: str, language: str, asks_for_another_plan: bool
):
    found = reads(text, language=language)
    assert found.sets
    assert ("equipment" in found.intents) == asks_for_another_plan


@pytest.mark.parametrize(
    ("text", "language"),
    [
        ("cut it after 2 sets, gym lost power", "en"),
        ("nach 2 Sätzen war Schluss, Strom weg im Studio", "de"),
        ("all but the pull-ups, somebody took the bar", "en"),
        ("todo menos las dominadas, alguien se llevó la barra", "es"),
    ],
)
def test_a_reason_in_the_gym_leaves_the_plan_told(reads: Callable[..., Reading], text: str, language: str):
    found = reads(text, language=language, today=TODAY)
    assert 0 < len(found.sets) < len(TODAY)
