"""Looks at everything the service stands on and says in plain words what is wrong. It changes nothing."""

from __future__ import annotations

import asyncio
import os
import re
import shutil
import stat
from collections.abc import Iterable, Iterator
from datetime import UTC, datetime, timedelta
from email.utils import parsedate_to_datetime
from pathlib import Path
from zoneinfo import ZoneInfo

import httpx
import sqlalchemy as sa
from telegram.error import InvalidToken, TelegramError

from bot.channels.telegram import make_bot
from bot.settings import Settings, unknown
from storage import backup, health, persons, rewriting, tombstones, upgrade
from storage.database import reading_engine, writing_engine
from storage.errors import StorageError, no_database_yet, why
from storage.migrations import HEAD
from storage.store import Store, sqlite_path

LATE = timedelta(minutes=2)
OLD_BACKUP = timedelta(days=2)
LOST_LATELY = timedelta(days=7)
CLOCK_OFF = timedelta(seconds=30)
# A message that waits for an answer of the service for longer is late anyway.
ANSWER_S = 5.0
LEAST_FREE = 500_000_000  # bytes; common practice, no source
# The file, its log and a copy before an upgrade or a rewrite after an erasure.
FREE_FOR_FILES = 3
TOKEN = re.compile(r"[0-9]+:[A-Za-z0-9_-]{30,}")
FINE, WRONG = "·", "!"


def examine(settings: Settings, now: datetime) -> tuple[bool, list[str]]:
    """(nothing is wrong, a sentence for each finding). What is wrong begins with "!", what is fine with "·"."""
    findings: list[str] = []
    for looked_at in (_settings(settings), _service(settings, now), _database(settings, now), _disk(settings)):
        try:
            findings.extend(looked_at)
        except OSError as error:
            findings.append(f"{WRONG} {error.filename}: {error.strerror}. Run this as the user of the service.")
    return not any(one.startswith(WRONG) for one in findings), findings


# ---- settings, and the service at the other end -------------------------------------------------------------------


def _settings(settings: Settings) -> Iterator[str]:
    if settings.telegram_token is None or not settings.telegram_token.get_secret_value():
        yield f"{WRONG} SLOWRUNG_TELEGRAM_TOKEN is not set: `slowrung serve` cannot start."
    if settings.webhook_url is not None and settings.webhook_secret is None:
        yield f"{WRONG} SLOWRUNG_WEBHOOK_SECRET is not set: the webhook would be open to anybody."
    if settings.webhook_url is not None and not settings.webhook_url.startswith("https://"):
        yield f"{WRONG} SLOWRUNG_WEBHOOK_URL must begin with https://: the service calls nothing else."
    if settings.replicas > 1 and settings.database.startswith("sqlite"):
        yield f"{WRONG} SLOWRUNG_REPLICAS is {settings.replicas}, but a SQLite file serves one: move to PostgreSQL."
    for name, meant in unknown(os.environ):
        yield f"{WRONG} {name} is no setting" + (f": {meant} is one." if meant else ".")
    yield f"{FINE} The words of handled messages are kept {settings.keep_messages_days} days."


def _service(settings: Settings, now: datetime) -> Iterator[str]:
    """Whether the chat service answers, knows the token, and has the same time."""
    try:
        answer = httpx.get(settings.telegram_api_url, timeout=ANSWER_S, follow_redirects=False)
    except httpx.HTTPError as error:
        yield f"{WRONG} {settings.telegram_api_url} does not answer ({type(error).__name__})."
        yield _clock_alone(now)
        return
    yield from _clock_beside(answer.headers.get("date"), now)
    token = settings.telegram_token.get_secret_value() if settings.telegram_token else ""
    if not token:
        return
    if not TOKEN.fullmatch(token):
        yield f"{WRONG} SLOWRUNG_TELEGRAM_TOKEN has not the form NUMBER:LETTERS. Copy it again, whole."
        return
    try:
        name = asyncio.run(_name_of(token, settings.telegram_api_url))
    except InvalidToken:
        yield f"{WRONG} The service does not know this SLOWRUNG_TELEGRAM_TOKEN."
    except TelegramError as error:
        yield f"{WRONG} The service could not be asked about the token ({type(error).__name__})."
    else:
        yield f"{FINE} The service knows the token: it is the bot {name}."


