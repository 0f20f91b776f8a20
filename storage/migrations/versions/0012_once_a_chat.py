"""What a cause asks for once a chat is told apart by the chat's number, not by its place among the coach's chats."""

from alembic import op

revision = "0012"
down_revision = "0011"
branch_labels = None
depends_on = None


def upgrade() -> None:
    # Of several that went to one chat, as they did when a second was added, the first stands for it.
    op.execute(
        """
        UPDATE outgoing SET part = -(
            SELECT chat.id FROM chat WHERE chat.channel = outgoing.channel AND chat.address = outgoing.address
        )
        WHERE (cause LIKE 'alert:%' OR cause LIKE 'proposal:%')
        AND EXISTS (SELECT 1 FROM chat WHERE chat.channel = outgoing.channel AND chat.address = outgoing.address)
        AND NOT EXISTS (
            SELECT 1 FROM outgoing AS earlier
            WHERE earlier.cause = outgoing.cause AND earlier.channel = outgoing.channel
            AND earlier.address = outgoing.address AND earlier.id < outgoing.id
        )
        """
    )
