"""First names, as people in front of whose sets one writes them: words/first_names.toml."""

from __future__ import annotations

from functools import cache
from pathlib import Path

import tomli

NAMES = Path(__file__).with_name("words") / "first_names.toml"


@cache
def first_names() -> frozenset[str]:
    """All of them, in small letters without accents."""
    tables = tomli.loads(NAMES.read_text(encoding="utf-8"))["names"]
    return frozenset(name for names in tables.values() for name in names.split())
