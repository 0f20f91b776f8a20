"""The map of the trade's rules points at code and tests that exist."""

from __future__ import annotations

import re
from importlib import import_module
from pathlib import Path

import planner
from planner import rules

MAP = Path(planner.__file__).with_name("RULES.md").read_text(encoding="utf-8")
TESTS = Path(__file__).parent


def test_every_function_named_exists():
    for module, path in re.findall(r"`([a-z_]+)\.([A-Za-z_.]+)`", MAP):
        if module.startswith("test_") or path == "toml" or f"{module}.{path}" in rules.catalogue():
            continue
        found = import_module(f"planner.{module}")
        for name in path.split("."):
            found = getattr(found, name, None) or found.__dataclass_fields__[name]


def test_every_test_named_exists():
    written = "\n".join(path.read_text(encoding="utf-8") for path in sorted(TESTS.glob("test_*.py")))
    for name in re.findall(r"(test_[a-z_0-9]+)(?=[`…])", MAP):
        assert f"def {name}" in written or (TESTS / f"{name}.py").exists(), name


def test_every_rule_named_exists():
    for name in re.findall(r"rules? `([a-z_]+\.[a-z_]+)`", MAP):
        assert name in rules.catalogue(), name
