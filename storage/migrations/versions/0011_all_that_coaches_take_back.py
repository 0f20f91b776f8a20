"""The messages that set a rule or a nickname before the newest one: a coach takes them back one after the other."""

import sqlalchemy as sa
from alembic import op

revision = "0011"
down_revision = "0010"
branch_labels = None
depends_on = None


def upgrade() -> None:
    for name in ("rule_override", "nickname"):
        op.add_column(name, sa.Column("earlier", sa.JSON(none_as_null=True), nullable=True))
