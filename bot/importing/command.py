"""`slowrung import`: shows what old notes say, and writes it down on `--yes`."""

from __future__ import annotations

import sys
from pathlib import Path
from typing import Any

from bot.clock import SystemClock
from bot.importing.entries import DateOrder, Entry, Stray, entries_from_notes
from bot.importing.load import understand, write
from bot.importing.preview import told
from bot.importing.table import columns_of, entries_from_table
from bot.wording import Wording, wording_for
from storage import persons
from storage.persons import Athlete
from storage.rules import nicknames_of
from storage.store import Store


class ImportFailed(ValueError):
    """A sentence that says what to mend."""


def import_notes(store: Store, handle: str, file: Path, columns: dict[str, str], order: DateOrder, yes: bool) -> str:
    """Read a file of notes, or a table where `columns` are given; what to tell the person at the terminal.

    Raises:
        ImportFailed: No such athlete, a file that cannot be read, or a table without `columns`.
        bot.importing.table.BadColumns: The columns do not fit the table.
    """
    with store.reading() as tx:
        found = [row for coach in persons.all_coaches(tx) for row in _of_coach(tx, coach.id, handle)]
        if len(found) != 1:
            raise ImportFailed(wording_for("en").say("import-who", handle=handle))
        athlete = found[0]
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


def _of_coach(tx: Any, coach_id: int | None, handle: str) -> list[Athlete]:
    found = persons.athlete_by_handle(tx, coach_id or 0, handle)
    return [found] if found is not None else []


def _entries(
    file: Path, athlete: Athlete, columns: dict[str, str], order: DateOrder, say: Wording
) -> list[Entry | Stray]:
    try:
        text = file.read_text(encoding="utf-8-sig")
    except OSError as error:
        raise ImportFailed(f"{file}: {error.strerror or error}") from error
    except UnicodeDecodeError as error:
        raise ImportFailed(f"{file}: not UTF-8 text (byte {error.start})") from error
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