async def _name_of(token: str, root: str) -> str:
    bot = make_bot(token, root)
    async with bot:
        return bot.username


def _clock_alone(now: datetime) -> str:
    return f"{FINE} The clock says {now.isoformat(timespec='seconds')}. If that is wrong, plans come at wrong hours."


def _clock_beside(date: str | None, now: datetime) -> Iterator[str]:
    try:
        theirs = parsedate_to_datetime(date or "").astimezone(UTC)
    except ValueError:
        yield _clock_alone(now)
        return
    off = abs(now - theirs)
    if off > CLOCK_OFF:
        yield f"{WRONG} The clock is {_age(off)} off the service's. Plans come at wrong hours: set it (NTP)."
    else:
        yield f"{FINE} The clock agrees with the service's."


# ---- the database ---------------------------------------------------------------------------------------------------


def _database(settings: Settings, now: datetime) -> Iterator[str]:
    path = sqlite_path(settings.database)
    if path is not None and not path.exists():
        yield f"{WRONG} {no_database_yet(path)}"
        return
    try:
        if path is not None:
            upgrade.check_file(path)
        found = _revision(settings.database)
        if found != HEAD:
            yield (
                f"{WRONG} The database's tables are at {found}, this version's at {HEAD}. `slowrung serve` brings an "
                "older one up to date as it starts, after a copy; nothing else was looked at."
            )
            return
        # Up to date already, so that opening changes nothing.
        store = Store.open(settings.database, settings.backups)
    except StorageError as error:
        yield f"{WRONG} {error}"
        return
    except sa.exc.SQLAlchemyError as error:
        yield f"{WRONG} The database does not open ({why(error)}). Check SLOWRUNG_DATABASE_URL."
        return
    try:
        yield from _within(store, settings, now)
    finally:
        store.close()


def _revision(url: str) -> str | None:
    engine = reading_engine(url) if sqlite_path(url) is not None else writing_engine(url)
    try:
        with engine.connect() as connection:
            return upgrade.current_revision(connection)
    finally:
        engine.dispose()


def _within(store: Store, settings: Settings, now: datetime) -> Iterator[str]:
    with store.reading() as tx:
        seen, counts = health.look(tx, now), health.rows(tx)
        given_up, unreachable = health.given_up(tx, now - LOST_LATELY), health.unreachable_coaches(tx)
        owed = rewriting.owed_since(tx)
        coaches = persons.all_coaches(tx)
        team = [row for one in coaches for row in persons.athletes_of(tx, one.id or 0)]
        erased = tombstones.moments(tx)
        back = tombstones.come_back(tx)
    yield f"{FINE} {seen.database}, version {seen.revision} of the tables."
    if seen.wal_reset_bug:
        yield f"{FINE} This SQLite is older than 3.51.3: keep one running service a file (a lock sees to that)."
    if not coaches:
        yield f"{WRONG} There is no roster yet: slowrung roster load FILE"
    yield from _zones({one.timezone for one in coaches} | {one.timezone for one in team})
    counted = ", ".join(f"{name} {count}" for name, count in sorted(counts.items()) if count)
    yield f"{FINE} Rows: {counted or 'none'}."
    yield from _queues(seen)
    yield from _not_sent(given_up)
    for coach in coaches:
        if coach.id in unreachable:
            yield (
                f"{WRONG} {coach.name}, the coach, cannot be reached: they blocked the bot, or never joined. "
                f"{unreachable[coach.id]} messages wait for them. To unblock it and write to it is enough; who never "
                "joined needs the code that this prints: slowrung roster load FILE"
            )
    if owed is not None and now - owed > LATE:
        yield (
            f"{WRONG} Somebody was erased {_age(now - owed)} ago, and the database's files were not rewritten since: "
            "the service tries again every ten minutes, while nobody reads the database for long (as a backup does)."
        )
    if back:
        yield (
            f"{WRONG} {len(back)} athletes who had all their data erased are back, as after restoring a copy. Erase "
            "them: slowrung erase HANDLE"
        )
    since = min((row.started_on for row in team), default=None)
    new = since is None or now.date() - since <= OLD_BACKUP
    yield from _backups(settings, erased, now, new)


