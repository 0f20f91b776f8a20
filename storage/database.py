"""The engine: SQLite in a file or in memory, or PostgreSQL; and what every table is made of."""

from __future__ import annotations

import sqlite3
from collections.abc import Collection, Mapping, Sequence
from functools import cache
from typing import Any, TypeVar

import sqlalchemy as sa
from sqlalchemy import event
from sqlalchemy.orm.attributes import manager_of_class
from sqlalchemy.pool import StaticPool
from sqlmodel import Field, Session, SQLModel

from storage.at_hand import forget_written
from storage.errors import NoSuchDatabase

# Before any model: without names Alembic can drop no constraint later.
SQLModel.metadata.naming_convention = {
    "ix": "ix_%(table_name)s_%(column_0_N_name)s",
    "uq": "uq_%(table_name)s_%(column_0_N_name)s",
    "ck": "ck_%(table_name)s_%(constraint_name)s",
    "fk": "fk_%(table_name)s_%(column_0_name)s_%(referred_table_name)s",
    "pk": "pk_%(table_name)s",
}

# Chat services hand out ids beyond 32 bits; SQLite counts up only an INTEGER primary key.
BigId = sa.BigInteger().with_variant(sa.Integer(), "sqlite")
Json = sa.JSON(none_as_null=True)

BUSY_TIMEOUT_S = 15
# An error would quote the values of its statement, which are what people wrote.
_QUIET: dict[str, Any] = {"hide_parameters": True}


# Given to a table whose numbers are known outside of it: in buttons on phones, in the causes of messages, in what is
# being sent just now. SQLite would give the number of the newest row again once that row is erased.
NUMBERS_ONCE = {"sqlite_autoincrement": True}


class Row(SQLModel):
    """What every table has. Rows read are loose copies: changing one changes nothing stored."""

    id: int | None = Field(default=None, primary_key=True, sa_type=BigId)


R = TypeVar("R", bound=SQLModel)


def table_of(model: type[SQLModel]) -> sa.Table:
    """The Core table of a model, for statements that skip the ORM."""
    return SQLModel.metadata.tables[str(model.__tablename__)]


def run(tx: Session, statement: sa.Executable, values: Any = None) -> sa.CursorResult[*tuple[Any, ...]]:
    """Execute a Core statement in the transaction, past the ORM (which costs three times as much a row)."""
    write_owed(tx)
    forget_written(tx, statement)
    return tx.connection().execute(statement, values)


class Among:
    """A select of the rows whose column has one of some values, built once. One value is what is mostly asked for, and
    takes a statement that has nothing to be filled in but that: a third less work."""

    def __init__(self, query: sa.Select[Any], column: sa.ColumnElement[Any]) -> None:
        self._one = query.where(column == sa.bindparam("value", type_=column.type))
        self._some = query.where(column.in_(sa.bindparam("values", expanding=True)))

    def __call__(self, tx: Session, values: Collection[Any]) -> sa.CursorResult[*tuple[Any, ...]]:
        if len(values) == 1:
            return run(tx, self._one, {"value": next(iter(values))})
        return run(tx, self._some, {"values": list(values)})


def run_plain(tx: Session, statement: sa.Executable, values: Any = None) -> list[tuple[Any, ...]]:
    """As `run`, for very many rows: as the driver gives them, so of numbers, texts and truths only (on SQLite 0, 1)."""
    result = run(tx, statement, values)
    assert result.cursor is not None
    rows = [tuple(row) for row in result.cursor.fetchall()]
    result.close()
    return rows


def run_later(tx: Session, statement: sa.Executable, values: Mapping[str, Any]) -> None:
    """As `run`, but together with others of the same statement: before the next `run`, or as the transaction ends.

    So nothing in the transaction sees that it was late. The statement must be the same object each time; nothing is
    known of its outcome.
    """
    forget_written(tx, statement)
    owed: dict[sa.Executable, list[Mapping[str, Any]]] = tx.info.setdefault("owed", {})
    owed.setdefault(statement, []).append(values)


def write_owed(tx: Session) -> None:
    """Execute what `run_later` left."""
    for statement, rows in tx.info.pop("owed", {}).items():
        tx.connection().execute(statement, rows)


def loose(model: type[R], found: sa.Row[*tuple[Any, ...]] | None) -> R | None:
    return None if found is None else made_of(model, found._fields, found)


def loose_all(model: type[R], found: Sequence[sa.Row[*tuple[Any, ...]]]) -> list[R]:
    return [made_of(model, row._fields, row) for row in found]


def made_of(model: type[R], names: Sequence[str], row: Sequence[Any]) -> R:
    """A row as its model, by column name. What the database gives needs no defaults and sets off no events: filled in
    at once, it takes a tenth of the time that the constructor does."""
    made: R = manager_of_class(model).new_instance()
    values = dict(zip(names, row, strict=True))
    made.__dict__.update(values)
    made.__pydantic_fields_set__.update(values)
    return made


