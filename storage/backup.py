"""Copies of the database while it is in use, kept in number, and put back."""

from __future__ import annotations

import os
import shutil
import sqlite3
import subprocess
from collections.abc import Iterable, Sequence
from contextlib import closing
from datetime import UTC, datetime, timedelta
from pathlib import Path

import sqlalchemy as sa

from storage.errors import BackupFailed

KEEP = 14
# What an erased athlete is promised: after so many days no copy from before knows them.
KEEP_ERASED = timedelta(days=30)
_PREFIX = "slowrung-"
_SUFFIXES = (".sqlite3", ".dump")
_STAMP = "%Y%m%dT%H%M%SZ"
BEFORE_UPGRADE, BEFORE_RESTORE = "before-upgrade", "before-restore"


def backup(url: str, directory: Path, now: datetime, keep: int = KEEP) -> Path:
    """Copy the database into `directory` under a name with the moment (UTC), and let go of the oldest copies.

    Raises BackupFailed; then no copy was let go.
    """
    from storage.store import sqlite_path

    stem = _PREFIX + now.astimezone(UTC).strftime(_STAMP)
    path = sqlite_path(url)
    if path is not None:
        made = copy_file(path, free_name(directory, stem))
    elif url.startswith("sqlite"):
        raise BackupFailed("A database in memory can't be backed up. Name a file for it.")
    else:
        made = dump_postgres(url, free_name(directory, stem, ".dump"))
    rotate(directory, keep)
    return made


def rotate(directory: Path, keep: int = KEEP) -> list[Path]:
    """Delete all but the newest `keep` copies that `backup` made; what was deleted. Copies from before an upgrade
    have other names and stay."""
    made = sorted(path for path in directory.glob(f"{_PREFIX}*Z*") if path.suffix in _SUFFIXES)
    old = made[:-keep] if keep else made
    for path in old:
        path.unlink()
    return old


def copies(directory: Path) -> list[Path]:
    """Every copy in the directory, of any kind, oldest name first: what still knows somebody who was erased.

    Known by their names: a folder for copies may hold other people's files, and the database itself.
    """
    ours = (path for path in directory.glob("*") if path.name.startswith(_PREFIX) or BEFORE_UPGRADE in path.name)
    return sorted(path for path in ours if path.suffix in _SUFFIXES)


def copies_beside(database: Path) -> list[Path]:
    """What upgrades and restores left beside a SQLite file, with the logs that belong to them."""
    marks = [f"{database.stem}-{mark}" for mark in (BEFORE_UPGRADE, BEFORE_RESTORE)]
    return sorted(path for mark in marks for path in database.parent.glob(f"{mark}*"))


def let_go(kept: Iterable[Path], erased: Sequence[datetime], now: datetime) -> list[Path]:
    """Delete the copies that know somebody who was erased `KEEP_ERASED` ago or earlier; what was deleted.

    Args:
        kept: Copies, as `copies` and `copies_beside` find them.
        erased: The moments of all erasures (UTC).
    """
    old = outlived(kept, erased, now)
    for path in old:
        path.unlink()
    return old


def outlived(kept: Iterable[Path], erased: Sequence[datetime], now: datetime) -> list[Path]:
    """The copies that `let_go` would delete."""
    ripe = [moment for moment in erased if moment <= now - KEEP_ERASED]
    return [path for path in kept if made_at(path) <= max(ripe)] if ripe else []


def made_at(copy: Path) -> datetime:
    """When a copy was made: the earlier of what its name says and the file's own time (moving a copy renews that)."""
    changed = datetime.fromtimestamp(copy.stat().st_mtime, UTC)
    try:
        named = datetime.strptime(copy.stem.removeprefix(_PREFIX)[:16], _STAMP).replace(tzinfo=UTC)
    except ValueError:
        return changed
    return min(changed, named)


