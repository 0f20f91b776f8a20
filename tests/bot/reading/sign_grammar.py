"""Sentences made of the rows in tests/data/sign_grammars.txt: a few of each, the same ones every time."""

from __future__ import annotations

import random
from collections.abc import Iterator
from pathlib import Path

ROWS = Path(__file__).parents[2] / "data" / "sign_grammars.txt"


def rows() -> list[tuple[str, str, str]]:
    """Sign, language and row, the lists of the language put in."""
    lists: dict[str, str] = {}
    found = []
    for line in ROWS.read_text(encoding="utf-8").splitlines():
        if " | " in line and not line.startswith("#"):
            sign, language, row = line.split(" | ", 2)
            found.append((sign, language, _filled(row, language, lists)))
        elif " = " in line:
            name, row = line.split(" = ", 1)
            lists[name] = _filled(row, name.partition(".")[0], lists)
    return found


def _filled(row: str, language: str, lists: dict[str, str]) -> str:
    for name, listed in lists.items():
        if name.startswith(f"{language}."):
            row = row.replace("{" + name.partition(".")[2] + "}", listed)
    assert "{" not in row, row
    return row


def sentences(row: str, most: int) -> list[str]:
    """At most so many different sentences of a row."""
    draw = random.Random(row)
    made = (" ".join(_said(iter(row), draw).split()) for _ in range(4 * most))
    return list(dict.fromkeys(made))[:most]


def _said(rest: Iterator[str], draw: random.Random) -> str:
    """One of the alternatives up to the closing bracket."""
    ways = [""]
    for char in rest:
        if char == ")":
            break
        if char == "(":
            ways[-1] += _said(rest, draw)
        elif char == "|":
            ways.append("")
        else:
            ways[-1] += char
    return draw.choice(ways)
