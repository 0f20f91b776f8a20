"""Everything moves from one database to another, and is compared row by row before it counts."""

from __future__ import annotations

import hashlib
import json
from collections.abc import Iterator
from contextlib import contextmanager, nullcontext
from dataclasses import dataclass
from datetime import UTC, date, datetime, time
from typing import Any

import sqlalchemy as sa

from storage import numbers, tables, upgrade
from storage.database import address, in_memory, reading_engine, writing_engine
from storage.errors import NoSuchDatabase, StorageError
from storage.health import at_work
from storage.migrations import HEAD
from storage.store import sqlite_path
from storage.writing import WriterLock

BATCH = 500


@dataclass(frozen=True)
class Compared:
    """A table on both sides: how many rows, and one sum over every value of them."""

    table: str
    rows_from: int
    rows_to: int
    sum_from: str
    sum_to: str

    @property
    def same(self) -> bool:
        return (self.rows_from, self.sum_from) == (self.rows_to, self.sum_to)


class NotMoved(StorageError):
    """Nothing was moved; the target holds no row. The sentence says why."""


class CopyDiffers(NotMoved):
    """The copy was not what was copied. `compared` has every table."""

    def __init__(self, compared: tuple[Compared, ...]) -> None:
        self.compared = compared
        names = ", ".join(one.table for one in compared if not one.same)
        super().__init__(f"The copy differs in: {names}. Nothing was kept of it; the source is as it was.")


def move(source: str, target: str, now: datetime) -> tuple[Compared, ...]:
    """Copy every table from the database at one URL into the empty one at another; what was compared, by table.

    The target is brought to this version's tables first. Rows, the comparison and the counters for new ids are one
    transaction there: it holds everything or nothing. The source is read in one snapshot and not written to.

    Raises:
        NotMoved, CopyDiffers; NewerDatabase, NoSuchDatabase, DamagedDatabase of either side.
    """
    for url, name in ((source, "source"), (target, "target")):
        if in_memory(url):
            raise NotMoved(f"The {name} is a database in memory. Name a file or a server.")
    if address(source) == address(target):
        raise NotMoved("Source and target are the same database.")
    with _source(source) as there:
        _is_fit(there, now)
        path = sqlite_path(target)
        if path is not None:
            path.parent.mkdir(mode=0o700, parents=True, exist_ok=True)
        upgrade.bring_up_to_date(target, path, None)
        with _target(target) as here:
            _is_empty(here)
            for table in tables.metadata.sorted_tables:
                _copy(there, here, table)
            compared = tuple(_compare(there, here, table) for table in tables.metadata.sorted_tables)
            if not all(one.same for one in compared):
                raise CopyDiffers(compared)
            numbers.count_on(here, numbers.last_given(there))
    return compared


@contextmanager
def _source(url: str) -> Iterator[sa.Connection]:
    """One snapshot of the source, on a connection that can only read."""
    path = sqlite_path(url)
    if path is not None:
        if not path.is_file():
            raise NoSuchDatabase(f"There is no database {path}.")
        upgrade.check_file(path)
        engine = reading_engine(url)
    else:
        engine = writing_engine(url).execution_options(isolation_level="REPEATABLE READ", postgresql_readonly=True)
    lock = WriterLock(path) if path is not None else None
    try:
        # Held to the end, so that a process that was overlooked waits and does not write what would be lost.
        with lock.held() if lock else nullcontext(), engine.connect() as connection:
            yield connection
    finally:
        engine.dispose()
        if lock is not None:
            lock.close()


@contextmanager
def _target(url: str) -> Iterator[sa.Connection]:
    """A transaction on the target: kept where the block ends well, else rolled back."""
    path = sqlite_path(url)
    lock = WriterLock(path) if path is not None else None
    engine = writing_engine(url)
    try:
        with lock.held() if lock else nullcontext(), engine.begin() as connection:
            yield connection
    finally:
        engine.dispose()
        if lock is not None:
            lock.close()


def _is_fit(there: sa.Connection, now: datetime) -> None:
    found = upgrade.current_revision(there)
    if found is None:
        raise NoSuchDatabase("The source is not a database of the bot.")
    if found != HEAD:
        raise NotMoved(
            f"The source's tables are at {found}, this version's at {HEAD}. Start this version on the source once, "
            "so that it is brought up to date, or move with the version that wrote it."
        )
    if at_work(there, now):
        raise NotMoved("The service was at work less than a minute ago. Stop it, wait a minute, and move then.")


def _is_empty(here: sa.Connection) -> None:
    full = [
        table.name
        for table in tables.metadata.sorted_tables
        if here.execute(sa.select(sa.literal(1)).select_from(table).limit(1)).first() is not None
    ]
    if full:
        raise NotMoved(f"The target is not empty (rows in: {', '.join(full)}). Name a new, empty database.")


def _rows(connection: sa.Connection, table: sa.Table) -> sa.CursorResult[Any]:
    """Every row, streamed, in the order of the primary key."""
    query = sa.select(table).order_by(*table.primary_key.columns)
    return connection.execute(query, execution_options={"yield_per": BATCH})


def _copy(there: sa.Connection, here: sa.Connection, table: sa.Table) -> None:
    with _rows(there, table) as found:
        for batch in found.mappings().partitions():
            rows = [dict(row) for row in batch]
            try:
                here.execute(sa.insert(table), rows)
            except sa.exc.DBAPIError as error:
                # Its text would quote what somebody wrote; the place is enough to look there.
                raise NotMoved(
                    f"The target refused rows of {table.name} (ids {rows[0]['id']} to {rows[-1]['id']}: "
                    f"{type(error.orig).__name__}). Nothing was moved."
                ) from None


def _compare(there: sa.Connection, here: sa.Connection, table: sa.Table) -> Compared:
    rows_from, sum_from = checksum(there, table)
    rows_to, sum_to = checksum(here, table)
    return Compared(table.name, rows_from, rows_to, sum_from, sum_to)


def checksum(connection: sa.Connection, table: sa.Table) -> tuple[int, str]:
    """How many rows a table has, and the SHA-256 over the canonical text of every value of every row."""
    total, rows = hashlib.sha256(), 0
    with _rows(connection, table) as found:
        for row in found:
            total.update(json.dumps([canonical(value) for value in row], ensure_ascii=False).encode() + b"\n")
            rows += 1
    return rows, total.hexdigest()


def canonical(value: Any) -> str | None:
    """The same text for the same value, whichever database gave it. Kinds are kept apart: 1 is not "1"."""
    match value:
        case None:
            return None
        case bool():
            return f"bool {value}"
        case int():
            return f"int {value}"
        case float():
            # SQLite keeps no negative zero.
            return f"float {value + 0.0!r}"
        case str():
            return f"text {value}"
        case bytes():
            return f"bytes {value.hex()}"
        case datetime():
            return f"moment {value.astimezone(UTC).isoformat()}"
        case date() | time():
            return f"{type(value).__name__} {value.isoformat()}"
        case dict() | list():
            return f"json {json.dumps(value, sort_keys=True, ensure_ascii=False)}"
    raise NotMoved(f"There is no canonical text for {type(value).__name__}.")
