"""One writer at a time on a SQLite file: among the threads of this process, and among processes."""

from __future__ import annotations

import threading
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import IO

try:
    import fcntl
except ImportError:  # Windows: there the file is used by one process
    fcntl = None  # type: ignore[assignment]


class WriterLock:
    """Held for each write transaction.

    SQLite would make writers wait by itself, but before 3.51.3 two connections that write or checkpoint at once can,
    rarely, corrupt a WAL file. The lock is a file beside the database (`NAME-writer`), taken with flock: the system
    lets go of it when a process dies.
    """

    def __init__(self, database: Path | None) -> None:
        """`database` None: in memory, threads only."""
        self._threads = threading.Lock()
        self._holder: int | None = None
        self._path = None if database is None else database.with_name(database.name + "-writer")
        self._file: IO[bytes] | None = None

    @contextmanager
    def held(self) -> Iterator[None]:
        """Wait for the lock and hold it. Raises RuntimeError inside itself: transactions don't nest."""
        if self._holder == threading.get_ident():
            raise RuntimeError("A transaction of this thread is open already; hand its session on instead.")
        with self._threads:
            self._holder = threading.get_ident()
            try:
                with self._among_processes():
                    yield
            finally:
                self._holder = None

    @contextmanager
    def _among_processes(self) -> Iterator[None]:
        if self._path is None or fcntl is None:
            yield
            return
        if self._file is None:
            self._file = self._path.open("ab")
        fcntl.flock(self._file, fcntl.LOCK_EX)
        try:
            yield
        finally:
            fcntl.flock(self._file, fcntl.LOCK_UN)

    def close(self) -> None:
        if self._file is not None:
            self._file.close()
            self._file = None
