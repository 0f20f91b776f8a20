"""What is deployed is pinned to the byte, complete, and what these tests ran on.

No list of known weaknesses works offline; `deploy/OPERATIONS.md` says how to ask for them.
"""

from __future__ import annotations

import re
import tomllib
from importlib.metadata import PackageNotFoundError, distribution
from pathlib import Path

import pytest
from packaging.requirements import Requirement
from packaging.utils import canonicalize_name

ROOT = Path(__file__).resolve().parents[2]
FILE = ROOT / "deploy" / "requirements.txt"
PROJECT = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))["project"]
HASH = re.compile(r"--hash=sha256:[0-9a-f]{64}")


def entries() -> dict[str, tuple[Requirement, list[str]]]:
    """Requirement and hashes by name, as pip reads the file."""
    text = re.sub(r"(?m)^\s*#.*$", "", FILE.read_text(encoding="utf-8")).replace("\\\n", " ")
    found = {}
    for line in filter(None, map(str.strip, text.splitlines())):
        words = line.split(" --hash=")[0]
        requirement = Requirement(words)
        found[canonicalize_name(requirement.name)] = (requirement, line[len(words) :].split())
    return found


def needed(requirement: Requirement, seen: dict[str, Requirement]) -> dict[str, Requirement]:
    """All that a requirement brings along on this machine, by name, as the installed packages say."""
    name = canonicalize_name(requirement.name)
    if name in seen and not requirement.extras:
        return seen
    seen[name] = requirement
    for more in map(Requirement, distribution(name).requires or []):
        extras = requirement.extras or {""}
        if more.marker is None or any(more.marker.evaluate({"extra": extra}) for extra in extras):
            needed(more, seen)
    return seen


def test_every_package_is_one_version_with_hashes_and_from_the_usual_index():
    found = entries()
    assert len(found) >= len(PROJECT["dependencies"])
    for name, (requirement, hashes) in found.items():
        assert re.fullmatch(r"==[\w.+!]+", str(requirement.specifier)), name
        assert requirement.url is None, name
        assert hashes, name
        assert all(HASH.fullmatch(one) for one in hashes), name


def test_no_line_sends_pip_anywhere_else():
    options = re.findall(r"(?m)^\s*-(?!-hash=)\S*|\s--(?!hash=)\S+", FILE.read_text(encoding="utf-8"))
    assert options == []


@pytest.mark.parametrize("wanted", PROJECT["dependencies"])
def test_all_that_the_project_names_is_there_within_its_bounds(wanted):
    requirement = Requirement(wanted)
    (pinned, _) = entries()[canonicalize_name(requirement.name)]
    (version,) = (one.version for one in pinned.specifier)
    assert requirement.specifier.contains(version, prereleases=True)


def test_all_that_those_bring_along_is_there_and_fits():
    found, seen = entries(), {}
    for wanted in PROJECT["dependencies"]:
        needed(Requirement(wanted), seen)
    assert len(seen) > 30
    assert sorted(set(seen) - set(found)) == []
    for name, requirement in seen.items():
        (version,) = (one.version for one in found[name][0].specifier)
        assert requirement.specifier.contains(version, prereleases=True), name


def test_the_tests_run_on_the_versions_that_are_deployed():
    for name, (requirement, _) in entries().items():
        try:
            installed = distribution(name).version
        except PackageNotFoundError:
            # Only of another system, such as a console's colours on Windows.
            assert requirement.marker is not None, name
            continue
        assert requirement.specifier.contains(installed, prereleases=True), name
