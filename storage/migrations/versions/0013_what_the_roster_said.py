"""What the roster said last of the settings that athletes change themselves: only a new word of it sets those anew."""

import sqlalchemy as sa
from alembic import op

revision = "0013"
down_revision = "0012"
branch_labels = None
depends_on = None


def upgrade() -> None:
    op.add_column("athlete", sa.Column("roster_said", sa.JSON(none_as_null=True), nullable=True))
