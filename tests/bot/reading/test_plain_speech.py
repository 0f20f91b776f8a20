"""What people type after training, in their own words, each with what it says in short.

The lines of `tests/data/plain_speech.txt` are invented; what they mean was judged by hand, by the contract of readings.
A line is `language | plan | text | reading`. A set is `movement side reps or seconds @load`; `?` is what is asked.
`tests/data/told_hastily.txt` has the same without the signs that part clauses. `tests/data/other_talk.txt` has what is
no list of sets, `language | text | reading`, with days and figures of the body.
"""

import re
from datetime import datetime
from pathlib import Path
from zoneinfo import ZoneInfo

import pytest

from bot.reading import read
from bot.reading.reading import Context, Reading, SetRead
from planner.facts import PlannedSet
from planner.units import KG_PER_LB

DATA = Path(__file__).parents[2] / "data"
LINES = [
    line
    for name in ("plain_speech.txt", "told_hastily.txt")
    for line in (DATA / name).read_text(encoding="utf-8").splitlines()
]
OTHER_LINES = (DATA / "other_talk.txt").read_text(encoding="utf-8").splitlines()
ZONE = ZoneInfo("Europe/Berlin")
SENT = datetime(2027, 6, 16, 18, 30, tzinfo=ZONE)
PLANNED = re.compile(
    r"((?P<part>[aw])/)?(?P<movement>\w+):(?P<sets>\d+)x(?P<each>\d+)(?P<unit>slr|s|lr)?(:(?P<load>[\d.]+))?(@(?P<rpe>\d+))?"
)

PARTS = {None: "main", "a": "accessory", "w": "warm_up"}


def plan_of(text: str) -> tuple[PlannedSet, ...] | None:
    """`pull_up:4x5:20@8;a/dip:3x8:10`; `s` after the reps makes them seconds, `lr`, `slr` two sides; see `PARTS`."""
    if not text:
        return None
    planned: list[PlannedSet] = []
    for part in text.split(";"):
        told = PLANNED.fullmatch(part)
        assert told is not None, part
        for _ in range(int(told["sets"])):
            for side in ("left", "right") if (told["unit"] or "").endswith("lr") else (None,):
                held = (told["unit"] or "").startswith("s")
                planned.append(
                    PlannedSet(
                        movement=told["movement"],
                        part=PARTS[told["part"]],
                        side=side,
                        reps=None if held else int(told["each"]),
                        hold_s=float(told["each"]) if held else None,
                        load_kg=float(told["load"] or 0),
                        assist_kg=0.0,
                        rpe=float(told["rpe"]) if told["rpe"] else None,
                        rom="full",
                        eccentric=False,
                        pauses=(),
                        rung=None,
                    )
                )
    return tuple(planned)


def short(one: SetRead) -> str:
    side = f" {one.side}" if one.side else ""
    work = f"{one.hold_s:g}s" if one.hold_s is not None else "?" if one.reps is None else str(one.reps)
    load = "@?" if one.load_kg is None else f"@{one.load_kg:g}" if one.load_kg else ""
    help_ = f"-{one.assist_kg:g}" if one.assist_kg else ""
    effort = f" rpe {one.rpe:g}" if one.rpe is not None else ""
    marks = "".join(f" {name}" for name in ("eccentric", "failed", "linked") if getattr(one, name))
    marks += "" if one.rom == "full" else f" {one.rom}"
    return f"{one.movement or '?'}{side} {work}{load}{help_}{effort}{marks}"


def in_short(reading: Reading) -> str:
    parts: list[str] = [name for name in reading.intents if name != "report"]
    if reading.performed_on not in (None, SENT.date()):
        parts.append(f"on {reading.performed_on:%d %b}")
    sets = [short(one) for one in reading.sets]
    while sets:
        same = next((n for n, one in enumerate(sets) if one != sets[0]), len(sets))
        parts.append(f"{same} x {sets[0]}" if same > 1 else sets[0])
        sets = sets[same:]
    parts += [f"{one.side or ''} {one.site} {one.score} {one.when or ''}".strip() for one in reading.pain]
    parts += list(reading.red_flags)
    if reading.correction is not None:
        parts.append(f"{reading.correction.field} {reading.correction.was} to {reading.correction.now}")
    parts += [f"asks {one.about}: {one.span}" for one in reading.ask]
    return "; ".join(parts)


def whole_in_short(reading: Reading) -> str:
    """Days and figures of the body too."""
    parts = [in_short(reading)]
    if reading.dates is not None:
        end = reading.dates.end
        parts.append(f"{reading.dates.start:%d %b} to {end:%d %b}" if end else f"{reading.dates.start:%d %b} on")
    if reading.correction is not None:
        mended = reading.correction
        parts[-1] += "".join(f" {part}" for part in (mended.movement, mended.side, mended.which) if part is not None)
    figures = ("bodyweight_kg", "session_rpe", "duration_min", "sleep_h")
    parts += [f"{name} {getattr(reading, name):g}" for name in figures if getattr(reading, name) is not None]
    return "; ".join(part for part in parts if part)


@pytest.mark.parametrize("line", OTHER_LINES, ids=range(1, len(OTHER_LINES) + 1))
def test_what_is_no_list_of_sets_is_read(line):
    language, text, meant = (part.strip() for part in line.split("|"))
    assert whole_in_short(read(text, Context(SENT, ZONE, "kg", language, 72.0))) == meant, text


@pytest.mark.parametrize("line", LINES, ids=range(1, len(LINES) + 1))
def test_what_is_said_in_plain_words_is_read(line):
    language, plan, text, meant = (part.strip() for part in line.split("|"))
    context = Context(SENT, ZONE, "kg", language, 72.0, plan_of(plan))
    assert in_short(read(text, context)) == meant, text


@pytest.mark.parametrize(
    ("text", "pounds"),
    [
        ("pull-ups 20/25/30 for triples", [20, 25, 30]),
        ("pull-ups: 20, 30, 35 for 2 each", [20, 30, 35]),
        ("doubles: 30, 35, 40 pull-ups", [30, 35, 40]),
        ("pull-ups 5 reps at 10, 15, 20, 25", [10, 15, 20, 25]),
        ("pull-ups 3x3: 45, 50, 55", [45, 50, 55]),
        ("tried max pull-ups: 80, 90, 100 all good", [80, 90, 100]),
        ("pull-ups 4x3 at 50, then dropped 20 and did 6", [50, 50, 50, 50, 30]),
        ("pull-ups 3x5, plus 2 dead hangs of 20s", [0, 0, 0, 0, 0]),
        ("pullups 3x3 at 90", [90, 90, 90]),
        ("pullups 2 singles at 100, 1 double at 90, 2 triples at 80", [100, 100, 90, 80, 80]),
        ("pull ups 3x2 at 30, 9 on the last", [30, 30, 30]),
        ("dips 3x5 +45, last set 14", [45, 45, 45]),
        ("chins w/ 25 lb: 6, 6, 5. then one bodyweight set of 11", [25, 25, 25, 0]),
    ],
)
def test_loads_in_a_row_are_in_the_athletes_unit(text, pounds):
    reading = read(text, Context(SENT, ZONE, "lb", "en", 72.0))
    assert [one.load_kg for one in reading.sets] == pytest.approx([lb * KG_PER_LB for lb in pounds])
