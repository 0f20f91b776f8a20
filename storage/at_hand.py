"""What was read in a transaction stays at hand in it, until something is written to the table it is of.

Handling one message asks many times who somebody is, where they are reached and what was asked of them, each part for
itself. What another transaction commits meanwhile is seen by all of them or by none.
"""

from __future__ import annotations

from collections.abc import Callable, Collection, Hashable, Iterator, Mapping
from contextlib import contextmanager
from typing import Any, TypeVar

import sqlalchemy as sa
from sqlalchemy import event
from sqlmodel import Session

K = TypeVar("K", bound=Hashable)
V = TypeVar("V")

_KEPT = "at_hand"


def at_hand(tx: Session, table: sa.Table, keys: Collection[K], read: Callable[[list[K]], Mapping[K, V]]) -> dict[K, V]:
    """What `read` finds for each key, asking it for those alone that are not at hand; keys it leaves out are left out.

    Args:
        table: The one table that is read.
        keys: Each names what it asks for beside the id, where several things are read from the table.
    """
    known: dict[Any, Any] = tx.info.setdefault(_KEPT, {}).setdefault(table, {})
    missing = [key for key in keys if key not in known]
    if missing:
        known.update(read(missing))
    return {key: known[key] for key in keys if key in known}


def know(tx: Session, table: sa.Table, found: Mapping[Any, Any]) -> None:
    """What was read of a table beside another one is at hand too; what is already stays as it is."""
    kept = tx.info.setdefault(_KEPT, {})
    kept[table] = {**found, **kept.get(table, {})}


def one_at_hand(tx: Session, table: sa.Table, key: Hashable, read: Callable[[], V]) -> V:
    """As `at_hand`, of one key that is always found."""
    return at_hand(tx, table, [key], lambda keys: dict.fromkeys(keys, read()))[key]


@contextmanager
def staying(tx: Session, table: sa.Table) -> Iterator[dict[Any, Any]]:
    """What is at hand of a table, to be changed as the table is, for it outlives what is written meanwhile."""
    known: dict[Any, Any] = tx.info.setdefault(_KEPT, {}).setdefault(table, {})
    yield known
    tx.info[_KEPT][table] = known


def forget(tx: Session, table: sa.Table | None = None) -> None:
    """Read again what is asked of a table; None: of any."""
    kept = tx.info.get(_KEPT)
    if kept:
        kept.clear() if table is None else kept.pop(table, None)


def forget_written(tx: Session, statement: sa.Executable) -> None:
    """Forget what a statement may change: a select nothing, words of SQL everything."""
    if isinstance(statement, sa.UpdateBase):
        forget(tx, statement.table if isinstance(statement.table, sa.Table) else None)
    elif not isinstance(statement, sa.SelectBase):
        forget(tx)


@event.listens_for(Session, "after_soft_rollback")
def _taken_back(tx: Session, _ended: object) -> None:
    """A part of the transaction is undone: what was read in it may be of that part."""
    forget(tx)
