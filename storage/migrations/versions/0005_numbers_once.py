"""The number of an athlete who was erased is given to nobody else."""

from alembic import op

revision = "0005"
down_revision = "0004"
branch_labels = None
depends_on = None


def upgrade() -> None:
    if op.get_bind().dialect.name == "sqlite":  # PostgreSQL never gives one twice
        with op.batch_alter_table("athlete", recreate="always", table_kwargs={"sqlite_autoincrement": True}):
            pass
