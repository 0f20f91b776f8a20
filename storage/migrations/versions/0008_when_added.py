"""When an athlete was added: who was erased and taken up again is known from who was there before."""

import sqlalchemy as sa
from alembic import op

revision = "0008"
down_revision = "0007"
branch_labels = None
depends_on = None


def upgrade() -> None:
    op.add_column("athlete", sa.Column("added_at", sa.DateTime(timezone=True), nullable=True))
