"""Files go along with messages: what an athlete asks to have of their data."""

import sqlalchemy as sa
from alembic import op

revision = "0002"
down_revision = "0001"
branch_labels = None
depends_on = None


def upgrade() -> None:
    op.add_column("outgoing", sa.Column("document", sa.LargeBinary(), nullable=True))
    op.add_column("outgoing", sa.Column("document_name", sa.String(), nullable=True))
