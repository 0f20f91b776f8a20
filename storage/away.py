"""Whose fault an error of the database is: its own for now, two transactions' that met, or that of one statement."""

from __future__ import annotations

import sqlite3
from collections.abc import Callable
from typing import TypeVar

import sqlalchemy as sa

T = TypeVar("T")

# How often a transaction is begun in all that others' were in the way of.
TRIES = 4

# Classes and codes of Appendix A of PostgreSQL's documentation: the connection, the server's resources, its operator,
# its files; and a server that only reads, as after another has taken its place. 57014 is a cancelled statement.
_AWAY = ("08", "53", "57P", "58", "25006")
_MET = ("40001", "40P01")
_AWAY_IN_SQLITE = {
    sqlite3.SQLITE_BUSY,
    sqlite3.SQLITE_LOCKED,
    sqlite3.SQLITE_FULL,
    sqlite3.SQLITE_IOERR,
    sqlite3.SQLITE_CANTOPEN,
    sqlite3.SQLITE_READONLY,
    sqlite3.SQLITE_PROTOCOL,
}


def is_away(error: BaseException) -> bool:
    """Whether the database cannot work just now, whatever it is asked.

    What is not counts as a fault of that which was being done: taken for the first, it would be tried for ever, and all
    that waits behind it with it.
    """
    if isinstance(error, sa.exc.TimeoutError):  # no connection became free
        return True
    if not isinstance(error, sa.exc.DBAPIError):
        return False
    if error.connection_invalidated:
        return True
    if not isinstance(error, sa.exc.OperationalError):
        return False
    cause = error.orig
    if isinstance(cause, sqlite3.Error):
        # What the driver itself has to say has no code; the low byte of a code says its kind.
        return (getattr(cause, "sqlite_errorcode", 0) & 0xFF) in _AWAY_IN_SQLITE
    state = _state(error)
    return state is None or state.startswith(_AWAY)  # without one no server has answered


def again(work: Callable[[], T]) -> T:
    """Do a transaction; where another's was in its way and the database ended this one, at once anew, a few times."""
    for _ in range(TRIES - 1):
        try:
            return work()
        except sa.exc.DBAPIError as error:
            if _state(error) not in _MET:
                raise
    return work()


def _state(error: sa.exc.DBAPIError) -> str | None:
    state: str | None = getattr(error.orig, "sqlstate", None)
    return state
