"""A table of sets as entries: each row is written as the sentence an athlete would send, so that one reader reads all.

`columns` names which column holds what: `date` always, then either `text`, or `movement` with any of `sets`, `reps`,
`load`, `hold`, `side`, `rpe`, `bodyweight` and `notes`. Rows of one day make one entry.
"""

from __future__ import annotations

import csv
import io
from collections.abc import Iterator, Mapping

from bot.importing.entries import DateOrder, Entry, Headings, Stray

COLUMNS = ("date", "text", "movement", "sets", "reps", "load", "hold", "side", "rpe", "bodyweight", "notes")


class BadColumns(ValueError):
    """The mapping names what is not there, or lacks what is needed."""


def entries_from_table(
    text: str, columns: Mapping[str, str], unit: str, language: str, order: DateOrder = "DMY"
) -> Iterator[Entry | Stray]:
    """Every day of a table, and every row whose date cannot be read.

    Raises:
        BadColumns: An unknown kind of column, a column that the table lacks, or no date and words to read.
    """
    sample = text[:4096]
    try:
        dialect: type[csv.Dialect] = csv.Sniffer().sniff(sample, delimiters=",;\t|")
    except csv.Error:
        dialect = csv.excel
    rows = csv.DictReader(io.StringIO(text), dialect=dialect)
    _check(columns, rows.fieldnames or ())
    headings = Headings(language, order)
    day: Entry | None = None
    for row in rows:
        cells = {kind: (row.get(name) or "").strip() for kind, name in columns.items()}
        found = headings.at(cells["date"])
        if found is None:
            yield Stray(rows.line_num, cells["date"] or ",".join(value or "" for value in row.values() if value))
            continue
        words = _sentence(cells, unit)
        if day is not None and day.on == found[0]:
            day = Entry(day.line, day.on, f"{day.text}\n{words}")
            continue
        if day is not None:
            yield day
        day = Entry(rows.line_num, found[0], words)
    if day is not None:
        yield day


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
    work = f"{get('hold')}s" if get("hold") else get("reps") or ""
    scheme = f"{get('sets')}x{work}" if get("sets") else work
    load = get("load") or ""
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
