"""Every file and folder that a command writes is its user's alone, whatever the shell's umask is."""

import os
import stat
import subprocess
import sys
from pathlib import Path

import pytest

from tests.journeys.serving import ROSTER

ROOT = Path(__file__).parents[2]


@pytest.fixture
def command(tmp_path):
    (tmp_path / "roster.toml").write_text(ROSTER, encoding="utf-8")
    environment = {name: value for name, value in os.environ.items() if not name.startswith("SLOWRUNG_")}
    environment |= {"SLOWRUNG_HOME": str(tmp_path / "home"), "PYTHONPATH": str(ROOT)}

    def run(*words, given=""):
        return subprocess.run(
            [sys.executable, "-c", "from bot.main import run; run()", *words],
            cwd=tmp_path, env=environment, input=given, capture_output=True, text=True, umask=0o022, check=False,
        )  # fmt: skip

    return run


def test_a_database_its_copies_and_what_lies_beside_are_only_the_users(command, tmp_path):
    home, other = tmp_path / "home", tmp_path / "other" / "moved.sqlite3"
    done = [
        command("roster", "load", "roster.toml"),
        command("backup"),
        command("move", "--from", f"sqlite:///{home}/slowrung.sqlite3", "--to", f"sqlite:///{other}"),
        command("chat", given="help\nquit\n"),
    ]
    (copy,) = (home / "backups").glob("*.sqlite3")
    done.append(command("restore", str(copy)))
    assert [(one.returncode, one.stderr) for one in done] == [(0, "")] * len(done)

    written = [path for folder in (home, other.parent) for path in (folder, *folder.rglob("*"))]
    assert {"slowrung.sqlite3", "moved.sqlite3", copy.name, "backups"} <= {path.name for path in written}
    open_to_others = [
        f"{path.relative_to(tmp_path)} {stat.filemode(path.stat().st_mode)}"
        for path in written
        if stat.S_IMODE(path.stat().st_mode) & 0o077
    ]
    assert open_to_others == []


def test_a_folder_for_copies_that_is_made_is_only_the_users(command, tmp_path):
    command("roster", "load", "roster.toml")
    command("backup", "--to", "deep/copies")
    modes = {path.name: stat.S_IMODE(path.stat().st_mode) for path in (tmp_path / "deep").rglob("*")}
    assert len(modes) == 2
    assert set(modes.values()) == {0o700, 0o600}
