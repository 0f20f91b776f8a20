"""Write tests/data/own_{english,german,spanish}.jsonl from the theme files.

Run as `python -m tests.corpus.build`.
"""

from __future__ import annotations

import importlib
import json
import pkgutil
from pathlib import Path
from typing import Any

LANGUAGES = ("english", "german", "spanish")
DATA = Path(__file__).parents[1] / "data"


def lines_of(language: str) -> list[dict[str, Any]]:
    """All lines of a language, theme after theme in the order of their names."""
    package = importlib.import_module(f"tests.corpus.{language}")
    names = sorted(m.name for m in pkgutil.iter_modules(package.__path__))
    themes = [importlib.import_module(f"tests.corpus.{language}.{name}").THEME for name in names]
    return [line for theme in themes for line in theme.lines]


def as_jsonl(lines: list[dict[str, Any]]) -> str:
    return "".join(json.dumps(line, ensure_ascii=False) + "\n" for line in lines)


def main() -> None:
    for language in LANGUAGES:
        lines = lines_of(language)
        (DATA / f"own_{language}.jsonl").write_text(as_jsonl(lines), encoding="utf-8")
        print(f"{language}: {len(lines)} messages")


if __name__ == "__main__":
    main()
