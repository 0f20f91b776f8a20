"""A coach's own ladder: drawn, named by a roster, and planned by."""

from datetime import date
from pathlib import Path
from xml.etree import ElementTree

import pytest
from typer.testing import CliRunner

from bot.commands import app
from bot.ladder_picture import draw
from planner import ladders, review
from planner.facts import Athlete, Record, Session, WorkSet

OWN = """
id = "park_rows"
pattern = "pull"
joints = ["elbow"]
doses = [[3, 5]]

[[rung]]
id = "rows_of_the_park"
work = "volume"
movement = "ring_row"
next = ["pulls_of_the_park"]
doses = [[3, 8], [3, 10]]
variants = []

[[rung]]
id = "pulls_of_the_park"
work = "volume"
movement = "pull_up"
doses = [[4, 3]]
variants = []
gates = [{ kind = "sets_shown", movement = "ring_row", sets = 3, want = 12 }]
"""


@pytest.fixture
def home(tmp_path, monkeypatch):
    monkeypatch.setenv("SLOWRUNG_HOME", str(tmp_path))
    monkeypatch.setattr(ladders, "_own", {})
    (tmp_path / "ladders").mkdir()
    (tmp_path / "ladders" / "park.toml").write_text(OWN, encoding="utf-8")
    return tmp_path


def test_every_shipped_ladder_is_a_picture_with_all_rungs_and_ways():
    for ladder in ladders.shipped().values():
        picture = ElementTree.fromstring(draw(ladder))
        names = {"svg": "http://www.w3.org/2000/svg"}
        assert len(picture.findall("svg:g", names)) == len(ladder.rungs)
        assert len(picture.findall("svg:path", names)) == sum(len(rung.next) for rung in ladder.rungs)


def test_an_own_ladder_is_drawn_beside_its_file(home):
    done = CliRunner().invoke(app, ["ladder", "draw", str(home / "ladders" / "park.toml")])
    assert done.exit_code == 0, done.output
    assert "rows of the park" in (home / "ladders" / "park.svg").read_text(encoding="utf-8")


def test_an_own_ladder_plans(home):
    assert ladders.add_own(home / "ladders") == []
    athlete = Athlete("mira", date(2027, 1, 4), 62.0, (("park_rows", "rows_of_the_park"),), screened=True,
                      equipment=frozenset({"bar", "rings"}))  # fmt: skip
    done = Session(date(2027, 1, 2), (WorkSet("ring_row", 8, rpe=7.0),), is_test=True)
    seen = review(Record(athlete, (done,)), date(2027, 1, 4))

    assert [one.rung for one in seen.ladders] == ["rows_of_the_park"]
    assert any(one.movement == "ring_row" and one.rung == "rows_of_the_park" for one in seen.today.sets)


def test_a_roster_may_name_it_and_a_ladder_with_a_fault_stops_with_its_line(home):
    roster = home / "roster.toml"
    from tests.journeys.serving import ROSTER

    head, _, tail = ROSTER.partition("[[athlete]]\n")
    roster.write_text(f'{head}[[athlete]]\nladder = "park_rows"\n{tail}', encoding="utf-8")
    done = CliRunner().invoke(app, ["roster", "check", str(roster)])
    assert done.exit_code == 0, done.output
    Path(home / "ladders" / "bad.toml").write_text(OWN.replace('"pull_up"', '"no_such_thing"'), encoding="utf-8")
    done = CliRunner().invoke(app, ["roster", "check", str(roster)])
    assert done.exit_code == 2
    assert "bad.toml:" in done.output


def test_an_id_that_is_taken_is_refused(home):
    (home / "ladders" / "park.toml").write_text(OWN.replace("park_rows", "one_arm_pull_up"), encoding="utf-8")
    assert "already" in ladders.add_own(home / "ladders")[0]
