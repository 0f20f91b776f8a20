"""`slowrung import`: shows what old notes say, and writes it down on `--yes`."""

from __future__ import annotations

import sys
from pathlib import Path

from bot.clock import SystemClock
from bot.importing.entries import DateOrder, Entry, Stray, entries_from_notes
from bot.importing.load import understand, write
from bot.importing.preview import told
from bot.importing.table import columns_of, entries_from_table
from bot.wording import Wording, wording_for
from planner.datafile import DataError, text_of
from storage.persons import Athlete
from storage.rules import nicknames_of
from storage.store import Store


class ImportFailed(ValueError):
    """A sentence that says what to mend."""


def import_notes(
    store: Store, athlete: Athlete, file: Path, columns: dict[str, str], order: DateOrder, yes: bool
) -> str:
    """Read a file of notes, or a table where `columns` are given; what to tell the person at the terminal.

    Raises:
        ImportFailed: A file that cannot be read, or a table without `columns`.
        bot.importing.table.BadColumns: The columns do not fit the table.
    """
    with store.reading() as tx:
        nicknames = nicknames_of(tx, athlete.coach_id)
    # As the athlete is told of training: in the language of the notes, and in their unit.
    say = wording_for(athlete.language, athlete.unit)
    now = SystemClock().now()
    entries = _entries(file, athlete, columns, order, say)
    outcome = understand(entries, athlete, nicknames, _show_progress, now)
    lines = told(outcome, entries, order, say)
    if not yes:
        return "\n".join([*lines, say.say("import-how")])
    with store.transaction() as tx:
        written, there = write(tx, athlete, outcome, now)
    return "\n".join([*lines, say.say("import-written", written=written, there=there)])


def _entries(
    file: Path, athlete: Athlete, columns: dict[str, str], order: DateOrder, say: Wording
) -> list[Entry | Stray]:
    try:
        text = text_of(file)
    except DataError as error:
        raise ImportFailed(str(error)) from error
    language = athlete.language.split("-")[0]
    if columns:
        return list(entries_from_table(text, columns, athlete.unit, language, order))
    table = columns_of(file, text)
    if table:
        raise ImportFailed(say.say("import-columns", names=", ".join(table), first=table[0]))
    return list(entries_from_notes(text, language, order))


def _show_progress(done: int, total: int) -> None:
    if sys.stderr.isatty() and (done % 50 == 0 or done == total):
        end = "\n" if done == total else ""
        print(f"\r{done}/{total}", end=end, file=sys.stderr, flush=True)
