"""Old notes that were imported before it was written down whose they are get their owner; an erased one's go."""

import sqlalchemy as sa
from alembic import op

revision = "0007"
down_revision = "0006"
branch_labels = None
depends_on = None

incoming = sa.table("incoming", *map(sa.column, ("id", "channel", "sender", "athlete_id", "coach_id")))
# What a note can say, and always one of it.
FACTS = [
    sa.table(name, *map(sa.column, ("athlete_id", "cause"))) for name in ("report", "pain_fact", "bodyweight_fact")
]


def upgrade() -> None:
    nobodys = sa.and_(incoming.c.channel == "import", incoming.c.athlete_id.is_(None), incoming.c.coach_id.is_(None))
    fact = sa.union_all(*(sa.select(table.c.athlete_id, table.c.cause) for table in FACTS)).subquery()
    owner = sa.select(sa.func.min(fact.c.athlete_id)).where(fact.c.cause == incoming.c.id).scalar_subquery()
    op.execute(sa.update(incoming).where(nobodys).values(athlete_id=owner))
    op.execute(sa.delete(incoming).where(nobodys))
    sender = sa.literal("athlete:") + sa.cast(incoming.c.athlete_id, sa.String)
    op.execute(sa.update(incoming).where(incoming.c.channel == "import").values(sender=sender))
