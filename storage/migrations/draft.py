"""Writes the next migration: what the tables of today have that the newest migration does not make.

Usage: python -m storage.migrations.draft "what changes". The draft is for reading: renames look like a loss and a gain.
"""

import sys

from alembic import command

from storage import upgrade
from storage.database import writing_engine


def main(message: str) -> None:
    """Migrate an empty database in memory, compare, write."""
    number = len(upgrade.revisions()) + 1
    with writing_engine("sqlite://", foreign_keys=False).begin() as connection:
        config = upgrade.config(connection)
        command.upgrade(config, "head")
        command.revision(config, message, autogenerate=True, rev_id=f"{number:04}")


if __name__ == "__main__":
    main(sys.argv[1])
