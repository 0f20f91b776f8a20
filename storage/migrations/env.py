"""Runs migrations on the connection that the caller opened, inside the caller's transaction."""

from typing import Any, Literal

import sqlalchemy as sa
from alembic import context
from sqlmodel.sql.sqltypes import AutoString, UTCDateTime


def as_plain_types(kind: str, item: Any, _: Any) -> str | Literal[False]:
    """Drafts name SQLAlchemy's own types: what was migrated once must not change with another library."""
    if kind == "type" and isinstance(item, AutoString):
        return "sa.String()"
    if kind == "type" and isinstance(item, UTCDateTime):
        return "sa.DateTime(timezone=True)"
    return False


connection: sa.Connection = context.config.attributes["connection"]
context.configure(
    connection=connection,
    target_metadata=context.config.attributes["metadata"],
    # SQLite changes a table by building another; the caller keeps foreign keys off meanwhile.
    render_as_batch=True,
    # Our BEGIN makes DDL on SQLite part of the transaction: a migration happens whole or not at all.
    transactional_ddl=True,
    render_item=as_plain_types,
)
with context.begin_transaction():
    context.run_migrations()
