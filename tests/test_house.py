"""Rules of the house that memory won't keep."""

from __future__ import annotations

import re
import subprocess
import sys
import tomllib
from importlib import import_module
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parent.parent
AGREED = {"README.md", "DEVELOPERS.md", "pyproject.toml", "bot", "planner", "storage", "tests", "deploy"}


def test_imports_run_one_way():
    run = subprocess.run(
        [Path(sys.executable).parent / "lint-imports", "--no-cache"], cwd=ROOT, capture_output=True, text=True
    )
    assert run.returncode == 0, run.stdout


def test_the_top_level_holds_what_was_agreed():
    tracked = subprocess.run(["git", "ls-files"], cwd=ROOT, capture_output=True, text=True)
    if tracked.returncode != 0:
        pytest.skip("not a git checkout")
    top = {line.split("/")[0] for line in tracked.stdout.splitlines()}
    assert {name for name in top if not name.startswith(".")} == AGREED


def test_every_path_that_the_developers_guide_names_exists():
    text = (ROOT / "DEVELOPERS.md").read_text(encoding="utf-8")
    named = set(re.findall(r"`((?:bot|planner|storage|tests|deploy)/[\w./-]*)`", text))
    assert named
    assert [path for path in sorted(named) if not (ROOT / path).exists()] == []


def test_every_part_of_the_reader_that_its_guide_names_exists():
    text = (ROOT / "bot" / "reading" / "__init__.py").read_text(encoding="utf-8")
    named = re.findall(r"`([a-z_]+)\.([a-z_]+)`", text)
    assert named
    for module, name in named:
        found = import_module(f"bot.reading.{module}")
        assert hasattr(found, name) or import_module(f"bot.reading.{module}.{name}"), f"{module}.{name}"


def test_every_data_file_can_be_read():
    files = [path for package in ("bot", "planner", "storage") for path in (ROOT / package).rglob("*.toml")]
    assert files
    for path in files:
        tomllib.loads(path.read_text(encoding="utf-8"))


def test_direct_dependencies_are_pinned_exactly():
    project = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))
    listed = project["project"]["dependencies"] + project["dependency-groups"]["dev"]
    assert [name for name in listed if not re.fullmatch(r"[\w.\-\[\]]+==[\w.]+", name)] == []


def test_what_is_deployed_is_what_is_tested():
    project = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))
    pinned = (ROOT / "deploy" / "requirements.txt").read_text(encoding="utf-8")
    for wanted in project["project"]["dependencies"]:
        name, _, version = re.sub(r"\[.*\]", "", wanted).partition("==")
        assert f"\n{name.replace(chr(46), chr(45))}=={version} " in f"\n{pinned}", wanted
