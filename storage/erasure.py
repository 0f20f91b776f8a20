"""An athlete goes, with every trace: rows, their own words and what was said of them, and the marks in the files.

Copies of the database are not opened: they are let go in time (`storage.backup.let_go`), and a copy that is put back is
cleaned of whoever was erased since (`restore_copy`).
"""

from __future__ import annotations

import json
import re
from collections.abc import Callable, Collection
from contextlib import closing
from dataclasses import dataclass
from datetime import datetime
from pathlib import Path
from typing import Any, TypeVar

import sqlalchemy as sa
from sqlmodel import Session

from storage import backup, health, numbers, rewriting, tables, tombstones
from storage.chats import chats
from storage.database import reading_engine, run, writing_engine
from storage.errors import BackupFailed
from storage.fact_forms import FORMS
from storage.inbox import incoming
from storage.invites import invite_tries
from storage.notes import coach_notes, passed
from storage.outbox import outgoing
from storage.persons import Athlete, athlete, athletes
from storage.questions import questions
from storage.store import Store, sqlite_path

T = TypeVar("T")


@dataclass(frozen=True)
class Erased:
    """`rows` deleted or cleaned by table; `copies`: backup files that still know the athlete, for the operator."""

    rows: dict[str, int]
    copies: tuple[Path, ...]


def erase_athlete(store: Store, athlete_id: int, now: datetime, backup_dir: Path | None = None) -> Erased:
    """Erase an athlete from the database and its files.

    Backups are not changed: those in `backup_dir` are named; they are let go `backup.KEEP_ERASED` from now.

    Raises NoSuchPerson; StorageError where rows are gone but the files could not be rewritten.
    """
    with store.transaction() as tx:
        rows = erase(tx, athlete_id, now)
    rewriting.rewrite(store, now)
    return Erased(rows, tuple(backup.copies(backup_dir)) if backup_dir else ())


def erase(tx: Session, athlete_id: int, now: datetime) -> dict[str, int]:
    """Delete all rows of an athlete and clean the coach's of their name; their bytes are owed a rewriting
    (`storage/rewriting.py`). How many rows, by table.

    Every table with an `athlete_id` is covered, whoever adds one. A tombstone stays, so that they do not come back
    with the next roster. Raises NoSuchPerson.
    """
    whose = athlete(tx, athlete_id)
    counts: dict[str, int] = {}
    _forget_causes(tx, athlete_id)
    _clean_coachs(tx, whose, counts)
    _delete_at_addresses(tx, athlete_id, counts)
    for table in reversed(tables.metadata.sorted_tables):
        if "athlete_id" in table.c:
            _count(counts, table, run(tx, sa.delete(table).where(table.c.athlete_id == athlete_id)).rowcount)
    _count(counts, athletes, run(tx, sa.delete(athletes).where(athletes.c.id == athlete_id)).rowcount)
    tombstones.bury(tx, whose.coach_id, whose.handle, max(now, whose.added_at or now))
    rewriting.owe(tx, now)
    return counts


@dataclass(frozen=True)
class Restored:
    """`former`: where the file went that was there; `erased_again`: how many athletes of the copy had been erased since
    it was made; `unsure`: the former file could not be read, so that it is not known who was."""

    former: Path | None
    erased_again: int = 0
    unsure: bool = False


def restore_copy(copy: Path, database: Path, now: datetime) -> Restored:
    """Put a copy in the database's place, with the bot stopped, without those who were erased since it was made. New
    rows are numbered on from those that were there.

    Raises BackupFailed where the copy is damaged or the service runs; then nothing was touched.
    """
    url = f"sqlite:///{database}"
    if _read(url, lambda connection: _at_work(connection, now)):
        raise BackupFailed("The service was at work less than a minute ago. Stop it, wait a minute, and restore then.")
    known, given = _tombstones_of(url), _numbers_of(url)
    former = backup.restore(copy, database)
    # The copy stays of the version that it is of; only people who must go are worth an upgrade here.
    _count_on(url, given or {})
    if not known:
        return Restored(former, unsure=known is None)
    with closing(Store.open(url)) as store:
        with store.transaction() as tx:
            tombstones.carry_over(tx, known)
            back = tombstones.come_back(tx)
        for athlete_id in back:
            erase_athlete(store, athlete_id, now)
    return Restored(former, len(back))


def let_go_of_copies(url: str, backup_dirs: Collection[Path], now: datetime) -> list[Path]:
    """Delete the copies that know somebody who was erased longer ago than was promised; what was deleted.

    Looked for in `backup_dirs` and, of a SQLite file, beside it. Nothing happens where the database cannot be read.
    """
    known = _tombstones_of(url) or []
    path = sqlite_path(url)
    kept = {copy for folder in backup_dirs for copy in backup.copies(folder)}
    kept |= set(backup.copies_beside(path)) if path is not None else set()
    return backup.let_go(sorted(kept), [row["erased_at"] for row in known], now)