def insert_row(tx: Session, row: Row) -> int:
    """Insert one row and give its id, which is set on `row` as well."""
    values = row.model_dump(exclude={"id"})
    key = run(tx, inserting(table_of(type(row))), values).inserted_primary_key
    assert key is not None
    row_id = int(key[0])
    row.id = row_id
    return row_id


@cache
def inserting(table: sa.Table) -> sa.Insert:
    """The insert of a table, built once."""
    return sa.insert(table)


def insert_ignoring(tx: Session, table: sa.Table, rows: Sequence[Mapping[str, Any]]) -> list[int]:
    """Insert what breaks no unique constraint; give the ids of the rows that are new.

    All rows have the same keys.
    """
    if not rows:
        return []
    # As parameters, not as values of the statement: that would be compiled anew each time.
    return [int(row[0]) for row in run(tx, _inserting_new(on_postgres(tx), table), list(rows))]


@cache  # building it takes longer than running it
def _inserting_new(postgres: bool, table: sa.Table) -> sa.Executable:
    inserting: sa.Executable = conflict_insert_on(postgres, table).on_conflict_do_nothing().returning(table.c.id)
    return inserting


def conflict_insert(tx: Session, table: sa.Table) -> Any:
    """An insert that knows ON CONFLICT, of the dialect in use."""
    return conflict_insert_on(on_postgres(tx), table)


def conflict_insert_on(postgres: bool, table: sa.Table) -> Any:
    """As `conflict_insert`, where the statement is to be kept."""
    from sqlalchemy.dialects import postgresql, sqlite

    return postgresql.insert(table) if postgres else sqlite.insert(table)


def on_postgres(tx: Session) -> bool:
    assert tx.bind is not None
    return tx.bind.dialect.name == "postgresql"


def address(url: str) -> sa.URL:
    """The parts of a database's URL.

    Raises NoSuchDatabase where it names neither a SQLite file nor a PostgreSQL server. The sentence does not repeat
    it: a password may stand in it.
    """
    try:
        parsed = sa.make_url(url)
    except (sa.exc.ArgumentError, ValueError):
        parsed = None
    if parsed is None or parsed.drivername not in ("sqlite", "postgresql"):
        raise NoSuchDatabase(
            "A database's URL is sqlite:///PATH or postgresql://USER@HOST/NAME; the one given is neither."
        )
    return parsed


def in_memory(url: str) -> bool:
    parsed = address(url)
    return parsed.get_backend_name() == "sqlite" and parsed.database in (None, "", ":memory:")


def writing_engine(url: str, *, foreign_keys: bool = True) -> sa.Engine:
    """The engine that writes: one connection on SQLite, a pool of eight on PostgreSQL.

    `foreign_keys` False is for migrations, which rebuild tables on SQLite.
    """
    if address(url).get_backend_name() != "sqlite":
        return sa.create_engine(url, pool_size=8, max_overflow=2, pool_pre_ping=True, **_QUIET)
    connect = {"check_same_thread": False, "timeout": BUSY_TIMEOUT_S}
    if in_memory(url):
        engine = sa.create_engine(url, poolclass=StaticPool, connect_args=connect, **_QUIET)
    else:
        engine = sa.create_engine(url, pool_size=1, max_overflow=0, connect_args=connect, **_QUIET)
    _prepare(engine, begin="BEGIN IMMEDIATE", pragmas=_writer_pragmas(foreign_keys))
    return engine


def reading_engine(url: str) -> sa.Engine:
    """Connections to a SQLite file that can only read, and never checkpoint."""
    connect = {"check_same_thread": False, "timeout": BUSY_TIMEOUT_S}
    engine = sa.create_engine(url, pool_size=4, max_overflow=4, connect_args=connect, **_QUIET)
    _prepare(engine, begin="BEGIN", pragmas=("query_only = ON", "wal_autocheckpoint = 0"))
    return engine


def _writer_pragmas(foreign_keys: bool) -> tuple[str, ...]:
    return (
        "journal_mode = WAL",
        # NORMAL can lose a commit that the chat service was already told of.
        "synchronous = FULL",
        f"foreign_keys = {'ON' if foreign_keys else 'OFF'}",
        # Erased words must be gone from the file, not only from the tables.
        "secure_delete = ON",
    )


def _prepare(engine: sa.Engine, begin: str, pragmas: tuple[str, ...]) -> None:
    @event.listens_for(engine, "connect")
    def on_connect(connection: sqlite3.Connection, _record: object) -> None:
        # The driver's own transactions begin too late and leave DDL and savepoints out.
        connection.isolation_level = None
        for pragma in pragmas:
            connection.execute(f"PRAGMA {pragma}")

    @event.listens_for(engine, "begin")
    def on_begin(connection: sa.Connection) -> None:
        # IMMEDIATE: a read that turns into a write would meet "database is locked" beside another writer.
        connection.exec_driver_sql(begin)
