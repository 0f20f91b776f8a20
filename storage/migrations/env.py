"""Runs migrations on the connection that the caller opened, inside the caller's transaction."""

from alembic import context

connection = context.config.attributes["connection"]
context.configure(
    connection=connection,
    target_metadata=context.config.attributes["metadata"],
    # SQLite changes a table by building another; the caller keeps foreign keys off meanwhile.
    render_as_batch=True,
    # Our BEGIN makes DDL on SQLite part of the transaction: a migration happens whole or not at all.
    transactional_ddl=True,
)
with context.begin_transaction():
    context.run_migrations()
