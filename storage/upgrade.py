"""Bringing a database to this version's tables, after a copy of it was made."""

from __future__ import annotations

import sqlite3
from contextlib import closing
from pathlib import Path
from typing import TYPE_CHECKING

import sqlalchemy as sa

from storage import backup, tables
from storage.database import writing_engine
from storage.errors import DamagedDatabase, NewerDatabase, NoSuchDatabase
from storage.migrations import HEAD

if TYPE_CHECKING:
    from alembic.config import Config

MIGRATIONS = Path(__file__).parent / "migrations"
# Any number that no other program takes; it keeps replicas that start together from migrating twice.
_POSTGRES_LOCK = 7_018_211_443


def bring_up_to_date(url: str, path: Path | None, backup_dir: Path | None, migrations: Path = MIGRATIONS) -> str | None:
    """Check and migrate; the revision found before, None for a new database.

    Raises:
        NewerDatabase, DamagedDatabase, NoSuchDatabase, BackupFailed.
    """
    if path is not None and path.exists() and path.stat().st_size:
        check_file(path)
    engine = writing_engine(url, foreign_keys=False)
    try:
        with engine.connect() as connection:
            if path is None:
                connection.execute(sa.select(sa.func.pg_advisory_lock(_POSTGRES_LOCK)))
            found = current_revision(connection)
            connection.rollback()
            known = revisions(migrations)
            if found is not None and found not in known:
                raise NewerDatabase(
                    f"This database was written by a newer version (its tables are at {found}, this version knows "
                    f"{known[0]}). Install the newer version again, or restore a backup that is older."
                )
            if found == known[0]:
                return found
            if found is not None:
                _copy_first(url, path, backup_dir, found)
            with connection.begin():
                from alembic import command

                command.upgrade(config(connection, migrations), "head")
            return found
    finally:
        # Closing the connection ends the advisory lock as well.
        engine.dispose()


def check_file(path: Path) -> None:
    """Raises DamagedDatabase, or NoSuchDatabase where the file is something else or cannot be read."""
    mend = "Stop the bot and restore the newest backup."
    try:
        with closing(sqlite3.connect(path, timeout=15)) as connection:
            found = [row[0] for row in connection.execute("PRAGMA quick_check(3)")]
            ours = backup.is_ours(connection)
    except sqlite3.OperationalError as error:
        # A folder, no permission, a full disk, another program that keeps it: nothing is said of the pages in it.
        raise NoSuchDatabase(f"{path} cannot be opened ({error}).") from error
    except sqlite3.DatabaseError as error:
        if "not a database" in str(error):
            raise NoSuchDatabase(f"{path} is not a database. Give the path of another file.") from error
        raise DamagedDatabase(f"{path} is damaged ({error}). {mend}") from error
    if found != ["ok"]:
        raise DamagedDatabase(f"{path} is damaged ({'; '.join(found)}). {mend}")
    if ours is False:
        raise NoSuchDatabase(f"{path} belongs to another program. Give the path of another file.")


def current_revision(connection: sa.Connection) -> str | None:
    if not sa.inspect(connection).has_table("alembic_version"):
        return None
    found: str | None = connection.execute(sa.text("SELECT version_num FROM alembic_version")).scalar()
    return found


def revisions(migrations: Path = MIGRATIONS) -> list[str]:
    """All that this version knows, newest first."""
    from alembic.script import ScriptDirectory

    return [script.revision for script in ScriptDirectory.from_config(config(None, migrations)).walk_revisions()]


def stamp(connection: sa.Connection) -> None:
    """Note that the tables are the newest."""
    connection.execute(sa.text("CREATE TABLE alembic_version (version_num VARCHAR(32) NOT NULL PRIMARY KEY)"))
    connection.execute(sa.text("INSERT INTO alembic_version VALUES (:head)"), {"head": HEAD})


def config(connection: sa.Connection | None, migrations: Path = MIGRATIONS) -> Config:
    # Imported late: it costs 0.2 s that a database in memory need not pay.
    from alembic.config import Config

    made = Config()
    made.set_main_option("script_location", str(migrations).replace("%", "%%"))
    made.attributes["connection"] = connection
    made.attributes["metadata"] = tables.metadata
    return made


def _copy_first(url: str, path: Path | None, backup_dir: Path | None, found: str) -> None:
    if path is not None:
        backup.copy_file(
            path, backup.free_name(backup_dir or path.parent, f"{path.stem}-{backup.BEFORE_UPGRADE}-{found}")
        )
    elif backup_dir is not None:
        backup.dump_postgres(url, backup.free_name(backup_dir, f"{backup.BEFORE_UPGRADE}-{found}", ".dump"))
