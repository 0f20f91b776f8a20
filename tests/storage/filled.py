"""A row in every table, whoever adds one: values by the kind of each column, so that no table is forgotten."""

from __future__ import annotations

from collections.abc import Callable
from datetime import UTC, date, datetime, time
from typing import Any

import sqlalchemy as sa

MOMENT = datetime(2027, 1, 4, 6, 30, 15, 123456, tzinfo=UTC)

Text = Callable[[str, str], str]


def fill(connection: sa.Connection, metadata: sa.MetaData, rows: int = 3, text: Text | None = None) -> None:
    """Put `rows` rows into every table of `metadata`; ids and what points at them count from 1.

    `text` makes the value of a text column from the names of table and column; else it has all that breaks copies.
    """
    for table in metadata.sorted_tables:
        if table.name != "alembic_version":
            connection.execute(sa.insert(table), [row_of(table, number, text) for number in range(1, rows + 1)])


def row_of(table: sa.Table, number: int, text: Text | None = None) -> dict[str, Any]:
    return {column.name: value_of(column, number, text) for column in table.columns}


def value_of(column: sa.Column[Any], number: int, text: Text | None = None) -> Any:
    """A value of the column's kind that differs from row to row."""
    if column.primary_key or column.foreign_keys:
        return number
    name = f"{column.table.name}.{column.name}"
    kind = column.type.impl_instance if isinstance(column.type, sa.types.TypeDecorator) else column.type
    if isinstance(kind, sa.Boolean):
        return number % 2 == 0
    if isinstance(kind, sa.JSON):
        word = text(column.table.name, column.name) if text else f"é 🧗 {name}"
        return {"b": [number, 0.1, None, word], "a": {"z": True, "y": '"'}}
    if isinstance(kind, sa.DateTime):
        return MOMENT.replace(microsecond=number)
    if isinstance(kind, sa.Date):
        return date(2027, 1, number)
    if isinstance(kind, sa.Time):
        return time(7, 30, 0, number)
    if isinstance(kind, sa.LargeBinary):
        return (text(column.table.name, column.name) if text else name).encode() + b"\x00\xff"[: 0 if text else 2]
    if isinstance(kind, sa.Float):
        return (0.1 + 0.2, 1e-300, -0.0)[number % 3]
    if isinstance(kind, sa.Integer):
        # As far as the kind of the column goes: ids of chats and stamps are beyond 32 bits.
        return (2**62 if isinstance(kind, sa.BigInteger) else 2**20) + number
    if isinstance(kind, sa.String):
        return (text(column.table.name, column.name) if text else f"é 🧗 \\ '\" \t\n{name} ") + str(number)
    raise AssertionError(f"{name}: no value for {kind}")
