"""Who was erased is known again, without their name."""

import sqlalchemy as sa
from alembic import op

revision = "0004"
down_revision = "0003"
branch_labels = None
depends_on = None


def upgrade() -> None:
    op.create_table(
        "tombstone",
        sa.Column("id", sa.BigInteger().with_variant(sa.Integer(), "sqlite"), nullable=False),
        sa.Column("coach_id", sa.BigInteger().with_variant(sa.Integer(), "sqlite"), nullable=False),
        sa.Column("key", sa.String(), nullable=False),
        sa.Column("handle_hash", sa.String(), nullable=False),
        sa.Column("erased_at", sa.DateTime(timezone=True), nullable=False),
        sa.ForeignKeyConstraint(["coach_id"], ["coach.id"], name=op.f("fk_tombstone_coach_id_coach")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_tombstone")),
    )
    with op.batch_alter_table("tombstone", schema=None) as batch_op:
        batch_op.create_index(batch_op.f("ix_tombstone_coach_id"), ["coach_id"], unique=False)