def restore(copy: Path, database: Path) -> Path | None:
    """Put a copy in the database's place, with the bot stopped; where the former file went, None if there was none.

    Raises BackupFailed where the copy is damaged; then nothing was touched.
    """
    if not copy.is_file():
        raise BackupFailed(f"There is no backup {copy}.")
    database.parent.mkdir(parents=True, exist_ok=True)
    fresh = copy_file(copy, database.with_name(database.name + ".restoring"))
    former = None
    if database.exists():
        former = free_name(database.parent, f"{database.stem}-{BEFORE_RESTORE}")
        for end in ("-wal", "-shm"):
            beside = database.with_name(database.name + end)
            if beside.exists():
                # The log belongs to the former file; under the new one it would be read as its own.
                beside.replace(former.with_name(former.name + end))
        database.replace(former)
    fresh.replace(database)
    return former


def copy_file(source: Path, target: Path) -> Path:
    """Copy a SQLite database that may be in use, check the copy, and only then give it its name.

    Raises BackupFailed.
    """
    if not source.is_file():
        # To open it would make one, and a copy of nothing.
        raise BackupFailed(f"There is no database {source}.")
    part = target.with_name(target.name + ".part")
    try:
        _own(part)
        with closing(_open(source)) as old, closing(_open(part)) as new:
            # All at once: a copy in steps starts over at every write.
            old.backup(new, pages=-1)
            # A copy in one file, readable from any place.
            new.execute("PRAGMA journal_mode = DELETE")
            found = new.execute("PRAGMA integrity_check(3)").fetchall()
            ours = is_ours(new)
        if found != [("ok",)]:
            raise BackupFailed(f"The copy of {source} is damaged: {found[0][0]}. The database is likely so too.")
        if not ours:
            raise BackupFailed(f"{source} is no database of this program.")
        _to_disk(part)
        part.replace(target)
        _to_disk(target.parent)
    except (sqlite3.Error, OSError) as error:
        raise BackupFailed(f"{source} could not be copied to {target}: {error}.") from error
    finally:
        _drop(part)
    return target


def is_ours(connection: sqlite3.Connection) -> bool | None:
    """Whether a SQLite file is a database of this program; None where it holds nothing at all yet."""
    names = {row[0] for row in connection.execute("SELECT name FROM sqlite_master WHERE type = 'table'")}
    return "alembic_version" in names if names else None


def dump_postgres(url: str, target: Path) -> Path:
    """Dump a PostgreSQL database with pg_dump (custom format, for pg_restore). Raises BackupFailed."""
    program = shutil.which("pg_dump")
    if program is None:
        raise BackupFailed("pg_dump was not found. Install the PostgreSQL client, or back up on the server.")
    part = target.with_name(target.name + ".part")
    try:
        _own(part)
    except OSError as error:
        raise BackupFailed(f"{target} could not be written: {error}.") from error
    parsed = sa.make_url(url).set(drivername="postgresql")
    # The password goes by the environment: a command line is seen by everyone on the machine.
    environment = {**os.environ, "PGPASSWORD": parsed.password or os.environ.get("PGPASSWORD", "")}
    address = parsed.set(password=None).render_as_string()
    done = subprocess.run(  # noqa: S603  fixed program, no shell
        [program, "--format=custom", f"--file={part}", f"--dbname={address}"],
        env=environment,
        capture_output=True,
        text=True,
        check=False,
    )
    if done.returncode:
        _drop(part)
        raise BackupFailed(f"pg_dump failed: {' '.join(done.stderr.split())}")
    _to_disk(part)
    part.replace(target)
    return target


def free_name(directory: Path, stem: str, suffix: str = ".sqlite3") -> Path:
    """A path in the directory that nothing has yet."""
    path = directory / f"{stem}{suffix}"
    number = 2
    while path.exists():
        path = directory / f"{stem}-{number}{suffix}"
        number += 1
    return path


def _own(path: Path) -> None:
    """An empty file, and its directory where there is none, that nobody but this user can read, from the first byte
    on and whatever the umask is."""
    path.parent.mkdir(mode=0o700, parents=True, exist_ok=True)
    path.unlink(missing_ok=True)
    path.touch(mode=0o600)


def _drop(path: Path) -> None:
    # Where the directory itself is none, there is nothing to drop.
    if path.parent.is_dir():
        path.unlink(missing_ok=True)


def _open(path: Path) -> sqlite3.Connection:
    return sqlite3.connect(path, timeout=15)


def _to_disk(path: Path) -> None:
    handle = os.open(path, os.O_RDONLY)
    try:
        os.fsync(handle)
    finally:
        os.close(handle)
