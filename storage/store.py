"""The database, opened: checked, brought up to date, and ready for transactions."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import AbstractContextManager, contextmanager, nullcontext
from pathlib import Path

import sqlalchemy as sa
from sqlmodel import Session

from storage import tables, upgrade, vacuum
from storage.database import address, in_memory, reading_engine, write_owed, writing_engine
from storage.record_cache import RecordCache
from storage.records import standing
from storage.writing import WriterLock


class Store:
    """One database. Threads may share it; on SQLite one writes at a time."""

    def __init__(self, url: str, engine: sa.Engine, readers: sa.Engine, writer: WriterLock | None) -> None:
        self.url = url
        self._engine = engine
        self._readers = readers
        self._writer = writer
        self._records = RecordCache()

    @classmethod
    def open(cls, url: str, backup_dir: Path | None = None) -> Store:
        """Open, check and bring up to date. A new database is made; an older one is copied first, then migrated.

        Args:
            url: `sqlite:///FILE`, `sqlite://` (in memory, gone when closed) or `postgresql://…`.
            backup_dir: Where the copy before a migration goes; None: beside the file.

        Raises:
            NewerDatabase, DamagedDatabase, BackupFailed; sqlalchemy's OperationalError: not reachable.
        """
        path = sqlite_path(url)
        if path is not None:
            path.parent.mkdir(parents=True, exist_ok=True)
        writer = WriterLock(path) if url.startswith("sqlite") else None
        if not in_memory(url):
            try:
                with writer.held() if writer else nullcontext():
                    upgrade.bring_up_to_date(url, path, backup_dir)
            except BaseException:
                if writer is not None:
                    writer.close()
                raise
        engine = writing_engine(url)
        if in_memory(url):
            # No migration to run through: nobody has an old one of these, and it saves 0.3 s.
            with engine.begin() as connection:
                tables.metadata.create_all(connection)
                upgrade.stamp(connection)
        if path is not None:
            readers = reading_engine(url)
        elif writer is None:
            readers = engine.execution_options(isolation_level="REPEATABLE READ", postgresql_readonly=True)
        else:
            readers = engine
        return cls(url, engine, readers, writer)

    @property
    def path(self) -> Path | None:
        """The file of a SQLite database."""
        return sqlite_path(self.url)

    @contextmanager
    def transaction(self) -> Iterator[Session]:
        """One write transaction: committed whole, or rolled back whole on any exception."""
        with self._one_writer(), self._session(self._engine) as tx:
            with tx.begin():
                yield tx
                write_owed(tx)
                read = standing(tx)
            for athlete_id, (stamps, record) in read.items():
                self._records.put(athlete_id, stamps, record)

    @contextmanager
    def reading(self) -> Iterator[Session]:
        """A consistent view that waits for no writer and changes nothing (on SQLite it can't)."""
        waits = self._one_writer() if self._readers is self._engine else nullcontext()
        with waits, self._session(self._readers) as tx:
            yield tx
            tx.rollback()

    def forget_records(self) -> None:
        """Empty the cache of records."""
        self._records.clear()

    def vacuum(self) -> None:
        """Rewrite the database without what was deleted, so that no trace of it is left in the files.

        Raises StorageError where a reader kept it in use.
        """
        with self._one_writer():
            rewrite = vacuum.rewrite_postgres if self._writer is None else vacuum.rewrite_sqlite
            rewrite(self._engine)

    def close(self) -> None:
        self._readers.dispose()
        with self._one_writer():
            # The last connection to close writes the log back into the file.
            self._engine.dispose()
        if self._writer is not None:
            self._writer.close()

    @contextmanager
    def _session(self, engine: sa.Engine) -> Iterator[Session]:
        with Session(engine, expire_on_commit=False, info={"records": self._records}) as tx:
            try:
                yield tx
            finally:
                # What is kept here leads back to the transaction: held by nothing else, it would wait for the garbage
                # collector, hundreds of megabytes of it.
                tx.info.clear()

    def _one_writer(self) -> AbstractContextManager[None]:
        return nullcontext() if self._writer is None else self._writer.held()


def sqlite_path(url: str) -> Path | None:
    """The file a URL names; None for a database in memory or on a server."""
    parsed = address(url)
    if parsed.get_backend_name() != "sqlite" or in_memory(url):
        return None
    return Path(parsed.database or "")
