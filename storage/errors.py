"""What can go wrong with the database as a whole. Each message is a sentence with the mend in it."""

from __future__ import annotations


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
