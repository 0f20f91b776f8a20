"""Looks at everything the service stands on and says in plain words what is wrong."""

from __future__ import annotations

import stat
from datetime import UTC, timedelta
from pathlib import Path
from zoneinfo import ZoneInfo

from bot.clock import SystemClock
from bot.settings import Settings
from storage import health, persons
from storage.store import Store, sqlite_path

LATE = timedelta(minutes=2)
OLD_BACKUP = timedelta(days=2)


def examine(settings: Settings) -> tuple[bool, list[str]]:
    """(nothing is wrong, a sentence for each finding). What is wrong begins with "!", what is fine with "·"."""
    findings: list[str] = []
    findings += _settings(settings)
    findings += _clock()
    try:
        store = Store.open(settings.database, settings.backups)
    except Exception as error:  # whatever it is, it is the finding
        findings.append(f"! The database does not open: {error}")
    else:
        try:
            findings += _database(settings, store)
        finally:
            store.close()
    findings += _backups(settings.backups)
    return not any(one.startswith("!") for one in findings), findings


def _settings(settings: Settings) -> list[str]:
    found = []
    if settings.telegram_token is None:
        found.append("! SLOWRUNG_TELEGRAM_TOKEN is not set: `slowrung serve` cannot start.")
    else:
        found.append("· A token is set.")
    home = settings.home
    if home.exists() and stat.S_IMODE(home.stat().st_mode) & 0o077:
        found.append(f"! {home} can be read by others: chmod 700 {home}")
    return found


def _clock() -> list[str]:
    now = SystemClock().now()
    found = [f"· The clock says {now.isoformat(timespec='seconds')}. If that is wrong, plans come at wrong hours."]
    try:
        berlin = now.astimezone(ZoneInfo("Europe/Berlin")).utcoffset()
        found.append(f"· Time zone data is there (Berlin is {berlin} from UTC).")
    except Exception:
        found.append("! There is no time zone data: install the tzdata package.")
    if now.astimezone(UTC).year < 2026:
        found.append("! The clock is years behind.")
    return found


def _database(settings: Settings, store: Store) -> list[str]:
    found = []
    now = SystemClock().now()
    path = sqlite_path(settings.database)
    with store.reading() as tx:
        seen = health.look(tx, now)
        coaches = persons.all_coaches(tx)
    found.append(f"· {seen.database}, version {seen.revision} of the tables.")
    if path is not None and stat.S_IMODE(path.stat().st_mode) & 0o077:
        found.append(f"! {path} can be read by others: chmod 600 {path}")
    if seen.wal_reset_bug:
        found.append("· This SQLite is older than 3.51.3: keep one running service a file (a lock sees to that).")
    if not coaches:
        found.append("! There is no roster yet: slowrung roster load FILE")
    counted = ", ".join(f"{name} {count}" for name, count in sorted(seen.rows.items()) if count)
    found.append(f"· Rows: {counted or 'none'}.")
    if seen.set_aside:
        found.append(f"! {seen.set_aside} messages could not be handled and are set aside.")
    if seen.oldest_unhandled is not None and seen.oldest_unhandled > LATE:
        found.append(f"! {seen.unhandled} messages wait to be handled, the oldest {_age(seen.oldest_unhandled)}.")
    if seen.oldest_unsent is not None and seen.oldest_unsent > LATE:
        found.append(f"! {seen.unsent} messages wait to be sent, the oldest {_age(seen.oldest_unsent)}.")
    if seen.oldest_overdue is not None and seen.oldest_overdue > LATE:
        found.append(f"! {seen.overdue} plans and questions are overdue, the oldest {_age(seen.oldest_overdue)}.")
    sweep = seen.beats.get("sweep")
    if sweep is None:
        found.append("· No sweep was made yet.")
    elif sweep > LATE:
        found.append(f"! The last sweep is {_age(sweep)} old: is the service running?")
    else:
        found.append(f"· The last sweep is {_age(sweep)} old.")
    return found


def _backups(folder: Path) -> list[str]:
    copies = sorted(folder.glob("slowrung-*")) if folder.exists() else []
    if not copies:
        return ["· There is no backup yet: slowrung backup"]
    age = timedelta(seconds=SystemClock().now().timestamp() - copies[-1].stat().st_mtime)
    mark = "!" if age > OLD_BACKUP else "·"
    return [f"{mark} The newest of {len(copies)} backups is {_age(age)} old."]


def _age(span: timedelta) -> str:
    seconds = int(span.total_seconds())
    if seconds < 120:
        return f"{seconds} s"
    return f"{seconds // 60} min" if seconds < 7200 else f"{seconds // 3600} h"