def _tombstones_of(url: str) -> list[dict[str, Any]] | None:
    def rows(connection: sa.Connection) -> list[dict[str, Any]]:
        if not sa.inspect(connection).has_table(tombstones.tombstones.name):
            return []
        return [dict(row) for row in connection.execute(sa.select(tombstones.tombstones)).mappings()]

    return _read(url, rows)


def _at_work(connection: sa.Connection, now: datetime) -> bool:
    return sa.inspect(connection).has_table(health.heartbeats.name) and health.at_work(connection, now)


def _numbers_of(url: str) -> dict[str, int] | None:
    return _read(url, numbers.last_given)


def _count_on(url: str, given: dict[str, int]) -> None:
    engine = writing_engine(url)
    with engine.begin() as connection:
        numbers.count_on(connection, given)
    engine.dispose()


def _read(url: str, what: Callable[[sa.Connection], T]) -> T | None:
    """Something of a database as it stands, of whatever version (a new and empty one, where there is none); None where
    it cannot be read: a damaged one is what restoring is for."""
    path = sqlite_path(url)
    if path is None:
        engine = writing_engine(url)
    else:
        engine = reading_engine(url) if path.exists() else writing_engine("sqlite://")
    try:
        with engine.connect() as connection:
            return what(connection)
    except sa.exc.DBAPIError:
        return None
    finally:
        engine.dispose()


def _count(counts: dict[str, int], table: sa.Table, rows: int) -> None:
    if rows:
        counts[table.name] = counts.get(table.name, 0) + rows


def _forget_causes(tx: Session, athlete_id: int) -> None:
    """Empty the coach's messages that made facts of this athlete, whatever name they used."""
    causes = [sa.select(form.table.c.cause).where(form.table.c.athlete_id == athlete_id) for form in FORMS]
    causes.append(sa.select(passed.c.cause).where(passed.c.athlete_id == athlete_id))
    run(tx, sa.update(incoming).where(incoming.c.id.in_(sa.union(*causes))), {"text": "", "data": {}})


def _delete_at_addresses(tx: Session, athlete_id: int, counts: dict[str, int]) -> None:
    """What came from the athlete's addresses before anybody knew whose they are, and went there."""
    where = sa.select(chats.c.channel, chats.c.address).where(chats.c.athlete_id == athlete_id)
    for channel, address in run(tx, where).all():
        for table in (incoming, outgoing, invite_tries):
            here = sa.delete(table).where(at_address(table, channel, address))
            _count(counts, table, run(tx, here).rowcount)


def at_address(table: sa.Table, channel: str, address: str) -> sa.ColumnElement[bool]:
    """Rows of an address that are nobody's. An address can have been another person's before: theirs stay theirs."""
    here = [table.c.channel == channel, table.c.address == address]
    return sa.and_(*here, *(table.c[name].is_(None) for name in ("athlete_id", "coach_id") if name in table.c))


# Words of and to the coach: the table and its columns of text and of JSON.
_COACHS: tuple[tuple[sa.Table, tuple[str, ...], tuple[str, ...]], ...] = (
    (incoming, ("text",), ("data",)),
    (outgoing, ("text", "picture_alt"), ("plan", "buttons")),
    (questions, ("text", "span"), ("data",)),
)
# Words about others of the coach's athletes.
_OTHERS: tuple[sa.Table, ...] = (coach_notes, passed)


def _clean_coachs(tx: Session, whose: Athlete, counts: dict[str, int]) -> None:
    """Take the lines that name the athlete out of what the coach wrote and was sent, a line at a time."""
    named = re.compile(rf"\b(?:{re.escape(whose.handle)}|{re.escape(whose.name)})\b", re.IGNORECASE)
    for table, texts, data in _COACHS:
        # A roster's picture shows everyone, and nobody can cut one out of it.
        if "picture" in table.c:
            pictures = sa.update(table).where(table.c.coach_id == whose.coach_id, table.c.athlete_id.is_(None))
            run(tx, pictures, {"picture": None})
        columns = [table.c[name] for name in ("id", *texts, *data)]
        query = sa.select(*columns).where(table.c.coach_id == whose.coach_id)
        _clean(tx, table, run(tx, query).all(), texts, data, named, counts)
    team = sa.select(athletes.c.id).where(athletes.c.coach_id == whose.coach_id)
    for table in _OTHERS:
        query = sa.select(table.c.id, table.c.text).where(table.c.athlete_id.in_(team))
        _clean(tx, table, run(tx, query).all(), ("text",), (), named, counts)


def _clean(
    tx: Session,
    table: sa.Table,
    rows: Any,
    texts: tuple[str, ...],
    data: tuple[str, ...],
    named: re.Pattern[str],
    counts: dict[str, int],
) -> None:
    for row in rows:
        values: dict[str, Any] = {}
        for name in texts:
            text = getattr(row, name)
            if text and named.search(text):
                values[name] = "\n".join(line for line in text.splitlines() if not named.search(line))
        for name in data:
            held = getattr(row, name)
            if held and named.search(json.dumps(held, ensure_ascii=False)):
                values[name] = type(held)()
        if values:
            run(tx, sa.update(table).where(table.c.id == row.id), values)
            _count(counts, table, 1)
