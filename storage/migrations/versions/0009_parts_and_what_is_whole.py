"""How much of a long message was taken; indexes for the daily tidying and for counting what is set aside, which read
both ways' messages whole."""

import sqlalchemy as sa
from alembic import op

revision = "0009"
down_revision = "0008"
branch_labels = None
depends_on = None

ASIDE = sa.text("set_aside_because IS NOT NULL")
WHOLE = sa.text("text <> '' OR address <> ''")


def upgrade() -> None:
    op.add_column("outgoing", sa.Column("parts_sent", sa.Integer(), server_default="0", nullable=False))
    op.create_index("ix_incoming_set_aside", "incoming", ["id"], sqlite_where=ASIDE, postgresql_where=ASIDE)
    op.create_index("ix_incoming_whole", "incoming", ["received_at"], sqlite_where=WHOLE, postgresql_where=WHOLE)
    op.create_index("ix_outgoing_whole", "outgoing", ["due_at"], sqlite_where=WHOLE, postgresql_where=WHOLE)
