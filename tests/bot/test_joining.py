"""Going in and going for good, from the operator's command line."""

import pytest
from typer.testing import CliRunner

from bot.commands import app
from tests.journeys.serving import ROSTER


@pytest.fixture
def run(tmp_path, monkeypatch):
    monkeypatch.setenv("SLOWRUNG_HOME", str(tmp_path / "home"))
    monkeypatch.delenv("SLOWRUNG_DATABASE_URL", raising=False)
    return lambda *words: CliRunner().invoke(app, words)


@pytest.fixture
def roster(run, tmp_path):
    path = tmp_path / "roster.toml"
    path.write_text(ROSTER, encoding="utf-8")
    assert run("roster", "load", str(path)).exit_code == 0
    return str(path)


def test_erasing_asks_first_and_then_does_it(run, roster, tmp_path):
    shown = run("erase", "tomas")
    assert shown.exit_code == 2
    assert "Tomás of Inês" in shown.output
    done = run("erase", "tomas", "--yes")
    assert done.exit_code == 0
    assert "rows erased" in done.output
    assert b"tomas" not in (tmp_path / "home" / "slowrung.sqlite3").read_bytes()


@pytest.mark.parametrize("words", [("nobody",), ("tomas", "--coach", "Rui")])
def test_nobody_is_erased_who_is_not_there(run, roster, words):
    done = run("erase", *words, "--yes")
    assert done.exit_code == 2
    assert "Nobody has the handle" in done.output


def test_a_roster_says_whom_it_does_not_take_up_and_how_it_would(run, roster):
    run("erase", "tomas", "--yes")
    again = run("roster", "load", roster).output
    assert "Not taken up" in again
    assert "--again tomas" in again
    assert "Nobody has the handle" in run("erase", "tomas").output
    told = run("roster", "load", roster, "--again", "tomas").output
    assert "Not taken up" not in told
    assert "Tomás of Inês" in run("erase", "tomas").output
    assert "Not taken up" not in run("roster", "load", roster).output


def test_a_copy_from_before_comes_back_without_who_left(run, roster):
    copy = run("backup").output.replace("\n", "")
    run("erase", "tomas", "--yes")
    done = run("restore", copy)
    assert done.exit_code == 0
    assert "1 athletes who had been erased" in done.output
    assert "Nobody has the handle" in run("erase", "tomas").output
