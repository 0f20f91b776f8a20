"""What is taken back itself brings back what stood before it: facts put aside, and an athlete's own settings."""

import sqlalchemy as sa
from alembic import op

revision = "0014"
down_revision = "0013"
branch_labels = None
depends_on = None

ID = sa.BigInteger().with_variant(sa.Integer(), "sqlite")
FACTS = (
    "report pain_fact sign_fact bodyweight_fact absence_fact resume_fact move_fact equipment_fact clip_fact order_fact "
    "plan_sent"
).split()


def upgrade() -> None:
    for table in FACTS:
        op.add_column(table, sa.Column("withdrawn_by", ID, nullable=True))
    op.add_column("athlete", sa.Column("own_before", sa.JSON(none_as_null=True), nullable=True))
