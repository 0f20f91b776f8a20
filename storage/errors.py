"""What can go wrong with the database as a whole. Each message is a sentence with the mend in it."""

from __future__ import annotations

from pathlib import Path


class StorageError(Exception):
    """The database can't be used as it is."""


class NewerDatabase(StorageError):
    """Written by a newer version of the bot."""


class DamagedDatabase(StorageError):
    """A page or an index of the file is corrupt."""


class NoSuchDatabase(StorageError):
    """There is nothing at the address, or it is not a database of the bot."""


class BackupFailed(StorageError):
    """No backup was made, so nothing that needed one was done."""


class NoSuchPerson(StorageError):
    """No athlete or coach has that id."""


def no_database_yet(path: Path) -> str:
    """What to say where a command needs a database that is there."""
    return f"There is no database {path} yet: slowrung roster load FILE"


def why(error: Exception) -> str:
    """The first line of what the database's own program said, without the statement and where to read on."""
    said = str(getattr(error, "orig", None) or error).splitlines()
    return said[0].strip() if said else type(error).__name__
