"""A database's files rewritten without what was deleted: a deleted row's bytes stay in them until that."""

from __future__ import annotations

import time
from contextlib import closing

import sqlalchemy as sa

from storage import tables
from storage.errors import StorageError

READ_TOO_LONG = "The database was being read, so deleted data may still be in its files. It is tried again."
# How long readers from before are waited for. A dump of a large database takes longer: then another time.
READERS_S, LOOK_S = 20.0, 0.2
# Any number that no other program takes; of replicas one is enough.
_POSTGRES_LOCK = 7_018_211_444


def rewrite_sqlite(engine: sa.Engine) -> None:
    """Raises StorageError where a reader kept the log in use."""
    with closing(engine.raw_connection()) as raw:
        cursor = raw.cursor()
        cursor.execute("VACUUM")
        cursor.execute("PRAGMA wal_checkpoint(TRUNCATE)")
        busy = (cursor.fetchone() or (0,))[0]
        cursor.close()
    if busy:
        raise StorageError(READ_TOO_LONG)


def rewrite_postgres(engine: sa.Engine) -> None:
    """Every table, and what the server remembers of their values for its plans: samples of words and names.

    A plain VACUUM would let the bytes stand in the free room of the pages. Each table is locked while it is rewritten.
    The user must own the database, else the server passes over its samples.

    Raises StorageError where somebody still reads what was deleted: the server would keep it for them.
    """
    ours = tables.metadata.sorted_tables
    preparer = engine.dialect.identifier_preparer
    with engine.connect().execution_options(isolation_level="AUTOCOMMIT") as connection:
        if not connection.execute(sa.select(sa.func.pg_try_advisory_lock(_POSTGRES_LOCK))).scalar():
            raise StorageError(READ_TOO_LONG)
        try:
            for table in ours:
                if connection.execute(sa.select(sa.literal(1)).select_from(table).limit(1)).first() is None:
                    _forget_samples(connection, table)
            connection.execute(sa.text("ANALYZE"))
            _wait_for_readers(connection)
            names = ", ".join(preparer.format_table(table) for table in ours)
            connection.execute(sa.text(f"VACUUM FULL {names}, pg_catalog.pg_statistic"))
        finally:
            connection.execute(sa.select(sa.func.pg_advisory_unlock(_POSTGRES_LOCK)))


def _forget_samples(connection: sa.Connection, table: sa.Table) -> None:
    """Of an empty table the samples would stay as they were. Told anew of what type a column is, which changes nothing,
    the server drops them."""
    preparer = connection.dialect.identifier_preparer
    kinds = (
        f"ALTER COLUMN {preparer.format_column(column)} TYPE {column.type.compile(connection.dialect)}"
        for column in table.columns
        if isinstance(column.type, sa.String | sa.JSON | sa.LargeBinary)
    )
    if changes := ", ".join(kinds):
        connection.execute(sa.text(f"ALTER TABLE {preparer.format_table(table)} {changes}"))


def _wait_for_readers(connection: sa.Connection) -> None:
    now = connection.execute(sa.text("SELECT CAST(CAST(pg_current_xact_id() AS xid) AS text)")).scalar_one()
    older = sa.text(
        "SELECT count(*) FROM pg_stat_activity WHERE datname = current_database() AND pid <> pg_backend_pid()"
        " AND greatest(age(backend_xmin), age(backend_xid)) > age(CAST(:now AS xid))"
    )
    until = time.monotonic() + READERS_S
    while connection.execute(older, {"now": now}).scalar_one():
        if time.monotonic() > until:
            raise StorageError(READ_TOO_LONG)
        time.sleep(LOOK_S)
