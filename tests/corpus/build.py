"""Write tests/data/{own,second,third,fourth,fifth,sixth}_{english,german,spanish}.jsonl from the theme files.

Themes named second_* to sixth_* were written without a look at the reader; kept apart to see how it generalises.

Run as `python -m tests.corpus.build`.
"""

from __future__ import annotations

import importlib
import itertools
import json
import pkgutil
from pathlib import Path
from typing import Any

CORPORA = ("own", "second", "third", "fourth", "fifth", "sixth")
LANGUAGES = ("english", "german", "spanish")
DATA = Path(__file__).parents[1] / "data"


def lines_of(language: str, corpus: str = "own") -> list[dict[str, Any]]:
    """All lines of a language in one of the corpora, theme after theme in the order of their names."""
    package = importlib.import_module(f"tests.corpus.{language}")
    names = sorted(m.name for m in pkgutil.iter_modules(package.__path__))
    wanted = [name for name in names if _corpus_of(name) == corpus]
    themes = [importlib.import_module(f"tests.corpus.{language}.{name}").THEME for name in wanted]
    return [line for theme in themes for line in theme.lines]


def _corpus_of(theme: str) -> str:
    first = theme.partition("_")[0]
    return first if first in CORPORA else "own"


def as_jsonl(lines: list[dict[str, Any]]) -> str:
    return "".join(json.dumps(line, ensure_ascii=False) + "\n" for line in lines)


def main() -> None:
    for corpus, language in itertools.product(CORPORA, LANGUAGES):
        lines = lines_of(language, corpus)
        (DATA / f"{corpus}_{language}.jsonl").write_text(as_jsonl(lines), encoding="utf-8")
        print(f"{corpus} {language}: {len(lines)} messages")


if __name__ == "__main__":
    main()