def _zones(names: Iterable[str]) -> Iterator[str]:
    missing = []
    for name in sorted({*names, "Europe/Zurich"}):
        try:
            ZoneInfo(name)
        except (OSError, ValueError, KeyError):
            missing.append(name)
    if missing:
        yield f"{WRONG} There is no time zone data for {', '.join(missing)}: install the tzdata package."
    else:
        yield f"{FINE} Time zone data is there for everyone."


def _not_sent(given_up: health.GivenUp) -> Iterator[str]:
    if given_up.expected:
        yield f"{FINE} {given_up.expected} messages were given up: chats that are gone, or too late to be of use."
    if given_up.lost:
        counted = ", ".join(f"{kind} {count}" for kind, count in given_up.lost.items())
        yield (
            f"{WRONG} {sum(given_up.lost.values())} messages were lost in {LOST_LATELY.days} days ({counted}): "
            "nobody got them. The log names each by its number."
        )


def _queues(seen: health.Health) -> Iterator[str]:
    if seen.set_aside:
        yield (
            f"{WRONG} {seen.set_aside} messages could not be handled and are set aside. Once the reason is mended, as "
            "by an upgrade: slowrung retry"
        )
    if seen.unreadable:
        yield f"{FINE} {seen.unreadable} updates could not be read at all; nothing of them is kept."
    waiting = (
        (seen.unhandled, seen.oldest_unhandled, "messages wait to be handled"),
        (seen.unsent, seen.oldest_unsent, "messages wait to be sent"),
        (seen.overdue, seen.oldest_overdue, "plans and questions are overdue"),
    )
    for count, age, what in waiting:
        if age is not None and age > LATE:
            yield f"{WRONG} {count} {what}, the oldest {_age(age)}."
    sweep = seen.beats.get("sweep")
    if sweep is None:
        yield f"{FINE} No sweep was made yet: the service has never run on this database."
    elif sweep < -CLOCK_OFF:
        yield f"{WRONG} The last sweep is {_age(-sweep)} in the future: the clock was set back, or is wrong."
    elif sweep > LATE:
        yield f"{WRONG} The last sweep is {_age(sweep)} old: is the service running?"
    else:
        yield f"{FINE} The last sweep is {_age(sweep)} old."


def _backups(settings: Settings, erased: list[datetime], now: datetime, new: bool) -> Iterator[str]:
    path = sqlite_path(settings.database)
    copies = backup.copies(settings.backups)
    if not copies:
        yield f"{FINE if new else WRONG} There is no backup in {settings.backups} yet: slowrung backup"
    else:
        age = now - max(backup.made_at(copy) for copy in copies)
        mark = WRONG if age > OLD_BACKUP else FINE
        yield f"{mark} The newest of {len(copies)} backups is {_age(age)} old."
    beside = backup.copies_beside(path) if path is not None else []
    kept = backup.outlived([*copies, *beside], erased, now)
    if kept:
        yield (
            f"{WRONG} {len(kept)} copies know somebody who was promised to be gone by now, such as {kept[0].name}: "
            "slowrung backup deletes them."
        )


# ---- files ----------------------------------------------------------------------------------------------------------


def _disk(settings: Settings) -> Iterator[str]:
    path = sqlite_path(settings.database)
    places = [place for place in (settings.home, path.parent if path else None) if place and place.exists()]
    files = [one for place in places for one in place.glob("*") if one.is_file()]
    files += backup.copies(settings.backups)
    if path is not None and path.exists():
        files.append(path)
    for one in dict.fromkeys((settings.home, settings.backups, *files)):
        if one.exists() and stat.S_IMODE(one.stat().st_mode) & 0o077:
            yield f"{WRONG} {one} can be read by others: chmod {'700' if one.is_dir() else '600'} {one}"
    size = path.stat().st_size if path is not None and path.exists() else 0
    for place in dict.fromkeys(places):
        yield _free(place, shutil.disk_usage(place).free, max(LEAST_FREE, FREE_FOR_FILES * size))


def _free(place: Path, free: int, wanted: int) -> str:
    if free < wanted:
        return (
            f"{WRONG} {place} has {free // 10**6} MB left, {wanted // 10**6} are wanted: a full disk stops everything."
        )
    return f"{FINE} {place} has {free // 10**6} MB left."


def _age(span: timedelta) -> str:
    seconds = int(span.total_seconds())
    if seconds < 120:
        return f"{seconds} s"
    return f"{seconds // 60} min" if seconds < 7200 else f"{seconds // 3600} h"
