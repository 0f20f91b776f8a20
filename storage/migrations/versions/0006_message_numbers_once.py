"""Numbers of messages, questions and due rows are given once: buttons, causes and sends under way name them."""

from alembic import op

revision = "0006"
down_revision = "0005"
branch_labels = None
depends_on = None


def upgrade() -> None:
    if op.get_bind().dialect.name == "sqlite":  # PostgreSQL never gives one twice
        for table in ("incoming", "outgoing", "due", "question"):
            with op.batch_alter_table(table, recreate="always", table_kwargs={"sqlite_autoincrement": True}):
                pass
