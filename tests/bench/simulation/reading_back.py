"""Print which of the virtual athletes' reports are not read back as they were meant.

`python -m tests.bench.simulation.reading_back`. What they say is within the reading contract, so every line printed is
the reader's mistake (or shows words no one would write).
"""

from __future__ import annotations

import argparse
import random
from collections.abc import Iterator
from datetime import UTC, datetime
from typing import Any
from unittest.mock import patch
from zoneinfo import ZoneInfo

from bot.reading import read
from bot.reading.reading import Context
from planner.facts import PlannedSet
from tests.bench.simulation import season
from tests.bench.simulation.__main__ import PLANNERS
from tests.bench.simulation.voice import report

AT = datetime(2027, 3, 1, 18, 30, tzinfo=UTC)
SAID = ("movement", "side", "reps", "load_kg", "assist_kg", "rpe", "rom", "failed")
PLANNED = ("movement", "part", "reps", "side", "hold_s", "load_kg", "assist_kg", "rom", "rung")


def spoken(seeds: int, weeks: int) -> Iterator[tuple[str, str, str, list[dict[str, Any]]]]:
    """(text, style, unit, sets meant) of every report in some seasons of the oracle."""
    said: list[tuple[str, str, str, list[dict[str, Any]]]] = []

    def listening(done: list[dict[str, Any]], unit: str, rng: random.Random, style: str) -> str:
        text = report(done, unit, rng, style)
        said.append((text, style, unit, done))
        return text

    with patch.object(season, "report", listening):
        for seed in range(1, seeds + 1):
            season.live(PLANNERS["oracle"][0], seed, weeks, tell_hidden=True)
    yield from said


def differs(text: str, unit: str, done: list[dict[str, Any]]) -> str | None:
    """What was read otherwise, in words; None where all is as meant."""
    today = tuple(PlannedSet(rpe=one["ceiling"], **{name: one[name] for name in PLANNED}) for one in done)
    reading = read(text, Context(AT, ZoneInfo("Europe/Lisbon"), unit, "en", 70.0, today))
    if reading.ask:
        return f"asks {[(ask.about, ask.span) for ask in reading.ask]}"
    as_planned = text.lower().startswith(("done", "all as"))
    meant = [one for one in done if as_planned or one["part"] != "warm_up"]
    if len(meant) != len(reading.sets):
        return f"{len(meant)} sets meant, {len(reading.sets)} read"
    for number, (one, got) in enumerate(zip(meant, reading.sets, strict=True), 1):
        for name in SAID:
            if name in ("rpe", "failed") and (as_planned or (name == "failed" and one["reps"])):
                continue
            want, have = one[name], getattr(got, name)
            if (abs((want or 0) - (have or 0)) > 0.005) if name in ("load_kg", "assist_kg") else want != have:
                return f"set {number}: {name} {want} was read as {have}"
    return None


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--athletes", type=int, default=15)
    parser.add_argument("--weeks", type=int, default=20)
    parser.add_argument("--show", type=int, default=10)
    asked = parser.parse_args()
    total, wrong = 0, []
    for text, _, unit, done in spoken(asked.athletes, asked.weeks):
        total += 1
        if (why := differs(text, unit, done)) is not None:
            wrong.append((why, text))
    for why, text in wrong[: asked.show]:
        print(f"{why}\n    {text!r}")
    print(f"{len(wrong)} of {total} reports read otherwise than meant")


if __name__ == "__main__":
    main()
