"""A table of sets as entries: each row is written as the sentence an athlete would send, so that one reader reads all.

`columns` names which column holds what: `date` always, then either `text`, or `movement` with any of `sets`, `reps`,
`load`, `hold`, `side`, `rpe`, `bodyweight` and `notes`. Rows of one day make one entry. A row with a cell that is not
what its column holds is left out whole.
"""

from __future__ import annotations

import csv
import io
import re
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import replace
from pathlib import Path

from bot.importing.entries import DateOrder, Entry, Headings, Stray, days_of, faults_of

COLUMNS = ("date", "text", "movement", "sets", "reps", "load", "hold", "side", "rpe", "bodyweight", "notes")
TABLES = (".csv", ".tsv")
DELIMITERS = ",;\t|"
WEIGHT = r"\+?\d{1,3}(?:\.\d+)?\s?(?:kgs?|lbs?)?"
NO_LOAD = ("", "-", "–", "0", "bw", "none")
# What a cell of each kind looks like, with a decimal point.
CELLS = {
    "sets": re.compile(r"\d{1,2}"),
    "reps": re.compile(r".*\d.*"),
    "hold": re.compile(r"\d{1,3}(?:\.\d+)?\s?(?:s|sec|secs)?"),
    "load": re.compile(WEIGHT, re.IGNORECASE),
    "rpe": re.compile(r"(?:10|\d)(?:\.\d+)?(?:\s?[-–]\s?(?:10|\d)(?:\.\d+)?)?"),
    "bodyweight": re.compile(WEIGHT, re.IGNORECASE),
}
WITH_DECIMALS = ("hold", "load", "rpe", "bodyweight")
DECIMAL_COMMA = re.compile(r"(?<=\d),(?=\d{1,2}(?!\d))")


class BadColumns(ValueError):
    """The mapping names what is not there, or lacks what is needed."""


def columns_named(pairs: Iterable[str]) -> dict[str, str]:
    """KIND=NAME pairs as a mapping.

    Raises:
        BadColumns: One is no pair, or a kind is named twice.
    """
    columns: dict[str, str] = {}
    for pair in pairs:
        kind, _, name = pair.partition("=")
        if not kind or not name:
            raise BadColumns(f"--column {pair!r} should be KIND=NAME, such as date=Day")
        if kind in columns:
            raise BadColumns(f"--column {kind} is given twice")
        columns[kind] = name
    return columns


def entries_from_table(
    text: str, columns: Mapping[str, str], unit: str, language: str, order: DateOrder = "DMY"
) -> Iterator[Entry | Stray]:
    """Every day of a table, and every row whose date cannot be read.

    Raises:
        BadColumns: An unknown kind of column, a column that the table lacks, or no date and words to read.
    """
    rows = csv.DictReader(io.StringIO(text), dialect=_dialect(text))
    _check(columns, rows.fieldnames or ())
    headings = Headings(language, order)
    read = [(_line(rows, row), cells, headings.at(cells["date"])) for row in rows for cells in [_cells(row, columns)]]
    faults = iter(faults_of([heading for _, _, heading in read if heading is not None]))
    day: Entry | None = None
    for line, cells, heading in read:
        fault = next(faults) if heading is not None else "no-date"
        if heading is None or heading.on is None or fault is not None:
            words = cells["date"] or ", ".join(cell for cell in cells.values() if cell)
            yield Stray(line, words, fault or "no-date", days_of(heading) if heading is not None else {})
            continue
        wrong = next((kind for kind, cell in cells.items() if not _fits(kind, cell)), None)
        if wrong is not None:
            yield Stray(line, cells[wrong], "cell", {"column": columns[wrong]})
            continue
        words = _sentence(cells, unit)
        lines = (line,) * (words.count("\n") + 1)
        if day is not None and day.on == heading.on:
            day = replace(day, text=f"{day.text}\n{words}", lines=day.lines + lines, other=day.other or heading.other)
            continue
        if day is not None:
            yield day
        day = Entry(line, heading.on, words, lines, heading.other)
    if day is not None:
        yield day


def columns_of(file: Path, text: str) -> list[str]:
    """The columns of a file that is a table by its name, or whose first lines have a head and as many cells each;
    none where it is notes."""
    first = [line for line in text.splitlines() if line.strip()][:5]
    if not first:
        return []
    delimiter = max(DELIMITERS, key=first[0].count)
    cells = {line.count(delimiter) for line in first}
    is_table = len(first) > 1 and min(cells) > 1 and len(cells) == 1 and not any(one.isdigit() for one in first[0])
    if not is_table and file.suffix.casefold() not in TABLES:
        return []
    return [name.strip() for name in next(csv.reader(first, delimiter=delimiter))]


def _dialect(text: str) -> type[csv.Dialect]:
    try:
        return csv.Sniffer().sniff(text[:4096], delimiters=DELIMITERS)
    except csv.Error:
        return csv.excel


def _line(rows: csv.DictReader[str], row: Mapping[str, str | list[str] | None]) -> int:
    """Where a row begins: a cell in quotes may hold several lines."""
    return rows.line_num - sum(cell.count("\n") for cell in row.values() if isinstance(cell, str))


def _cells(row: Mapping[str, str | None], columns: Mapping[str, str]) -> dict[str, str]:
    cells = {kind: (row.get(name) or "").strip() for kind, name in columns.items()}
    return {kind: DECIMAL_COMMA.sub(".", cell) if kind in WITH_DECIMALS else cell for kind, cell in cells.items()}


def _fits(kind: str, cell: str) -> bool:
    if not cell or kind not in CELLS or (kind == "load" and cell.casefold() in NO_LOAD):
        return True
    return CELLS[kind].fullmatch(cell) is not None


def _check(columns: Mapping[str, str], there: object) -> None:
    names = list(there) if isinstance(there, (list, tuple)) else []
    for kind, name in columns.items():
        if kind not in COLUMNS:
            raise BadColumns(f"{kind!r} is no kind of column; there are {', '.join(COLUMNS)}")
        if name not in names:
            raise BadColumns(f"the table has no column {name!r}; it has {', '.join(names) or 'none'}")
    if "date" not in columns or not {"text", "movement"} & set(columns):
        raise BadColumns("say at least which column holds the date, and which the text or the movement")


def _sentence(cells: Mapping[str, str], unit: str) -> str:
    """ "pull-ups 5x3 +20kg rpe 8"; the notes after it."""
    get = cells.get
    if get("text"):
        return cells["text"]
    hold = cells.get("hold", "").lower().rstrip(" sec")
    work = f"{hold}s" if hold else get("reps") or ""
    scheme = f"{get('sets')}x{work}" if get("sets") else work
    load = "" if get("load", "").casefold() in NO_LOAD else cells["load"]
    if load and load[-1].isdigit():
        load = f"{load}{unit}"
    parts = [
        get("movement") or "",
        f"{get('side')} {scheme}" if get("side") else scheme,
        f"+{load.lstrip('+')}" if load and float("".join(c for c in load if c.isdigit()) or 0) else "",
        f"rpe {get('rpe')}" if get("rpe") else "",
    ]
    lines = [" ".join(part for part in parts if part)]
    if get("bodyweight"):
        lines.append(f"bodyweight {get('bodyweight')}{unit if cells['bodyweight'][-1].isdigit() else ''}")
    if get("notes"):
        lines.append(cells["notes"])
    return "\n".join(line for line in lines if line)
