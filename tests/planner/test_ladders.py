"""Ladder and block files: what a coach writes is checked, and an error names file, line and key."""

from __future__ import annotations

from pathlib import Path

import pytest

from planner import blocks, ladders, movements, rules
from planner.datafile import DataError
from planner.shown import value_of

ONE_ARM = (ladders.SHIPPED / "one_arm_pull_up.toml").read_text(encoding="utf-8")
BLOCK = (blocks.SHIPPED / "four_plus_one.toml").read_text(encoding="utf-8")
# Prilepin's totals [secondary sources, consistent]: share of the maximum from, fewest and most reps.
PRILEPIN = [(0.90, 4, 10), (0.80, 10, 20), (0.70, 12, 24), (0.0, 18, 30)]


@pytest.mark.parametrize("path", sorted(ladders.SHIPPED.glob("*.toml")), ids=lambda path: path.stem)
def test_shipped_ladders_are_sound(path: Path):
    assert ladders.check(path) == []
    ladder = ladders.load(path)
    assert ladder.id == path.stem
    for rung in ladder.rungs:
        assert movements.is_known(rung.movement)
        for gate in rung.gates:
            assert value_of(gate.want, rules.default_rules()) > 0


def test_the_one_arm_ladder_has_the_rungs_of_the_trade():
    order = [rung.id for rung in ladders.get("one_arm_pull_up").rungs]
    assert order == [
        "ring_row",
        "pull_up",
        "weighted_pull_up",
        "archer_elbow_lower",
        "archer_elbow_full",
        "archer_shoulder",
        "hand_on_biceps",
        "hand_on_shoulder",
        "counterweight",
        "one_arm_pull_up",
    ]


@pytest.mark.parametrize(
    ("old", "new", "words"),
    [
        ('work = "main"', 'work = "heavy"', ("work", "heavy")),
        ('next = ["archer_shoulder"]', 'next = ["archer_sholder"]', ("next", "archer_sholder")),
        ('next = ["archer_shoulder"]', 'next = ["ring_row"]', ("next", "ring_row")),
        ('id = "hand_on_biceps"', 'id = "hand_on_shoulder"', ("id", "hand_on_shoulder")),
        ("proof = { reps = 1 }", "prof = { reps = 1 }", ("prof", "unknown key")),
        ('rom = "lower_half"\n', 'rom = "bottom"\n', ("rom", "bottom")),
        ('joints = ["elbow", "shoulder"]', 'joints = ["elbow", "knee"]', ("joints", "knee")),
        ('joints = ["elbow", "shoulder"]', "joints = 3", ("joints", "3", "list")),
        ('movement = "ring_row"', 'movement = "rope_climb"', ("movement", "rope_climb", "catalogue")),
        ('next = ["archer_shoulder"]', 'next = "archer_shoulder"', ("next", "list")),
        ("proof = { reps = 1 }", "proof = 1", ("proof", "table")),
        ("proof = { reps = 1 }", "proof = { rep = 1 }", ("proof", "rep")),
        ("want = 3", 'want = "gate.of_dreams"', ("gates", "gate.of_dreams")),
        ('gates = [{ kind = "held", sets = 2, want = 3 }]', "gates = [3]", ("gates", "table")),
        ("doses = [[2, 1], [2, 2], [2, 3]]", "doses = [[2, 1, 1]]", ("doses", "[sets, reps]")),
        ("doses = [[2, 1], [2, 2], [2, 3]]", "doses = []", ("doses", "one at least")),
        ('variants = [{ pauses = ["top"] }, {', 'variants = [{ pause = ["top"] }, {', ("variants", "table")),
        ('roms = ["lower_half", "full"]', "roms = []", ("roms", "one at least")),
        ("one_sided = true", 'one_sided = "yes"', ("one_sided", "true or false")),
        ('other_day = { movement = "archer_ring_elbow", rom = "upper_half" }', "other_day = 3", ("other_day", "table")),
    ],
)
def test_a_mistake_is_named_with_its_line(tmp_path: Path, old: str, new: str, words: tuple[str, ...]):
    text = ONE_ARM.replace(old, new, 1)
    assert text != ONE_ARM
    path = tmp_path / "mine.toml"
    path.write_text(text, encoding="utf-8")
    errors = ladders.check(path)
    assert errors
    line = next(number for number, one in enumerate(text.splitlines(), 1) if new.strip() in one)
    assert any(f"mine.toml:{line}:" in error and all(word in error for word in words) for error in errors) or (
        "given twice" in errors[0]
    )


def test_a_file_that_is_no_toml_is_an_error_and_not_a_crash(tmp_path: Path):
    path = tmp_path / "mine.toml"
    path.write_text("id = ", encoding="utf-8")
    assert ladders.check(path)
    with pytest.raises(DataError):
        blocks.load(path)


def test_the_shipped_block_is_sound_and_its_totals_are_within_the_published_bands():
    table = blocks.shipped()
    for week in range(1, 5):
        for kind in ("heavy", "volume"):
            work = table.work(kind, week, 4)
            n = work.reps + 10 - work.rpe
            share = 1 / min(36 / (37 - n), 1 + n / 30)
            _, fewest, most = next(band for band in PRILEPIN if share >= band[0])
            assert fewest <= work.sets * work.reps <= most


@pytest.mark.parametrize("length", [3, 4, 5, 6])
def test_a_block_may_have_three_to_six_loading_weeks(length: int):
    table = blocks.shipped()
    efforts = [table.work("heavy", week, length).rpe for week in range(1, length + 1)]
    assert efforts == sorted(efforts)
    assert efforts[-1] == 8.5


def test_a_wrong_block_names_its_line(tmp_path: Path):
    path = tmp_path / "mine.toml"
    path.write_text(BLOCK.replace("heavy = [5, 3, 7.5]", "heavy = [5, 3]"), encoding="utf-8")
    with pytest.raises(DataError, match=r"mine\.toml:\d+: heavy"):
        blocks.load(path)
