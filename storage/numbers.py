"""The numbers of rows, which are given once: buttons on phones and messages under way name them for longer than a row
lives, so a database that takes another's place counts on from where that one was."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

import sqlalchemy as sa
from sqlalchemy.dialects.postgresql import REGCLASS

from storage import tables


def last_given(there: sa.Connection) -> dict[str, int]:
    """By table, the highest number that a row had or has; without those that never had one, or are not there yet."""
    known = set(sa.inspect(there).get_table_names())
    found = {table.name: _last(there, table) for table in tables.metadata.sorted_tables if table.name in known}
    return {name: last for name, last in found.items() if last is not None}


def count_on(here: sa.Connection, last: Mapping[str, int]) -> None:
    """New rows get numbers beyond those, and beyond all that were given here."""
    own = last_given(here)
    for table in tables.metadata.sorted_tables:
        number = max(last.get(table.name, 0), own.get(table.name, 0))
        if not number:
            continue
        if here.dialect.name == "postgresql":
            here.execute(sa.select(sa.func.setval(_sequence(table), number)))
        elif _counted_by_sqlite(here, table):
            here.execute(sa.text("DELETE FROM sqlite_sequence WHERE name = :name"), {"name": table.name})
            values = {"name": table.name, "last": number}
            here.execute(sa.text("INSERT INTO sqlite_sequence VALUES (:name, :last)"), values)


def _last(there: sa.Connection, table: sa.Table) -> int | None:
    numbers = [there.execute(sa.select(sa.func.max(table.c.id))).scalar()]
    if there.dialect.name == "postgresql":
        numbers.append(there.execute(sa.select(sa.func.pg_sequence_last_value(_sequence(table)))).scalar())
    elif _counted_by_sqlite(there, table):
        known = sa.text("SELECT seq FROM sqlite_sequence WHERE name = :name")
        numbers.append(there.execute(known, {"name": table.name}).scalar())
    return max((number for number in numbers if number is not None), default=None)


def _sequence(table: sa.Table) -> sa.ColumnElement[Any]:
    return sa.cast(sa.func.pg_get_serial_sequence(sa.literal(f'"{table.name}"'), sa.literal("id")), REGCLASS)


def _counted_by_sqlite(connection: sa.Connection, table: sa.Table) -> bool:
    """Whether numbers are given once there: asked of the database, which can be of an older version."""
    made = sa.text("SELECT sql FROM sqlite_master WHERE type = 'table' AND name = :name")
    return "AUTOINCREMENT" in str(connection.execute(made, {"name": table.name}).scalar())
