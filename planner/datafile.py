"""Reading TOML data files so that an error names the file, the line and the key."""

from __future__ import annotations

import re
from collections.abc import Collection, Mapping
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import tomli


class DataError(ValueError):
    """A data file that cannot be used. The text names file, line and key."""


@dataclass(frozen=True)
class DataFile:
    """A parsed file that still knows its lines."""

    name: str
    text: str
    data: Mapping[str, Any]

    def line_of(self, key: str | None, table: str | None = None, index: int = 0) -> int:
        """Line (from 1) of `key` in the `index`-th `[[table]]`, or of the table itself; 1 where nothing is found."""
        lines = self.text.splitlines()
        start = 0
        if table is not None:
            heads = [at for at, line in enumerate(lines) if re.match(rf"\s*\[\[?{re.escape(table)}\]", line)]
            if index >= len(heads):
                return 1
            start = heads[index]
        if key is None:
            return start + 1
        for at in range(start, len(lines)):
            if at > start and lines[at].lstrip().startswith("["):
                break
            if re.match(rf"\s*{re.escape(key)}\s*=", lines[at]):
                return at + 1
        return start + 1

    def where(self, key: str | None, table: str | None = None, index: int = 0) -> str:
        line = f"{self.name}:{self.line_of(key, table, index)}"
        return f"{line}: {key}" if key else line

    def unknown_keys(
        self, found: Mapping[str, Any], known: Collection[str], table: str | None = None, index: int = 0
    ) -> list[str]:
        return [
            f"{self.where(key, table, index)}: unknown key; known are {', '.join(sorted(known))}"
            for key in found
            if key not in known
        ]


def text_of(path: Path) -> str:
    """The text of a file that somebody wrote. Some editors put a mark before UTF-8; it is no part of the text.

    Raises:
        DataError: The file cannot be read, or is no text; the sentence names it.
    """
    try:
        return path.read_text(encoding="utf-8-sig")
    except OSError as error:
        raise DataError(f"{path}: {error.strerror or error}") from error
    except UnicodeDecodeError as error:
        raise DataError(f"{path}: not UTF-8 text (byte {error.start})") from error


def read(path: Path) -> DataFile:
    """Read one TOML file.

    Raises:
        DataError: The file cannot be read or is no TOML; the text names the line.
    """
    text = text_of(path)
    try:
        return DataFile(path.name, text, tomli.loads(text))
    except tomli.TOMLDecodeError as error:
        raise DataError(f"{path.name}: {error}") from error
