"""Which message set a rule for all or a nickname, and what stood before: a coach can take both back."""

import sqlalchemy as sa
from alembic import op

revision = "0010"
down_revision = "0009"
branch_labels = None
depends_on = None

NUMBER = sa.BigInteger().with_variant(sa.Integer(), "sqlite")


def upgrade() -> None:
    op.add_column("rule_override", sa.Column("cause", NUMBER, nullable=True))
    op.add_column("rule_override", sa.Column("before", sa.JSON(none_as_null=True), nullable=True))
    op.add_column("nickname", sa.Column("cause", NUMBER, nullable=True))
    op.add_column("nickname", sa.Column("before", sa.String(), nullable=True))
