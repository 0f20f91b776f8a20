"""Turns among people in the inbox, the pace of sending in a row that replicas share, indexes for both."""

import sqlalchemy as sa
from alembic import op

revision = "0003"
down_revision = "0002"
branch_labels = None
depends_on = None

UNHANDLED = sa.text("handled_at IS NULL")
OWED = sa.text("sent_at IS NULL AND given_up_because IS NULL")


def upgrade() -> None:
    op.create_table(
        "send_pace",
        sa.Column("id", sa.BigInteger().with_variant(sa.Integer(), "sqlite"), nullable=False),
        sa.Column("channel", sa.String(), nullable=False),
        sa.Column("next_at", sa.DateTime(timezone=True), nullable=False),
        sa.Column("paused_until", sa.DateTime(timezone=True), nullable=True),
        sa.Column("as_of", sa.DateTime(timezone=True), nullable=False),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_send_pace")),
        sa.UniqueConstraint("channel", name=op.f("uq_send_pace_channel")),
    )
    op.add_column("incoming", sa.Column("turn_at", sa.DateTime(timezone=True), nullable=True))
    op.execute("UPDATE incoming SET turn_at = received_at")
    op.drop_index("ix_incoming_open", "incoming")
    op.create_index(
        "ix_incoming_open", "incoming", ["turn_at", "id"], sqlite_where=UNHANDLED, postgresql_where=UNHANDLED
    )
    op.create_index("ix_incoming_sender", "incoming", ["sender", "sent_at"])
    op.drop_index("ix_outgoing_open", "outgoing")
    op.create_index(
        "ix_outgoing_open", "outgoing", ["channel", "importance", "id"], sqlite_where=OWED, postgresql_where=OWED
    )
    op.create_index("ix_outgoing_address", "outgoing", ["channel", "address", "sent_at"])
