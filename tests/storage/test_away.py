import sqlite3
from contextlib import closing

import psycopg
import pytest
import sqlalchemy as sa
from psycopg import errors
from sqlalchemy.exc import DBAPIError, InternalError, OperationalError

from storage import away


def of_sqlite(code, kind=sqlite3.OperationalError):
    cause = kind("made here")
    cause.sqlite_errorcode = code
    return OperationalError("insert", {}, cause)


def of_postgres(kind):
    return OperationalError("insert", {}, kind("made here"))


# Appendix A of PostgreSQL's documentation, "PostgreSQL Error Codes".
@pytest.mark.parametrize(
    "kind",
    [
        errors.ConnectionFailure,  # 08006
        errors.AdminShutdown,  # 57P01
        errors.CannotConnectNow,  # 57P03
        errors.DiskFull,  # 53100
        errors.TooManyConnections,  # 53300
        errors.IoError,  # 58030
        errors.ReadOnlySqlTransaction,  # 25006, a server that has become another's copy
        psycopg.OperationalError,  # it never came so far that a server could answer
    ],
)
def test_a_server_that_cannot_work_is_away(kind):
    assert away.is_away(of_postgres(kind))


@pytest.mark.parametrize(
    "kind",
    [
        errors.ProgramLimitExceeded,  # 54000
        errors.StatementTooComplex,  # 54001
        errors.QueryCanceled,  # 57014
        errors.LockNotAvailable,  # 55P03
        errors.DeadlockDetected,  # 40P01
        errors.SerializationFailure,  # 40001
    ],
)
def test_what_one_statement_met_is_not_away(kind):
    assert not away.is_away(of_postgres(kind))


@pytest.mark.parametrize(
    "code",
    [
        sqlite3.SQLITE_BUSY,
        sqlite3.SQLITE_BUSY_SNAPSHOT,
        sqlite3.SQLITE_LOCKED,
        sqlite3.SQLITE_FULL,
        sqlite3.SQLITE_IOERR_WRITE,
        sqlite3.SQLITE_CANTOPEN,
        sqlite3.SQLITE_READONLY,
    ],
)
def test_a_file_that_cannot_be_used_is_away(code):
    assert away.is_away(of_sqlite(code))


@pytest.mark.parametrize("code", [sqlite3.SQLITE_ERROR, sqlite3.SQLITE_TOOBIG])
def test_what_one_statement_met_in_a_file_is_not_away(code):
    assert not away.is_away(of_sqlite(code))


def test_text_that_sqlite_cannot_give_back_is_not_away():
    with closing(sqlite3.connect(":memory:")) as connection, pytest.raises(sqlite3.OperationalError) as found:
        connection.execute("SELECT CAST(X'ff' AS TEXT)").fetchall()
    assert not away.is_away(OperationalError("select", {}, found.value))


def test_a_connection_that_broke_is_away_whatever_the_driver_calls_it():
    assert away.is_away(InternalError("select", {}, Exception("closed"), connection_invalidated=True))
    assert away.is_away(sa.exc.TimeoutError("no connection free"))
    assert not away.is_away(ValueError("no database at all"))


def test_who_was_in_anothers_way_tries_again_and_not_for_ever():
    tries = []

    def work():
        tries.append(1)
        if len(tries) < 3:
            raise of_postgres(errors.DeadlockDetected)
        return "done"

    assert away.again(work) == "done"

    def never():
        tries.append(1)
        raise of_postgres(errors.SerializationFailure)

    tries.clear()
    with pytest.raises(DBAPIError):
        away.again(never)
    assert len(tries) == away.TRIES

    def another():
        tries.append(1)
        raise of_postgres(errors.ProgramLimitExceeded)

    tries.clear()
    with pytest.raises(DBAPIError):
        away.again(another)
    assert len(tries) == 1
